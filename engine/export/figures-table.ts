/** Several reworked recipes in one table, a row each, after RFC 4180. */
import type { Adaptation, Interval, Nutrient, Tally } from '../model.ts';
import { NUTRIENT_NAMES } from '../tally/displayed-figures.ts';
import { ESTIMATES } from './shared-parts.ts';
import { type Cell, csvOf } from './table.ts';

const NUTRIENTS = Object.keys(NUTRIENT_NAMES) as Nutrient[];

const unitOf = (nutrient: Nutrient): string =>
  nutrient === 'energyKcal' ? 'kcal' : nutrient === 'sodiumMg' ? 'mg' : 'g';

const best = ({ perServing }: Tally, nutrient: Nutrient): number | null =>
  perServing[nutrient]?.best ?? null;

const ends = (value: Interval | null): Cell[] => [value?.low ?? null, value?.high ?? null];

/** Names of the columns; figures are of one serving. */
export const FIGURES_COLUMNS: readonly string[] = [
  'recipe',
  'servings before',
  'servings',
  'budget, g net carbs',
  'verdict',
  ...NUTRIENTS.flatMap((nutrient) => [
    `${NUTRIENT_NAMES[nutrient]} before, ${unitOf(nutrient)}`,
    `${NUTRIENT_NAMES[nutrient]}, ${unitOf(nutrient)}`,
  ]),
  'Net carbs low, g',
  'Net carbs high, g',
  'lines not counted',
  'note',
];

function rowOf({ recipe, before, after, goals, verdict }: Adaptation): Cell[] {
  return [
    recipe.title,
    before.servings,
    after.servings,
    goals.budgetG,
    verdict.state,
    ...NUTRIENTS.flatMap((nutrient) => [best(before, nutrient), best(after, nutrient)]),
    ...ends(after.perServing.netCarbsG),
    after.uncounted.length,
    ESTIMATES,
  ];
}

/** One row a recipe; an unknown figure is an empty cell. Rows end in CRLF. */
export const toFiguresTable = (adaptations: readonly Adaptation[]): string =>
  csvOf([[...FIGURES_COLUMNS], ...adaptations.map(rowOf)]);
