import { useEffect, useId, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { storageMessage } from '../../store/failure.ts';
import {
  DEFAULT_PREFERENCES,
  loadPreferences,
  type Preferences,
  storePreferences,
} from '../../store/prefs.ts';
import { Masthead } from '../../ui/controls/masthead.tsx';
import { NumberField } from '../../ui/controls/number-field.tsx';
import { AllergenBoxes } from '../../ui/goals/allergen-boxes.tsx';
import { RuleFields } from '../../ui/goals/rule-fields.tsx';
import { Detection } from './page-marks-option.tsx';

interface Choice<T extends string> {
  label: string;
  value: T;
  options: readonly (readonly [T, string])[];
  onValue(value: T): void;
}

function Pick<T extends string>({ label, value, options, onValue }: Choice<T>) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={({ currentTarget }) => {
          const picked = options.find(([option]) => option === currentTarget.value);
          if (picked) onValue(picked[0]);
        }}
      >
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

const ENERGY = [
  ['kcal', 'kcal'],
  ['kJ', 'kJ'],
] as const;

const SODIUM = [
  ['sodium', 'sodium in mg'],
  ['salt', 'salt in g'],
] as const;

/** What a recipe starts with when it is opened for the first time. */
export function Options() {
  const [preferences, setPreferences] = useState<Preferences | null>(null);
  const [state, setState] = useState<'idle' | 'kept' | { why: string }>('idle');
  useEffect(() => {
    loadPreferences(browser.storage.local).then(setPreferences, (error) => {
      setPreferences(DEFAULT_PREFERENCES);
      setState({ why: storageMessage(error) });
    });
  }, []);
  if (!preferences) return <Masthead />;
  const change = (part: Partial<Preferences>) => {
    const next = { ...preferences, ...part };
    setPreferences(next);
    storePreferences(browser.storage.local, next).then(
      () => setState('kept'),
      (error) => setState({ why: storageMessage(error) }),
    );
  };
  return (
    <>
      <Masthead />
      <main>
        <h2>Preferences</h2>
        <p>What each recipe starts with. You can change it for a recipe at any time.</p>
        <NumberField
          label="Budget a serving, net carbs"
          unit="g"
          value={preferences.budgetG}
          min={0}
          max={500}
          step={0.5}
          hint="Agree on it with your care team."
          onValue={(budgetG) => change({ budgetG })}
        />
        <RuleFields rule={preferences.rule} onRule={(rule) => change({ rule })} />
        <Pick
          label="Energy"
          value={preferences.energy}
          options={ENERGY}
          onValue={(energy) => change({ energy })}
        />
        <Pick
          label="Show salt as"
          value={preferences.sodium}
          options={SODIUM}
          onValue={(sodium) => change({ sodium })}
        />
        <AllergenBoxes
          legend="Never add foods with"
          chosen={preferences.avoid}
          onChosen={(avoid) => change({ avoid })}
        />
        <Detection />
        <p role="status">{state === 'kept' && 'Kept'}</p>
        {typeof state === 'object' && (
          <p role="alert" class="failure">
            {state.why}
          </p>
        )}
      </main>
    </>
  );
}
