/** Takes a named thing out of a list in a sentence. */
import { capital } from '../naming/method-names.ts';
import { END, literal, START } from './name-patterns.ts';

const AMOUNT = String.raw`(?: ?[\d¼½¾⅓⅔./]{1,8}(?: [\d¼½¾⅓⅔./]{1,8}){0,2}\s?(?:g|kg|ml|l|litres?|cups?|tbsp|tsp|tablespoons?|teaspoons?|oz)?\.?\s{1,2}(?:of\s{1,2})?(?:\([^)]{0,80}\)\s{1,2})?)?`;
const ADJECTIVES = `(?:(?:luke)?warm |cold |tepid |hot |iced? |room[- ]temperature )*`;

/** 'into the water'; 'stir in the rice' puts it in. */
const PLACE = String.raw`(?<!\b(?:stir|mix|tip|pour|fold|toss|throw|whisk|put|sprinkle|add) )\b(?:into|in|to|over|onto|from)`;
/** 'the rice and stir': no list goes on there. */
const VERBS =
  '(?:stir|cook|toss|mix|fry|toast|simmer|let|bring|add|heat|coat|cover|serve|fluff|drain|rinse|saut[eé]|sweat|brown|continue|whisk|fold|pour|reduce|boil|return|season)';

/**
 * The text without `name`, where it stands in a list of several ('the flour, water and salt'); null
 * where it stands alone, so that the sentence would lose its object.
 */
export function withoutWord(text: string, name: string): string | null {
  const word = `${START}${AMOUNT}${ADJECTIVES}${literal(name)}${END}`;
  // 'stir the yeast into the water, then mix': there it is a place, no part of a list.
  if (new RegExp(`${PLACE} (?:the )?${word}`, 'iu').test(text)) return null;
  const patterns: readonly (readonly [RegExp, string])[] = [
    [new RegExp(`, (?:the )?${word}(?=, )`, 'iu'), ''],
    [new RegExp(`, (?:the )?${word},?(?= and )`, 'iu'), ''],
    [
      new RegExp(
        `(?<!\\bfor )(the )?(?<!\\bfor the )${word}, (?!(?:then|and|stir|mix|whisk|add|until|which)\\b)`,
        'iu',
      ),
      '$1',
    ],
    [new RegExp(`(the )?${word} and (?:the )?(?!${VERBS}\\b)`, 'iu'), '$1'],
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

const ARTICLES =
  "(?:(?:[Dd]e[rnms]?|[Dd]as|[Dd]ie|het|le|la|les|du|des|el|los|las|il|lo|gli|i|os?|as?|den|det)\\s|l['’])";
/** Words between an article and a food that say how it is. */
const AS_IT_IS =
  '(?:(?:un|on|o|u)?(?:gekocht|gekookt|kokt|kok|cuit|cocid|cott)[eaionrs]{0,2}\\s|(?:roh|rauw|cru|crud|rå|tør|dro[gk]|trocken|gewaschen)[eaoinrsg]{0,2}\\s)';
/** What may stand before the 'and' of a list where verbs stand last: a noun, not 'schneiden'. */
const LISTED: Readonly<Record<string, string>> = {
  de: '(?<=\\p{Lu}\\p{L}+)',
  nl: '(?<=\\b(?:de|het)\\s\\p{L}+)',
};

const isStart = (before: string): boolean => /(?:^|[.!?]\s)$/.test(before);

/**
 * The text without a word that a bracket leaves out, where it stands in a list of several: 'de bouillon en
 * de rijst (weglaten)' is 'de bouillon'. Where it stands alone the bracket stays.
 */
export function withoutLeftOut(
  text: string,
  word: string,
  { and, leaveOut, tag }: { and: string; leaveOut: string; tag: string },
): string {
  const noun = `${ARTICLES}?(?:${AS_IT_IS})?${literal(`${word} (${leaveOut})`)}`;
  const joint = `\\s${literal(and)}\\s`;
  const flags = tag === 'de' ? 'u' : 'iu';
  const patterns: readonly (readonly [string, string])[] = [
    [`, ${noun}(?=,|${joint})`, ''],
    [`, ([^,.;:]{1,40})${joint}${noun}`, ` ${and} $1`],
    [`${LISTED[tag] ?? ''}${joint}${noun}`, ''],
    [`${noun}(?:${joint}|,\\s)(?=${ARTICLES})`, ''],
  ];
  for (const [pattern, put] of patterns) {
    const found = new RegExp(pattern, flags).exec(text);
    if (found === null) continue;
    const before = text.slice(0, found.index);
    const after = text.slice(found.index + found[0].length);
    const said = put.replace('$1', () => found[1] ?? '');
    return `${before}${said}${isStart(before) && said === '' ? capital(after) : after}`;
  }
  return text;
}
