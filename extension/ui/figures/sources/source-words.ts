/** Sources, amounts and matches in the words of the screen. */
import type { Food, Interval, Match, Weight } from '../../../../engine/model.ts';
import { toldHere } from '../../words/engine-language.ts';
import { foodWord } from '../../words/food-words.ts';
import { type MessageKey, say } from '../../words/say.ts';
import { digitsOf } from '../format.ts';

/** In the screen's language; `otherwise` where there are no words for it there. */
function told(english: string, otherwise = english): string {
  const { text, lang } = toldHere(english);
  return lang === undefined ? text : otherwise;
}

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
      return withNote(say('sourcePublished'), note);
    case 'calculated':
      return withNote(say('sourceCalculated'), note && told(note, ''));
    case 'label':
      return withNote(say('sourceLabel'), note);
    case 'memory':
      return say('sourceMemory', note ? told(note, say('typicalFigures')) : say('typicalFigures'));
    case 'practice':
      return note ? told(note, say('sourcePractice')) : say('sourcePractice');
    case 'user':
      return say('sourceYours');
  }
}

/** Grams as a scale shows them: whole from ten on, one decimal below, none lost near zero. */
export function gramsOnScale(grams: number): string {
  if (grams >= 9.95) return digitsOf(grams, 0);
  if (grams >= 0.095 || grams === 0) return digitsOf(grams, 0, 1);
  return digitsOf(Number(grams.toPrecision(1)), 0, 6);
}

const close = (low: string, best: string, high: string): boolean => low === best && best === high;

/** '250 g (220–274)', or '250 g' when it does not scatter. */
export function gramsRange({ low, best, high }: Interval): string {
  const [from, middle, to] = [low, best, high].map(gramsOnScale) as [string, string, string];
  return close(from, middle, to) ? `${middle} g` : `${middle} g (${from}–${to})`;
}

const BASIS: Record<Weight['basis'], MessageKey> = {
  mass: 'basisMass',
  volume: 'basisVolume',
  count: 'basisCount',
  assumed: 'basisAssumed',
  corrected: 'basisCorrected',
};

/** What the grams rest on: 'from a measure, US cup of 125 g'. */
export function weightReason({ basis, assumptions, eaten }: Weight): string {
  const said = assumptions.length > 0 ? assumptions.map((text) => told(text)) : [say(BASIS[basis])];
  const lead = assumptions.length > 0 && basis !== 'mass' && basis !== 'corrected';
  const parts = lead ? [say(BASIS[basis]), ...said] : said;
  const share =
    eaten.best < 1 && !parts.some((part) => part.includes('%'))
      ? [say('shareEaten', Math.round(eaten.best * 100))]
      : [];
  return [...parts, ...share].join('; ');
}

/** How sure we are of the food: 'chosen by you', or 'taken for bread flour, 96 % sure: same name'. */
export function matchReason({ foodId, foodName, confidence, reason }: Match): string {
  if (/^chosen by/.test(reason)) return told(reason);
  const name = foodWord(foodId, foodName);
  return say('takenFor', name, Math.round(confidence * 100), told(reason));
}
