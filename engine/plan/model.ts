/** Builds the programme of a dish: choices, limits as rows, closeness to the original as the objective. */
import type { ClosenessPart, Food } from '../model.ts';
import { type Choice, choicesFor, isEgg, LEAST_USE, SWAP_COST } from './decisions.ts';
import type { Dish } from './dish.ts';
import * as figure from './figures.ts';
import type { Program, Row, Variable } from './program.ts';
import { type Attribute, type Linear, linear, plus } from './state.ts';

/** What a row means to the user, and what would loosen it. */
export interface Meaning {
  code: string;
  text: string;
}

export interface PlanModel {
  dish: Dish;
  choices: Choice[];
  variables: Variable[];
  rows: Row[];
  meaning: Map<string, Meaning>;
  /** Part of closeness that each costed variable belongs to. */
  partOf: Map<string, ClosenessPart>;
  /** Net carbs of a serving, g, as an expression. */
  net: Linear;
}

class Builder {
  readonly variables: Variable[] = [];
  readonly rows: Row[] = [];
  readonly meaning = new Map<string, Meaning>();
  readonly partOf = new Map<string, ClosenessPart>();
  readonly dish: Dish;
  readonly choices: readonly Choice[];

  constructor(dish: Dish, choices: readonly Choice[]) {
    this.dish = dish;
    this.choices = choices;
  }

  variable(id: string, cost: number, part: ClosenessPart, max?: number): void {
    this.variables.push(max === undefined ? { id, cost } : { id, cost, max });
    this.partOf.set(id, part);
  }

  sum(attribute: Attribute, per = 1): Linear {
    return linear(this.dish, this.choices, attribute, per);
  }

  /** `line >= bound`, or no worse than the original when that is already below. */
  floor(id: string, line: Linear, bound: number, text: string | null): void {
    this.row({ id, min: Math.min(bound, line.constant) - line.constant, terms: line.terms }, text);
  }

  /** `line <= bound`, or no worse than the original when that is already above. */
  cap(id: string, line: Linear, bound: number, text: string | null): void {
    this.row({ id, max: Math.max(bound, line.constant) - line.constant, terms: line.terms }, text);
  }

  row(row: Row, text: string | null): void {
    if (row.terms.length === 0) return;
    this.rows.push(row);
    if (text) this.meaning.set(row.id, { code: row.id.replace(/ .*/, '').toUpperCase(), text });
  }

  /** A costed variable for how far `line` rises above (or, `both`, strays from) its original value. */
  deviation(
    id: string,
    line: Linear,
    cost: number,
    part: ClosenessPart,
    allowed = 0,
    both = true,
  ): void {
    if (line.terms.length === 0) return;
    this.variable(id, cost, part);
    const up: [string, number][] = line.terms.map(([v, c]) => [v, c]);
    this.row({ id: `${id} up`, max: allowed, terms: [...up, [id, -1]] }, null);
    if (both) this.row({ id: `${id} down`, min: -allowed, terms: [...up, [id, 1]] }, null);
  }
}

const inBase =
  (attribute: (food: Food) => number): Attribute =>
  (c) =>
    c.base ? attribute(c.food) : 0;

/** Share of a food counted as egg-like structure: egg solids, whey and egg-white powder, gluten. */
function setting(food: Food): number {
  if (isEgg(food)) return 1 - figure.water(food);
  if (food.id === 'whey-protein-isolate' || food.id === 'egg-white-powder') return 1;
  return figure.gluten(food);
}

function structureRows(b: Builder): void {
  const { dish } = b;
  const { limits, flourBase } = dish;
  const base = b.sum(
    inBase(() => 1),
    flourBase / 100,
  );
  const gluten = b.sum(inBase(figure.gluten), flourBase / 100);
  const inert = b.sum(
    inBase((f) => figure.functionOf(f).insolubleFibre),
    flourBase / 100,
  );
  const starch = b.sum(inBase(figure.starch), flourBase / 100);
  const g = limits.gluten;
  if (g) {
    b.floor(
      'gluten-least',
      plus(gluten, base, -g.hard / 100),
      0,
      'The dough needs gluten to hold together.',
    );
    b.cap('gluten-most', plus(gluten, base, -g.max / 100), 0, 'More gluten would make it rubbery.');
    bindGluten(b, base, gluten, inert);
  }
  const { min, strong, atGluten } = limits.starch;
  if (min > 0) {
    b.floor(
      'starch-least',
      plus(starch, base, -strong / 100),
      0,
      'Some starch must stay for the crumb to set.',
    );
    if (strong < min && g) {
      const slope = (min - strong) / (atGluten - g.min);
      const relaxed = plus(plus(starch, gluten, slope), base, -(min + slope * g.min) / 100);
      b.floor(
        'starch-weak',
        relaxed,
        0,
        'With this little gluten more starch must stay for the crumb to set.',
      );
    }
  }
  b.cap(
    'inert-fibre',
    plus(inert, base, -limits.inertFibre / 100),
    0,
    'More added fibre would make it dry and heavy.',
  );
  if (limits.yeastFood > 0) {
    const food = b.sum(
      (c) =>
        c.base || c.role === 'sweetness' || c.role === 'yeast-food' ? figure.yeastFood(c.food) : 0,
      flourBase / 100,
    );
    b.floor(
      'yeast-food',
      plus(food, base, -limits.yeastFood / 100),
      0,
      'Yeast needs some sugar or starch to feed on.',
    );
  }
  if (limits.eggStructure > 0) {
    const set = b.sum((c) => (c.base || c.role === 'egg' ? setting(c.food) : 0), flourBase / 100);
    b.floor(
      'egg-structure',
      plus(set, base, -limits.eggStructure / 100),
      0,
      'Egg and protein must hold what the flour held.',
    );
  }
  shareRows(b, base);
  const mucilage = b.sum(
    (c) => (/flaxseed|chia|psyllium/.test(c.food.id) && (c.base || c.role === 'binder') ? 1 : 0),
    flourBase / 100,
  );
  b.cap('seed-gel', plus(mucilage, base, -0.2), 0, 'More seed and husk would make it slimy.');
  b.floor('base-mass', base, 50, null);
}

/** Gluten below the family's ideal is paid for with binder and with closeness. */
function bindGluten(b: Builder, base: Linear, gluten: Linear, inert: Linear): void {
  const { limits } = b.dish;
  const g = limits.gluten;
  const binder = b.choices.find((c) => c.kind === 'add' && c.changes[0]?.role === 'binder');
  if (!g || g.min <= 0) return;
  const short = 'gluten-short';
  const byFibre = plus(plus(gluten, base, -(g.min - 5 / 4) / 100), inert, -1 / 4);
  b.variable(short, 0.02, 'structure', binder ? undefined : 0);
  const slack = (line: Linear): number => Math.min(0, line.constant) - line.constant;
  const plain = plus(gluten, base, -g.min / 100);
  b.row({ id: 'gluten-ideal', min: slack(plain), terms: [...plain.terms, [short, 1]] }, null);
  b.row({ id: 'gluten-fibre', min: slack(byFibre), terms: [...byFibre.terms, [short, 1]] }, null);
  if (!binder?.food) return;
  const [low, high] = limits.binder[binder.food.id] ?? [0, 0, 0];
  const dose = low + limits.binderLift;
  const removed = b.choices.flatMap((c): [string, number][] =>
    c.kind === 'swap' && c.candidate?.part.base
      ? [[c.id, (dose * c.candidate.part.grams) / b.dish.flourBase]]
      : [],
  );
  const terms: [string, number][] = [
    [binder.id, 1],
    [short, -(high - low) / g.min],
    ...removed.map(([id, v]): [string, number] => [id, -v]),
  ];
  b.row({ id: 'binder-dose', min: 0, terms }, null);
}

/** No food above its largest share of the flour base in this family. */
function shareRows(b: Builder, base: Linear): void {
  const column = b.dish.limits.share;
  if (!column) return;
  const foods = new Map<string, Food>();
  for (const c of b.choices)
    for (const ch of c.changes) if (ch.base && ch.grams > 0) foods.set(ch.food.id, ch.food);
  for (const food of foods.values()) {
    const share = food.function?.maxShare[column];
    if (share === undefined || share >= 100) continue;
    const mass = b.sum((c) => (c.base && c.food.id === food.id ? 1 : 0), b.dish.flourBase / 100);
    b.cap(
      `share ${food.id}`,
      plus(mass, base, -share / 100),
      0,
      `More ${food.name} would spoil taste or texture (at most ${share} % of the flour).`,
    );
  }
}

function waterAndFatRows(b: Builder): void {
  const { dish } = b;
  const { limits, flourBase } = dish;
  const held = b.sum(
    (c) => (c.base || c.role === 'binder' ? figure.absorption(c.food) : 0),
    flourBase / 100,
  );
  b.deviation('water-shift', held, 0.0006, 'water');
  if (limits.hydration) {
    const base = b.sum(
      inBase(() => 1),
      flourBase / 100,
    );
    const now = b.sum(
      (c) => (c.role === 'liquid' || c.role === 'egg' ? figure.water(c.food) : 0),
      flourBase / 100,
    ).constant;
    const total: Linear = { constant: now, terms: held.terms };
    b.cap(
      'hydration',
      plus(total, base, -limits.hydration[1] / 100),
      0,
      'The dough would need more water than it can hold.',
    );
  }
  const fats = b.sum(
    (c) => (c.base || c.role === 'fat' || c.role === 'egg' ? figure.fat(c.food) : 0),
    flourBase / 100,
  );
  const { window, addPct, maxPct } = limits.fat;
  if (window) {
    b.cap('fat-most', fats, fats.constant * window[1], 'More fat from nuts would make it greasy.');
    b.floor('fat-least', fats, fats.constant * window[0], 'It needs its fat.');
  }
  if (addPct !== undefined)
    b.cap('fat-most', fats, fats.constant + addPct, 'More fat would weaken the dough.');
  if (maxPct !== undefined)
    b.cap('fat-free', fats, maxPct, 'More fat would make it spread and crumble.');
  b.deviation('fat-shift', fats, 0.002, 'fat');
}

function sweetRows(b: Builder): void {
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

/** Amounts of sweeteners and fibre that most adults bear in one serving. */
function doseRows(b: Builder): void {
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

function tasteRows(b: Builder): void {
  const { dish } = b;
  if (!dish.dough) return;
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

/** The programme of a dish without its budget; every row admits the original recipe. */
export function buildModel(dish: Dish): PlanModel {
  const choices = choicesFor(dish);
  const b = new Builder(dish, choices);
  for (const choice of choices) {
    b.variable(choice.id, choice.cost, choice.part, choice.max);
    if (choice.kind !== 'swap') continue;
    const used = `use ${choice.id}`;
    b.variables.push({ id: used, cost: SWAP_COST, binary: true });
    b.partOf.set(used, choice.part);
    b.row(
      {
        id: `link ${choice.id}`,
        max: 0,
        terms: [
          [choice.id, 1],
          [used, -choice.max],
        ],
      },
      null,
    );
    b.row(
      {
        id: `least ${choice.id}`,
        min: 0,
        terms: [
          [choice.id, 1],
          [used, -Math.min(LEAST_USE, choice.max / 2)],
        ],
      },
      null,
    );
  }
  for (const part of dish.parts) {
    const terms = choices.flatMap((c): [string, number][] =>
      c.kind === 'swap' && c.candidate?.part === part ? [[c.id, 1]] : [],
    );
    if (terms.length > 1) b.row({ id: `whole ${part.key}`, max: 1, terms }, null);
  }
  if (choices.length > 0) {
    if (dish.dough && choices.some((c) => c.candidate?.part.base)) {
      structureRows(b);
      waterAndFatRows(b);
    }
    sweetRows(b);
    doseRows(b);
    tasteRows(b);
  }
  const rule = dish.goals.rule;
  const nets = new Map<string, number>();
  const net = b.sum((c) => {
    const known = nets.get(c.food.id) ?? figure.netPerGram(c.food, rule) ?? 0;
    nets.set(c.food.id, known);
    return known * c.eaten;
  }, dish.servings);
  return {
    dish,
    choices,
    variables: b.variables,
    rows: b.rows,
    meaning: b.meaning,
    partOf: b.partOf,
    net,
  };
}

/** The programme with net carbs of a serving at most `budget`; distance from the original is minimised. */
export function withBudget(model: PlanModel, budget: number): Program {
  const row: Row = { id: 'budget', max: budget - model.net.constant, terms: model.net.terms };
  return {
    variables: model.variables,
    rows: [...model.rows, row],
  };
}

/** The programme that lowers net carbs as far as the limits allow, whatever it costs. */
export function leastCarbs(model: PlanModel): Program {
  const slope = new Map(model.net.terms);
  return {
    variables: model.variables.map((v) => ({ ...v, cost: (slope.get(v.id) ?? 0) + 1e-5 * v.cost })),
    rows: model.rows,
  };
}
