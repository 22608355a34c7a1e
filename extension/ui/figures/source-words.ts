/** Sources, amounts and matches in the words of the screen. */
import type { Food, Interval, Match, Weight } from '../../../engine/model.ts';

const withNote = (text: string, note: string | null): string =>
  note === null || note === '' ? text : `${text}: ${note}`;

/** 'USDA SR Legacy 168896', 'typical label, from memory: less certain', 'your package'. */
export function sourceText({ source }: Pick<Food, 'source'>): string {
  const { kind, id, note } = source;
  switch (kind) {
    case 'SR':
      return `USDA SR Legacy ${id ?? ''}`.trim();
    case 'FF':
      return `USDA Foundation Foods ${id ?? ''}`.trim();
    case 'published':
      return withNote('Published', note);
    case 'calculated':
      return withNote('Calculated', note);
    case 'label':
      return withNote('Printed label', note);
    case 'memory':
      return `${note ?? 'typical figures'}, from memory: less certain`;
    case 'practice':
      return note ?? 'common practice, no source';
    case 'user':
      return 'Your package, as you typed its label';
  }
}

/** Grams as a scale shows them: whole from ten on, one decimal below, none lost near zero. */
export function gramsOnScale(grams: number): string {
  if (grams >= 9.95) return grams.toFixed(0);
  return grams >= 0.095 || grams === 0 ? String(Number(grams.toFixed(1))) : grams.toPrecision(1);
}

const close = (low: string, best: string, high: string): boolean => low === best && best === high;

/** '250 g (220–274)', or '250 g' when it does not scatter. */
export function gramsRange({ low, best, high }: Interval): string {
  const [from, middle, to] = [low, best, high].map(gramsOnScale) as [string, string, string];
  return close(from, middle, to) ? `${middle} g` : `${middle} g (${from}–${to})`;
}

const BASIS: Record<Weight['basis'], string> = {
  mass: 'the line gives a weight',
  volume: 'from a measure',
  count: 'from a count',
  assumed: 'assumed, the line gives no amount',
  corrected: 'set by you',
};

/** What the grams rest on: 'from a measure, US cup of 125 g'. */
export function weightReason({ basis, assumptions, eaten }: Weight): string {
  const said = assumptions.length > 0 ? assumptions : [BASIS[basis]];
  const lead = assumptions.length > 0 && basis !== 'mass' && basis !== 'corrected';
  const parts = lead ? [BASIS[basis], ...said] : said;
  const share =
    eaten.best < 1 && !parts.some((part) => part.includes('%'))
      ? [`${Math.round(eaten.best * 100)} % of it is eaten`]
      : [];
  return [...parts, ...share].join('; ');
}

/** How sure we are of the food: 'chosen by you', or 'taken for bread flour, 96 % sure: same name'. */
export function matchReason({ foodName, confidence, reason }: Match): string {
  if (/^chosen by/.test(reason)) return reason;
  return `taken for ${foodName}, ${Math.round(confidence * 100)} % sure: ${reason}`;
}
