/** Rows on sweetness, doses of sweeteners and fibre, and taste. */
import type { Food } from '../../model.ts';
import type { Section } from '../dish/dish.ts';
import * as figure from '../dish/food-figures.ts';
import { type Attribute, plus, scaled } from './expressions.ts';
import { type Builder, inBase, within } from './row-builder.ts';
import { idIn } from './variable-ids.ts';

/** Largest share of the sweetness from intense sweeteners (common practice, no source). */
const INTENSE_SHARE = 0.6;

/** How far bulk may rise above the original's sugar, share (common practice, no source). */
const BULK_MOST = 1.2;

/** Erythritol without flour to hold it turns gritty above this percent of the mass (common practice, no source). */
const ERYTHRITOL_OF_MASS = 8;

/** Closeness lost when all of the bulk sweetener is erythritol beyond the family's share. Own choice. */
const GRITTY_COST = 0.2;

/** Closeness lost when a dough browns as though its sugar were twice or none of what it was. Own choice. */
const BROWNING_COST = 0.03;

const BROWNING = { none: 0, mild: 1, strong: 1.6 } as const;

/** Egg foams that sugar holds up, and the least bulk in its place (common practice, no source). */
const FOAM = /meringue|pavlova|marshmallow|angel food/i;
const FOAM_BULK = 0.7;

/** How much a sweetener browns a crust, against sugar (own scale). */
const browning = (food: Food): number => BROWNING[figure.functionOf(food).browning];

/** g of erythritol in a gram of a food, pure or in a blend. */
export const erythritolIn = (food: Food): number => (food.per100g.polyolsG?.erythritol ?? 0) / 100;

/** g of allulose in a gram of a food. */
export const alluloseIn = (food: Food): number => (food.per100g.alluloseG ?? 0) / 100;

/** g of all polyols in a gram of a food. */
const polyolsIn = (food: Food): number =>
  Object.values(food.per100g.polyolsG ?? {}).reduce((sum, g) => sum + g, 0) / 100;

/** An attribute of a section's sweeteners. */
export const ofSweeteners = (section: Section, attribute: (food: Food) => number): Attribute =>
  within(section, (c) => (c.role === 'sweetness' ? attribute(c.food) : 0));

export const isIntense = (food: Food): boolean => figure.sweetness(food) > 10;

/** Sweetness and bulk of a section's sugar, and how much of single sweeteners it bears. */
export function sweetRows(b: Builder, section: Section): void {
  const { dish } = b;
  const id = (name: string): string => idIn(section, name);
  const said = (text: string): string => b.inSection(section, text);
  const sweet = b.sum(ofSweeteners(section, figure.sweetness));
  const all = b.sum((c) => (c.role === 'sweetness' ? figure.sweetness(c.food) : 0)).constant;
  const weight = all > 0 ? sweet.constant / all : 1;
  if (sweet.constant > 0) {
    const per = scaled(sweet, 1 / sweet.constant);
    const wanted = dish.goals.sweetness;
    b.variable(id('less-sweet'), 0.6 * weight, 'sweetness', 0.3);
    b.row(
      {
        id: id('sweetness-least'),
        min: wanted - 1,
        terms: [...per.terms, [id('less-sweet'), 1]],
      },
      said('Sweetness has to match; a less sweet result would allow more.'),
    );
    b.row({ id: id('sweetness-most'), max: 0.03, terms: per.terms }, null);
  }
  b.cap(
    id('intense-sweet'),
    b.sum(ofSweeteners(section, (f) => (isIntense(f) ? figure.sweetness(f) : 0))),
    INTENSE_SHARE * sweet.constant,
    said('More intense sweetener would leave an aftertaste.'),
  );
  bulkRows(b, section, weight);
}

/** Bulk in place of the sugar's, and the shares of allulose and erythritol in it. */
function bulkRows(b: Builder, section: Section, weight: number): void {
  const { limits } = section;
  const id = (name: string): string => idIn(section, name);
  const said = (text: string): string => b.inSection(section, text);
  const mass = b.sum(ofSweeteners(section, figure.bulk));
  const per = Math.max(mass.constant, 1);
  const foam = FOAM.test(`${b.dish.title} ${section.title ?? ''}`);
  const floor = foam ? Math.max(FOAM_BULK, limits.bulkFloor) : limits.bulkFloor;
  if (floor > 0 && mass.constant > 0) {
    const share = scaled(mass, 1 / mass.constant);
    b.floor(
      id('sweet-bulk'),
      share,
      floor,
      said('Sugar is also bulk here, so something must take its place.'),
    );
    b.cap(
      id('sweet-bulk-most'),
      share,
      BULK_MOST,
      said('More sweetener by mass would make it heavy.'),
    );
  }
  if (limits.alluloseShare < 1)
    b.cap(
      id('allulose-share'),
      b.sum(ofSweeteners(section, alluloseIn), per / 100),
      limits.alluloseShare * 100,
      said('More allulose would keep it from turning crisp.'),
    );
  const flour = section.dough || limits.kind === 'dish';
  const total = section.dough ? section.flourBase : section.mass;
  const erythritol = ofSweeteners(section, erythritolIn);
  b.cap(
    id('erythritol-share'),
    b.sum(erythritol, Math.max(total, 1) / 100),
    flour ? limits.erythritolPct : Math.min(limits.erythritolPct, ERYTHRITOL_OF_MASS),
    said('More erythritol would turn gritty.'),
  );
  if (limits.erythritolOfSweet < 1) {
    const over = plus(b.sum(erythritol, per), scaled(mass, 1 / per), -limits.erythritolOfSweet);
    b.deviation(
      id('gritty'),
      over,
      GRITTY_COST * weight,
      'sweetness',
      Math.max(0, -over.constant),
      false,
    );
  }
  if (section.dough && mass.constant > 0) {
    const colour = b.sum(
      ofSweeteners(section, (f) => browning(f) * figure.bulk(f)),
      per,
    );
    b.deviation(id('browning-shift'), colour, BROWNING_COST * weight, 'flavour');
  }
}

/** Share of the original's freezing-point depression a frozen dessert may stray by (common practice, no source). */
const FREEZING_WINDOW = [0.9, 1.1] as const;

/** How firmly a frozen dessert sets, by the freezing-point depression of its sweeteners. */
export function freezingRows(b: Builder, section: Section): void {
  if (section.family !== 'frozen-dessert') return;
  const freezing = b.sum(
    ofSweeteners(section, (f) => figure.functionOf(f).freezing ?? figure.bulk(f)),
  );
  if (freezing.constant <= 0) return;
  const share = scaled(freezing, 1 / freezing.constant);
  b.floor(
    'freezing-hard',
    share,
    FREEZING_WINDOW[0],
    'Less of these sweeteners would freeze it hard.',
  );
  b.cap(
    'freezing-soft',
    share,
    FREEZING_WINDOW[1],
    'More of these sweeteners would keep it from freezing firm.',
  );
}

/** Most of all polyols in a serving, g: what most adults bear of the mildest (Oku & Nakamura 2007; EFSA 2023). */
const POLYOLS_CAP_G = 15;

/** Amounts of sweeteners and fibre that most adults bear in one serving, counted over the whole dish. */
export function doseRows(b: Builder): void {
  const { servings } = b.dish;
  const foods = new Map<string, Food>();
  for (const c of b.choices)
    for (const ch of c.changes) if (ch.grams > 0) foods.set(ch.food.id, ch.food);
  const cap = (name: string, of: (food: Food) => number, most: number, words: string): void => {
    const dose = b.sum((c) => of(c.food) * c.eaten, servings);
    b.cap(
      `dose ${name}`,
      dose,
      most,
      `More than ${most} g of ${words} in a serving may upset the stomach.`,
    );
  };
  const brought = [...foods.values()];
  if (brought.some((f) => alluloseIn(f) > 0))
    cap(
      'allulose',
      alluloseIn,
      b.dish.foods.byId('allulose')?.function?.doseCapG ?? 15,
      'allulose',
    );
  if (brought.some((f) => polyolsIn(f) > 0))
    cap('polyols', polyolsIn, POLYOLS_CAP_G, 'sugar alcohols');
  for (const food of brought) {
    const most = food.function?.doseCapG;
    if (most === null || most === undefined || alluloseIn(food) > 0) continue;
    if (polyolsIn(food) > 0 && most >= POLYOLS_CAP_G) continue;
    cap(food.id, (f) => (f.id === food.id ? 1 : 0), most, food.name);
  }
  const fibre = b.sum((c) => ((c.food.per100g.fiberG ?? 0) / 100) * c.eaten, servings);
  b.cap(
    'fibre-dose',
    fibre,
    fibre.constant + 15,
    'More than 15 g of added fibre in a serving may upset the stomach.',
  );
}

/** Share by which a dish may get saltier at no cost, and the cost of each time as salty again. Own choice. */
const SALTIER = { free: 0.15, cost: 0.3 } as const;

/** A dish should not get much saltier by canned or cured stand-ins. */
function saltier(b: Builder): void {
  const line = b.sum((c) => ((c.food.per100g.sodiumMg ?? 0) / 100) * c.eaten, b.dish.servings);
  // Below 100 mg a serving a rise by a share says nothing.
  const from = Math.max(100, line.constant);
  const terms = line.terms.map(([v, c]): [string, number] => [v, c / from]);
  b.deviation('sodium-more', { constant: 1, terms }, SALTIER.cost, 'flavour', SALTIER.free, false);
}

/** Taste of a dish's stand-ins is in their cost; of the whole, salt is looked after. */
export function dishRows(b: Builder): void {
  if (!b.dish.main.dough) saltier(b);
}

/** Taste, and in breads energy and sodium, against the original dough. */
export function tasteRows(b: Builder, section: Section): void {
  const id = (name: string): string => idIn(section, name);
  const weight = b.weight(section);
  const flavour = b.sum(
    inBase(section, (f) => figure.functionOf(f).flavour),
    section.flourBase,
  );
  b.deviation(id('taste-shift'), flavour, 0.04 * weight, 'flavour', 0, false);
  b.deviation(
    id('taste-strong'),
    flavour,
    0.25 * weight,
    'flavour',
    Math.max(0, 0.6 - flavour.constant),
    false,
  );
  const { share } = section.limits;
  if (share !== 'YB' && share !== 'FT') return;
  const gluten = b.sum(inBase(section, figure.gluten), section.flourBase / 100);
  b.deviation(id('gluten-shift'), gluten, 0.003 * weight, 'structure');
  for (const [name, figureOf] of [
    ['energy', 'energyKcal'],
    ['sodium', 'sodiumMg'],
  ] as const) {
    const line = b.sum(within(section, (c) => ((c.food.per100g[figureOf] ?? 0) / 100) * c.eaten));
    if (line.constant > 0)
      b.deviation(
        id(`${name}-more`),
        scaled({ constant: line.constant, terms: line.terms }, 1 / line.constant),
        1.5 * weight,
        'flavour',
        0,
        false,
      );
  }
}
