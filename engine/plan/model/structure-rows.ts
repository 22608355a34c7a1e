/** Rows that keep a dough working: gluten, starch, fibre, yeast food, egg, shares, water and fat. */
import { hasTag } from '../../foods/tags.ts';
import type { Food } from '../../model.ts';
import type { Dish, Section } from '../dish/dish.ts';
import { isEgg } from '../dish/eggs.ts';
import * as figure from '../dish/food-figures.ts';
import { type Linear, plus } from './expressions.ts';
import { type Builder, inBase, within } from './row-builder.ts';
import { idIn } from './variable-ids.ts';

/** Share of a food counted as egg-like structure: egg solids, whey and egg-white powder, gluten. */
function setting(food: Food): number {
  if (isEgg(food)) return 1 - figure.water(food);
  if (food.id === 'whey-protein-isolate' || food.id === 'egg-white-powder') return 1;
  return figure.gluten(food);
}

/** Gluten, starch, inert fibre, yeast food, egg and the largest shares of single flours of a dough. */
export function structureRows(b: Builder, section: Section): void {
  const { limits, flourBase } = section;
  const id = (name: string): string => idIn(section, name);
  const said = (text: string): string => b.inSection(section, text);
  const percent = flourBase / 100;
  const base = b.sum(
    inBase(section, () => 1),
    percent,
  );
  const gluten = b.sum(inBase(section, figure.gluten), percent);
  const inert = b.sum(
    inBase(section, (f) => figure.functionOf(f).insolubleFibre),
    percent,
  );
  const starch = b.sum(inBase(section, figure.starch), percent);
  const g = limits.gluten;
  if (g) {
    b.floor(
      id('gluten-least'),
      plus(gluten, base, -g.hard / 100),
      0,
      said('The dough needs gluten to hold together.'),
    );
    b.cap(
      id('gluten-most'),
      plus(gluten, base, -g.max / 100),
      0,
      said('More gluten would make it rubbery.'),
    );
    bindGluten(b, section, { base, gluten, inert });
  }
  const { min, strong, atGluten } = limits.starch;
  if (min > 0) {
    b.floor(
      id('starch-least'),
      plus(starch, base, -strong / 100),
      0,
      said('Some starch must stay for the crumb to set.'),
    );
    if (strong < min && g) {
      const slope = (min - strong) / (atGluten - g.min);
      const relaxed = plus(plus(starch, gluten, slope), base, -(min + slope * g.min) / 100);
      b.floor(
        id('starch-weak'),
        relaxed,
        0,
        said('With this little gluten more starch must stay for the crumb to set.'),
      );
    }
  }
  b.cap(
    id('inert-fibre'),
    plus(inert, base, -limits.inertFibre / 100),
    0,
    said('More added fibre would make it dry and heavy.'),
  );
  if (limits.yeastFood > 0) {
    const food = b.sum(
      within(section, (c) =>
        c.base || c.role === 'sweetness' || c.role === 'yeast-food' ? figure.yeastFood(c.food) : 0,
      ),
      percent,
    );
    b.floor(
      id('yeast-food'),
      plus(food, base, -limits.yeastFood / 100),
      0,
      said('Yeast needs some sugar or starch to feed on.'),
    );
  }
  if (limits.eggStructure > 0) {
    const set = b.sum(
      within(section, (c) => (c.base || c.role === 'egg' ? setting(c.food) : 0)),
      percent,
    );
    b.floor(
      id('egg-structure'),
      plus(set, base, -limits.eggStructure / 100),
      0,
      said('Egg and protein must hold what the flour held.'),
    );
  }
  shareRows(b, section, base);
  const mucilage = b.sum(
    within(section, (c) => (hasTag(c.food, 'seed-gel') && (c.base || c.role === 'binder') ? 1 : 0)),
    percent,
  );
  b.cap(
    id('seed-gel'),
    plus(mucilage, base, -0.2),
    0,
    said('More seed and husk would make it slimy.'),
  );
  b.floor(id('base-mass'), base, 50, null);
}

/** Gluten below the family's ideal is paid for with binder and with closeness. */
function bindGluten(
  b: Builder,
  section: Section,
  of: { base: Linear; gluten: Linear; inert: Linear },
): void {
  const { limits, flourBase } = section;
  const { base, gluten, inert } = of;
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
  const [low, high] = limits.binder[binder.food.id] ?? [0, 0, 0];
  const dose = low + limits.binderLift;
  const removed = b.choices.flatMap((c): [string, number][] =>
    c.kind === 'swap' && c.candidate?.part.base && c.candidate.part.section === section.id
      ? [[c.id, (dose * c.candidate.part.grams) / flourBase]]
      : [],
  );
  const terms: [string, number][] = [
    [binder.id, 1],
    [short, -(high - low) / g.min],
    ...removed.map(([name, v]): [string, number] => [name, -v]),
  ];
  b.row({ id: id('binder-dose'), min: 0, terms }, null);
}

/** Egg of a section's original dough, percent of the flour. */
const eggPct = (dish: Dish, section: Section): number =>
  dish.parts.reduce(
    (sum, p) =>
      sum +
      (p.section === section.id && p.role === 'egg' ? (100 * p.grams) / section.flourBase : 0),
    0,
  );

/** Largest share of the flour base a flour may take in this section, percent; null when none is known. */
export function shareCap(dish: Dish, section: Section, food: Food): number | null {
  const { share: column, flourCaps, unlessEgg } = section.limits;
  if (!column) return null;
  const usual = food.function?.maxShare[column] ?? null;
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
  const { limits, flourBase } = section;
  const id = (name: string): string => idIn(section, name);
  const said = (text: string): string => b.inSection(section, text);
  const percent = flourBase / 100;
  const weight = b.weight(section);
  const held = b.sum(
    within(section, (c) => (c.base || c.role === 'binder' ? figure.absorption(c.food) : 0)),
    percent,
  );
  b.deviation(id('water-shift'), held, 0.0006 * weight, 'water');
  if (limits.hydration) {
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
      id('hydration'),
      plus(total, base, -limits.hydration[1] / 100),
      0,
      said('The dough would need more water than it can hold.'),
    );
  }
  const fats = b.sum(
    within(section, (c) =>
      // Of the oil it is fried in, only what it takes up.
      c.base || c.role === 'fat' || c.role === 'egg' ? figure.fat(c.food) * c.eaten : 0,
    ),
    percent,
  );
  const { window, addPct, maxPct } = limits.fat;
  if (window) {
    b.cap(
      id('fat-most'),
      fats,
      fats.constant * window[1],
      said('More fat from nuts would make it greasy.'),
    );
    b.floor(
      id('fat-least'),
      fats,
      fats.constant * window[0],
      said('Less fat would make it dry and tough.'),
    );
  }
  if (addPct !== undefined)
    b.cap(id('fat-most'), fats, fats.constant + addPct, said('More fat would weaken the dough.'));
  if (maxPct !== undefined)
    b.cap(id('fat-free'), fats, maxPct, said('More fat would make it spread and crumble.'));
  b.deviation(id('fat-shift'), fats, 0.002 * weight, 'fat');
}
