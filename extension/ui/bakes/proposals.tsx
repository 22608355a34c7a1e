/** What to change after the last bake. */
import type { Adjustment } from '../../../engine/model.ts';
import { engineLang } from '../words/engine-language.ts';
import { say } from '../words/say.ts';

interface Props {
  proposals: readonly Adjustment[];
  onAccept(adjustment: Adjustment): void;
}

function Source({ source }: { source: string }) {
  return <p class="soft">{say('sourceIs', source)}</p>;
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
                <p class="swap-amounts" lang={engineLang()}>
                  {one.text}
                </p>
                <p lang={engineLang()}>{one.why}</p>
                <Source source={one.source} />
                <button type="button" class="button" onClick={() => onAccept(one)}>
                  {say('takeItUp')}
                  <span class="hidden">{say('ofFood', one.text)}</span>
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
