/** Further limits of a serving. An empty field sets none. */
import { useId } from 'preact/hooks';
import type { Goals } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import { NumberField } from '../controls/number-field.tsx';
import { KJ_PER_KCAL, SALT_PER_SODIUM } from '../figures/format.ts';
import { say } from '../words/say.ts';

interface Props {
  goals: Goals;
  preferences: Pick<Preferences, 'energy' | 'sodium'>;
  onGoals(goals: Partial<Goals>): void;
}

const SHARES = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8] as const;

function FlourKept({ goals, onGoals }: Pick<Props, 'goals' | 'onGoals'>) {
  const id = useId();
  const shares = [...new Set([...SHARES, goals.flourKept])].sort((a, b) => a - b);
  return (
    <div class="field">
      <label for={id}>{say('flourStays')}</label>
      <select
        id={id}
        value={String(goals.flourKept)}
        onChange={({ currentTarget }) => onGoals({ flourKept: Number(currentTarget.value) })}
      >
        {shares.map((share) => (
          <option key={share} value={String(share)}>
            {share === 0
              ? say('asLittleAsAllowed')
              : say('atLeastPercent', Math.round(share * 100))}
          </option>
        ))}
      </select>
    </div>
  );
}

export function LimitFields({ goals, preferences, onGoals }: Props) {
  const kJ = preferences.energy === 'kJ';
  const salt = preferences.sodium === 'salt';
  const energyScale = kJ ? KJ_PER_KCAL : 1;
  const sodiumScale = salt ? SALT_PER_SODIUM / 1000 : 1;
  const scaled = (value: number | null, scale: number) => (value === null ? null : value * scale);
  return (
    <>
      <label class="tick">
        <input
          type="checkbox"
          checked={goals.cautious}
          onChange={({ currentTarget }) => onGoals({ cautious: currentTarget.checked })}
        />
        <span>{say('beCautious')}</span>
      </label>
      <FlourKept goals={goals} onGoals={onGoals} />
      <fieldset class="limit-fields">
        <legend>{say('limitsLegend')}</legend>
        <NumberField
          label={say('fibreFloor')}
          unit="g"
          value={goals.fibreFloorG}
          min={0}
          max={100}
          onValue={(fibreFloorG) => onGoals({ fibreFloorG })}
          onClear={() => onGoals({ fibreFloorG: null })}
        />
        <NumberField
          label={say(salt ? 'saltLimit' : 'sodiumLimit')}
          unit={salt ? 'g' : 'mg'}
          value={scaled(goals.sodiumLimitMg, sodiumScale)}
          min={0}
          max={salt ? 50 : 20_000}
          onValue={(value) => onGoals({ sodiumLimitMg: value / sodiumScale })}
          onClear={() => onGoals({ sodiumLimitMg: null })}
        />
        <NumberField
          label={say('energyLimit')}
          unit={kJ ? 'kJ' : 'kcal'}
          value={scaled(goals.energyLimitKcal, energyScale)}
          min={0}
          max={kJ ? 20_000 : 5000}
          onValue={(value) => onGoals({ energyLimitKcal: value / energyScale })}
          onClear={() => onGoals({ energyLimitKcal: null })}
        />
      </fieldset>
    </>
  );
}
