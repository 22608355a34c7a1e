/** Takes a named thing out of a list in a sentence. */
import { END, literal, START } from './name-patterns.ts';

const AMOUNT = String.raw`(?: ?[\d¼½¾⅓⅔./]{1,8}(?: [\d¼½¾⅓⅔./]{1,8}){0,2}\s?(?:g|kg|ml|l|litres?|cups?|tbsp|tsp|tablespoons?|teaspoons?|oz)?\.?\s{1,2}(?:of\s{1,2})?(?:\([^)]{0,80}\)\s{1,2})?)?`;
const ADJECTIVES = `(?:(?:luke)?warm |cold |tepid |hot |iced? |room[- ]temperature )*`;

/**
 * The text without `name`, where it stands in a list of several ('the flour, water and salt'); null
 * where it stands alone, so that the sentence would lose its object.
 */
export function withoutWord(text: string, name: string): string | null {
  const word = `${START}${AMOUNT}${ADJECTIVES}${literal(name)}${END}`;
  // 'stir the yeast into the water, then mix': there it is a place, no part of a list.
  if (new RegExp(`\\b(?:into|in|to|over|onto|from) (?:the )?${word}`, 'iu').test(text)) return null;
  const patterns: readonly (readonly [RegExp, string])[] = [
    [new RegExp(`, (?:the )?${word}(?=, )`, 'iu'), ''],
    [new RegExp(`, (?:the )?${word},?(?= and )`, 'iu'), ''],
    [new RegExp(`(the )?${word}, (?!(?:then|and|stir|mix|whisk|add|until|which)\\b)`, 'iu'), '$1'],
    [new RegExp(`(the )?${word} and (?:the )?`, 'iu'), '$1'],
    [new RegExp(`,? and (?:the )?${word}`, 'iu'), ''],
  ];
  for (const [pattern, put] of patterns) {
    if (!pattern.test(text)) continue;
    return listed(text.replace(pattern, put));
  }
  return null;
}

/** 'the flour and salt and yeast' never comes out of it, but 'a, b' at a list's end may: 'a and b'. */
const listed = (text: string): string => text.replace(/ {2,}/g, ' ').replace(/ ([.,;])/g, '$1');
