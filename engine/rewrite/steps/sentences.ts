/** Sentences of a step. */

/** Abbreviations that end in a point within a sentence, in the languages of recipes. */
const SHORT =
  'min mins ca evtl bzw approx std hr hrs tbsp tsp oz lb etc no nr el tl usw ung env pers ud uds kl st dl cl max ev ex inkl resp aprox';
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

/** The text with another sentence behind one of its own, `-1` for its start. */
export function withSentence(text: string, behind: number, sentence: string): string {
  const own = sentencesOf(text);
  const at = Math.min(behind, own.length - 1);
  const before = own.slice(0, at + 1).map((one) => one.trim());
  const last = before.at(-1);
  if (last !== undefined && !/[.!?:;)"”]$/.test(last)) before[before.length - 1] = `${last}.`;
  return [...before, sentence.trim(), ...own.slice(at + 1).map((one) => one.trim())].join(' ');
}
