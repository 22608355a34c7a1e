/** The method: what is new in a step stands out, and 'Why?' opens the reason. */
import { useId, useState } from 'preact/hooks';
import type { Adaptation } from '../../../engine/model.ts';
import { Icon } from '../controls/icon.tsx';
import { say } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';
import { type CookedStep, cookedMethod } from './cooked-method.ts';
import { stepParts } from './new-amounts.ts';
import { factorText } from './shown-amounts.ts';
import { ToldList } from './told-list.tsx';

interface StepProps {
  step: CookedStep;
  number: number;
  language: string | undefined;
}

function Why({ step, language, id }: Omit<StepProps, 'number'> & { id: string }) {
  return (
    <div class="why-note" id={id}>
      {step.why && (
        <p>
          <ToldSentence text={step.why} otherwise={step.lang ?? language} />
        </p>
      )}
      {step.change === 'changed' && step.before && (
        <p>
          {say('pageSays')}{' '}
          <q lang={language} dir="auto">
            {step.before}
          </q>
        </p>
      )}
    </div>
  );
}

/** The method is in the page's language, unless a step says otherwise. */
function StepItem({ step, number, language }: StepProps) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const marked = stepParts(step.after, step.compareWith);
  const hasWhy = step.why !== null || step.change === 'changed';
  return (
    <li class="step" data-change={step.change}>
      <span class="step-number" aria-hidden="true">
        {number}
      </span>
      <div>
        <p>
          <span class="step-text" lang={step.lang ?? language} dir="auto">
            {marked.map(({ text, isNew }, at) =>
              isNew ? (
                <b key={at} class="new">
                  {text}
                </b>
              ) : (
                text
              ),
            )}
          </span>
          {hasWhy && (
            <>
              {' '}
              <button
                type="button"
                class="why-button"
                aria-expanded={open}
                aria-controls={open ? id : undefined}
                onClick={() => setOpen(!open)}
              >
                <Icon name={open ? 'down' : 'right'} />
                {say('why')}
              </button>
            </>
          )}
        </p>
        <ToldList told={step.told} otherwise={language} />
        {open && <Why step={step} language={language} id={id} />}
      </div>
    </li>
  );
}

export function Method({ adaptation, factor }: { adaptation: Adaptation; factor: number }) {
  const { recipe } = adaptation;
  const { steps, told } = cookedMethod(adaptation, factor);
  const language = recipe.language ?? undefined;
  return (
    <section class="method" aria-labelledby="method-title">
      <h2 id="method-title">{say('method')}</h2>
      {factor !== 1 && steps.length > 0 && (
        <p class="factor-note">{say('methodTimes', factorText(factor))}</p>
      )}
      <ToldList told={told} otherwise={language} />
      {steps.length === 0 && <p>{say('noMethod')}</p>}
      <ol>
        {steps.map((step, at) => {
          const heading = step.section !== null && step.section !== steps[at - 1]?.section;
          return [
            heading && (
              <li key={`${at}.section`} class="step-section">
                <h3 class="part" lang={language} dir="auto">
                  {step.section}
                </h3>
              </li>
            ),
            <StepItem key={at} step={step} number={at + 1} language={language} />,
          ];
        })}
      </ol>
    </section>
  );
}
