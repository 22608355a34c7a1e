/** A sauce that the method takes by its own name and that no line and no step makes: its recipe stands elsewhere. */
import type { MissingLine } from '../../model.ts';
import data from '../data/made-elsewhere.json' with { type: 'json' };
import { between, kindOf, times } from './missing-kinds.ts';

const TAKES = new RegExp(
  `\\b(?:${data.verbs})\\b[^.;,]{0,40}?\\b(?:the|your|our) ((?:[a-z'-]+ ){1,3}?)(${data.names})\\b`,
);
/** Says of a sauce how it is, not what it is. */
const DESCRIBES = new RegExp(`^(?:${data.describing}|[a-z-]+(?:ed|ing|en|er))$`);

/**
 * The sauce of the first sentence that takes one which is named for what is in no line, and that nothing said
 * before makes. `sentences` and `lines` in plain letters.
 */
export function madeElsewhere(
  sentences: readonly string[],
  lines: string,
  key: string,
): MissingLine | null {
  let said = lines;
  for (const sentence of sentences) {
    const [, modifiers = '', name = ''] = TAKES.exec(sentence) ?? [];
    const own = modifiers.split(' ').filter((word) => word !== '' && !DESCRIBES.test(word));
    const isKnown = said.includes(name) || own.some((word) => said.includes(word));
    const kind = kindOf(name);
    if (own.length > 0 && !isKnown && kind !== null)
      return {
        key,
        text: `${kind.kind}: “${sentence.trim().slice(0, 80)}”`,
        why: 'the method uses it and no line has it',
        kind: kind.kind,
        netCarbsG: between(times(kind.serving, kind.per100)),
      };
    said += ` ${sentence}`;
  }
  return null;
}
