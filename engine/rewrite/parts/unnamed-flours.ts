/** The step that takes flours which the method calls by no name of their lines: 'beide Mehlsorten'. */
import type { Mention } from '../naming/mention.ts';
import type { Course } from './course.ts';

const FLOUR = /\bflours?\b/i;
/** A floured board takes none of it. */
const DUSTED =
  /\b(?:lightly )?floured\b|\p{L}*(?:bemehl|enfarin|farin[ée]e|enharin|infarin|bebloem|mjöla|meldrys|meldr)\p{L}*/giu;

/** `named` with those flours in the first step that speaks of flour; `searched`: the steps with English key words, `original` in the page's. */
export function withUnnamedFlours(
  named: Course['named'],
  mentions: readonly Mention[],
  { searched, original }: { searched: readonly string[]; original: readonly string[] },
): Course['named'] {
  const flours = mentions.filter(({ role }) => role === 'structure');
  if (flours.length === 0 || flours.some(({ ingredient }) => named.has(ingredient.key)))
    return named;
  const at = searched.findIndex(
    (text, step) =>
      FLOUR.test(text.replace(DUSTED, '')) &&
      (!DUSTED.test(original[step] ?? '') ||
        FLOUR.test((original[step] ?? '').replace(DUSTED, ''))),
  );
  if (at < 0) return named;
  return new Map([...named, ...flours.map(({ ingredient }) => [ingredient.key, [at]] as const)]);
}
