/** Budget and servings. A change is worked out at once. */
import type { Adaptation, Goals } from '../../../engine/model.ts';
import { Stepper } from '../controls/stepper.tsx';
import { portionNoun } from '../words/portion.ts';
import { say } from '../words/say.ts';

interface Props {
  adaptation: Adaptation;
  /** What is asked now; the adaptation may still answer an earlier question. */
  goals: Goals;
  /** Shorter words under the numbers, for the strip. */
  brief?: boolean;
  onGoals(goals: Partial<Goals>): void;
}

export function GoalSteppers({ adaptation, goals, brief = false, onGoals }: Props) {
  const servings = goals.servings ?? adaptation.after.servings;
  const noun = portionNoun(adaptation, servings);
  return (
    <div class="goal-steppers">
      <Stepper
        label={say('budgetLabel')}
        unit="g"
        caption={brief ? say('budgetBrief') : say('budgetCaption', portionNoun(adaptation, 1))}
        value={goals.budgetG}
        min={0}
        max={500}
        onValue={(budgetG) => onGoals({ budgetG })}
      />
      <Stepper
        label={say('servingsLabel')}
        unit={brief ? '' : noun}
        caption={brief ? noun : say('fromThisBatch')}
        value={servings}
        min={0.5}
        max={1000}
        onValue={(next) => onGoals({ servings: next })}
      />
    </div>
  );
}
