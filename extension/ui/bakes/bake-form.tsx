import { useId, useState } from 'preact/hooks';
import { bakeSymptoms } from '../../../engine/index.ts';
import type { Family } from '../../../engine/model.ts';
import { NumberField } from '../controls/number-field.tsx';
import { factorText } from '../recipe/shown-amounts.ts';
import { cookWords } from './dish-words.ts';

/** What the user tells of a bake. */
export interface BakeWords {
  day: string;
  dishGrams: number | null;
  pieces: number | null;
  sliceGrams: number | null;
  innerC: number | null;
  cooledHours: number | null;
  symptoms: string[];
  notes: string;
}

/** Today by the user's own calendar, '2026-11-25'. */
export function today(now: Date = new Date()): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

const empty = (): BakeWords => ({
  day: today(),
  dishGrams: null,
  pieces: null,
  sliceGrams: null,
  innerC: null,
  cooledHours: null,
  symptoms: [],
  notes: '',
});

type Measure = 'dishGrams' | 'pieces' | 'sliceGrams' | 'innerC' | 'cooledHours';

/** What the scale, the knife and the thermometer say; the weighed dish has its own words. */
const MEASURES: readonly {
  name: Measure;
  label: string;
  unit?: string;
  min: number;
  max: number;
}[] = [
  { name: 'dishGrams', label: 'Whole dish', unit: 'g', min: 1, max: 100_000 },
  { name: 'pieces', label: 'Servings cut', min: 1, max: 1000 },
  { name: 'sliceGrams', label: 'One of them weighed', unit: 'g', min: 1, max: 100_000 },
  { name: 'innerC', label: 'Centre when it came out', unit: '°C', min: -30, max: 250 },
  { name: 'cooledHours', label: 'Cooled before cutting', unit: 'hours', min: 0, max: 500 },
];

interface Props {
  family: Family;
  /** How much of the recipe is made. */
  factor: number;
  /** Resolves to what went wrong, or null when the bake is kept. */
  onKeep(words: BakeWords): Promise<string | null>;
}

/** One bake, told: everything but the day may be left out. */
export function BakeForm({ family, factor, onKeep }: Props) {
  const id = useId();
  const [words, setWords] = useState<BakeWords>(empty);
  const [failure, setFailure] = useState<string | null>(null);
  const [round, setRound] = useState(0);
  const change = (part: Partial<BakeWords>) => setWords({ ...words, ...part });
  const keep = async () => {
    if (!/^\d{4}-\d{2}-\d{2}$/.test(words.day)) {
      setFailure('Give the day of the bake.');
      return;
    }
    const why = await onKeep(words);
    setFailure(why);
    if (why !== null) return;
    setWords(empty());
    setRound(round + 1);
  };
  return (
    <form
      class="bake-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <div class="field">
        <label for={`${id}-day`}>Day</label>
        <input
          id={`${id}-day`}
          type="date"
          value={words.day}
          required
          onInput={({ currentTarget }) => change({ day: currentTarget.value })}
        />
      </div>
      {factor !== 1 && (
        <p>
          Told of {factorText(factor)} the recipe, as chosen under Ingredients: weigh and count all
          of it.
        </p>
      )}
      <div class="bake-measures">
        {MEASURES.map(({ name, ...field }) => (
          <NumberField
            key={`${name}.${round}`}
            {...field}
            label={name === 'dishGrams' ? `${field.label} ${cookWords(family).after}` : field.label}
            value={words[name]}
            onValue={(value) => change({ [name]: value })}
            onClear={() => change({ [name]: null })}
          />
        ))}
      </div>
      <fieldset class="boxes">
        <legend>What was not right (none, if all was well)</legend>
        {bakeSymptoms(family).map((symptom) => (
          <label key={symptom.id}>
            <input
              type="checkbox"
              checked={words.symptoms.includes(symptom.id)}
              onChange={({ currentTarget }) =>
                change({
                  symptoms: currentTarget.checked
                    ? [...words.symptoms, symptom.id]
                    : words.symptoms.filter((one) => one !== symptom.id),
                })
              }
            />{' '}
            {symptom.label}
          </label>
        ))}
      </fieldset>
      <div class="field wide">
        <label for={`${id}-notes`}>Your own words</label>
        <textarea
          id={`${id}-notes`}
          rows={3}
          maxLength={5000}
          value={words.notes}
          onInput={({ currentTarget }) => change({ notes: currentTarget.value })}
        />
      </div>
      {failure && (
        <p role="alert" class="failure">
          {failure}
        </p>
      )}
      <button type="submit" class="primary">
        Keep this bake
      </button>
    </form>
  );
}
