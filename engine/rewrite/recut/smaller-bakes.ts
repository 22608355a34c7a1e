/** What a method says of pieces beside their shaping, where more and smaller ones are made: their filling, and how long they bake. */
import type { RewrittenStep } from '../../model.ts';
import type { Servings } from './recut-words.ts';

/** '12 heaped teaspoons of the spread onto a tray': one for each piece, counted ahead. */
const AHEAD =
  /(?<=\b(?:scoop|spoon|drop|dollop|pipe|place|make|form|freeze|roll)s?\s(?:out\s|into\s)?)(?<count>\d+)\s(?:(?:heaped|heaping|rounded|level|scant|large|big|generous)\s)?(?:(?:teaspoon|tablespoon)s?(?:fuls?)?|dollops|blobs|mounds|balls)(?=\s(?:of|onto|on)\b)/gi;

const LONGER = /In the cooler oven it takes \d+(?:-\d+)? minutes? longer\./;
const SOONER = /, each ([^;.]+); smaller ones are done sooner\.|; smaller ones are done sooner\./g;
const AS_LONG = 'In the cooler oven the smaller pieces take about as long as stated.';

const changed = (step: RewrittenStep, after: string): RewrittenStep =>
  after === step.after
    ? step
    : { ...step, after, change: step.change === 'kept' ? 'changed' : step.change };

/** The steps with as many fillings as there are pieces now. */
export const withAsManyFillings = (
  steps: readonly RewrittenStep[],
  { page, now }: Servings,
  why: string,
): RewrittenStep[] =>
  steps.map((step) => {
    const after = step.after.replace(AHEAD, (found, count: string) =>
      Number(count) === page ? `${now} small portions` : found,
    );
    return after === step.after ? step : { ...changed(step, after), why: step.why ?? why };
  });

/** The steps with one time for pieces that bake cooler, and so longer, and are smaller, and so done sooner. */
export function withOneTime(steps: readonly RewrittenStep[]): RewrittenStep[] {
  if (!steps.some(({ after }) => LONGER.test(after))) return [...steps];
  return steps.map((step) =>
    changed(
      step,
      step.after
        .replace(LONGER, AS_LONG)
        .replace(SOONER, (_, size?: string) => (size === undefined ? '.' : `, each ${size}.`)),
    ),
  );
}
