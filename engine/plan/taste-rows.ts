/** Rows on sweetness, doses of sweeteners and fibre, and taste. */
import type { Food } from '../model.ts';
import { type Builder, inBase } from './builder.ts';
import * as figure from './figures.ts';
import type { Attribute, Linear } from './state.ts';

/** Largest share of the sweetness from intense sweeteners (common practice, no source). */
const INTENSE_SHARE = 0.6;

/** Sweetness and bulk of the sugar, and how much of single sweeteners it bears. */
export function sweetRows(b: Builder): void {
  const { dish } = b;
  const sweetParts =
    (attribute: (food: Food) => number): Attribute =>
    (c) =>
      c.role === 'sweetness' ? attribute(c.food) : 0;
  const sweet = b.sum(sweetParts(figure.sweetness));
  if (sweet.constant > 0) {
    const per: Linear = {
      constant: 1,
      terms: sweet.terms.map(([id, v]) => [id, v / sweet.constant]),
    };
    b.variable('less-sweet', 0.6, 'sweetness', 0.3);
    b.row(
      {
        id: 'sweetness-least',
        min: dish.goals.sweetness - 1,
        terms: [...per.terms, ['less-sweet', 1]],
      },
      'Sweetness has to match; a less sweet result would allow more.',
    );
    b.row({ id: 'sweetness-most', max: 0.03, terms: per.terms }, null);
  }
  const strong = b.sum(sweetParts((f) => (figure.sweetness(f) > 10 ? figure.sweetness(f) : 0)));
  b.cap(
    'intense-sweet',
    strong,
    INTENSE_SHARE * sweet.constant,
    'More intense sweetener would leave an aftertaste.',
  );
  const mass = b.sum(sweetParts(figure.bulk));
  const floor = dish.limits.bulkFloor;
  if (floor > 0 && mass.constant > 0)
    b.floor(
      'sweet-bulk',
      {
        constant: mass.constant / mass.constant,
        terms: mass.terms.map(([id, v]) => [id, v / mass.constant]),
      },
      floor,
      'Sugar is also bulk here, so something must take its place.',
    );
  const allulose = b.sum(
    (c) => (c.role === 'sweetness' && c.food.id.startsWith('allulose') ? 1 : 0),
    Math.max(mass.constant, 1) / 100,
  );
  if (dish.limits.alluloseShare < 1)
    b.cap(
      'allulose-share',
      allulose,
      dish.limits.alluloseShare * 100,
      'More allulose would keep it from turning crisp.',
    );
  const total = dish.dough ? dish.flourBase : dish.parts.reduce((sum, p) => sum + p.grams, 0);
  const erythritol = b.sum((c) => (c.food.id === 'erythritol' ? 1 : 0), Math.max(total, 1) / 100);
  b.cap(
    'erythritol-share',
    erythritol,
    dish.limits.erythritolPct,
    'More erythritol would turn gritty.',
  );
}

/** Share of the original's freezing-point depression a frozen dessert may stray by (common practice, no source). */
const FREEZING_WINDOW = [0.8, 1.2] as const;

/** How firmly a frozen dessert sets, by the freezing-point depression of its sweeteners. */
export function freezingRows(b: Builder): void {
  if (b.dish.family !== 'frozen-dessert') return;
  const freezing = b.sum((c) =>
    c.role === 'sweetness' ? (figure.functionOf(c.food).freezing ?? figure.bulk(c.food)) : 0,
  );
  if (freezing.constant <= 0) return;
  const share: Linear = {
    constant: 1,
    terms: freezing.terms.map(([id, v]) => [id, v / freezing.constant]),
  };
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

/** Amounts of sweeteners and fibre that most adults bear in one serving. */
export function doseRows(b: Builder): void {
  const { servings } = b.dish;
  const foods = new Map<string, Food>();
  for (const c of b.choices)
    for (const ch of c.changes) if (ch.grams > 0) foods.set(ch.food.id, ch.food);
  for (const food of foods.values()) {
    const cap = food.function?.doseCapG;
    if (cap === null || cap === undefined) continue;
    const dose = b.sum((c) => (c.food.id === food.id ? c.eaten : 0), servings);
    b.cap(
      `dose ${food.id}`,
      dose,
      cap,
      `More than ${cap} g of ${food.name} in a serving may upset the stomach.`,
    );
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

/** Taste, and in breads energy and sodium, against the original. */
export function tasteRows(b: Builder): void {
  const { dish } = b;
  if (!dish.dough) {
    saltier(b);
    return;
  }
  const flavour = b.sum(
    inBase((f) => figure.functionOf(f).flavour),
    dish.flourBase,
  );
  b.deviation('taste-shift', flavour, 0.04, 'flavour', 0, false);
  b.deviation('taste-strong', flavour, 0.25, 'flavour', Math.max(0, 0.6 - flavour.constant), false);
  if (dish.limits.share !== 'YB' && dish.limits.share !== 'FT') return;
  const gluten = b.sum(inBase(figure.gluten), dish.flourBase / 100);
  b.deviation('gluten-shift', gluten, 0.003, 'structure');
  for (const [id, figureOf] of [
    ['energy', 'energyKcal'],
    ['sodium', 'sodiumMg'],
  ] as const) {
    const line = b.sum((c) => ((c.food.per100g[figureOf] ?? 0) / 100) * c.eaten);
    if (line.constant > 0)
      b.deviation(
        `${id}-more`,
        { constant: 1, terms: line.terms.map(([v, c]) => [v, c / line.constant]) },
        1.5,
        'flavour',
        0,
        false,
      );
  }
}
