/** An adaptation as a cook wants it printed: for so many servings, in these measures. */
import type { Adaptation, Food, RewrittenLine } from '../model.ts';
import type { System } from '../rewrite/lines/scaled-amounts.ts';
import { scaledLines } from '../rewrite/lines/scaled-lines.ts';
import { scaledSteps } from '../rewrite/steps/scaled-steps.ts';

export interface ExportOptions {
  /** Servings wanted over servings had; 1 when absent. */
  factor?: number;
  /** Measures of the lines; as the recipe has them when absent. */
  system?: System;
  /** The user's own foods, as the recipe was worked with. */
  ownFoods?: readonly Food[];
}

const firstOf = (key: string): string => key.split('>')[0] ?? key;

function linesOf(adaptation: Adaptation, factor: number, options: ExportOptions): RewrittenLine[] {
  const { lines } = adaptation;
  const removed = lines.filter(({ after }) => after === null);
  const scaled = scaledLines(adaptation, factor, options.system ?? 'metric', {
    ...(options.ownFoods === undefined ? {} : { ownFoods: options.ownFoods }),
  });
  return [
    ...scaled.map(({ key, group, text }): RewrittenLine => {
      const own =
        lines.find((line) => line.key === key) ??
        lines.find((line) => firstOf(line.key) === firstOf(key));
      return {
        key,
        before: own?.key === key ? own.before : null,
        after: text,
        change: own?.change ?? 'kept',
        group,
        why: own?.why ?? null,
      };
    }),
    ...removed,
  ];
}

/**
 * The same recipe times a factor: lines, method and number of servings. What a serving holds stays.
 * Pans and times that do not grow are said behind the step.
 */
export function scaledAdaptation(adaptation: Adaptation, options: ExportOptions): Adaptation {
  const { factor = 1, system } = options;
  if (!(factor > 0) || (factor === 1 && system === undefined)) return adaptation;
  const { steps, before, after } = adaptation;
  const texts = scaledSteps(
    steps.map((step) => step.after),
    factor,
  );
  const isEnglish = /^en|^$/i.test(adaptation.recipe.language ?? '');
  return {
    ...adaptation,
    lines: linesOf(adaptation, factor, options),
    steps: steps.map((step, at) => {
      const { text, note } = texts[at] ?? { text: step.after, note: null };
      return { ...step, after: note === null || !isEnglish ? text : `${text} (${note})` };
    }),
    before: { ...before, servings: before.servings * factor },
    after: { ...after, servings: after.servings * factor },
  };
}
