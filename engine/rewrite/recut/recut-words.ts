/** What is said in English of more pieces or portions, and how a smaller piece is called. */
/** Servings of the page, and of the way the recipe is reworked. */
export interface Servings {
  page: number;
  now: number;
  /** Whether they are plates of a savoury dish, which something beside it fills up. */
  plates?: boolean;
  /** Whether one has protein enough for a meal, or may have, as some of it is not known. */
  filling?: boolean;
  /** Share of the page's mass that is left of the whole dish. */
  left?: number;
  /** kcal of a serving that is a lighter meal than the page's; null where it is none. */
  lightKcal?: number | null;
  /** Whether the page states no number, so that its own is a guess. */
  unstated?: boolean;
  /** What is cut into pieces, by the last such word of the title: 'cheesecake'. */
  whole?: string | undefined;
  /** Pieces of which a serving is several. */
  made?: { count: number; noun: string } | null;
}

export const ENGLISH = {
  pieces: 'Make {now} {pieces} instead of {was}, each {size}; smaller ones are done sooner.',
  filled: 'Fill {now} instead of {was}, with less in each; smaller ones are done sooner.',
  lots: 'Fill {now} instead of {was}, in two lots or with a second tin, with less in each; smaller ones are done sooner.',
  twoTins: 'They take two lots or a second tin.',
  share: 'A serving is {each} of the {made} {pieces}.',
  portions: 'This makes {now} portions instead of {was}.',
  // 50 g of lettuce or spinach have 0.6 to 0.7 g (USDA SR); the advice is common practice, no source.
  beside:
    'Serve green leaves with it to fill the plate (a handful has under 1 g net carbs); if it is the whole meal, add some protein too.',
  leaves: 'Serve green leaves with it to fill the plate (a handful has under 1 g net carbs).',
  lighter:
    'About {kcal} kcal a serving, a lighter meal than before: more of the protein or fat in it fills, with hardly any net carbs.',
  cut: 'Cut {whole} into {now} pieces.',
  slices: 'Cut {whole} into {now} slices instead of {was}, each {size}.',
  single: 'Make {now} in all; one is a serving.',
  each: 'Each is {size}; smaller ones are done sooner.',
  thinner:
    'Before you cut it, make each roll of dough longer and thinner, so that its slices do not get flat.',
  halves:
    'Before you cut it, cut each roll of dough across in two and roll each half as long as it was, so that its slices do not get flat.',
  why: 'All figures are for one of {now}.',
  less: 'There is less on the plate than on the page.',
};

/** Words for what a smaller piece is of the page's, by the share of it from which they hold. */
const SIZES: readonly (readonly [number, string])[] = [
  [0.85, 'a little smaller'],
  [0.78, 'about four fifths of the size'],
  [0.71, 'about three quarters of the size'],
  [0.58, 'about two thirds of the size'],
  [0.42, 'about half the size'],
  [0, 'much smaller'],
];

const sizeText = ({ page, now }: Servings): string =>
  SIZES.find(([from]) => page / now >= from)?.[1] ?? 'smaller';

/** How many whole pieces a serving is; null where it is none. */
export function piecesEach({ now, made = null }: Servings): number | null {
  const isShared = made !== null && made.count >= now && made.count % now === 0;
  return isShared ? made.count / now : null;
}

/** 'instead of 22', where the page says no number. */
const INSTEAD =
  /,?\s(?:instead of|statt|au lieu de|in plaats van|en lugar de|en vez de|invece di|al posto di|em vez de|i stället för|i stedet for) \{was\}(?:, each \{size\})?/;

const WHOLE =
  /\b(?:cheese|short|ginger|pan)?(?:cakes?|breads?|loaf|loaves|pies?|tarts?|brownies|blondies|bars|flan|fudge|fondant)\b/gi;

const lastWhole = (text: string): string | undefined => text.match(WHOLE)?.at(-1)?.toLowerCase();

/** What of a title is cut into pieces: its last word for a bake, before 'with' what else there is. */
export const wholeIn = (title: string): string | undefined =>
  lastWhole(title.split(/\b(?:with|topped)\b|[(:–—]/i)[0] ?? '') ?? lastWhole(title);

export const filled = (text: string, servings: Servings): string =>
  (servings.unstated === true ? text.replace(INSTEAD, '') : text)
    .replace('{whole}', servings.whole === undefined ? 'it' : `the ${servings.whole}`)
    .replace('{each}', String(piecesEach(servings) ?? 1))
    .replace('{made}', String(servings.made?.count ?? ''))
    .replace('{pieces}', servings.made?.noun ?? 'pieces')
    .replace('{now}', String(servings.now))
    .replace('{was}', String(Math.round(servings.page * 10) / 10))
    .replace('{size}', sizeText(servings));
