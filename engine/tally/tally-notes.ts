/** Notes on how the figures were reckoned: unknown fibre, assumed bases, the EU's energy factors. */
import type { Food, NetCarbRule, Note, Nutrients } from '../model.ts';
import type { FoodNumbers } from './composition.ts';
import type { CountedLine } from './counted.ts';
import { polyolFacts } from './net-carbs.ts';

type Numbered = CountedLine & { numbers: FoodNumbers };

const FLAG_TEXTS: Record<string, (food: string) => string> = {
  FIBRE_UNKNOWN: (food) => `Fibre of ${food} is not known; its whole carbohydrate is counted.`,
  BASIS_ASSUMED: (food) =>
    `It is not known whether the carbohydrate of ${food} includes fibre; none was subtracted.`,
  RAW_STARCH_FIBRE: (food) =>
    `The fibre figure of ${food} includes raw starch that cooking opens, so it was not subtracted.`,
  FIBRE_EXCEEDS_CARB: (food) =>
    `Fibre and sweeteners of ${food} exceed its carbohydrate; net carbs are taken as 0.`,
  HIGHER_GI_POLYOL: (food) => `${food} raises blood sugar more than other polyols.`,
  POLYOL_AMOUNT_UNKNOWN: (food) => `The amount of polyols in ${food} is not stated.`,
  POLYOL_KIND_UNKNOWN: (food) =>
    `The kind of polyol in ${food} is not known; it may count in full.`,
};

function flagNotes(lines: readonly Numbered[]): Note[] {
  return lines.flatMap(({ food, ingredient, numbers }) =>
    numbers.flags.map((code) => ({
      code,
      text: FLAG_TEXTS[code]?.(food.name) ?? code,
      key: ingredient.key,
    })),
  );
}

/** Energy of the polyols of a food by Reg. (EU) 1169/2011 Annex XIV, kcal per 100 g. */
function euPolyolKcal(food: Food): number {
  return Object.entries(food.per100g.polyolsG ?? {}).reduce(
    (sum, [kind, g]) => sum + g * polyolFacts(kind).euKcal,
    0,
  );
}

/**
 * Energy of 100 g by the factors of Reg. (EU) 1169/2011 Annex XIV: protein 4, fat 9, carbohydrate
 * without polyols 4, fibre 2, polyols 2.4, erythritol 0, alcohol 7 kcal/g. Null when a figure lacks.
 */
export function euEnergyKcal(food: Food): number | null {
  const { proteinG, fatG, carbohydrateG, fiberG, alcoholG, polyolsG } = food.per100g;
  if (proteinG === null || fatG === null || carbohydrateG === null) return null;
  const polyols = food.polyolsInCarbohydrate
    ? Object.values(polyolsG ?? {}).reduce((sum, g) => sum + g, 0)
    : 0;
  const fiberInside = food.carbohydrateBasis === 'total' ? (fiberG ?? 0) : 0;
  const carbohydrate = Math.max(0, carbohydrateG - fiberInside - polyols);
  return (
    4 * proteinG +
    9 * fatG +
    4 * carbohydrate +
    2 * (fiberG ?? 0) +
    euPolyolKcal(food) +
    7 * (alcoholG ?? 0)
  );
}

function euNotes(lines: readonly Numbered[], whole: Nutrients, servings: number): Note[] {
  let kcal = 0;
  for (const { food, grams } of lines) kcal += ((euEnergyKcal(food) ?? 0) * grams) / 100;
  const notes: Note[] = [
    {
      code: 'EU_ENERGY',
      text: `Energy adds up the tables' own figures; by the EU's factors (Reg. 1169/2011, Annex XIV) a serving has about ${Math.round(kcal / servings)} kcal. Carbohydrate is shown without fibre.`,
      key: null,
    },
  ];
  if ((whole.alluloseG?.best ?? 0) > 0)
    notes.push({
      code: 'ALLULOSE_NOT_AUTHORISED',
      text: 'Allulose is not an authorised food in the EU.',
      key: null,
    });
  return notes;
}

/** Notes that follow from the rule and the foods' own gaps. */
export function ruleNotes(
  lines: readonly Numbered[],
  whole: Nutrients,
  rule: NetCarbRule,
  servings: number,
): Note[] {
  return [...flagNotes(lines), ...(rule.region === 'eu' ? euNotes(lines, whole, servings) : [])];
}
