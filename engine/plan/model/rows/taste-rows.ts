/** Rows on sweetness, doses of sweeteners and fibre, and taste. */
import { hasTag } from '../../../foods/tags.ts';
import type { Food } from '../../../model.ts';
import type { Dish, Section } from '../../dish/dish.ts';
import * as figure from '../../dish/food-figures.ts';
import { isAllCrisp } from '../../dish/sugars/crisp-sugar.ts';
import { mentionsAny } from '../../dish/word-search.ts';
import { acidity } from '../../kitchen/soda-acids.ts';
import type { Row } from '../../solver/programme.ts';
import { type Attribute, type Linear, plus, scaled } from '../expressions.ts';
import { type Builder, inBase, within } from '../row-builder.ts';
import { isHardlySweet, isSavourySection, isSeasonedSweet } from '../seasoning-sugar.ts';
import { idIn } from '../variable-ids.ts';

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

/** An attribute of a section's sweeteners. */
export const ofSweeteners = (section: Section, attribute: (food: Food) => number): Attribute =>
  within(section, (c) => (c.role === 'sweetness' ? attribute(c.food) : 0));

export const isIntense = (food: Food): boolean => figure.sweetness(food) > 10;

/** Sweetness and bulk of a section's sugar, and how much of single sweeteners it bears. */
export function sweetRows(b: Builder, section: Section): void {
  const sweet = b.sum(ofSweeteners(section, figure.sweetness));
  const all = b.sum((c) => (c.role === 'sweetness' ? figure.sweetness(c.food) : 0)).constant;
  const weight = all > 0 ? sweet.constant / all : 1;
  if (sweet.constant > 0) sweetnessRows(b, section, sweet, weight);
  b.cap(
    idIn(section, 'intense-sweet'),
    b.sum(ofSweeteners(section, (f) => (isIntense(f) ? figure.sweetness(f) : 0))),
    INTENSE_SHARE * sweet.constant,
    b.inSection(section, 'More intense sweetener would leave an aftertaste.'),
  );
  bulkRows(b, section);
  alluloseRow(b, section);
  shareOfSweetRows(b, section);
  yeastPolyolRow(b, section);
  erythritolRows(b, section, weight);
  browningRow(b, section, weight);
}

/**
 * Closeness that all of the sweetness is worth, and the share of it that may go: a dressing, glaze or stew
 * with half of its sugar is still itself, a cake or cream is not (common practice, no source).
 */
const LESS_SWEET = {
  sweet: { cost: 0.6, most: 0.15 },
  savoury: { cost: 0.14, most: 0.45 },
  // A spoon of sugar that rounds a sauce off is hardly told from half of one; more goes only with a stand-in.
  seasoning: { cost: 0.03, most: 0.35 },
  // Cream whips without sugar, and what it lies on is sweet; an icing of fresh cheese needs some.
  whipped: { cost: 0.1, most: 0.55 },
  cheese: { cost: 0.1, most: 0.2 },
} as const;

/** The first of it is hardly told, and liked as well within a week (common practice, no source). */
const HARDLY_TOLD = { cost: 0.15, most: 0.15, seasoning: 0.03 } as const;

/** Sugar that the fruit of a bake brings of its own, g: beside it less of the sugar is missed. */
const sweetOfFruit = ({ main, parts }: Dish): number =>
  parts.reduce((sum, { role, grams, food }) => {
    const counts = main.dough && role === 'fruit';
    return sum + (counts ? (grams * (food.per100g.sugarsG ?? 0)) / 100 : 0);
  }, 0);

/** An icing of fresh cheese, which lies on what is sweet. */
const isCheeseIcing = ({ id, title }: Section, { main, parts }: Dish): boolean =>
  main.dough &&
  id !== main.id &&
  mentionsAny(['frosting', 'icing'], title ?? '') &&
  parts.some(({ section, food }) => section === id && hasTag(food, 'filling-fat'));

/** How a part bears less sweetness. */
function sweetKind(section: Section, dish: Dish): keyof typeof LESS_SWEET {
  if (isHardlySweet(section, dish)) return 'seasoning';
  if (mentionsAny(['@whipped-cream'], section.title ?? '')) return 'whipped';
  if (isCheeseIcing(section, dish)) return 'cheese';
  return isSavourySection(section) ? 'savoury' : 'sweet';
}

/** As sweet as wished; a less sweet result costs closeness. */
function sweetnessRows(b: Builder, section: Section, sweet: Linear, weight: number): void {
  const per = scaled(sweet, 1 / (sweet.constant + weight * sweetOfFruit(b.dish)));
  const lessSweet = idIn(section, 'less-sweet');
  const kind = sweetKind(section, b.dish);
  const { cost, most } = LESS_SWEET[kind];
  const little = idIn(section, 'little-less-sweet');
  const told = kind === 'seasoning' ? HARDLY_TOLD.seasoning : HARDLY_TOLD.cost;
  b.variable(little, told * weight, 'sweetness', HARDLY_TOLD.most);
  b.variable(lessSweet, cost * weight, 'sweetness', most);
  const least: Row = {
    id: idIn(section, 'sweetness-least'),
    min: b.dish.goals.sweetness - 1,
    terms: [...per.terms, [little, 1], [lessSweet, 1]],
  };
  b.row(
    least,
    isSeasonedSweet(section, b.dish)
      ? null
      : b.inSection(section, 'Sweetness has to match; a less sweet result would allow more.'),
  );
  b.row({ id: idIn(section, 'sweetness-most'), max: 0.03, terms: per.terms }, null);
}

/** Mass of the sweeteners that counts as bulk, g of sugar. */
const bulkOf = (b: Builder, section: Section): Linear => b.sum(ofSweeteners(section, figure.bulk));

/** Bulk in place of the sugar's. */
function bulkRows(b: Builder, section: Section): void {
  const mass = bulkOf(b, section);
  const isFoam = FOAM.test(`${b.dish.title} ${section.title ?? ''}`);
  const { bulkFloor } = section.limits;
  const floor = isFoam ? Math.max(FOAM_BULK, bulkFloor) : bulkFloor;
  if (floor <= 0 || mass.constant <= 0) return;
  const share = scaled(mass, 1 / mass.constant);
  const least = b.inSection(section, 'Sugar is also bulk here, so something must take its place.');
  b.floor(idIn(section, 'sweet-bulk'), share, floor, least);
  const most = b.inSection(section, 'More sweetener by mass would make it heavy.');
  b.cap(idIn(section, 'sweet-bulk-most'), share, BULK_MOST, most);
}

/** Soda without acid, share of the flour base, at which allulose turns a pale crumb brown and tacky (common practice, no source). */
const ALKALINE = 0.02;
const ALLULOSE_IN_ALKALI = 0.5;

/** Whether a dough is alkaline, and pale enough for it to be seen. */
function isPaleAndAlkaline({ dish }: Builder, { id, dough, flourBase }: Section): boolean {
  const own = dish.parts.filter((part) => part.section === id);
  const soda = own.reduce((sum, part) => {
    const brought = part.food.id === 'baking-soda' ? 1 : 0;
    return sum + part.grams * (brought - acidity(part));
  }, 0);
  const isDark = own.some(({ food }) => hasTag(food, 'chocolate') || food.id === 'molasses');
  return dough && !isDark && soda >= ALKALINE * flourBase;
}

function alluloseRow(b: Builder, section: Section): void {
  const most = isPaleAndAlkaline(b, section) ? ALLULOSE_IN_ALKALI : 1;
  const alluloseShare = Math.min(section.limits.alluloseShare, most);
  if (alluloseShare >= 1) return;
  const per = Math.max(bulkOf(b, section).constant, 1);
  b.cap(
    idIn(section, 'allulose-share'),
    b.sum(ofSweeteners(section, alluloseIn), per / 100),
    alluloseShare * 100,
    b.inSection(section, 'More allulose would keep it from turning crisp.'),
  );
}

/** g of a kind of sweetener in a gram of a food. */
const SWEET_KINDS = {
  erythritol: erythritolIn,
  inulin: (food: Food): number => (hasTag(food, 'inulin') ? 1 : 0),
  maltitol: (food: Food): number => (food.per100g.polyolsG?.maltitol ?? 0) / 100,
} as const;

/** No single sweetener beyond the share of the bulk that panels still took. */
function shareOfSweetRows(b: Builder, section: Section): void {
  const mass = bulkOf(b, section);
  if (mass.constant <= 0) return;
  for (const [kind, most] of Object.entries(section.limits.sweetShares))
    b.cap(
      idIn(section, `${kind}-of-sweet`),
      b.sum(ofSweeteners(section, SWEET_KINDS[kind as keyof typeof SWEET_KINDS]), mass.constant),
      most,
      b.inSection(section, `More ${kind} in place of the sugar would be told at once.`),
    );
}

/** Xylitol holds yeast back, percent of the flour (Sahin et al. 2018: most of five polyols; level own choice). */
const XYLITOL_IN_YEAST_PCT = 4;

function yeastPolyolRow(b: Builder, section: Section): void {
  if (!section.limits.yeast || !section.dough) return;
  const xylitol = ofSweeteners(section, (f) => (f.per100g.polyolsG?.xylitol ?? 0) / 100);
  b.cap(
    idIn(section, 'xylitol-in-yeast'),
    b.sum(xylitol, section.flourBase / 100),
    XYLITOL_IN_YEAST_PCT,
    b.inSection(section, 'More xylitol would hold the yeast back.'),
  );
}

/** Nuts in a crust of sugar are to be grainy, and what sets hard or is strewn does not tell. */
const isToBeGrainy = ({ id, title }: Section, dish: Dish): boolean =>
  mentionsAny(['@candied-nuts'], `${dish.title}\n${title ?? ''}`) || isAllCrisp(id, dish);

/** Erythritol against the flour or the mass, and against the other sweeteners. */
function erythritolRows(b: Builder, section: Section, weight: number): void {
  if (isToBeGrainy(section, b.dish)) return;
  const { limits } = section;
  const mass = bulkOf(b, section);
  const per = Math.max(mass.constant, 1);
  const hasFlour = section.dough || limits.kind === 'dish';
  const total = section.dough ? section.flourBase : section.mass;
  const erythritol = ofSweeteners(section, erythritolIn);
  b.cap(
    idIn(section, 'erythritol-share'),
    b.sum(erythritol, Math.max(total, 1) / 100),
    hasFlour ? limits.erythritolPct : Math.min(limits.erythritolPct, ERYTHRITOL_OF_MASS),
    b.inSection(section, 'More erythritol would turn gritty.'),
  );
  if (limits.erythritolOfSweet >= 1) return;
  const over = plus(b.sum(erythritol, per), scaled(mass, 1 / per), -limits.erythritolOfSweet);
  const free = Math.max(0, -over.constant);
  b.deviation(idIn(section, 'gritty'), over, GRITTY_COST * weight, 'sweetness', free, false);
}

function browningRow(b: Builder, section: Section, weight: number): void {
  const mass = bulkOf(b, section);
  if (!section.dough || mass.constant <= 0) return;
  const colour = b.sum(
    ofSweeteners(section, (f) => browning(f) * figure.bulk(f)),
    Math.max(mass.constant, 1),
  );
  b.deviation(idIn(section, 'browning-shift'), colour, BROWNING_COST * weight, 'flavour');
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
