import { useId } from 'preact/hooks';
import { FAMILIES, type Goals, type Plan } from '../../../engine/model.ts';
import { AllergenBoxes } from '../../ui/allergen-boxes.tsx';
import { RuleFields } from '../../ui/rule-fields.tsx';

interface Props {
  goals: Goals;
  family: Plan['family'];
  onGoals(goals: Partial<Goals>): void;
}

const SWEETNESS = [1, 0.8, 0.6, 0.4] as const;

const words = (id: string): string => id.replaceAll('-', ' ');

/** Everything else the user may ask of the plan. */
export function Wishes({ goals, family, onGoals }: Props) {
  const id = useId();
  const { excludedSwaps } = goals;
  return (
    <details class="wishes no-print">
      <summary>Kind of dish, sweetness, allergens, counting</summary>
      <div class="field">
        <label for={`${id}-family`}>Kind of dish</label>
        <select
          id={`${id}-family`}
          value={goals.family ?? ''}
          onChange={({ currentTarget }) =>
            onGoals({ family: FAMILIES.find((one) => one === currentTarget.value) ?? null })
          }
        >
          <option value="">as recognised: {words(family.id)}</option>
          {FAMILIES.map((one) => (
            <option key={one} value={one}>
              {words(one)}
            </option>
          ))}
        </select>
        <span class="field-note">{family.why}</span>
      </div>
      <div class="field">
        <label for={`${id}-sweet`}>Sweetness</label>
        <select
          id={`${id}-sweet`}
          value={String(goals.sweetness)}
          onChange={({ currentTarget }) => onGoals({ sweetness: Number(currentTarget.value) })}
        >
          {SWEETNESS.map((share) => (
            <option key={share} value={String(share)}>
              {share === 1 ? 'as in the original' : `${Math.round(share * 100)}% of it`}
            </option>
          ))}
        </select>
      </div>
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
