/** The method as it is cooked: its amounts times the factor, and what the cook is told beside each step. */
import { scaledSteps } from '../../../engine/index.ts';
import type { Adaptation, RewrittenStep } from '../../../engine/model.ts';
import { toldHere } from '../words/engine-language.ts';
import { languageOf, locale } from '../words/say.ts';

export interface CookedStep extends RewrittenStep {
  /** The page's own step times the factor, so that only what is new stands out; null of a new step. */
  compareWith: string | null;
  /** English sentences for the cook; mostly none. */
  told: string[];
}

export interface CookedMethod {
  /** English sentences that belong to no step. */
  told: string[];
  steps: CookedStep[];
}

type Method = Pick<Adaptation, 'steps' | 'methodNotes'> & {
  recipe: Pick<Adaptation['recipe'], 'language'>;
};

/** What bakes taught to do is kept in English: in a recipe of the screen's own language it is said in that. */
const inPlace = ({ after, change }: RewrittenStep, language: string | null): string =>
  change === 'inserted' && language !== null && languageOf(language) === languageOf(locale())
    ? toldHere(after).text
    : after;

const scaled = (texts: readonly string[], factor: number): string[] =>
  scaledSteps(texts, factor).map(({ text }) => text);

/** What the notes say of a step; of null, what belongs to none that there is. */
function noteTexts({ steps, methodNotes }: Method, at: number | null): string[] {
  const texts = methodNotes
    .filter(({ step }) => (step !== null && step < steps.length ? step : null) === at)
    .flatMap(({ text }) => text ?? []);
  return [...new Set(texts)];
}

/** Texts times the factor (1 is the recipe as it stands); the amounts in the notes go with them. */
export function cookedMethod(method: Method, factor: number): CookedMethod {
  const { steps, recipe } = method;
  const texts = scaledSteps(
    steps.map((step) => inPlace(step, recipe.language)),
    factor,
  );
  return {
    told: scaled(noteTexts(method, null), factor),
    steps: steps.map((step, at) => {
      const { text, note } = texts[at] ?? { text: step.after, note: null };
      const [compareWith = null] =
        step.change === 'kept' ? [text] : scaled(step.before === null ? [] : [step.before], factor);
      return {
        ...step,
        after: text,
        compareWith,
        told: [...scaled(noteTexts(method, at), factor), ...(note === null ? [] : [note])],
      };
    }),
  };
}
