/** A verdict's word and shape: loaf and knife in small. */
import type { VerdictWord } from '../../../../engine/model.ts';
import { say } from '../../words/say.ts';

const STATE_WORDS = {
  fits: 'stateFits',
  probablyFits: 'stateProbably',
  fitsAsCounted: 'stateCounted',
  fitsAlone: 'stateAlone',
  cannotBeTold: 'stateUntold',
  tooMuch: 'stateTooMuch',
} as const satisfies Record<VerdictWord, string>;

const TONES: Record<VerdictWord, string> = {
  fits: 'is-fits',
  probablyFits: 'is-unsure',
  fitsAsCounted: 'is-unsure',
  fitsAlone: 'is-unsure',
  cannotBeTold: 'is-untold',
  tooMuch: 'is-over',
};

const WHOLE =
  'M3 20.5C1.6 20.5 1 18.8 1 16.8C1 11.6 4.2 8.5 8.4 8.5H11.6C15.8 8.5 19 11.6 19 16.8C19 18.8 18.4 20.5 17 20.5Z';
const CUT =
  'M3 20.5C1.6 20.5 1 18.8 1 16.8C1 11.6 4.2 8.5 8.4 8.5H15.5V20.5ZM22.5 8.5C27.5 8.8 31 11.6 31 16.8C31 18.8 30.4 20.5 29 20.5H22.5Z';
const HALF = 'M3 20.5C1.6 20.5 1 18.8 1 16.8C1 11.6 4.2 8.5 8.4 8.5H11L8.6 20.5Z';

/** Stands in a loaf that is dotted all round. */
const QUESTION = 'M7.4 13.4C7.4 11.2 12.4 11.2 12.4 13.5C12.4 15.2 10 15 10 16.6M10 18.6V18.7';

/** What is not counted, beside the half that is. */
const REST = 'M14 8.9C17.4 9.6 19 12.6 19 16.8C19 18.8 18.4 20.3 17 20.3H11.4';

const isHalf = (state: VerdictWord): boolean => state === 'fitsAsCounted' || state === 'fitsAlone';

function Shape({ state }: { state: VerdictWord }) {
  const body = state === 'tooMuch' ? CUT : isHalf(state) ? HALF : WHOLE;
  const dotted = {
    probablyFits: 'M22 8.8C27 9.6 30.6 12.4 30.6 17C30.6 19 29.8 20.5 28.4 20.5H22',
    fitsAsCounted: REST,
    fitsAlone: REST,
    cannotBeTold: WHOLE,
    fits: null,
    tooMuch: null,
  }[state];
  return (
    <svg viewBox="0 0 32 24" width="32" height="24" aria-hidden="true">
      {state === 'cannotBeTold' ? (
        <path class="state-knife" d={QUESTION} />
      ) : (
        <path class="state-body" d={body} />
      )}
      {!isHalf(state) && state !== 'cannotBeTold' && (
        <path class="state-score" d="M6.2 15.2L9 11.3M11.2 15.2L14 11.3" />
      )}
      {dotted && <path class="state-dots" d={dotted} />}
      <path class="state-knife" d={`M${state === 'tooMuch' ? 19 : 23.2} 3V21.5`} />
    </svg>
  );
}

/** `plain` goes without the wash, for strips and lists. */
export function StateMark({ state, plain = false }: { state: VerdictWord; plain?: boolean }) {
  return (
    <span class={`state ${TONES[state]}${plain ? ' state-plain' : ''}`}>
      <Shape state={state} />
      {say(STATE_WORDS[state])}
    </span>
  );
}
