/** Everything else the user may ask of the plan. */
import { useId } from 'preact/hooks';
import type { FoodTable } from '../../../engine/index.ts';
import type { Adaptation, Goals } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { Pantry } from '../hooks/use-pantry.ts';
import { say, sayCount } from '../words/say.ts';
import { AllergenBoxes } from './allergen-boxes.tsx';
import { LimitFields } from './limit-fields.tsx';
import { PagePromises } from './page-promises.tsx';
import { PantryField } from './pantry-field.tsx';
import { RuleFields } from './rule-fields.tsx';

interface Props {
  adaptation: Adaptation;
  /** What is asked now. */
  goals: Goals;
  preferences: Preferences;
  table: FoodTable;
  pantry: Pantry;
  onGoals(goals: Partial<Goals>): void;
}

const SWEETNESS = [1, 0.8, 0.6, 0.4] as const;

function Sweetness({ goals, onGoals }: Pick<Props, 'goals' | 'onGoals'>) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{say('sweetness')}</label>
      <select
        id={id}
        value={String(goals.sweetness)}
        onChange={({ currentTarget }) => onGoals({ sweetness: Number(currentTarget.value) })}
      >
        {SWEETNESS.map((share) => (
          <option key={share} value={String(share)}>
            {share === 1 ? say('asOriginal') : say('shareOfIt', Math.round(share * 100))}
          </option>
        ))}
      </select>
    </div>
  );
}

/** What was ruled out for this recipe, to be allowed again. */
function RuledOut({ goals, onGoals }: Pick<Props, 'goals' | 'onGoals'>) {
  const count = goals.excludedSwaps.length;
  if (count === 0) return null;
  return (
    <button type="button" class="button" onClick={() => onGoals({ excludedSwaps: [] })}>
      {sayCount('allowAgain', count)}
    </button>
  );
}

/** Amounts set on lines, some of which may be gone from the list by now. */
function SetBack({ goals, onGoals }: Pick<Props, 'goals' | 'onGoals'>) {
  const count = goals.setAmounts.length;
  if (count === 0) return null;
  return (
    <button type="button" class="button" onClick={() => onGoals({ setAmounts: [] })}>
      {sayCount('setAmountsBack', count)}
    </button>
  );
}

export function Wishes({ adaptation, goals, preferences, table, pantry, onGoals }: Props) {
  return (
    <div class="wishes">
      <PagePromises adaptation={adaptation} goals={goals} onGoals={onGoals} />
      <LimitFields goals={goals} preferences={preferences} onGoals={onGoals} />
      <PantryField
        adaptation={adaptation}
        goals={goals}
        table={table}
        pantry={pantry}
        onGoals={onGoals}
      />
      <Sweetness goals={goals} onGoals={onGoals} />
      <RuleFields rule={goals.rule} onRule={(rule) => onGoals({ rule })} />
      <AllergenBoxes
        legend={say('iNeverEat')}
        chosen={goals.avoid}
        onChosen={(avoid) => onGoals({ avoid })}
      />
      <RuledOut goals={goals} onGoals={onGoals} />
      <SetBack goals={goals} onGoals={onGoals} />
    </div>
  );
}
