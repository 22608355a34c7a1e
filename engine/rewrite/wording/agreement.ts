/** One or many, 'a' or 'an': a new name that agrees with the words around it. */
import { singular } from '../naming/method-names.ts';

/** Things that are counted, by their last word. */
const COUNTED =
  /(?:^|\s)(?:wrap|bun|tortilla|roll|pita|bagel|muffin|cracker|cookie|waffle|sheet|round|crepe|slice|noodle|nut|bean|berry|strawberry|raspberry|blackberry|blueberry|turnip|radish|mushroom|chip|patty|flat bread)$/i;
/** Words for one piece, so that one of what replaces it is meant. */
const ONE_PIECE = /(?:tortilla|bun|roll|baguette|wrap|pita|bagel|burger)$/i;
const ONE_BEFORE = /\b(?:a|an|each|every|one|another|this|per)\s+(?:\p{L}+\s+)?$/iu;

export const plural = (name: string): string =>
  /[^aeiou]y$/i.test(name)
    ? `${name.slice(0, -1)}ies`
    : /(?:sh|ch|x|ss)$/i.test(name)
      ? `${name}es`
      : `${name}s`;

const oneOf = (name: string): string =>
  /ies$/i.test(name) ? `${name.slice(0, -3)}y` : singular(name);

/** The new name in the number of the one it stands for: 'each tortilla' -> 'each egg wrap'. */
export function agreeing(newName: string, found: string, before: string): string {
  const one = oneOf(newName);
  if (!COUNTED.test(one) || / and |, /.test(newName)) return newName;
  const isMany = one !== newName;
  const wasMany = singular(found) !== found;
  if (isMany && !wasMany && ONE_BEFORE.test(before)) return one;
  if (!isMany && !wasMany && ONE_PIECE.test(found)) return newName;
  return !isMany && (wasMany || !ONE_BEFORE.test(before)) && !/^(?:a|one)\b/.test(found)
    ? plural(newName)
    : newName;
}

/** 'a' and 'an' by the word behind a mark. */
export const withArticles = (text: string, mark: string): string =>
  text
    .replace(new RegExp(`\\b([Aa])( ${mark})(?=[aeio])`, 'g'), '$1n$2')
    .replace(new RegExp(`\\b([Aa])n( ${mark})(?=[^aeiou\\d])`, 'g'), '$1$2');
