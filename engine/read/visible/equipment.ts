/** Tools that markup lists among the ingredients, told by the page's own list of equipment. */
import type { IngredientGroup } from '../../model.ts';
import type { Block } from '../document/block.ts';
import { textKey } from '../document/clean-text.ts';
import { hasAmount } from '../markup/ingredient-values.ts';
import { phraseKey } from './heading-phrases.ts';

/** Headings of lists of tools, accents taken off. */
const HEADING =
  /^(?:(?:special|kitchen|recommended) )?(?:equipment|tools|utensils|utensilien|zubehor|kuchenutensilien|kuchengerate|materiel|ustensiles|utensilios|attrezzatura|attrezzi|keukengerei|utstyr|redskap|redskaber|udstyr)(?: needed| used)?$/;
const MOST_TOOLS = 40;

/** Keys of the entries under the page's headings for equipment. */
export function listedTools(blocks: readonly Block[]): ReadonlySet<string> {
  const tools = new Set<string>();
  blocks.forEach((block, at) => {
    if (block.text.length > 40 || block.list >= 0 || !HEADING.test(phraseKey(block.text))) return;
    const list = blocks[at + 1]?.list ?? -1;
    for (let i = at + 1; list >= 0 && blocks[i]?.list === list && tools.size < MOST_TOOLS; i += 1)
      tools.add(textKey(blocks[i]?.text ?? ''));
  });
  return tools;
}

/** The groups without lines that name a listed tool and no amount. */
export function withoutTools(
  groups: readonly IngredientGroup[],
  keys: readonly string[],
): IngredientGroup[] {
  const tools = new Set(keys);
  return groups
    .map(({ title, lines }) => ({
      title,
      lines: lines.filter((line) => hasAmount(line) || !tools.has(textKey(line))),
    }))
    .filter(({ lines }) => lines.length > 0);
}
