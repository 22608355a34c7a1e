/** Rows on how much a plan may change and buy: few flours, few sweeteners, few special products. */
import { hasTag } from '../../../foods/tags.ts';
import type { Family, Food } from '../../../model.ts';
import type { Part } from '../../dish/dish.ts';
import { availabilityOf } from '../../dish/shopping.ts';
import type { Builder } from '../row-builder.ts';
import type { Bought, Counted, Use } from './count-rows.ts';
import { atMost, type Light, lightRows } from './light-rows.ts';

/** Most new foods of a kind in one dish: what a cook will buy and weigh. Own choice. */
const MOST = { flours: 2, sweeteners: 2, specialities: 4 } as const;

/** Most stand-ins for one line: two half measures are more work than one whole. Own choice. */
const MOST_A_LINE = 1;

/** The same for flours of doughs that one stand-in alone leaves without strength or softness. Own choice. */
const MOST_OF_STRONG = 2;
const STRONG: ReadonlySet<Family> = new Set(['lean-yeast-bread', 'tortilla', 'fresh-pasta']);

/** Less of a sugar goes together with a stand-in for part of it. */
const bringsFood = ({ choices }: Use): boolean =>
  choices.some(({ candidate }) => candidate !== null && candidate.to.length > 0);

function mostFor({ dish }: Builder, part: Part): number {
  const family = dish.sections[part.section]?.family;
  return part.base && family !== undefined && STRONG.has(family) ? MOST_OF_STRONG : MOST_A_LINE;
}

const isFlour = (food: Food): boolean =>
  hasTag(food, 'flour-like') || hasTag(food, 'nut-flour') || hasTag(food, 'starch');

/** Few kinds of everything; of a light plan, few changes as well. What an accepted change asks for comes on top. */
export function shoppingRows(
  b: Builder,
  { foods, lines, uses }: Counted,
  asked: (food: Food) => boolean,
  light: Light | null,
): void {
  const bought = (of: (food: Food) => boolean): Bought[] =>
    foods.filter(({ food }) => of(food) && !asked(food));
  const where = (food: Food) => availabilityOf(food, b.dish.goals);
  atMost(
    b,
    'new-flours',
    MOST.flours,
    bought((food) => isFlour(food) && where(food) !== 'cupboard'),
    `No more than ${MOST.flours} new flours, so that it can be bought and weighed out.`,
  );
  atMost(
    b,
    'new-sweeteners',
    MOST.sweeteners,
    bought((food) => hasTag(food, 'sweetener') && where(food) !== 'cupboard'),
    `No more than ${MOST.sweeteners} new sweeteners, so that it can be bought.`,
  );
  atMost(
    b,
    'new-specialities',
    MOST.specialities,
    bought((food) => where(food) === 'speciality'),
    `No more than ${MOST.specialities} special products, so that it can be bought.`,
  );
  const isAsked = ({ choices }: Use): boolean =>
    choices.some(({ candidate }) => candidate?.to.some(({ food }) => asked(food)));
  for (const { part, uses: own } of lines) {
    const counted = own.filter(
      (use) => !isAsked(use) && (part.role !== 'sweetness' || bringsFood(use)),
    );
    atMost(b, `few ${part.key}`, mostFor(b, part), counted, null);
  }
  if (light !== null && uses.length > 0)
    lightRows(
      b,
      light,
      lines,
      bought((food) => where(food) !== 'cupboard'),
    );
}
