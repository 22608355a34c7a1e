/** One bake, told: how it was first, then what is quick; everything but the day may be left out. */

import { useId, useState } from 'preact/hooks';
import type { Family } from '../../../engine/model.ts';
import type { Bake, Readings } from '../../store/records.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { Fold } from '../controls/fold.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { factorText } from '../recipe/shown-amounts.ts';
import { type MessageKey, say } from '../words/say.ts';
import { cookWords } from './dish-words.ts';
import { celsiusOf, HEAT_UNITS, type Heat, shownHeat } from './heat-scale.ts';
import { HowWasIt } from './how-was-it.tsx';
import type { MeterUnit } from './meter/meter-series.ts';
import { noReadings, ReadingFields, typedReadings } from './meter/reading-fields.tsx';
import { SymptomBoxes } from './symptom-boxes.tsx';

/** What the user tells of a bake. */
export interface BakeWords {
  day: string;
  how: Bake['how'];
  dishGrams: number | null;
  pieces: number | null;
  sliceGrams: number | null;
  innerC: number | null;
  cooledHours: number | null;
  extraWaterG: number | null;
  ovenSetC: number | null;
  ovenReadC: number | null;
  minutes: number | null;
  symptoms: string[];
  readings: Readings | null;
  notes: string;
}

/** Today by the user's own calendar, '2026-11-25'. */
export function today(now: Date = new Date()): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

const empty = (): BakeWords => ({
  day: today(),
  how: null,
  dishGrams: null,
  pieces: null,
  sliceGrams: null,
  innerC: null,
  cooledHours: null,
  extraWaterG: null,
  ovenSetC: null,
  ovenReadC: null,
  minutes: null,
  symptoms: [],
  readings: null,
  notes: '',
});

type Measure =
  | 'dishGrams'
  | 'pieces'
  | 'sliceGrams'
  | 'innerC'
  | 'cooledHours'
  | 'extraWaterG'
  | 'ovenSetC'
  | 'ovenReadC'
  | 'minutes';

interface MeasureField {
  name: Measure;
  label: MessageKey;
  /** 'heat' stands for degrees of the user's oven; its bounds are °C. */
  unit?: string;
  min: number;
  max: number;
}

/** What the scale and the knife say; the weighed dish has its own words. */
const MEASURES: readonly MeasureField[] = [
  { name: 'dishGrams', label: 'wholeDish', unit: 'g', min: 1, max: 100_000 },
  { name: 'pieces', label: 'servingsCut', min: 1, max: 1000 },
  { name: 'sliceGrams', label: 'oneWeighed', unit: 'g', min: 1, max: 100_000 },
];

const HEAT = 'heat';

/** Water, oven, times: what a series of bakes learns from. */
const KITCHEN: readonly MeasureField[] = [
  { name: 'extraWaterG', label: 'waterBeyondList', unit: 'g', min: -5000, max: 5000 },
  { name: 'ovenSetC', label: 'ovenSet', unit: HEAT, min: 30, max: 350 },
  { name: 'ovenReadC', label: 'ovenRead', unit: HEAT, min: 30, max: 400 },
  { name: 'minutes', label: 'minutesTook', unit: 'min', min: 0, max: 6000 },
  { name: 'innerC', label: 'centreWhenOut', unit: HEAT, min: -30, max: 250 },
  { name: 'cooledHours', label: 'cooledBefore', unit: 'h', min: 0, max: 500 },
];

interface Props {
  family: Family;
  /** How much of the recipe is made. */
  factor: number;
  /** Unit of the user's meter. */
  meter: MeterUnit;
  onMeterUnit(unit: MeterUnit): void;
  /** Scale of the user's oven. */
  heat: Heat;
  /** Resolves to what went wrong, or null when the bake is kept. */
  onKeep(words: BakeWords): Promise<string | null>;
}

interface PartProps {
  words: BakeWords;
  /** Goes up when the form is emptied. */
  round: number;
  onChange(part: Partial<BakeWords>): void;
}

interface MeasuresProps extends PartProps {
  fields: readonly MeasureField[];
  family: Family;
  heat: Heat;
}

/** A field in degrees of the user's oven. */
const inHeat = (field: Pick<MeasureField, 'min' | 'max'>, heat: Heat) => ({
  unit: HEAT_UNITS[heat],
  min: shownHeat(field.min, heat),
  max: shownHeat(field.max, heat),
});

function Measures({ fields, words, family, heat, round, onChange }: MeasuresProps) {
  return (
    <div class="bake-measures">
      {fields.map(({ name, label, ...field }) => {
        const hot = field.unit === HEAT;
        const value = words[name];
        return (
          <NumberField
            key={`${name}.${round}`}
            {...(hot ? inHeat(field, heat) : field)}
            label={name === 'dishGrams' ? say(label, cookWords(family).after) : say(label)}
            value={hot && value !== null ? shownHeat(value, heat) : value}
            onValue={(typed) => onChange({ [name]: hot ? celsiusOf(typed, heat) : typed })}
            onClear={() => onChange({ [name]: null })}
          />
        );
      })}
    </div>
  );
}

type MeterProps = PartProps & Pick<Props, 'meter' | 'onMeterUnit'>;

function Meter({ words, meter, round, onChange, onMeterUnit }: MeterProps) {
  return (
    <Fold title={say('meterFold')} name="meter">
      {() => (
        <ReadingFields
          readings={words.readings ?? noReadings(meter)}
          round={round}
          onReadings={(readings) => onChange({ readings })}
          onUnit={onMeterUnit}
        />
      )}
    </Fold>
  );
}

function DayAndHow({ words, id, onChange }: Omit<PartProps, 'round'> & { id: string }) {
  return (
    <>
      <HowWasIt how={words.how} onHow={(how) => onChange({ how })} />
      <div class="field">
        <label for={`${id}-day`}>{say('day')}</label>
        <input
          id={`${id}-day`}
          type="date"
          value={words.day}
          required
          onInput={({ currentTarget }) => onChange({ day: currentTarget.value })}
        />
      </div>
    </>
  );
}

function OwnWords({ words, id, onChange }: Omit<PartProps, 'round'> & { id: string }) {
  return (
    <div class="field wide">
      <label for={`${id}-notes`}>{say('ownWords')}</label>
      <textarea
        id={`${id}-notes`}
        rows={3}
        maxLength={5000}
        value={words.notes}
        onInput={({ currentTarget }) => onChange({ notes: currentTarget.value })}
      />
    </div>
  );
}

export function BakeForm({ family, factor, meter, onMeterUnit, heat, onKeep }: Props) {
  const id = useId();
  const [words, setWords] = useState<BakeWords>(empty);
  const [failure, setFailure] = useState<string | null>(null);
  const [round, setRound] = useState(0);
  const change = (part: Partial<BakeWords>) => setWords((now) => ({ ...now, ...part }));
  const keep = async () => {
    if (!/^\d{4}-\d{2}-\d{2}$/.test(words.day)) return setFailure(say('giveDay'));
    const readings = words.readings && typedReadings(words.readings);
    const why = await onKeep({ ...words, readings });
    setFailure(why);
    if (why !== null) return;
    setWords(empty());
    setRound(round + 1);
  };
  const part = { words, round, onChange: change };
  return (
    <form
      class="bake-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <DayAndHow {...part} id={id} />
      {factor !== 1 && <p>{say('toldOfFactor', factorText(factor))}</p>}
      <Measures {...part} fields={MEASURES} family={family} heat={heat} />
      <SymptomBoxes
        family={family}
        chosen={words.symptoms}
        onChosen={(symptoms) => change({ symptoms })}
      />
      <Fold title={say('waterOvenTimes')} aside={say('waterOvenWhy')} name="kitchen">
        {() => <Measures {...part} fields={KITCHEN} family={family} heat={heat} />}
      </Fold>
      <Meter {...part} meter={meter} onMeterUnit={onMeterUnit} />
      <OwnWords {...part} id={id} />
      <FailureLine text={failure} />
      <button type="submit" class="button first">
        {say('keepBake')}
      </button>
    </form>
  );
}
