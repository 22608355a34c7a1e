/** What cannot be on a label, and what is worth a second look before anything is counted by it. */
import type { Composition, Food, Note } from '../../model.ts';
import { basisByEnergy } from '../carbohydrate-basis.ts';
import type { LabelFigures } from './label-figures.ts';
import type { PackageLabel } from './package-label.ts';

/** Pure fat: 9 kcal/g (21 CFR 101.9(c)(1)(i); Reg. (EU) 1169/2011 Annex XIV). */
const MOST_KCAL = 900;
/** Parts may sum to a little over 100 g by their own errors of analysis. Common practice, no source. */
const MOST_G = 100.5;
/** Sodium in pure salt, mg per 100 g: 22.99 of 58.44 g/mol. */
const MOST_SODIUM_MG = 39_340;
/** Rounding may leave this much net carbs open before a package is called coarse, g per 100 g. Own choice. */
const COARSE_G = 10;

const note = (code: string, text: string): Note => ({ code, text, key: null });

const g = (value: number): string => `${Math.round(value)} g`;

/** Why no food can have these figures, in words that say what to check; null when one can. */
export function impossible(label: PackageLabel, figures: LabelFigures): string | null {
  const { fatG, carbohydrateG, proteinG, fiberG, saturatedG, sugarsG } = figures;
  const us = label.form === 'us';
  if (figures.energyKcal.low > MOST_KCAL)
    return `More than ${MOST_KCAL} kcal in 100 g is more than pure fat has. Use the kcal figure, not kJ${us ? ', and check the grams of a serving' : ''}.`;
  const sum = fatG.low + carbohydrateG.low + proteinG.low + (us ? 0 : (fiberG?.low ?? 0));
  if (sum > MOST_G)
    return `Fat, carbohydrate${us ? '' : ', fibre'} and protein add up to more than ${us ? 'the serving weighs' : '100 g'}. Check these figures${us ? ' and the grams of a serving' : ' and that they are for 100 g'}.`;
  if ((saturatedG?.low ?? 0) > fatG.high) return 'There cannot be more saturated fat than fat.';
  if ((sugarsG?.low ?? 0) > carbohydrateG.high)
    return 'There cannot be more sugars than carbohydrate.';
  if (us && (fiberG?.low ?? 0) > carbohydrateG.high)
    return 'On a US label the fibre is part of the carbohydrate, so it cannot be more. Check both, or use the EU form if the label is European.';
  if ((figures.polyolsG?.low ?? 0) + (figures.alluloseG?.low ?? 0) > carbohydrateG.high)
    return 'Sugar alcohols and allulose are part of the carbohydrate, so they cannot be more.';
  if ((figures.sodiumMg?.low ?? 0) > MOST_SODIUM_MG)
    return `There is more ${us ? 'sodium (in mg)' : 'salt (in g)'} than pure salt would have.`;
  return null;
}

/** Energy that the parts can have, kcal per 100 g: least and most. */
function energyOfParts(label: PackageLabel, figures: LabelFigures): { low: number; high: number } {
  const { fatG, carbohydrateG, proteinG, fiberG } = figures;
  const us = label.form === 'us';
  const free =
    (us ? (fiberG?.high ?? 0) : 0) + (figures.polyolsG?.high ?? 0) + (figures.alluloseG?.high ?? 0);
  return {
    low: 4 * proteinG.low + 9 * fatG.low + 4 * Math.max(0, carbohydrateG.low - free),
    high:
      4 * proteinG.high +
      9 * fatG.high +
      4 * carbohydrateG.high +
      (us ? 0 : 2 * (fiberG?.high ?? 0)),
  };
}

/** Energy against its parts with 15 % below, 10 % above and 10 kcal of room: common practice, no source. */
function energyWarning(label: PackageLabel, figures: LabelFigures): Note[] {
  const parts = energyOfParts(label, figures);
  const stated = figures.energyKcal;
  const tooHigh = stated.low > 1.1 * parts.high + 10;
  const tooLow = stated.high < 0.85 * parts.low - 10;
  if (!tooHigh && !tooLow) return [];
  const serving = label.form === 'us' ? ' and the grams of a serving' : '';
  return [
    note(
      'LABEL_ENERGY',
      tooHigh
        ? `The energy is more than fat, carbohydrate and protein can give. Check that it is kcal, not kJ, and check these figures${serving}.`
        : `The energy is less than fat, carbohydrate and protein must give. Check these figures${serving}, and that all are for the same amount.`,
    ),
  ];
}

function basisWarning(label: PackageLabel, per100g: Composition): Note[] {
  const told = basisByEnergy(per100g);
  if (label.form === 'us' && told === 'available')
    return [
      note(
        'LABEL_BASIS',
        'The energy fits a carbohydrate figure without fibre. If the label is European, use the EU form: otherwise fibre is taken off twice and net carbs come out too low.',
      ),
    ];
  if (label.form === 'eu' && told === 'total')
    return [
      note(
        'LABEL_BASIS',
        'The energy fits a carbohydrate figure with the fibre in it. If the label is from the US, use the US form.',
      ),
    ];
  return [];
}

function partsWarnings(label: PackageLabel, figures: LabelFigures): Note[] {
  const notes: Note[] = [];
  const us = label.form === 'us';
  const parts =
    (figures.sugarsG?.low ?? 0) +
    (figures.polyolsG?.low ?? 0) +
    (us ? (figures.fiberG?.low ?? 0) : 0);
  if (parts > figures.carbohydrateG.high + 0.3)
    notes.push(
      note(
        'LABEL_PARTS',
        `Sugars${us ? ', fibre' : ''} and sugar alcohols add up to more than the carbohydrate. Check them.`,
      ),
    );
  if (us && figures.fiberG === null)
    notes.push(
      note('LABEL_FIBRE_MISSING', 'No fibre is given, so all the carbohydrate is counted.'),
    );
  const { low, high } = figures.netCarbsG;
  if (us && high - low > COARSE_G)
    notes.push(
      note(
        'LABEL_COARSE',
        `The serving is small, so rounding leaves ${g(low)} to ${g(high)} net carbs in 100 g open. Use figures for 100 g if the package has them.`,
      ),
    );
  return notes;
}

function allergenWarnings(label: PackageLabel, like: Food | null): Note[] {
  const notes: Note[] = [];
  const missing = (like?.allergens ?? []).filter((one) => !label.allergens.includes(one));
  if (like && missing.length > 0)
    notes.push(
      note(
        'LABEL_ALLERGENS',
        `Usual ${like.name} has ${missing.join(', ')}. Tick it unless the package is free of it.`,
      ),
    );
  const legumes = label.allergens.includes('soy') || label.allergens.includes('lupin');
  if (label.otherProteins && !legumes && !missing.includes('soy'))
    notes.push(
      note('LABEL_ALLERGENS', 'If the other protein is soy or lupin, tick that allergen.'),
    );
  return notes;
}

/** Far from the food it stands in for, beyond half as much again and 5 g: own choice. */
function unlike(figures: LabelFigures, like: Food | null): Note[] {
  if (!like) return [];
  const { carbohydrateG, fiberG, polyolsG, alluloseG } = like.per100g;
  if (carbohydrateG === null) return [];
  const sweet = (alluloseG ?? 0) + Object.values(polyolsG ?? {}).reduce((sum, one) => sum + one, 0);
  const usual = Math.max(0, carbohydrateG - (fiberG ?? 0) - sweet);
  const [low, high] = like.spread.netCarbsG ?? [usual, usual];
  const { netCarbsG } = figures;
  if (netCarbsG.low <= 1.5 * high + 5 && netCarbsG.high >= low / 1.5 - 5) return [];
  return [
    note(
      'LABEL_UNLIKE',
      `This gives about ${g(netCarbsG.best)} net carbs in 100 g; usual ${like.name} has about ${g(usual)}. Check that carbohydrate, fibre and protein are not mixed up, and what the package stands in for.`,
    ),
  ];
}

/** Everything worth a second look; the food can be used all the same. */
export function labelWarnings(
  label: PackageLabel,
  figures: LabelFigures,
  per100g: Composition,
  like: Food | null,
): Note[] {
  const energy = energyWarning(label, figures);
  return [
    ...energy,
    ...(energy.length > 0 ? [] : basisWarning(label, per100g)),
    ...partsWarnings(label, figures),
    ...unlike(figures, like),
    ...allergenWarnings(label, like),
  ];
}
