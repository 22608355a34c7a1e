/** Servings of a yield told by volume: '1 quart' in servings of '1/2 cup'. */
import type { Recipe } from '../../model.ts';
import { FRACTION_SIGNS, numberValue } from '../../numerals.ts';
import { millilitresOf } from '../../units.ts';

const VOLUME = new RegExp(
  `(\\d+\\s*[${FRACTION_SIGNS}]|[${FRACTION_SIGNS}]|\\d+\\s+\\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?)\\s*(cup|pint|quart|gallon|tablespoon|tbsp|ml|l|liter|litre)s?\\b`,
  'i',
);
const CANONICAL: Readonly<Record<string, string>> = {
  tablespoon: 'tbsp',
  liter: 'l',
  litre: 'l',
};

/** Millilitres that a text states first, else null. */
function millilitresIn(text: string): number | null {
  const [, count = '', word = ''] = VOLUME.exec(text.slice(0, 200)) ?? [];
  const unit = word.toLowerCase();
  const one = millilitresOf(CANONICAL[unit] ?? unit, 'us');
  const number = numberValue(count);
  return one === null || number === null || number <= 0 ? null : one * number;
}

/** The whole volume over the volume of a serving, a whole number; null where the page gives not both. */
export function volumeServings({ yield: made, statedNutrition }: Recipe): number | null {
  const whole = millilitresIn(made.text ?? '');
  const serving = millilitresIn(statedNutrition?.servingSize ?? '');
  if (whole === null || serving === null || serving > whole) return null;
  return Math.max(1, Math.round(whole / serving));
}
