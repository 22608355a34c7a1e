/** One step in large type, its reason, and a button for each time it names. */
import type { ComponentChildren } from 'preact';
import { Icon } from '../controls/icon.tsx';
import type { CookedStep } from '../recipe/cooked-method.ts';
import { stepParts } from '../recipe/new-amounts.ts';
import { factorText } from '../recipe/shown-amounts.ts';
import { ToldList } from '../recipe/told-list.tsx';
import { say } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';
import { readyChime } from './chime.ts';
import { lengthText, stepTimes } from './step-times.ts';

interface Props {
  step: CookedStep;
  at: number;
  count: number;
  /** How much of the recipe is made. */
  factor: number;
  language: string | undefined;
  onTimer(name: string, seconds: number): void;
  /** What the step uses: it stands before all that may be read later. */
  children?: ComponentChildren;
}

/** A timer is named after the step's first words. Own choice of length. */
const NAME_WORDS = 5;

const firstWords = (text: string): string => {
  const [clause = ''] = text.split(/[.;:(]/);
  const words = clause.trim().split(/\s+/);
  return words.length > NAME_WORDS ? `${words.slice(0, NAME_WORDS).join(' ')} …` : words.join(' ');
};

export function StoveStep({ step, at, count, factor, language, onTimer, children }: Props) {
  const lang = step.lang ?? language;
  const start = (seconds: number) => {
    readyChime();
    onTimer(firstWords(step.after), seconds);
  };
  return (
    <section class="stove-main" aria-live="polite" aria-label={say('stepOf', at + 1, count)}>
      <div class="stove-say">
        <p class="stove-count">
          <b>{at + 1}</b> {say('ofSteps', count)}
          {step.section !== null && (
            <span class="stove-section" lang={language} dir="auto">
              {step.section}
            </span>
          )}
        </p>
        <p class="stove-text" lang={lang} dir="auto">
          {stepParts(step.after, step.compareWith).map(({ text, isNew }, n) =>
            isNew ? (
              <b key={n} class="new">
                {text}
              </b>
            ) : (
              text
            ),
          )}
        </p>
      </div>
      {children}
      <div class="stove-rest">
        {factor !== 1 && <p class="soft">{say('methodTimes', factorText(factor))}</p>}
        <ToldList told={step.told} otherwise={language} />
        <div class="acts">
          {stepTimes(step.after).map(({ seconds }) => (
            <button key={seconds} type="button" class="button" onClick={() => start(seconds)}>
              <Icon name="clock" />
              {say('startTimer', lengthText(seconds))}
            </button>
          ))}
        </div>
        {step.why && (
          <p class="stove-why">
            <ToldSentence text={step.why} otherwise={lang} />
          </p>
        )}
      </div>
    </section>
  );
}
