import { useId } from 'preact/hooks';
import type { FoodTable } from '../../../engine/index.ts';
import type { Adaptation, Goals } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import { AllergenBoxes } from '../../ui/goals/allergen-boxes.tsx';
import { LimitFields } from '../../ui/goals/limit-fields.tsx';
import { PantryField } from '../../ui/goals/pantry-field.tsx';
import { RuleFields } from '../../ui/goals/rule-fields.tsx';
import type { Pantry } from '../../ui/hooks/use-pantry.ts';

interface Props {
  adaptation: Adaptation;
  preferences: Preferences;
  table: FoodTable;
  pantry: Pantry;
  onGoals(goals: Partial<Goals>): void;
}

const SWEETNESS = [1, 0.8, 0.6, 0.4] as const;

function Sweetness({ goals, onGoals }: { goals: Goals; onGoals: Props['onGoals'] }) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>Sweetness</label>
      <select
        id={id}
        value={String(goals.sweetness)}
        onChange={({ currentTarget }) => onGoals({ sweetness: Number(currentTarget.value) })}
      >
        {SWEETNESS.map((share) => (
          <option key={share} value={String(share)}>
            {share === 1 ? 'as in the original' : `${Math.round(share * 100)} % of it`}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Everything else the user may ask of the plan. */
export function Wishes({ adaptation, preferences, table, pantry, onGoals }: Props) {
  const { goals } = adaptation;
  const { excludedSwaps } = goals;
  return (
    <details class="wishes no-print">
      <summary>More wishes: limits, sweetness, what is at home, allergens, counting</summary>
      <LimitFields goals={goals} preferences={preferences} onGoals={onGoals} />
      <PantryField adaptation={adaptation} table={table} pantry={pantry} onGoals={onGoals} />
      <Sweetness goals={goals} onGoals={onGoals} />
      <RuleFields rule={goals.rule} onRule={(rule) => onGoals({ rule })} />
      <AllergenBoxes
        legend="Never add foods with"
        chosen={goals.avoid}
        onChosen={(avoid) => onGoals({ avoid })}
      />
      {excludedSwaps.length > 0 && (
        <button type="button" onClick={() => onGoals({ excludedSwaps: [] })}>
          Allow {excludedSwaps.length === 1 ? 'the swap' : `${excludedSwaps.length} swaps`} ruled
          out before
        </button>
      )}
    </details>
  );
}
