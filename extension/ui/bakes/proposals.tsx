import type { Adjustment } from '../../../engine/model.ts';

interface Props {
  proposals: readonly Adjustment[];
  accepted: readonly Adjustment[];
  onAccept(adjustment: Adjustment): void;
  onWithdraw(adjustment: Adjustment): void;
}

function Source({ source }: { source: string }) {
  return <p class="quiet">Source: {source}.</p>;
}

/** What to change after the last bake, and what was changed after earlier ones. */
export function Proposals({ proposals, accepted, onAccept, onWithdraw }: Props) {
  return (
    <>
      {proposals.length > 0 && (
        <div class="proposals">
          <h3>For the next bake</h3>
          <p>Change one thing at a time, then you know what helped.</p>
          <ul class="swaps">
            {proposals.map((one) => (
              <li key={one.id}>
                <p class="swap-amounts">{one.text}</p>
                <p>{one.why}</p>
                <Source source={one.source} />
                <button type="button" onClick={() => onAccept(one)}>
                  Take it up<span class="hidden">: {one.text}</span>
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
      {accepted.length > 0 && (
        <div class="proposals">
          <h3>Changed after your bakes</h3>
          <ul class="swaps">
            {accepted.map((one) => (
              <li key={one.id}>
                <p class="swap-amounts">{one.text}</p>
                <p>{one.why}</p>
                <button type="button" onClick={() => onWithdraw(one)}>
                  Withdraw<span class="hidden">: {one.text}</span>
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
