/** The first question after a bake, answered with one press. */
import type { Bake } from '../../store/records.ts';
import { type MessageKey, say } from '../words/say.ts';

export type How = NonNullable<Bake['how']>;

export const HOW_WORDS = {
  good: 'howGood',
  'so-so': 'howSoSo',
  no: 'howNo',
} as const satisfies Record<How, MessageKey>;

const ANSWERS: readonly How[] = ['good', 'so-so', 'no'];

interface Props {
  how: Bake['how'];
  onHow(how: Bake['how']): void;
}

export function HowWasIt({ how, onHow }: Props) {
  return (
    <fieldset class="how">
      <legend>{say('howWasIt')}</legend>
      <div class="acts">
        {ANSWERS.map((answer) => (
          <button
            key={answer}
            type="button"
            class="button"
            aria-pressed={how === answer}
            onClick={() => onHow(how === answer ? null : answer)}
          >
            {say(HOW_WORDS[answer])}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
