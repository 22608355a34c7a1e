/** Three questions at the start, each of which may be skipped; Settings asks them again. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Preferences } from '../../store/prefs.ts';
import { Stepper } from '../controls/stepper.tsx';
import { AllergenBoxes } from '../goals/allergen-boxes.tsx';
import { say } from '../words/say.ts';
import { COUNTRIES, preferencesIn } from './countries.ts';

interface QuestionProps {
  preferences: Preferences;
  onChange(change: Partial<Preferences>): void;
}

interface Props extends QuestionProps {
  /** The user asked for the questions: the first one has the focus. */
  asked?: boolean;
  /** Answered or skipped. */
  onDone(): void;
}

function WhichCountry({ preferences, onChange }: QuestionProps) {
  return (
    <>
      <h2>{say('askCountry')}</h2>
      <p class="soft">{say('askCountryWhy')}</p>
      <ul class="choices countries">
        {COUNTRIES.map(({ id, word }) => (
          <li key={id}>
            <button
              type="button"
              class="choice"
              aria-pressed={preferences.country === id}
              onClick={() => onChange(preferencesIn(id, preferences))}
            >
              <b>{say(word)}</b>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function WhichBudget({ preferences, onChange }: QuestionProps) {
  return (
    <>
      <h2>{say('askBudget')}</h2>
      <p class="soft">{say('askBudgetWhy')}</p>
      <Stepper
        label={say('budgetLabel')}
        unit="g"
        caption={say('netCarbs')}
        value={preferences.budgetG}
        min={0}
        max={500}
        onValue={(budgetG) => onChange({ budgetG })}
      />
    </>
  );
}

function WhichNever({ preferences, onChange }: QuestionProps) {
  return (
    <>
      <h2>{say('askNever')}</h2>
      <p class="soft">{say('askNeverWhy')}</p>
      <AllergenBoxes
        legend={say('iNeverEat')}
        chosen={preferences.avoid}
        onChosen={(avoid) => onChange({ avoid })}
      />
    </>
  );
}

const QUESTIONS: readonly ((props: QuestionProps) => ComponentChildren)[] = [
  WhichCountry,
  WhichBudget,
  WhichNever,
];

export function FirstRun({ asked = false, onDone, ...props }: Props) {
  const [at, setAt] = useState(0);
  const card = useRef<HTMLElement>(null);
  const Question = QUESTIONS[at];
  // A question is read out from its start; one that nobody asked for must not take the focus.
  useEffect(() => {
    if (at > 0 || asked) card.current?.focus();
  }, [at]);
  if (!Question) return null;
  const last = at === QUESTIONS.length - 1;
  const go = () => (last ? onDone() : setAt(at + 1));
  return (
    <section class="card first-run" aria-label={say('firstQuestions')} tabIndex={-1} ref={card}>
      <p class="soft">{say('questionOf', at + 1, QUESTIONS.length)}</p>
      <Question {...props} />
      <div class="acts">
        <button type="button" class="button first" onClick={go}>
          {say(last ? 'done' : 'next')}
        </button>
        {at > 0 && (
          <button type="button" class="button" onClick={() => setAt(at - 1)}>
            {say('back')}
          </button>
        )}
        <button type="button" class="button bare" onClick={onDone}>
          {say('skipQuestions')}
        </button>
      </div>
    </section>
  );
}
