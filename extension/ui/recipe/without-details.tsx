/** What a swap is worth: the plan without it, worked out when it is asked for. */
import { useMemo, useState } from 'preact/hooks';
import type { WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Swap } from '../../../engine/model.ts';
import { PART_WORDS } from '../figures/closeness-mark.tsx';
import { amount, rangeText, short } from '../figures/format.ts';
import { gramsOnScale } from '../figures/sources/source-words.ts';
import { say, sayList } from '../words/say.ts';
import { type WithoutSwap, withoutSwap } from './without-swap.ts';

interface Props {
  swap: Swap;
  adaptation: Adaptation;
  options: WalkOptions;
}

function Outcome({ found, budgetG }: { found: WithoutSwap; budgetG: number }) {
  const { netCarbsG, met, parts, instead } = found;
  const range = rangeText(netCarbsG);
  const net = netCarbsG ? `${amount(netCarbsG.best)} g` : say('notKnown');
  return (
    <ul class="notes">
      <li>
        {say('withoutNet', net)}
        {range !== '' && ` (${range})`}
        {', '}
        {met ? say('withinBudget') : say('aboveBudget', short(budgetG))}.
      </li>
      {instead.length > 0 && (
        <li>
          {say(
            'moreOf',
            sayList(instead.map(({ food, grams }) => `${food} ${gramsOnScale(grams)} g`)),
          )}
        </li>
      )}
      {parts.map(({ part, now, without }) => (
        <li key={part}>{say('partMoves', say(PART_WORDS[part]), without, now)}</li>
      ))}
      {parts.length === 0 && <li>{say('asNear')}</li>}
    </ul>
  );
}

function Inside({ swap, adaptation, options }: Props) {
  const found = useMemo(() => withoutSwap(adaptation, swap, options), [adaptation, swap, options]);
  return found ? (
    <Outcome found={found} budgetG={adaptation.goals.budgetG} />
  ) : (
    <p>{say('cannotWorkOut')}</p>
  );
}

export function WithoutDetails(props: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details class="plain-fold" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{say('planWithout')}</summary>
      {open && <Inside {...props} />}
    </details>
  );
}
