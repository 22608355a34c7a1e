/** The method, one step a screen, to be cooked from. */
import { useState } from 'preact/hooks';
import { stepParts } from '../../../ui/recipe/new-amounts.ts';
import { say } from '../../../ui/words/say.ts';
import type { Kitchen, OpenRecipe } from '../kitchen.ts';

export function StovePlace({ open }: { kitchen: Kitchen; open: OpenRecipe }) {
  const { steps, recipe } = open.adaptation;
  const [at, setAt] = useState(0);
  const step = steps[Math.min(at, steps.length - 1)];
  if (!step) return <p class="place">{say('noMethod')}</p>;
  const last = at >= steps.length - 1;
  return (
    <section class="place stove">
      <h1 class="dish" lang={recipe.language ?? undefined}>
        {recipe.title}
      </h1>
      <p class="stove-count" role="status">
        {say('stepOf', at + 1, steps.length)}
      </p>
      <p class="stove-step" lang={step.lang ?? recipe.language ?? undefined}>
        {stepParts(step.after, step.before).map(({ text, isNew }, n) =>
          isNew ? (
            <b key={n} class="new">
              {text}
            </b>
          ) : (
            text
          ),
        )}
      </p>
      <div class="acts">
        <button type="button" class="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
          {say('stepBefore')}
        </button>
        <button type="button" class="button first" disabled={last} onClick={() => setAt(at + 1)}>
          {say('nextStep')}
        </button>
      </div>
    </section>
  );
}
