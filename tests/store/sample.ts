/** A small adaptation made by hand: an invented loaf with invented figures, only for store tests. */
import {
  type Adaptation,
  DEFAULT_GOALS,
  type Interval,
  NUTRIENTS,
  type Nutrients,
  type Recipe,
  type Tally,
} from '../../engine/model.ts';
import type { Bake, Work } from '../../extension/store/records.ts';

const about = (best: number): Interval => ({ low: best * 0.9, best, high: best * 1.1 });

const nutrients = (netCarbsG: number): Nutrients => ({
  ...(Object.fromEntries(NUTRIENTS.map((name) => [name, null])) as Nutrients),
  netCarbsG: about(netCarbsG),
});

const tally = (netCarbsG: number): Tally => ({
  rule: DEFAULT_GOALS.rule,
  servings: 12,
  whole: nutrients(12 * netCarbsG),
  perServing: nutrients(netCarbsG),
  per100gCooked: null,
  rawGrams: about(884),
  cookedGrams: null,
  cookedSource: 'none',
  contributions: [{ key: '0', netCarbsG: about(netCarbsG), share: 1 }],
  uncounted: [],
  incomplete: {},
  notes: [],
});

/** An invented recipe. */
export function sampleRecipe(changes: Partial<Recipe> = {}): Recipe {
  return {
    title: 'Sample loaf',
    url: 'https://kitchen.example/sample-loaf',
    language: 'en',
    author: null,
    markup: 'json-ld',
    yield: { text: '12 slices', servings: { low: 12, high: 12 }, pieces: null },
    groups: [{ title: null, lines: ['500 g bread flour', '370 g water'] }],
    steps: [{ section: null, text: 'Mix and bake.' }],
    minutes: { prep: null, cook: null, total: null },
    image: null,
    statedNutrition: null,
    notes: [],
    ...changes,
  };
}

/** The sample recipe as it would be handed over for saving. */
export function sampleWork(changes: Partial<Work> = {}): Work & { adaptation: Adaptation } {
  const work: Work = {
    recipe: sampleRecipe(),
    goals: DEFAULT_GOALS,
    corrections: {},
    ...changes,
  };
  return {
    ...work,
    adaptation: {
      ...work,
      taught: [],
      ingredients: [],
      before: tally(29),
      plan: {
        way: 'within',
        servings: 12,
        shopping: [],
        stomach: { sweetenersG: 0, addedFibreG: 0 },
        family: { id: 'lean-yeast-bread', confidence: 1, why: 'a sample' },
        parts: [],
        roles: {},
        budgetG: work.goals.budgetG,
        met: true,
        items: [],
        swaps: [],
        reserveWaterG: null,
        dough: null,
        closeness: 0.8,
        closenessParts: {},
        limits: [],
        promises: [],
        notReworked: null,
        notes: [],
      },
      after: tally(14),
      verdict: {
        state: 'fits',
        netCarbsG: { low: 13, best: 14, high: 15 },
        budgetG: work.goals.budgetG,
      },
      questions: [],
      recommended: 'within',
      ways: [],
      lines: [],
      steps: [],
      methodNotes: [],
      allergensAdded: [],
      allergensRemoved: [],
      stillContains: [],
      cautions: [],
      notes: [],
    },
  };
}

/** An invented bake of the sample recipe. */
export function sampleBake(changes: Partial<Bake> = {}): Bake {
  const { recipe, goals, corrections } = sampleWork();
  return {
    id: 'bake',
    recipeId: 'loaf',
    day: '2026-11-25',
    addedAt: 1000,
    baked: { recipe, goals, corrections },
    servings: 12,
    rawGrams: 884,
    netCarbsG: about(168),
    factor: 1,
    dishGrams: 760,
    pieces: 12,
    sliceGrams: null,
    innerC: null,
    cooledHours: null,
    extraWaterG: null,
    ovenSetC: null,
    ovenReadC: null,
    minutes: null,
    plan: null,
    how: null,
    readings: null,
    symptoms: [],
    notes: '',
    ...changes,
  };
}
