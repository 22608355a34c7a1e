/** Where a food's word in a method is a verb, or part of the name of another thing. */
import { hasTag } from '../../foods/tags.ts';
import type { Mention } from '../naming/mention.ts';
import { isNamedIn, literal, START } from './name-patterns.ts';

/** 'no dry flour is left': what is looked at, not an amount. */
const SEEN_BEFORE =
  /(?:lightly|generously|heavily|well|\bdry|\braw|\bno (?:visible |remaining |more |loose )?|excess|cinnamon|enough|too much|streaks? of|traces? of|pockets? of|patches of|specks? of) $/i;
/** 'Add dry pasta': how it is bought. */
const AS_BOUGHT = /\b(?:dry|raw) $/i;
const isBoiledDry = ({ match }: Mention['ingredient']): boolean =>
  hasTag(match?.foodId ?? '', 'pasta') || hasTag(match?.foodId ?? '', 'rice-or-grain');

/** Food words that are verbs as well. */
const VERBS =
  /^(?:flour|butter|oil|cream|salt|sugar|water|milk|ice|mix|blend|toast|spread|dip|dress|mash|zest|juice|cut|dust|crumb|sauce|batter|season|top|stock|pepper|bread|peel|rice|chip|steam|dressing)s?$/i;
const DETERMINER = '(?:the|a|an|your|each|both|all|it|them|some|every)';
/** 'a little at a time' is no thing that is floured. */
const VERB_AFTER = new RegExp(
  `^\\s+${DETERMINER}\\b(?!\\s+(?:little|bit|time|third|half|quarter|few|spoon\\w*|tablespoon|cup|handful))`,
  'i',
);
/** What stands before a verb: the start of a sentence, or another verb. */
const VERB_BEFORE =
  /(?:^|[.;:!?)]\s+|\n\s*|\b(?:and|then|to|or|lightly|gently|grease|well|generously|next|now|just|meanwhile)\s+|,\s+(?:then\s+)?)$/i;
/** Prepositions after a verb that has its object elsewhere: 'flour both sides', 'butter and flour a tin'. */
const TIN_AFTER =
  /^\s+(?:the |a |an |your |each |both |two |\w+ )?(?:work|surface|board|counter|bench|table|tins?|pans?|dish|trays?|mould|mold|ramekins?|baking|inside|sides?|bottom|bowl|hands?|loaf|cake|bundt|muffin|sheets?|parchment|paper|rolling|nonstick|non-stick|countertop|worktop)\b/i;
/** Dusting of tins and hands, with flour from the bag. */
const DUSTS =
  /\b(?:dust\w*|sprays?|sprayed|sprinkl\w*)\b[^.;,(]{0,40}\bwith (?:a little |some |more )?$/i;
const DUSTS_TIN = /\b(?:dust\w*|sprays?|sprayed)\b[^.;,(]{0,40}\bwith (?:a little |some |more )?$/i;
/** 'sprinkle flour all over the tray'. */
const ON_TIN =
  /^\s+(?:all )?(?:over|on|onto|around) (?:the |a |your )?(?:tray|pan|tin|work|surface|board|counter)/i;
/** 'rub butter on the bottoms and sides, and then flour'. */
const GREASED_FIRST =
  /\b(?:pans?|tins?|bottoms?|sides?|moulds?|molds?)\b[^.;]{0,20}\b(?:and )?then $/i;
const GREASES = /\b(?:grease|butter|oil|spray|line|dust)(?:\s+(?:and|or|&)|,)\s+(?:lightly\s+)?$/i;

/** The dish of that name: 'assemble the lasagna'. */
const DISH =
  /\b(?:assemble|bake|cut|slice|serve|cover|uncover|remove|rest|cool|layer)\b[^.,;]{0,12}$|\b(?:let|of) (?:the |your )?$/i;

/** Things that have a food in their names: they stay what they are called. */
const COMPOUND =
  /^[\s-]+(?:cakes?|breads?|pies?|muffins?|soups?|cookers?|packets?|packages?|bags?|box(?:es)?|skins?|peels?|bakes?|butter|cutters?|mashers?|machines?|press(?:es)?|makers?|mould|mold|wrappers?|cookies?|biscuits?|dough|batter|sauces?|salads?|casseroles?|pudding|tarts?|crumbles?|rolls?|buns?|balls?|burgers?|patties|crusts?|bars?|brownies|bowls?|dishes|dish|pans?|pots?|filling|toppings?|ganache|frosting|icing|glaze|flavou?r(?:ed|ing)?|water|stock|broth|vinegar|oil|milk|paper|noodles? soup|syrup|spoons?|server|ricer|spinner|towel|chips)\b/i;

/** 'the hard shell tortilla' beside soft ones: a shell of its own. */
const SHELL = /\b(?:hard|crisp|crispy|crunchy)[ -]?shell(?:ed)?\s+$/i;
const isShell = (before: string, word: string, { item }: Mention['ingredient']): boolean =>
  SHELL.test(before) &&
  /^(?:tortilla|taco|wrap)s?$/i.test(word) &&
  !/\b(?:hard|crisp|crunchy|shell)/i.test(item.name);

/** True when a name in the text is put to use as a verb, or is part of another word. */
export function isOtherUse(
  text: string,
  start: number,
  end: number,
  { ingredient, newName, items }: Mention,
): boolean {
  const before = text.slice(0, start);
  const after = text.slice(end);
  const word = text.slice(start, end).trim();
  const seen = SEEN_BEFORE.test(before) && !(AS_BOUGHT.test(before) && isBoiledDry(ingredient));
  if (/^\s+(?:cooking\s+)?water\b/i.test(after) || seen) return true;
  if (VERBS.test(word) && VERB_BEFORE.test(before) && VERB_AFTER.test(after)) return true;
  if (/^(?:flour|butter|oil)$/i.test(word) && (TIN_AFTER.test(after) || ON_TIN.test(after)))
    return true;
  if (/^(?:flour|butter|oil)$/i.test(word) && (GREASES.test(before) || GREASED_FIRST.test(before)))
    return true;
  if (isShell(before, word, ingredient)) return true;
  const stays =
    newName === 'flours' || items.some(({ foodId }) => foodId === ingredient.match?.foodId);
  if (
    /(?:flours?|cocoa|(?:powdered|icing|confectioner\S*) sugar)$/i.test(word) &&
    stays &&
    DUSTS.test(before)
  )
    return true;
  if (/sugar$/i.test(word) && stays && DUSTS_TIN.test(before)) return true;
  if (/^lasagn[ae]s?$/i.test(word) && DISH.test(before)) return true;
  const compound = COMPOUND.exec(after)?.[0].trim().toLowerCase();
  if (compound === undefined || newName === null) return false;
  // 'Pie crust' of 'pie crust' is the name itself; 'bread slices' are slices of it.
  return !ingredient.item.name.toLowerCase().includes(`${word.toLowerCase()} ${compound}`);
}

/** 'konjac rice' is not renamed once more for its 'rice'. */
export function isNamedAlready(
  { newName, changed }: Mention,
  text: string,
  end: number,
  word: string,
): boolean {
  if (!changed || newName === null || word.length > newName.length) return false;
  // A page's own 'the flours' takes them.
  if (newName === 'flours') return false;
  return text.slice(0, end).toLowerCase().endsWith(newName.toLowerCase());
}

/** Talk of what is usual, or of what else one may take. */
const REMARK =
  /\b(?:traditionally|typically|substitut\w+|swap(?:ped)?|instead of|in place of)\b|\byou (?:can|could|may) (?:also )?use\b|^\W*if (?:you (?:want|use|prefer|like|would|don)|you[’']re|using)\b/i;

/** A step about another way: 'If you want to make rice from scratch, start with …'. */
const OTHER_WAY = /^\W*if you (?:want to make|would like to make|prefer|don[’']t have|use)\b/i;

/** Whether a sentence, or its step, only talks of an ingredient: 'pasta is traditionally used, but rice works as well'. */
export function isRemark(mention: Mention, sentence: string, text: string): boolean {
  if (!mention.changed) return false;
  if (OTHER_WAY.test(text)) return true;
  // A page's footnotes may stand in its sentences: 'SiftUse any sieve for this. the flour into a bowl'.
  const pieces = sentence.split(/(?<=[.!?])\s+/).filter((piece) => isNamedIn(piece, mention));
  return pieces.length === 0 ? REMARK.test(sentence) : pieces.every((piece) => REMARK.test(piece));
}

const OF_CHOICE =
  '(?:any |other |another |your |whatever )?(?:[\\p{L}-]+ ){0,3}?(?:of (?:your )?(?:choice|choosing)|you (?:like|prefer|have|want)|your favou?rite [\\p{L}-]+)';

/** The text without 'or pasta of choice' behind a food that another stands in for. */
function withoutFreeChoice(text: string, mentions: readonly Mention[]): string {
  const names = mentions
    .filter(
      ({ changed, items, ingredient }) =>
        changed && !items.some(({ foodId }) => foodId === ingredient.match?.foodId),
    )
    .flatMap(({ names: own }) => own);
  if (names.length === 0 || !/\b(?:choice|choosing|you|favou?rite)\b/i.test(text)) return text;
  const behind = new RegExp(
    `(${START}(?:${names.map(literal).join('|')})(?:e?s)?)(?:,? or ${OF_CHOICE}| \\(or ${OF_CHOICE}\\)),?(?= |[.;:]|$)`,
    'giu',
  );
  return text.replace(behind, '$1');
}

/** The text without '(or honey)' behind an ingredient that is another one now. */
export function withoutChoices(text: string, mentions: readonly Mention[]): string {
  const others = mentions
    .filter(({ changed }) => changed)
    .flatMap(({ ingredient }) =>
      ingredient.item.alternatives.map(({ name }) => name.toLowerCase()),
    );
  return withoutFreeChoice(text, mentions).replace(
    /\s*\(or ([^()]{3,40})\)/gi,
    (whole, choice: string) =>
      others.some((name) => choice.toLowerCase().endsWith(name)) ? '' : whole,
  );
}
