/** Closer to the original, or further from it: points of the frontier, to be chosen as the budget. */
import { useMemo } from 'preact/hooks';
import { frontierOf, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, FrontierPoint } from '../../../engine/model.ts';
import { say } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';
import { apartWord } from './closeness-mark.tsx';
import { gramsWords } from './format.ts';
import { RowLoaf } from './loaf/row-loaf.tsx';

/** More points than these are not a choice any more: own choice. */
const MOST = 6;

/** Few points, evenly over the frontier, both ends kept; most net carbs first. */
export function pointsToShow(frontier: readonly FrontierPoint[]): FrontierPoint[] {
  const sorted = [...frontier].sort((a, b) => b.netCarbsG - a.netCarbsG);
  if (sorted.length <= MOST) return sorted;
  const at = (n: number) => Math.round((n * (sorted.length - 1)) / (MOST - 1));
  return Array.from({ length: MOST }, (_, n) => sorted[at(n)]).filter((one) => one !== undefined);
}

interface Props {
  adaptation: Adaptation;
  options: WalkOptions;
  onBudget(budgetG: number): void;
}

/** Worked out when it is looked at. */
export function NearerFurther({ adaptation, options, onBudget }: Props) {
  const { plan, goals } = adaptation;
  const points = useMemo(() => pointsToShow(frontierOf(adaptation, options)), [adaptation]);
  const wasG = adaptation.before.perServing.netCarbsG?.best ?? 0;
  return (
    <section class="nearer">
      <p>
        {say('nearerNow', apartWord(plan.closeness))} {points.length > 1 && say('nearerHow')}
      </p>
      {points.length > 1 && (
        <ul class="choices">
          {points.map((point) => {
            const budgetG = Math.ceil(point.netCarbsG * 10) / 10;
            return (
              <li key={point.netCarbsG}>
                <button
                  type="button"
                  class="choice"
                  aria-pressed={budgetG === goals.budgetG}
                  onClick={() => onBudget(budgetG)}
                >
                  <b>{gramsWords(budgetG)}</b>
                  <span>{apartWord(point.closeness)}</span>
                  <RowLoaf
                    beforeG={wasG}
                    afterG={point.netCarbsG}
                    highG={point.netCarbsG}
                    budgetG={goals.budgetG}
                    fullG={Math.max(wasG, ...points.map(({ netCarbsG }) => netCarbsG))}
                    wide={180}
                  />
                </button>
              </li>
            );
          })}
        </ul>
      )}
      {plan.limits.length > 0 && (
        <>
          <h3>{say('whatHolds')}</h3>
          <ul class="notes">
            {plan.limits.map(({ code, text }) => (
              <li key={code + text}>
                <ToldSentence text={text} />
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
