/** Drops second copies of an ingredient list: print copies, other serving sizes, other measures. */
import type { IngredientGroup } from '../../../model.ts';
import { textKey } from '../../document/clean-text.ts';
import { linesIn } from '../../draft.ts';
import { foodWords } from '../line-shapes.ts';

/** Fewest lines of a copy, most copies, and the share of foods that must agree (own choice). */
const FEWEST = 3;
const MOST_COPIES = 4;
const AGREEING = 0.75;
/** Share of the lines that a copy with lines left out must have in common (own choice). */
const LOOSELY = 0.8;

/** The lines of groups from one place to another. */
function linesBetween(
  groups: readonly IngredientGroup[],
  from: number,
  to: number,
): IngredientGroup[] {
  let at = 0;
  return groups
    .map(({ title, lines }) => {
      const start = at;
      at += lines.length;
      return { title, lines: lines.slice(Math.max(0, from - start), Math.max(0, to - start)) };
    })
    .filter(({ lines }) => lines.length > 0);
}

/** A list names most foods once: where few take turns all along, nothing is a copy. */
const isVaried = (keys: readonly string[]): boolean => new Set(keys).size * 2 > keys.length;

/**
 * Where a second copy of the list begins that lacks a few lines of the first, or has a few more; 0 when
 * there is none.
 */
function looseCopyAt(keys: readonly string[]): number {
  const at = keys.indexOf(keys[0] ?? '', FEWEST);
  const parts = [keys.slice(0, at), keys.slice(at)];
  if (at < 0 || keys[0] === '' || !parts.every(isVaried)) return 0;
  const [first, second] = parts.map((part) => new Set(part)) as [Set<string>, Set<string>];
  const shared = [...second].filter((key) => first.has(key)).length;
  return shared >= FEWEST && shared >= Math.max(first.size, second.size) * LOOSELY ? at : 0;
}

/** The groups without later copies, when the whole sequence of lines is there twice or more. */
export function withoutCopies(groups: IngredientGroup[]): IngredientGroup[] {
  const lines = linesIn({ groups });
  const keys = lines.map(textKey);
  const foods = lines.map(foodWords);
  const smallest = Math.max(FEWEST, Math.ceil(lines.length / MOST_COPIES));
  for (let size = smallest; size * 2 <= lines.length; size += 1) {
    if (lines.length % size !== 0 || !isVaried(keys.slice(0, size))) continue;
    const same = keys.every((key, i) => i < size || key === keys[i - size]);
    const agreeing = foods.filter(
      (food, i) => i >= size && food !== '' && food === foods[i - size],
    ).length;
    if (same || agreeing >= (lines.length - size) * AGREEING) return linesBetween(groups, 0, size);
  }
  const loose = looseCopyAt(keys);
  if (loose === 0) return groups;
  // The fuller copy is the list.
  return loose * 2 >= lines.length
    ? linesBetween(groups, 0, loose)
    : linesBetween(groups, loose, lines.length);
}
