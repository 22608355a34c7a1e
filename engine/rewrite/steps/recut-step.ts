/** Says at the start of a method that more pieces are made than the page makes. */
import type { MethodNote, RewrittenStep } from '../../model.ts';
import { isForeign, methodWords } from '../languages/method-words.ts';

/** Servings of the page, and of the way the recipe is reworked. */
export interface Servings {
  page: number;
  now: number;
}

const ENGLISH = {
  step: 'Shape, cut or serve it as {now}, where the page makes {was}. Only pieces shaped smaller than the page says are done sooner.',
  why: 'All figures are for one of {now}.',
};

const filled = (text: string, { page, now }: Servings): string =>
  text.replace('{now}', String(now)).replace('{was}', String(Math.round(page * 10) / 10));

interface Method {
  steps: RewrittenStep[];
  methodNotes: MethodNote[];
}

/** The method with that step before all others; the same method where the number stays, or where there is none. */
export function withRecut(method: Method, servings: Servings, language: string | null): Method {
  const { steps, methodNotes } = method;
  if (steps.length === 0 || servings.now <= servings.page) return method;
  const words = methodWords(language);
  const { step, why } = words?.recut ?? ENGLISH;
  const first: RewrittenStep = {
    section: null,
    before: null,
    after: filled(step, servings),
    change: 'inserted',
    why: filled(why, servings),
    ...(words === null && isForeign(language) ? { lang: 'en' } : {}),
  };
  return {
    steps: [first, ...steps],
    methodNotes: methodNotes.map((note) =>
      note.step === null ? note : { ...note, step: note.step + 1 },
    ),
  };
}
