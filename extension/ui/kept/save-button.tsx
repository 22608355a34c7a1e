import { useEffect, useState } from 'preact/hooks';
import type { SaveAnswer } from '../../store/keeper.ts';

type State = 'idle' | 'saving' | 'saved' | { why: string };

interface Props {
  /** Changes whenever there is something new to save. */
  what: unknown;
  again: boolean;
  save(): Promise<SaveAnswer>;
}

/** Says 'Saved' only after the recipe is on disk. */
export function SaveButton({ what, again, save }: Props) {
  const [state, setState] = useState<State>('idle');
  useEffect(() => setState((old) => (old === 'saving' ? old : 'idle')), [what]);
  const press = async () => {
    setState('saving');
    const answer = await save();
    setState(answer.ok ? 'saved' : { why: answer.why });
  };
  return (
    <>
      <button type="button" class="primary" disabled={state === 'saving'} onClick={press}>
        {again ? 'Save this version' : 'Save'}
      </button>
      <span role="status" class="save-state">
        {state === 'saving' && 'Saving…'}
        {state === 'saved' && 'Saved'}
      </span>
      {typeof state === 'object' && (
        <p role="alert" class="failure">
          Not saved. {state.why}
        </p>
      )}
    </>
  );
}
