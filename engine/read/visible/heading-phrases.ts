/** Phrases that head a part of a page, and how well a heading's words fit them. */
import { withoutAccents } from '../../accents.ts';
import headings from '../data/heading-words.json' with { type: 'json' };
import words from '../data/ingredient-words.json' with { type: 'json' };
import { listed } from '../values/word-lists.ts';

/** Longest text taken for a heading (characters). */
export const MAX_HEADING = 80;

/** Lower case, accents and marks taken off, with numbers of a list and closing colons. */
export function headingKey(text: string): string {
  const lower = text.toLowerCase();
  if (/^[a-z](?:[a-z']| (?! ))*$/.test(lower)) return lower;
  return withoutAccents(lower.normalize('NFKC'))
    .replace(/^\s*\d+\s*[).:]\s*/, '')
    .replace(/[’‘´`]/g, "'")
    .replace(/\(/g, ' (')
    .replace(/[“”„"*#_:：!?.…|<>»«【】[\]▼▾⏬↓→➔]+/g, ' ')
    .replace(/\p{Extended_Pictographic}\ufe0f?/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Articles and the like before a heading word. */
const ARTICLE =
  /^(?:the|die|der|das|le|la|les|los|las|el|gli|il|lo|os|as|de|az|our|my|mes|nos|notre|unser|mein|recipe) /;
/** Words that may follow a heading word: 'Ingredients for 4 people', 'Zutaten (für 4 Personen)'. */
const TAIL =
  /^(?:[\s(,–—-]+(?:(?:for|fur|voor|pour|para|per|til|till|pro|na|dla|za|zum|zur|az?|для|на|για|de|do|da|du|des|del|della|of|in|the|serves|about|ca|x|metric|us|makes|yield|recipe|rezept|persons?|people)(?!\p{L})|\d|\().*|\s*\(.*\)|\s+\d.*|\s?[-–—].*)$/u;
/** Words that may stand before it: 'Cake ingredients', 'The ingredients', 'Recipe instructions'. */
const MAX_LEAD_WORDS = 8;

/** A set of phrases, in any of the languages read. */
class Phrases {
  private readonly whole: ReadonlySet<string>;
  /** First and last words, so that most lines are turned down at once. */
  private readonly firsts = new Set<string>();
  private readonly lasts = new Set<string>();

  constructor(phrases: readonly string[]) {
    this.whole = new Set(phrases.map(withoutAccents));
    for (const phrase of this.whole) {
      this.firsts.add(phrase.split(' ')[0] ?? '');
      this.lasts.add(phrase.split(' ').at(-1) ?? '');
    }
  }

  has(key: string): boolean {
    return this.whole.has(key);
  }

  /**
   * How well a heading's key fits: 3 equal to a phrase, 2 a phrase with a tail ('for 4 people'), 1 other
   * words before it, which only `lead` allows, 0 not at all.
   */
  fit(key: string, lead: boolean): number {
    if (this.whole.has(key)) return 3;
    const parts = key.split(' ');
    const first = (parts[0] ?? '').replace(/[,(–—-]+$/, '');
    if (!this.firsts.has(first) && !(lead && this.lasts.has(parts.at(-1) ?? ''))) return 0;
    for (let n = Math.min(parts.length - 1, 6); n >= 1; n -= 1) {
      const start = parts.slice(0, n).join(' ');
      if (this.whole.has(start.replace(/[\s,(–—-]+$/, '')) && TAIL.test(key.slice(start.length)))
        return 2;
    }
    if (!lead || parts.length > MAX_LEAD_WORDS + 1) return 0;
    for (let n = 1; n < parts.length; n += 1)
      if (this.whole.has(parts.slice(n).join(' '))) return 1;
    return 0;
  }
}

export const STEPS = new Phrases(listed(headings.steps));
export const INGREDIENTS = new Phrases(listed(words.ingredients));
/** Headings that may list tools as well as foods. */
export const NEEDS = new Phrases(listed(words.needs));

/** A heading's key without an article before it. */
export function phraseKey(text: string): string {
  return headingKey(text).replace(ARTICLE, '');
}

/** True for a heading's text that says ingredients follow, sure or with other words around it. */
export function isNamedIngredients(text: string): boolean {
  const line = text.trim();
  if (line === '' || line.length > MAX_HEADING) return false;
  const key = phraseKey(line);
  return INGREDIENTS.fit(key, true) > 0 || NEEDS.fit(key, true) > 0;
}
