/** What to change after the last bake. */
import type { Adjustment } from '../../../engine/model.ts';
import { toldHere } from '../words/engine-language.ts';
import { say, sayWith } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';

interface Props {
  proposals: readonly Adjustment[];
  onAccept(adjustment: Adjustment): void;
}

function Source({ source }: { source: string }) {
  return <p class="soft">{sayWith('sourceIs', <ToldSentence text={source} />)}</p>;
}

export function Proposals({ proposals, onAccept }: Props) {
  return (
    <>
      {proposals.length > 0 && (
        <div class="proposals">
          <h3>{say('forNextBake')}</h3>
          <p>{say('oneAtATime')}</p>
          <ul class="swaps">
            {proposals.map((one) => (
              <li key={one.id}>
                <p class="swap-amounts">
                  <ToldSentence text={one.text} />
                </p>
                <p>
                  <ToldSentence text={one.why} />
                </p>
                <Source source={one.source} />
                <button type="button" class="button" onClick={() => onAccept(one)}>
                  {say('takeItUp')}
                  <span class="hidden">{say('ofFood', toldHere(one.text).text)}</span>
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
