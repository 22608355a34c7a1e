import type { Adaptation, RewrittenStep } from '../../../engine/model.ts';
import { factorText } from './shown-amounts.ts';

/** The method is in the page's language, unless a step says otherwise; marks and reasons are not. */
function StepItem({ step, language }: { step: RewrittenStep; language: string | undefined }) {
  return (
    <li class={`step step-${step.change}`}>
      {step.change !== 'kept' && (
        <span class="mark">{step.change === 'inserted' ? 'new step' : 'changed'}</span>
      )}
      <p lang={step.lang ?? language}>{step.after}</p>
      {step.why && <p class="why">{step.why}</p>}
      {step.change === 'changed' && step.before && (
        <details class="no-print">
          <summary>As it was</summary>
          <p lang={language}>{step.before}</p>
        </details>
      )}
    </li>
  );
}

/** The method, with changed and inserted steps marked. */
export function Method({ adaptation, factor }: { adaptation: Adaptation; factor: number }) {
  const { steps, recipe } = adaptation;
  const language = recipe.language ?? undefined;
  return (
    <section class="method" aria-labelledby="method-title">
      <h2 id="method-title">Method</h2>
      {factor !== 1 && steps.length > 0 && (
        <p class="factor-note">
          <strong>Amounts in the method are for ×1</strong>: take {factorText(factor)} of them.
        </p>
      )}
      {steps.length === 0 && <p>The page gives no method.</p>}
      <ol>
        {steps.map((step, at) => {
          const heading = step.section !== null && step.section !== steps[at - 1]?.section;
          return [
            heading && (
              <li key={`${at}.section`} class="step-section">
                <h3 lang={language}>{step.section}</h3>
              </li>
            ),
            <StepItem key={at} step={step} language={language} />,
          ];
        })}
      </ol>
    </section>
  );
}
