import type { Adaptation, Goals } from '../../../engine/model.ts';
import { NumberField } from '../controls/number-field.tsx';

interface Props {
  adaptation: Adaptation;
  onGoals(goals: Partial<Goals>): void;
}

/** Budget and servings. A change is worked out at once. */
export function GoalsBar({ adaptation, onGoals }: Props) {
  const { goals, before, recipe } = adaptation;
  const stated = recipe.yield.servings;
  const own = goals.servings !== null;
  const guessed = recipe.yield.text
    ? `worked out from “${recipe.yield.text}”`
    : 'our estimate, the page gives none';
  const hint = own ? 'your number' : stated ? 'from the page' : guessed;
  return (
    <fieldset class="goals">
      <legend class="hidden">What you want</legend>
      <NumberField
        label="Budget a serving, net carbs"
        unit="g"
        value={goals.budgetG}
        min={0}
        max={500}
        step={0.5}
        onValue={(budgetG) => onGoals({ budgetG })}
      />
      <NumberField
        label="Servings"
        value={before.servings}
        min={0.5}
        max={1000}
        step={0.5}
        hint={hint}
        onValue={(servings) => onGoals({ servings })}
      />
    </fieldset>
  );
}
