/** Rows that keep a dough working: gluten, starch, fibre, yeast food, egg, shares, water and fat. */
import type { Food } from '../model.ts';
import { type Builder, inBase } from './builder.ts';
import { isEgg } from './decisions.ts';
import * as figure from './figures.ts';
import { type Linear, plus } from './state.ts';

/** Share of a food counted as egg-like structure: egg solids, whey and egg-white powder, gluten. */
function setting(food: Food): number {
  if (isEgg(food)) return 1 - figure.water(food);
  if (food.id === 'whey-protein-isolate' || food.id === 'egg-white-powder') return 1;
  return figure.gluten(food);
}

/** Gluten, starch, inert fibre, yeast food, egg and the largest shares of single flours. */
export function structureRows(b: Builder): void {
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

/** Water the dough can hold, fat within its window. */
export function waterAndFatRows(b: Builder): void {
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
    b.floor('fat-least', fats, fats.constant * window[0], 'Less fat would make it dry and tough.');
  }
  if (addPct !== undefined)
    b.cap('fat-most', fats, fats.constant + addPct, 'More fat would weaken the dough.');
  if (maxPct !== undefined)
    b.cap('fat-free', fats, maxPct, 'More fat would make it spread and crumble.');
  b.deviation('fat-shift', fats, 0.002, 'fat');
}
