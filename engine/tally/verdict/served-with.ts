/** Starchy or sweet food that a dish is to be eaten with and no line counts: 'served over rice'. */
import type { Food, Ingredient, MissingLine } from '../../model.ts';
import { between, kindOf, kindWord, plainText, STARCHY, times } from './missing-kinds.ts';

const SERVED_WITH =
  /\b(?:serv\w*|eat\w*|enjoy\w*|share(?= with\b)|ladl\w*|spoon\w*)\b[^.;]{0,25}?\b(?:over|on|with|in|alongside|atop|between)\b([^.;]{0,100})/;
/** Words of serving on pages in other languages; what is served stands on either side of them. */
const SERVED_ELSEWHERE =
  /([^.;]{0,60})\b(?:servier\w*|dazu|serveer\w*|servir|servez|servite?|servire|sirv[ae]\w*|server[ae]?|acompan\w*|accompagn\w*|podavejte)\b([^.;]{0,60})/;
/** Of the starchy vegetables only potatoes are what a dish is served on. */
const POTATO = /potato|kartoffel|pommes de terre|patata|aardappel|\bmash/;

/** A batter is spooned over jam, too. */
const AT_TABLE = /\b(?:serv|eat|enjoy|share with|dazu|podavejte)/;
const SUGAR_FREE =
  /sugar[- ]free|unsweetened(?! (?:yogh?urt|whipped|cream|coconut cream))|sugar snap/;
const SWEET_CHIPS = /\b(?:chocolate|cocoa|caramel|butterscotch|peanut butter|baking) chips\b/;

/** 'If you are serving it over pasta': what one may do instead. */
const MAY_BE = /\bif (?:you(?:'re| are)? )?(?:serv|eat)/;
/** Plates and bowls that have a food in their names: 'spoon it into a pasta dish'. */
const VESSEL =
  /\b(?:pasta|noodle|soup|pie)[ -](?:dish(?:es)?|bowls?|plates?|platters?)\b|\b(?:nudel|pasta|suppen|soep)-?(?:teller|schale|schussel|bord|kom|tallrik|tallerken)[a-z]*/g;

/** What one may put in, said behind 'if': 'if using potatoes, add those', 'apples (and potatoes if using)'. */
const IF_USED =
  /\bif (?:you(?:'re| are)? )?(?:using|adding) ((?:[a-z-]+ ){0,2}[a-z-]+)(?=,)|\band ((?:[a-z-]+ ){0,1}[a-z-]+),? if (?:you(?:'re| are)? )?(?:using|adding)\b(?= ?[).,])/;

/** Eaten over or beside a dish by the spoon. */
const SWEET: ReadonlySet<string> = new Set([
  'sugar or syrup',
  'jam or sweet spread',
  'chocolate',
  'cake, cookies or sweets',
]);
/** A sweet is known by its own name: the sugar of a batter is no syrup at the table. */
const SWEET_NAMES =
  /\b(?:honey|syrup|sugar|agave|molasses|jam|jelly|marmalade|compote|preserves|chutney|apple ?sauce|caramel|chocolate|marshmallow|sprinkles|cookie|(?:chilli|chili) sauce)/g;

/** Baked sweets that a page may make itself, and words of making them. */
const BAKED_SWEET = /\b(?:biscuit|cookie|shortbread|brownie|meringue|wafer|cake|sponge)/;
const MAKES = /\b(?:for the|make|shape|roll|bak(?:e|ed|ing)|dough|tin|oven)\b/;

/** 'With a biscuit alongside', of biscuits that another sentence bakes: their lines are counted. */
function isBakedHere(beside: string, sentence: string, sentences: readonly string[]): boolean {
  const name = BAKED_SWEET.exec(beside)?.[0];
  const makes = (other: string): boolean => other.includes(name ?? '') && MAKES.test(other);
  return name !== undefined && sentences.some((other) => other !== sentence && makes(other));
}

/** Sweets by the spoon of which there is always more: what is named with one of these words is not what is in the batter. */
const MORE_OF_IT = /\b(?:real|pure|extra|more|additional|warm(?:ed)?) (?:pure )?$/;

/** Whether a sweet of the table is another one than the listed: 'serve with real maple syrup'. */
const isAnother = (beside: string, sweet: string): boolean => {
  const before = beside.slice(0, beside.indexOf(sweet)).replace(/\b(?:maple|golden|runny)\s$/, '');
  return /syrup|honey|agave/.test(sweet) && MORE_OF_IT.test(before);
};

/** Whether one sweet of each kind among the names passes: 'honey or syrup' is a choice, marshmallows are another thing. */
const everyKind = (sweets: readonly string[], passes: (sweet: string) => boolean): boolean =>
  sweets.every((sweet) =>
    sweets.some((other) => kindOf(other)?.kind === kindOf(sweet)?.kind && passes(other)),
  );

/** What a recipe calls its own: its title, and its lines as they stand. */
export interface OwnWords {
  title: string;
  lines: readonly string[];
}

const NO_WORDS: OwnWords = { title: '', lines: [] };

/** Behind the name of a food: another food that is made of it. */
const MADE_OF_IT = '(?![ -]?(?:wine|vinegar|flour|paper|milk|bran|starch|seasoning|powder|crumb))';

/** Whether what is served is the dish's own: cornmeal that its line calls polenta, 'the rolls' of 'Summer rolls'. */
function isOfTheDish(beside: string, { title, lines }: OwnWords): boolean {
  const word = kindWord(beside);
  if (word === null || new RegExp(`\\b(?:more|extra|additional) ${word}`).test(beside))
    return false;
  const named = new RegExp(`\\b${word}${MADE_OF_IT}\\b`);
  const isOnLine = lines.some((line) => named.test(plainText(line)));
  return isOnLine || (named.test(plainText(title)) && new RegExp(`\\bthe ${word}\\b`).test(beside));
}

const isPlateful = (kind: string, text: string): boolean =>
  STARCHY.has(kind) &&
  !SWEET_CHIPS.test(text) &&
  (kind !== 'potatoes or starchy vegetable' || POTATO.test(text));

/** The starchy or sweet kind that the text serves the dish with, its row with the span of one serving. */
function servedKind(text: string, foreign: boolean): Omit<MissingLine, 'key' | 'text'> | null {
  const said = text.replace(VESSEL, 'bowl');
  const here = SERVED_WITH.exec(said)?.[1];
  const elsewhere = foreign ? SERVED_ELSEWHERE.exec(said)?.slice(1).join(' ') : undefined;
  const beside = here ?? elsewhere;
  const kind = beside === undefined ? null : kindOf(beside);
  if (beside === undefined || kind === null) return null;
  const isSweet = SWEET.has(kind.kind) && AT_TABLE.test(said) && !SUGAR_FREE.test(beside);
  if (!isSweet && !isPlateful(kind.kind, beside)) return null;
  return {
    why: `to be eaten with ${kind.kind}, which no line counts`,
    kind: kind.kind,
    netCarbsG: between(kind.beside ?? times(kind.serving, kind.per100)),
  };
}

/** Starch by the plateful that the method takes only 'if using'; its row with the span of one serving. */
function kindIfUsed(text: string): Omit<MissingLine, 'key' | 'text'> | null {
  const used = IF_USED.exec(text)?.slice(1).find(Boolean);
  const last = used?.split(' ').at(-1);
  const kind = last === undefined ? null : kindOf(last);
  if (last === undefined || kind === null || !isPlateful(kind.kind, last)) return null;
  return {
    why: `the method has ${last} in it if one likes, and no line counts them`,
    kind: kind.kind,
    netCarbsG: between(kind.beside ?? times(kind.serving, kind.per100)),
  };
}

/** 'Beef stew meat, served over rice': the rice that no line counts. */
export function servedWith(ingredient: Ingredient, counted: readonly Food[]): MissingLine | null {
  const { line, key } = ingredient;
  const served = servedKind(plainText(line.text), false);
  if (served === null || counted.some((food) => kindOf(food.name)?.kind === served.kind))
    return null;
  return { key, text: line.text, ...served };
}

/**
 * 'Serve over rice' or 'if using potatoes, add those' in a sentence of the method, where no line is of
 * that kind; by choice, so nothing of it has to be added. The first such sentence only.
 */
export function servedByMethod(
  sentences: readonly string[],
  lines: readonly string[],
  key: string,
  own: OwnWords = NO_WORDS,
): MissingLine | null {
  const kinds = new Set(lines.map((line) => kindOf(line)?.kind));
  const isCounted = ({ kind }: Pick<MissingLine, 'kind'>, sentence: string): boolean => {
    const beside = SERVED_WITH.exec(sentence)?.[1] ?? sentence;
    if (kind === 'cake, cookies or sweets' && isBakedHere(beside, sentence, sentences)) return true;
    const sweets = SWEET.has(kind ?? '') ? (beside.match(SWEET_NAMES) ?? []) : [];
    if (sweets.some((sweet) => isAnother(beside, sweet))) return false;
    if (sweets.length > 0)
      return everyKind(sweets, (sweet) =>
        [...lines, ...own.lines].some((line) => plainText(line).includes(sweet)),
      );
    return kinds.has(kind ?? undefined) || isOfTheDish(beside, own);
  };
  for (const sentence of sentences) {
    const served =
      (MAY_BE.test(sentence) ? null : servedKind(sentence, true)) ?? kindIfUsed(sentence);
    if (served === null || isCounted(served, sentence)) continue;
    if (served.kind === 'chips or fries' && kinds.has('potatoes or starchy vegetable')) continue;
    const text = `${served.kind}: “${sentence.trim().slice(0, 80)}”`;
    return { key, text, ...served, beside: true };
  }
  return null;
}
