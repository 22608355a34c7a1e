/**
 * The words of the screens, in the user's language. A message is looked up by its key in
 * `_locales`; `$1` to `$9` stand for what is put in, and ' | ' parts the forms for one and for many.
 */
import type { ComponentChildren } from 'preact';
import de from '../../public/_locales/de/messages.json' with { type: 'json' };
import en from '../../public/_locales/en/messages.json' with { type: 'json' };

export type MessageKey = keyof typeof en;
type Catalogue = Record<MessageKey, { message: string }>;

/** Languages the screens speak; the next one is a file and a line here. */
export const LANGUAGES = { en, de } as const satisfies Record<string, Catalogue>;
export type Language = keyof typeof LANGUAGES;

let catalogue: Catalogue = en;
let tag = 'en';

const isLanguage = (text: string): text is Language => Object.hasOwn(LANGUAGES, text);

/** The language that answers a tag such as 'de-AT'; English where none does. */
export function languageOf(wanted: string): Language {
  const primary = wanted.split('-')[0]?.toLowerCase() ?? '';
  return isLanguage(primary) ? primary : 'en';
}

/** Speaks from now on as the tag asks; numbers and dates follow its region. */
export function speak(wanted: string): void {
  const language = languageOf(wanted);
  catalogue = LANGUAGES[language];
  tag = wanted.toLowerCase().startsWith(language) ? wanted : language;
}

/** BCP 47 tag for numbers, dates and the page's `lang`. */
export const locale = (): string => tag;

const MARK = /\$([1-9])/g;

const filled = (message: string, parts: readonly (string | number)[]): string =>
  message.replace(MARK, (_, at) => String(parts[Number(at) - 1] ?? ''));

/** A message with its parts put in. */
export const say = (key: MessageKey, ...parts: (string | number)[]): string =>
  filled(catalogue[key].message, parts);

/** The form of a message for a number; `$1` is the number in the language's own digits. */
export function sayCount(key: MessageKey, count: number, ...parts: (string | number)[]): string {
  const [one = '', many = one] = catalogue[key].message.split(' | ');
  const form = new Intl.PluralRules(tag).select(count) === 'one' ? one : many;
  return filled(form, [new Intl.NumberFormat(tag).format(count), ...parts]);
}

/** A message whose parts may be marked-up. */
export function sayWith(key: MessageKey, ...parts: ComponentChildren[]): ComponentChildren[] {
  return catalogue[key].message
    .split(MARK)
    .map((piece, at) => (at % 2 === 0 ? piece : parts[Number(piece) - 1]));
}

const joining = () => new Intl.ListFormat(tag, { style: 'long', type: 'conjunction' });

/** 'a, b and c' as the language joins them. */
export const sayList = (words: readonly string[]): string => joining().format(words);

/** The same of words that are marked-up, each told its place. */
export function listWith(
  words: readonly string[],
  mark: (word: string, at: number) => ComponentChildren,
): ComponentChildren[] {
  let at = 0;
  return joining()
    .formatToParts(words)
    .map(({ type, value }) => (type === 'element' ? mark(value, at++) : value));
}

/** As it stands within a sentence: English begins it small, German nouns keep their capital. */
export const midSentence = (text: string): string =>
  languageOf(tag) === 'en' ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** With a capital at its start, as a line of its own begins. */
export const capital = (text: string): string =>
  text.charAt(0).toLocaleUpperCase(tag) + text.slice(1);
