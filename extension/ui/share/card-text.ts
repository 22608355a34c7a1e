/** What a picture card says, before it is drawn. */
import type { Adaptation, Nutrient } from '../../../engine/model.ts';
import { amount, digitsOf, rangeText, short, webAddress } from '../figures/format.ts';
import { portionNoun } from '../words/portion.ts';
import { type MessageKey, say, sayCount } from '../words/say.ts';

export interface CardText {
  title: string;
  /** 'One of 12 slices has 14.8 g net carbs (13–17 g)' */
  now: string;
  /** 'as the page has it, one of 8: 29 g', or null when it is not known. */
  was: string | null;
  /** Figures of a serving: name, now, before. */
  figures: { name: string; now: string; was: string }[];
  /** What bounds the figures: lines that were not counted. */
  uncounted: string | null;
  credit: string;
  estimates: string;
}

const ROWS: readonly (readonly [Nutrient, MessageKey, 'g' | 'kcal'])[] = [
  ['energyKcal', 'energy', 'kcal'],
  ['fiberG', 'cardFibre', 'g'],
  ['proteinG', 'protein', 'g'],
  ['fatG', 'fat', 'g'],
  ['carbohydrateG', 'carbohydrate', 'g'],
];

function figureRows({ before, after }: Adaptation): CardText['figures'] {
  return ROWS.map(([nutrient, word, unit]) => {
    const show = (value: { best: number } | null): string =>
      value === null ? say('notKnown') : `${digitsOf(value.best, unit === 'g' ? 1 : 0)} ${unit}`;
    return {
      name: say(word),
      now: show(after.perServing[nutrient]),
      was: say('cardFigureWas', show(before.perServing[nutrient])),
    };
  });
}

function creditOf({ recipe }: Adaptation): string {
  const address = webAddress(recipe.url);
  const from = address === null ? [] : [new URL(address).host];
  const by = recipe.author === null ? [] : [recipe.author];
  return say('cardCredit', [`“${recipe.title}”`, ...by, ...from].join(', '));
}

export function cardText(adaptation: Adaptation): CardText {
  const { recipe, before, after } = adaptation;
  const now = after.perServing.netCarbsG;
  const was = before.perServing.netCarbsG;
  const range = rangeText(now);
  const count = after.servings;
  const piece = say('oneOf', short(count), portionNoun(adaptation, count));
  return {
    title: recipe.title,
    now: now
      ? say('cardNow', piece, amount(now.best), range === '' ? '' : ` (${range})`)
      : say('cardNotKnown', piece),
    was: was && say('cardWas', short(before.servings), amount(was.best)),
    figures: figureRows(adaptation),
    uncounted:
      after.uncounted.length === 0 ? null : sayCount('linesNotCounted', after.uncounted.length),
    credit: creditOf(adaptation),
    estimates: say('estimatesOnly'),
  };
}
