/** Says 'Kept' only after the recipe is on disk. */

import { useEffect, useState } from 'preact/hooks';
import type { SaveAnswer } from '../../store/working/keeper.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { say } from '../words/say.ts';

type State = 'idle' | 'keeping' | 'kept' | { why: string };

interface Props {
  /** Changes whenever there is something new to keep. */
  what: unknown;
  again: boolean;
  /** It is on disk already, written by itself. */
  saved?: boolean;
  /** The one filled button of the screen, as long as there is something to keep. */
  first?: boolean;
  keep(): Promise<SaveAnswer>;
}

export function KeepButton({ what, again, saved = false, first = false, keep }: Props) {
  const [state, setState] = useState<State>('idle');
  useEffect(() => setState((old) => (old === 'keeping' ? old : 'idle')), [what]);
  const press = async () => {
    setState('keeping');
    const answer = await keep();
    setState(answer.ok ? 'kept' : { why: answer.why });
  };
  const word =
    state === 'kept' || (saved && state === 'idle') ? 'isKept' : again ? 'keepAgain' : 'keep';
  return (
    <>
      <button
        type="button"
        class={first && word !== 'isKept' ? 'button first keep' : 'button keep'}
        disabled={state === 'keeping'}
        onClick={press}
      >
        {say(state === 'keeping' ? 'keeping' : word)}
      </button>
      <span role="status" class="hidden keep-state">
        {state === 'kept' && say('isKept')}
      </span>
      <FailureLine text={typeof state === 'object' && `${say('notKept')} ${state.why}`} />
    </>
  );
}
