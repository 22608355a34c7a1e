/** Sentences of a step. */

/** Abbreviations that end in a point within a sentence, in the languages of recipes. */
const SHORT =
  'min ca evtl bzw approx std tbsp tsp oz lb etc no nr el tl usw ung env pers ud uds kl st dl cl max ev ex inkl resp aprox';
const shortened = SHORT.split(' ')
  .map((word) => `[${word.charAt(0)}${word.charAt(0).toUpperCase()}]${word.slice(1)}`)
  .join('|');
/** Blanks behind a full stop and before what is no small letter. */
const END = new RegExp(
  `(?<=[.!?;])(?<!(?<!\\p{L})(?:${shortened})\\.)\\s+(?=[^\\p{Ll}\\s])|\\n+`,
  'gu',
);

/** A step's sentences, without the blanks between them. */
export const sentencesOf = (text: string): string[] =>
  text.split(END).filter((sentence) => sentence.trim() !== '');

/** 'Make the glaze: ', 'Combine – ': words that head a sentence. */
const LEAD = /^(?:\d+[.)] )?[\p{Lu}(][^.:–—;]{1,60}(?::|\s[–—])\s+(?=\p{Lu})/u;

/** A sentence put before another, behind the words that head it. */
function before(sentence: string, next: string): string {
  const lead = LEAD.exec(next)?.[0];
  return lead === undefined
    ? `${sentence} ${next}`
    : `${lead}${sentence} ${next.slice(lead.length)}`;
}

/** The text with another sentence behind one of its own, `-1` for its start. */
export function withSentence(text: string, behind: number, sentence: string): string {
  const own = sentencesOf(text);
  const at = Math.min(behind, own.length - 1);
  const first = own.slice(0, at + 1).map((one) => one.trim());
  const last = first.at(-1);
  if (last !== undefined && !/(?:[.!?:;]|[.!?][)"”])$/.test(last))
    first[first.length - 1] = `${last}.`;
  const [next, ...rest] = own.slice(at + 1).map((one) => one.trim());
  const put = next === undefined ? sentence.trim() : before(sentence.trim(), next);
  return [...first, put, ...rest].join(' ');
}
