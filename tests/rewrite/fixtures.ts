/** Recipes read from pasted text and plans made by hand, so that the rewriter is tested alone. */
import { foodTable } from '../../engine/foods/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import type {
  Family,
  Ingredient,
  Plan,
  PlannedItem,
  Recipe,
  Role,
  Swap,
} from '../../engine/model.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { weighItem } from '../../engine/weigh/index.ts';

export const foods = foodTable();

export function makeRecipe(title: string, lines: string[], steps: string[]): Recipe {
  return {
    title,
    url: 'https://kitchen.example/recipe',
    language: 'en',
    author: 'Invented Cook',
    markup: 'json-ld',
    yield: { text: 'Serves 4', servings: { low: 4, high: 4 }, pieces: null },
    groups: [{ title: null, lines }],
    steps: steps.map((text) => ({ section: null, text })),
    minutes: { prep: null, cook: null, total: null },
    image: null,
    statedNutrition: null,
    notes: [],
  };
}

export function understand(recipe: Recipe): Ingredient[] {
  const lines = recipe.groups.flatMap(({ title, lines: texts }) =>
    texts.map((text) => parseLine(text, { language: recipe.language ?? 'en', group: title })),
  );
  const whole = { title: recipe.title, steps: recipe.steps.map(({ text }) => text), lines };
  return lines.flatMap((line, at) =>
    line.items.map((item, n) => {
      const match = matchItem(item, line, { foods });
      const food = match === null ? null : foods.byId(match.foodId);
      const weight = weighItem(item, line, food, { region: 'us', recipe: whole });
      return { key: n === 0 ? `${at}` : `${at}.${n}`, line, item, match, weight };
    }),
  );
}

export interface Change {
  key: string;
  /** Grams of the line's own food that stay. */
  kept: number;
  to: [foodId: string, grams: number, role?: Role][];
}

export interface PlanExtras {
  added?: [foodId: string, grams: number, role: Role][];
  reserveWaterG?: number;
  /** Digestible starch after, percent of the flour base. */
  starchPct?: number;
}

const item = (key: string, foodId: string, grams: number, role: Role): PlannedItem => ({
  key,
  foodId,
  foodName: foods.byId(foodId)?.name ?? foodId,
  grams,
  eaten: { low: 1, best: 1, high: 1 },
  role,
});

const dough = (digestibleStarchPct: number) => ({
  flourBaseG: 500,
  hydrationPct: 80,
  saltPct: 2,
  yeastPct: 0.4,
  binderPct: 0.6,
  fatPct: 0,
  sugarPct: 0,
  glutenProteinPct: 20,
  digestibleStarchPct,
});

/** A plan that changes the given lines and leaves the others as they are. */
export function makePlan(
  family: Family,
  ingredients: readonly Ingredient[],
  changes: readonly Change[],
  extras: PlanExtras = {},
): Plan {
  const items = ingredients.flatMap(({ key, match, weight }) => {
    if (match === null || weight === null) return [];
    const change = changes.find((one) => one.key === key);
    if (change === undefined) return [item(key, match.foodId, weight.grams.best, 'other')];
    return [
      ...(change.kept > 0 ? [item(key, match.foodId, change.kept, 'structure')] : []),
      ...change.to.map(([id, grams, role]) => item(key, id, grams, role ?? 'structure')),
    ];
  });
  const added = (extras.added ?? []).map(([id, grams, role]) => item(`new.${id}`, id, grams, role));
  const named = ({ foodId, foodName, grams }: PlannedItem) => ({ foodId, food: foodName, grams });
  const swaps = changes.map(({ key, kept, to }): Swap => {
    const original = ingredients.find((one) => one.key === key);
    return {
      id: `swap-${key}`,
      key,
      from: {
        foodId: original?.match?.foodId ?? '',
        food: original?.match?.foodName ?? '',
        grams: original?.weight?.grams.best ?? 0,
      },
      keptGrams: kept,
      to: to.map(([id, grams]) => named(item(key, id, grams, 'other'))),
      why: `reason ${key}`,
      effect: '',
      considered: [],
      allergens: [],
      cautions: [],
      source: 'test',
    };
  });
  return {
    way: 'within',
    servings: 1,
    shopping: [],
    stomach: { sweetenersG: 0, addedFibreG: 0 },
    family: { id: family, confidence: 1, why: 'test' },
    parts: [],
    roles: {},
    budgetG: 15,
    met: true,
    items: [...items, ...added],
    swaps,
    reserveWaterG: extras.reserveWaterG ?? null,
    dough:
      extras.starchPct === undefined ? null : { before: dough(70), after: dough(extras.starchPct) },
    closeness: 0.7,
    closenessParts: {},
    limits: [],
    promises: [],
    notReworked: null,
    notes: [],
  };
}
