import { useMemo, useState } from 'preact/hooks';
import type { WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Swap } from '../../../engine/model.ts';
import { PART_NAMES } from '../figures/closeness-mark.tsx';
import { amount, rangeText, short } from '../figures/format.ts';
import { gramsOnScale } from '../figures/source-words.ts';
import { type WithoutSwap, withoutSwap } from './without-swap.ts';

interface Props {
  swap: Swap;
  adaptation: Adaptation;
  options: WalkOptions;
}

function Outcome({ found, budgetG }: { found: WithoutSwap; budgetG: number }) {
  const { netCarbsG, met, parts, instead } = found;
  return (
    <ul class="limits">
      <li>
        Net carbs of a serving: {netCarbsG ? `${amount(netCarbsG.best)} g` : 'not known'}
        {rangeText(netCarbsG) !== '' && ` (likely ${rangeText(netCarbsG)})`}
        {met ? ', within the budget' : `, above the budget of ${short(budgetG)} g`}.
      </li>
      {instead.length > 0 && (
        <li>
          More of: {instead.map(({ food, grams }) => `${food} ${gramsOnScale(grams)} g`).join(', ')}
          .
        </li>
      )}
      {parts.map(({ part, now, without }) => (
        <li key={part}>
          {PART_NAMES[part]}: {without} % from the original, now {now} %.
        </li>
      ))}
      {parts.length === 0 && <li>As near to the original as now.</li>}
    </ul>
  );
}

function Inside({ swap, adaptation, options }: Props) {
  const found = useMemo(() => withoutSwap(adaptation, swap, options), [adaptation, swap, options]);
  return found ? (
    <Outcome found={found} budgetG={adaptation.goals.budgetG} />
  ) : (
    <p>That cannot be worked out.</p>
  );
}

/** What a swap is worth: the plan without it, worked out when it is asked for. */
export function WithoutDetails(props: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        The plan without it
        <span class="hidden">: {props.swap.to.map(({ food }) => food).join(', ')}</span>
      </summary>
      {open && <Inside {...props} />}
    </details>
  );
}
