import { useRef } from 'preact/hooks';
import type { WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Swap } from '../../../engine/model.ts';
import { short } from '../figures/format.ts';
import { WithoutDetails } from './without-details.tsx';

interface Props {
  adaptation: Adaptation;
  /** Given where a swap can be ruled out and what that would bring can be asked. */
  depth?: { options: WalkOptions; onForbid(swapId: string): void };
}

function Amounts({ swap }: { swap: Swap }) {
  const { from, to, keptGrams } = swap;
  return (
    <p class="swap-amounts">
      {from ? (
        <>
          <span>
            {from.food} {short(from.grams)} g
          </span>
          <span class="arrow" aria-hidden="true">
            {' → '}
          </span>
          <span class="hidden"> becomes </span>
        </>
      ) : (
        <span>Add </span>
      )}
      <strong>
        {from && keptGrams > 0 ? `${from.food} ${short(keptGrams)} g` : ''}
        {from && keptGrams > 0 && to.length > 0 ? ', ' : ''}
        {to.map((part) => `${part.food} ${short(part.grams)} g`).join(', ')}
        {to.length === 0 && keptGrams === 0 ? 'left out' : ''}
      </strong>
    </p>
  );
}

interface FootProps {
  swap: Swap;
  adaptation: Adaptation;
  options: WalkOptions;
  onForbid(swapId: string): void;
}

/** What else was looked at, the source, and the way out. */
function SwapFoot({ swap, adaptation, options, onForbid }: FootProps) {
  const { considered, source } = swap;
  return (
    <div class="swap-foot">
      {considered.length > 0 && (
        <details>
          <summary>Also looked at ({considered.length})</summary>
          <ul class="limits">
            {considered.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </details>
      )}
      <WithoutDetails swap={swap} adaptation={adaptation} options={options} />
      {source !== '' && <p>Source: {source}.</p>}
      <button type="button" onClick={() => onForbid(swap.id)}>
        Do without this swap
        <span class="hidden">: {swap.to.map(({ food }) => food).join(', ')}</span>
      </button>
    </div>
  );
}

/** What changes, by how much, and why. */
export function SwapList({ adaptation, depth }: Props) {
  const { swaps } = adaptation.plan;
  const heading = useRef<HTMLHeadingElement>(null);
  const forbid = (id: string) => {
    depth?.onForbid(id);
    // The pressed button is gone now; focus goes to the head of the new list.
    heading.current?.focus();
  };
  return (
    <section class="changes" aria-labelledby="swaps-title">
      <h2 id="swaps-title" ref={heading} tabIndex={-1}>
        What changes
      </h2>
      {swaps.length === 0 && <p>Nothing has to change.</p>}
      <ul class="swaps">
        {swaps.map((swap) => (
          <li key={`${swap.id}.${swap.key}`}>
            <Amounts swap={swap} />
            <p>{swap.why}</p>
            {swap.effect !== '' && <p>{swap.effect}</p>}
            {swap.allergens.length > 0 && <p>Contains {swap.allergens.join(', ')}.</p>}
            {swap.cautions.map((caution) => (
              <p key={caution}>{caution}</p>
            ))}
            {depth && (
              <SwapFoot
                swap={swap}
                adaptation={adaptation}
                options={depth.options}
                onForbid={forbid}
              />
            )}
          </li>
        ))}
      </ul>
      {adaptation.plan.met && adaptation.plan.limits.length > 0 && (
        <div class="held">
          <h3>What holds the plan here</h3>
          <ul class="limits">
            {adaptation.plan.limits.map((limit) => (
              <li key={limit.code + limit.text}>{limit.text}</li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}
