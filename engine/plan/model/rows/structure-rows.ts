/** Rows that keep a dough working: gluten, starch, fibre, yeast food, egg, shares, water and fat. */
import { hasTag } from '../../../foods/tags.ts';
import type { Food } from '../../../model.ts';
import type { Dish, Section } from '../../dish/dish.ts';
import { isEgg } from '../../dish/food-classes.ts';
import * as figure from '../../dish/food-figures.ts';
import { eggPct, UNMISSED } from '../../kitchen/binder-dose.ts';
import { EGGLESS_SHARE_PCT, isEgglessBatter } from '../../kitchen/eggless-batter.ts';
import { type Linear, plus } from '../expressions.ts';
import { type Builder, inBase, within } from '../row-builder.ts';
import { idIn } from '../variable-ids.ts';

/** Share of a food counted as egg-like structure: egg solids, whey and egg-white powder, gluten. */
function setting(food: Food): number {
  if (isEgg(food)) return 1 - figure.water(food);
  if (food.id === 'whey-protein-isolate' || food.id === 'egg-white-powder') return 1;
  return figure.gluten(food);
}

/** Starch that swells and sets a crumb: not what is left in gluten powder, nor starch that does not swell. */
const settingStarch = (food: Food): number =>
  food.id === 'vital-wheat-gluten' || hasTag(food, 'resistant-starch') ? 0 : figure.starch(food);

/** A dough part of the dish with what its rows are made of; sums are in percent of the original flour base. */
interface Dough {
  b: Builder;
  section: Section;
  percent: number;
  base: Linear;
  gluten: Linear;
  /** Isolated insoluble fibre. */
  inert: Linear;
  starch: Linear;
}

function doughOf(b: Builder, section: Section): Dough {
  const percent = section.flourBase / 100;
  const inFlour = (attribute: (food: Food) => number): Linear =>
    b.sum(inBase(section, attribute), percent);
  return {
    b,
    section,
    percent,
    base: inFlour(() => 1),
    gluten: inFlour(figure.gluten),
    inert: inFlour((f) => figure.functionOf(f).insolubleFibre),
    starch: inFlour(settingStarch),
  };
}

/** `line` is at least `pct` percent of the new flour base. */
function atLeast({ b, section, base }: Dough, id: string, line: Linear, pct: number, why: string) {
  b.floor(idIn(section, id), plus(line, base, -pct / 100), 0, b.inSection(section, why));
}

/** `line` is at most `pct` percent of the new flour base. */
function atMost({ b, section, base }: Dough, id: string, line: Linear, pct: number, why: string) {
  b.cap(idIn(section, id), plus(line, base, -pct / 100), 0, b.inSection(section, why));
}

/** Gluten, starch, inert fibre, yeast food, egg and the largest shares of single flours of a dough. */
export function structureRows(b: Builder, section: Section): void {
  const dough = doughOf(b, section);
  glutenRows(dough);
  starchRows(dough);
  const { inert } = dough;
  const fibre = section.limits.inertFibre;
  atMost(dough, 'inert-fibre', inert, fibre, 'More added fibre would make it dry and heavy.');
  yeastFoodRow(dough);
  eggRow(dough);
  shareRows(b, section, dough.base);
  seedGelRow(dough);
  b.floor(idIn(section, 'base-mass'), dough.base, 50, null);
}

function glutenRows(dough: Dough): void {
  const { gluten } = dough;
  const limits = dough.section.limits.gluten;
  if (!limits) return;
  const { hard, max } = limits;
  atLeast(dough, 'gluten-least', gluten, hard, 'The dough needs gluten to hold together.');
  atMost(dough, 'gluten-most', gluten, max, 'More gluten would make it rubbery.');
  bindGluten(dough);
}

function starchRows(dough: Dough): void {
  const { b, section, starch, gluten, base } = dough;
  const { starch: limits, gluten: g } = section.limits;
  const { min, strong, atGluten } = limits;
  if (min <= 0) return;
  atLeast(dough, 'starch-least', starch, strong, 'Some starch must stay for the crumb to set.');
  if (strong >= min || !g) return;
  const slope = (min - strong) / (atGluten - g.min);
  b.floor(
    idIn(section, 'starch-weak'),
    plus(plus(starch, gluten, slope), base, -(min + slope * g.min) / 100),
    0,
    b.inSection(section, 'With this little gluten more starch must stay for the crumb to set.'),
  );
}

function yeastFoodRow(dough: Dough): void {
  const { b, section, percent } = dough;
  const least = section.limits.yeastFood;
  if (least <= 0) return;
  const food = b.sum(
    within(section, (c) =>
      c.base || c.role === 'sweetness' || c.role === 'yeast-food' ? figure.yeastFood(c.food) : 0,
    ),
    percent,
  );
  atLeast(dough, 'yeast-food', food, least, 'Yeast needs some sugar or starch to feed on.');
}

/** Share of what set the crumb before that may go without an egg being missed (common practice, no source: a third of the flour as nuts bakes without one more). */
const UNMISSED_SET = 0.25;

function eggRow(dough: Dough): void {
  const { b, section, percent } = dough;
  if (section.limits.eggStructure <= 0) return;
  const set = b.sum(
    within(section, (c) => (c.base || c.role === 'egg' ? setting(c.food) : 0)),
    percent,
  );
  const least = Math.min(section.limits.eggStructure, (1 - UNMISSED_SET) * set.constant);
  atLeast(dough, 'egg-structure', set, least, 'Egg and protein must hold what the flour held.');
}

/** Seeds and husk together, percent of the flour base, above which a crumb is slimy (common practice, no source). */
const SEED_GEL_PCT = 20;

function seedGelRow(dough: Dough): void {
  const { b, section, percent } = dough;
  const gel = b.sum(
    within(section, (c) => (hasTag(c.food, 'seed-gel') && (c.base || c.role === 'binder') ? 1 : 0)),
    percent,
  );
  atMost(dough, 'seed-gel', gel, SEED_GEL_PCT, 'More seed and husk would make it slimy.');
}

/** Gluten below the family's ideal is paid for with binder and with closeness. */
function bindGluten({ b, section, base, gluten, inert }: Dough): void {
  const { limits, flourBase } = section;
  const g = limits.gluten;
  const binder = b.choices.find(
    (c) =>
      c.kind === 'add' && c.changes[0]?.role === 'binder' && c.changes[0].section === section.id,
  );
  if (!g || g.min <= 0) return;
  const id = (name: string): string => idIn(section, name);
  const short = id('gluten-short');
  const byFibre = plus(plus(gluten, base, -(g.min - 5 / 4) / 100), inert, -1 / 4);
  b.variable(short, 0.02 * b.weight(section), 'structure', binder ? undefined : 0);
  const slack = (line: Linear): number => Math.min(0, line.constant) - line.constant;
  const plain = plus(gluten, base, -g.min / 100);
  b.row({ id: id('gluten-ideal'), min: slack(plain), terms: [...plain.terms, [short, 1]] }, null);
  b.row(
    { id: id('gluten-fibre'), min: slack(byFibre), terms: [...byFibre.terms, [short, 1]] },
    null,
  );
  if (!binder?.food) return;
  const { least: low, most: high } = limits.binder[binder.food.id] ?? { least: 0, most: 0 };
  const dose = low + limits.binderLift;
  const removed = b.choices.flatMap((c): [string, number][] =>
    c.kind === 'swap' &&
    c.candidate?.part.base &&
    c.candidate.part.section === section.id &&
    (limits.binderAlways || !c.candidate.to.every(({ food }) => hasTag(food, 'gluten')))
      ? [[c.id, (dose * c.candidate.part.grams) / flourBase]]
      : [],
  );
  const terms: [string, number][] = [
    [binder.id, 1],
    [short, -(high - low) / g.min],
    ...removed.map(([name, v]): [string, number] => [name, -v]),
  ];
  b.row(
    {
      id: id('binder-dose'),
      min: limits.binderAlways ? 0 : -dose * UNMISSED,
      terms,
    },
    null,
  );
}

/** Families whose batters an egg sets, or wheat alone. */
const SET_BY_EGG: ReadonlySet<string> = new Set(['QB', 'CK', 'CO']);

/** Whether a flour holds nothing in a batter that wheat alone sets. */
const isTooHeavy = (dish: Dish, section: Section, food: Food): boolean =>
  section.family !== 'biscuit' &&
  SET_BY_EGG.has(section.limits.share ?? '') &&
  hasTag(food, 'heavy-flour') &&
  isEgglessBatter(dish.parts.filter((part) => part.section === section.id)) &&
  dish.parts.some((part) => part.base && part.food.allergens.includes('wheat'));

/** Largest share of the flour base a flour may take in this section, percent; null when none is known. */
export function shareCap(dish: Dish, section: Section, food: Food): number | null {
  const { share: column, flourCaps, unlessEgg } = section.limits;
  if (!column) return null;
  const most = food.function?.maxShare[column] ?? null;
  const usual = isTooHeavy(dish, section, food)
    ? Math.min(EGGLESS_SHARE_PCT, most ?? EGGLESS_SHARE_PCT)
    : most;
  const own = flourCaps[food.id];
  if (own === undefined || (unlessEgg !== undefined && eggPct(dish, section) >= unlessEgg))
    return usual;
  return Math.min(own, usual ?? own);
}

/** No food above its largest share of the flour base in this family. */
function shareRows(b: Builder, section: Section, base: Linear): void {
  const column = section.limits.share;
  if (!column) return;
  const foods = new Map<string, Food>();
  for (const c of b.choices)
    for (const ch of c.changes)
      if (ch.base && ch.grams > 0 && ch.section === section.id) foods.set(ch.food.id, ch.food);
  for (const food of foods.values()) {
    const share = shareCap(b.dish, section, food);
    if (share === null || share >= 100) continue;
    const mass = b.sum(
      within(section, (c) => (c.base && c.food.id === food.id ? 1 : 0)),
      section.flourBase / 100,
    );
    b.cap(
      idIn(section, `share ${food.id}`),
      plus(mass, base, -share / 100),
      0,
      b.inSection(
        section,
        `More ${food.name} would spoil taste or texture (at most ${share} % of the flour).`,
      ),
    );
  }
}

/** Water the dough can hold, fat within its window. */
export function waterAndFatRows(b: Builder, section: Section): void {
  waterRows(b, section);
  fatRows(b, section);
}

function waterRows(b: Builder, section: Section): void {
  const { limits, flourBase } = section;
  const percent = flourBase / 100;
  const held = b.sum(
    within(section, (c) => (c.base || c.role === 'binder' ? figure.absorption(c.food) : 0)),
    percent,
  );
  b.deviation(idIn(section, 'water-shift'), held, 0.0006 * b.weight(section), 'water');
  if (!limits.hydration) return;
  const base = b.sum(
    inBase(section, () => 1),
    percent,
  );
  const now = b.sum(
    within(section, (c) => (c.role === 'liquid' || c.role === 'egg' ? figure.water(c.food) : 0)),
    percent,
  ).constant;
  const total: Linear = { constant: now, terms: held.terms };
  b.cap(
    idIn(section, 'hydration'),
    plus(total, base, -limits.hydration.max / 100),
    0,
    b.inSection(section, 'The dough would need more water than it can hold.'),
  );
}

/** How far the fat inside a nut or seed flour shortens, against butter or oil (common practice, no source). */
const SHORTENING_IN_FLOUR = 0.4;

/** The dough's own fat gives way to that of the new flours, and to nothing else. */
function fatCutRow(b: Builder, section: Section): void {
  if (b.dish.goals.energyLimitKcal !== null) return;
  const cuts = b.choices.flatMap(({ id, cut, section: of }): [string, number][] =>
    cut?.role === 'fat' && of === section.id ? [[id, cut.grams * figure.fat(cut.food)]] : [],
  );
  if (cuts.length === 0) return;
  const brought = b.sum(inBase(section, figure.fat));
  const terms: [string, number][] = brought.terms.map(([id, gain]) => [id, -Math.max(0, gain)]);
  b.row({ id: idIn(section, 'fat-cut'), max: 0, terms: [...cuts, ...terms] }, null);
}

function fatRows(b: Builder, section: Section): void {
  fatCutRow(b, section);
  const { window, addPct, maxPct } = section.limits.fat;
  const id = (name: string): string => idIn(section, name);
  const fats = b.sum(
    within(section, (c) =>
      // Of the oil it is fried in, only what it takes up.
      c.base || c.role === 'fat' || c.role === 'egg'
        ? figure.fat(c.food) * c.eaten * (c.base ? SHORTENING_IN_FLOUR : 1)
        : 0,
    ),
    section.flourBase / 100,
  );
  const most = (name: string, pct: number, why: string): void =>
    b.cap(id(name), fats, pct, b.inSection(section, why));
  if (window) {
    most('fat-most', fats.constant * window.max, 'More fat from nuts would make it greasy.');
    const least = b.inSection(section, 'Less fat would make it dry and tough.');
    b.floor(id('fat-least'), fats, fats.constant * window.min, least);
  }
  if (addPct !== undefined)
    most('fat-most', fats.constant + addPct, 'More fat would weaken the dough.');
  if (maxPct !== undefined) most('fat-free', maxPct, 'More fat would make it spread and crumble.');
  b.deviation(id('fat-shift'), fats, 0.002 * b.weight(section), 'fat');
}
