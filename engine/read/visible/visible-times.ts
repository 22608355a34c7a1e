/** Finds times stated in the visible lines of a page. */
import words from '../data/time-words.json' with { type: 'json' };
import type { Block } from '../document/block.ts';
import { noTimes, type Times } from '../draft.ts';

const KINDS = ['prep', 'cook', 'total'] as const;

/** Blocks looked at before the ingredients. */
const BEFORE = 150;
/** Longest line that states times (characters). */
const MAX_LINE = 160;
const MAX_STATEMENT = 60;

const ABOUT = '(?:(?:ca|approx|env|c)\\.?|about|around|etwa|circa|cirka|environ|ongeveer|~)?\\s*';
/** 'Prep time: 15 minutes', 'Cook 1 h', or the words alone with the figure in the next block. */
const STATEMENTS = KINDS.map(
  (kind) =>
    [
      kind,
      new RegExp(`^(?:${words[kind].join('|')})\\s?[:–-]*\\s*(${ABOUT}[\\d½¼¾].*)?$`, 'i'),
    ] as const,
);
/** Parts of one line: 'Prep: 10 min | Cook: 35 min', 'Prep Time 10 minutes Cook Time 35 minutes'. */
const STATEMENT_SEPARATOR = /\s*[|•·]\s*|\s+\/\s+|(?<=\d\s?(?:h|m|[a-z]{3,7})\.?)\s+(?=[A-Z])/;
const TIMED = /^\D{0,12}[\d½¼¾].*[A-Za-z]/;
/** A sentence of the method: 'Cook 5 minutes.' */
const SENTENCE = /[a-zà-ÿ]{5,}[.!]$/;

/** A text with a figure and a unit; bare figures are no time. */
function mayBeTime(text: string): boolean {
  return TIMED.test(text) && !SENTENCE.test(text);
}

/**
 * What the page states of preparation, cooking and total time before its ingredients, which start at the
 * block `from`.
 */
export function timesNear(blocks: readonly Block[], from: number): Times {
  const times = noTimes();
  for (let i = Math.max(0, from - BEFORE); i < from; i += 1) {
    const block = blocks[i] as Block;
    if (!/[\d½¼¾]/.test(`${block.text}${blocks[i + 1]?.text ?? ''}`)) continue;
    if (block.text.length > MAX_LINE || (block.aside && !blocks[from]?.aside)) continue;
    const parts = block.text.split(STATEMENT_SEPARATOR);
    for (const part of parts) {
      if (part.length > MAX_STATEMENT) continue;
      const next = parts.length === 1 ? (blocks[i + 1]?.text ?? '') : '';
      for (const [kind, statement] of STATEMENTS) {
        const found = statement.exec(part);
        const text = found?.[1] ?? (next.length < 30 ? next : '');
        if (found && mayBeTime(text)) times[kind].push(text);
      }
    }
  }
  return times;
}
