/**
 * The planner's limits against published formulations: what panels liked is admitted, what they refused
 * is not. Grams are for 100 g of flour and dry bulk, of ice cream or of sauce; water, fat and salt that
 * an abstract leaves out are filled in as is usual for the family. `differs` says why a limit stays.
 */
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, type Family, type Food } from '../../../engine/model.ts';
import type { Dish } from '../../../engine/plan/dish/dish.ts';
import { readDish } from '../../../engine/plan/dish/read-dish.ts';
import { roleIn } from '../../../engine/plan/dish/roles.ts';
import type { Choice } from '../../../engine/plan/model/decisions.ts';
import type { Change } from '../../../engine/plan/model/expressions.ts';
import { Builder } from '../../../engine/plan/model/row-builder.ts';
import { structureRows, waterAndFatRows } from '../../../engine/plan/model/rows/structure-rows.ts';
import { freezingRows, sweetRows } from '../../../engine/plan/model/rows/taste-rows.ts';
import { foods, ingredientsOf } from '../../plan/build.ts';
import rows from './formulations.json' with { type: 'json' };

type Grams = Readonly<Record<string, number>>;

interface Formulation {
  name: string;
  family: Family;
  verdict: 'good' | 'accepted' | 'fails';
  /** The control, g by food. */
  was: Grams;
  mix: Grams;
  source: string;
  differs?: string;
}

const FORMULATIONS = rows as unknown as Formulation[];

/** Foods that stand in for flour in these mixes although they usually bind or sweeten. */
const IN_THE_FLOUR = new Set(['psyllium-husk-powder', 'inulin', 'cellulose-powder']);

const foodOf = (id: string): Food => {
  const food = foods.byId(id);
  if (!food) throw new Error(`no food ${id}`);
  return food;
};

const dishOf = ({
  family,
  was,
}: Formulation): { dish: Dish; role: (food: Food) => Change['role'] } => {
  const ingredients = ingredientsOf({
    title: 'Sample',
    family,
    servings: 10,
    parts: Object.entries(was),
  });
  const dish = readDish(ingredients, {
    family,
    servings: 10,
    goals: DEFAULT_GOALS,
    foods,
    title: 'Sample',
  });
  const [first] = ingredients;
  if (!first) throw new Error('no parts');
  return { dish, role: (food) => roleIn(food, first, family).role };
};

/** What a food does in the mix: as in the control, in the sugar's place, in the flour's, or what it usually does. */
function placeOf(id: string, { mix, was }: Formulation, dish: Dish, usual: Change['role']) {
  const own = dish.parts.find(({ food }) => food.id === id);
  if (own) return { role: own.role, base: own.base };
  const lessSugar = (mix.sugar ?? 0) < (was.sugar ?? 0);
  const food = foodOf(id);
  if ((food.function?.sweetness ?? 0) > 0.3 || (lessSugar && (food.function?.bulk ?? 0) > 0))
    return { role: 'sweetness' as const, base: false };
  if (!dish.main.dough) return { role: usual, base: false };
  if (usual === 'structure' || IN_THE_FLOUR.has(id))
    return { role: 'structure' as const, base: true };
  return { role: usual, base: false };
}

/** Rows that the mix would break. */
function broken(formulation: Formulation): string[] {
  const { was, mix } = formulation;
  const { dish, role } = dishOf(formulation);
  const ids = [...new Set([...Object.keys(was), ...Object.keys(mix)])];
  const changes = ids.flatMap((id): Change[] => {
    const grams = (mix[id] ?? 0) - (was[id] ?? 0);
    const food = foodOf(id);
    if (grams === 0) return [];
    return [
      {
        food,
        grams,
        eaten: 1,
        key: null,
        section: 0,
        ...placeOf(id, formulation, dish, role(food)),
      },
    ];
  });
  const choice: Choice = {
    id: 'mix',
    kind: 'swap',
    changes,
    cost: 0,
    part: 'structure',
    max: 1,
    candidate: null,
    section: 0,
    cut: null,
    food: null,
  };
  const b = new Builder(dish, [choice]);
  if (dish.main.dough) {
    structureRows(b, dish.main);
    waterAndFatRows(b, dish.main);
  }
  sweetRows(b, dish.main);
  freezingRows(b, dish.main);
  // Rows with a variable of their own are soft: they cost closeness and refuse nothing.
  return b.rows.flatMap(({ id, min, max, terms }) => {
    if (terms.some(([name]) => name !== 'mix')) return [];
    const value = terms.reduce((sum, [, factor]) => sum + factor, 0);
    const fits = value >= (min ?? -Infinity) - 1e-6 && value <= (max ?? Infinity) + 1e-6;
    return fits ? [] : [id];
  });
}

const named = (verdict: Formulation['verdict'], differs: boolean) =>
  FORMULATIONS.filter((f) => f.verdict === verdict && (f.differs !== undefined) === differs);

describe('published formulations', () => {
  it('are forty and more, each with its source', () => {
    expect(FORMULATIONS.length).toBeGreaterThanOrEqual(40);
    for (const { source, name } of FORMULATIONS) expect(source.length, name).toBeGreaterThan(5);
    expect(new Set(FORMULATIONS.map(({ name }) => name)).size).toBe(FORMULATIONS.length);
  });

  it.each(named('good', false))('$name is admitted ($source)', (formulation) => {
    expect(broken(formulation)).toEqual([]);
  });

  it.each(named('fails', false))('$name is refused ($source)', (formulation) => {
    expect(broken(formulation)).not.toEqual([]);
  });

  it.each(named('good', true))('$name is refused on purpose: $differs', (formulation) => {
    expect(broken(formulation)).not.toEqual([]);
  });

  it('admits a third and more of those that were changed and still accepted', () => {
    const accepted = named('accepted', false);
    const admitted = accepted.filter((f) => broken(f).length === 0);
    expect(admitted.length / accepted.length).toBeGreaterThanOrEqual(1 / 3);
  });
});
