/** Preferences: country and budget, what is never eaten, units, language. */
import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Preferences } from '../../store/prefs.ts';
import { bandIn } from '../bakes/meter/meter-unit.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { AllergenBoxes } from '../goals/allergen-boxes.tsx';
import { RuleFields } from '../goals/rule-fields.tsx';
import { type MessageKey, say } from '../words/say.ts';
import { COUNTRIES, preferencesIn } from './countries.ts';
import { FirstRun } from './first-run.tsx';
import { PageMarks } from './page-marks-box.tsx';
import { PersonBoxes } from './person-boxes.tsx';

interface Choice<T extends string> {
  label: string;
  value: T;
  options: readonly (readonly [T, MessageKey])[];
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
        {options.map(([option, word]) => (
          <option key={option} value={option}>
            {say(word)}
          </option>
        ))}
      </select>
    </div>
  );
}

const ENERGY = [
  ['kcal', 'unitKcal'],
  ['kJ', 'unitKj'],
] as const;

const AMOUNTS = [
  ['page', 'asInRecipe'],
  ['metric', 'metric'],
  ['us', 'usCups'],
] as const;

const SODIUM = [
  ['sodium', 'sodiumInMg'],
  ['salt', 'saltInG'],
] as const;

const HEAT = [
  ['C', 'heatCelsius'],
  ['F', 'heatFahrenheit'],
] as const;

const METER = [
  ['mg/dL', 'meterMg'],
  ['mmol/L', 'meterMmol'],
] as const;

const LANGUAGE = [
  ['auto', 'languageAuto'],
  ['en', 'languageEn'],
  ['de', 'languageDe'],
] as const;

interface Props {
  preferences: Preferences;
  onChange(change: Partial<Preferences>): void;
}

function Display({ preferences, onChange }: Props) {
  return (
    <>
      <Pick
        label={say('energy')}
        value={preferences.energy}
        options={ENERGY}
        onValue={(energy) => onChange({ energy })}
      />
      <Pick
        label={say('showSaltAs')}
        value={preferences.sodium}
        options={SODIUM}
        onValue={(sodium) => onChange({ sodium })}
      />
      <Pick
        label={say('meterUnitPick')}
        value={preferences.meter}
        options={METER}
        onValue={(meter) =>
          onChange({ meter, meterBand: bandIn(preferences.meterBand, preferences.meter, meter) })
        }
      />
      <Pick
        label={say('heatPick')}
        value={preferences.heat}
        options={HEAT}
        onValue={(heat) => onChange({ heat })}
      />
      <Pick
        label={say('amounts')}
        value={preferences.amounts}
        options={AMOUNTS}
        onValue={(amounts) => onChange({ amounts })}
      />
      <Pick
        label={say('language')}
        value={preferences.language}
        options={LANGUAGE}
        onValue={(language) => onChange({ language })}
      />
    </>
  );
}

function Group({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section class="settings-group" aria-label={title}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}

/** The first questions once more, where they are asked for. */
function AskAgain(props: Props) {
  const [asking, setAsking] = useState(false);
  if (asking) return <FirstRun {...props} asked onDone={() => setAsking(false)} />;
  return (
    <button type="button" class="button" onClick={() => setAsking(true)}>
      {say('askFirstQuestions')}
    </button>
  );
}

export function Settings({ preferences, onChange }: Props) {
  return (
    <div class="settings">
      <p>{say('settingsHow')}</p>
      <AskAgain preferences={preferences} onChange={onChange} />
      <Group title={say('settingsEach')}>
        <NumberField
          label={say('budgetLabel')}
          unit="g"
          value={preferences.budgetG}
          min={0}
          max={500}
          step={0.5}
          hint={say('agreeWithCareTeam')}
          onValue={(budgetG) => onChange({ budgetG })}
        />
        <AllergenBoxes
          legend={say('iNeverEat')}
          chosen={preferences.avoid}
          onChosen={(avoid) => onChange({ avoid })}
        />
        <PersonBoxes person={preferences.person} onPerson={(person) => onChange({ person })} />
      </Group>
      <Group title={say('settingsCounted')}>
        <Pick
          label={say('country')}
          value={preferences.country}
          options={COUNTRIES.map(({ id, word }) => [id, word] as const)}
          onValue={(country) => onChange(preferencesIn(country, preferences))}
        />
        <RuleFields rule={preferences.rule} onRule={(rule) => onChange({ rule })} />
      </Group>
      <Group title={say('settingsShown')}>
        <Display preferences={preferences} onChange={onChange} />
      </Group>
      <PageMarks />
    </div>
  );
}
