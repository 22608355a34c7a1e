/** One package label, typed in. What looks wrong is shown first and kept only when confirmed. */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { foodFromLabel, type PackageLabel } from '../../../engine/index.ts';
import type { Food, Note } from '../../../engine/model.ts';
import { AllergenBoxes } from '../goals/allergen-boxes.tsx';
import { toldHere } from '../words/engine-language.ts';
import { foodWord } from '../words/food-words.ts';
import { type MessageKey, say } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';
import {
  type Draft,
  draftFrom,
  EMPTY_DRAFT,
  FIELDS,
  type FieldError,
  type Form,
  labelFrom,
  OWN,
  standIns,
} from './label-fields.ts';

interface Props {
  /** The label of a kept package that is changed; none for a new one. */
  start?: PackageLabel;
  /** Resolves to what went wrong, or null when the food is kept. */
  onKeep(food: Food, label: PackageLabel): Promise<string | null>;
}

const FORMS: readonly [Form, MessageKey][] = [
  ['us', 'labelFormUs'],
  ['eu', 'labelFormEu'],
];

type Errors = readonly (FieldError | { field: null; text: string })[];

function ErrorSummary({ errors, idOf }: { errors: Errors; idOf(field: string): string }) {
  const summary = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (errors.length > 0) summary.current?.focus();
  }, [errors]);
  return (
    <div role="alert">
      {errors.length > 0 && (
        <div class="failure" ref={summary} tabIndex={-1}>
          <p>{say('notKeptYet')}</p>
          <ul>
            {errors.map(({ field, text }) => (
              <li key={text}>{field ? <a href={`#${idOf(field)}`}>{text}</a> : text}</li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
}

function StandIn({ id, draft, wrong, onDraft }: PartProps & { id: string; wrong: boolean }) {
  return (
    <div class="field">
      <label for={id}>{say('standsInFor')}</label>
      <select
        id={id}
        value={draft.standsInFor}
        aria-invalid={wrong}
        aria-describedby={`${id}-note`}
        onChange={({ currentTarget }) => onDraft({ standsInFor: currentTarget.value })}
      >
        <option value="">{say('choose')}</option>
        {standIns().map(([kind, foods]) => (
          <optgroup key={kind} label={say(kind)}>
            {foods.map((food) => (
              <option key={food.id} value={food.id}>
                {foodWord(food.id, food.name)}
              </option>
            ))}
          </optgroup>
        ))}
        <option value={OWN}>{say('standsInForNothing')}</option>
      </select>
      <span id={`${id}-note`} class="field-note">
        {say('standsInForHow')}
      </span>
    </div>
  );
}

interface PartProps {
  draft: Draft;
  onDraft(change: Partial<Draft>): void;
}

function Figures({
  draft,
  errors,
  idOf,
  onDraft,
}: PartProps & { errors: Errors; idOf(field: string): string }) {
  return (
    <>
      <fieldset class="boxes">
        <legend>{say('whichLabel')}</legend>
        {FORMS.map(([form, text]) => (
          <label key={form}>
            <input
              type="radio"
              name={idOf('form')}
              checked={draft.form === form}
              onChange={() => onDraft({ form })}
            />{' '}
            {say(text)}
          </label>
        ))}
      </fieldset>
      <p class="soft" id={idOf('figures')}>
        {say('figuresAsPrinted')}
      </p>
      <div class="label-figures">
        {FIELDS[draft.form].map(({ name, label, unit, required }) => (
          <div class="field" key={name}>
            <label for={idOf(name)}>
              {say(label)}
              {!required && <span class="soft"> {say('ifGiven')}</span>}
            </label>
            <span class="field-input">
              <input
                id={idOf(name)}
                type="text"
                inputMode="decimal"
                autocomplete="off"
                value={draft.typed[name] ?? ''}
                required={required}
                aria-invalid={errors.some(({ field }) => field === name)}
                aria-describedby={idOf('figures')}
                onInput={({ currentTarget }) =>
                  onDraft({ typed: { ...draft.typed, [name]: currentTarget.value } })
                }
              />
              <span>{unit}</span>
            </span>
          </div>
        ))}
      </div>
    </>
  );
}

function Ingredients({ draft, onDraft }: PartProps) {
  return (
    <>
      <fieldset class="boxes">
        <legend>{say('ingredientsListed')}</legend>
        <label>
          <input
            type="checkbox"
            checked={draft.glutenAmongFirst}
            onChange={({ currentTarget }) => onDraft({ glutenAmongFirst: currentTarget.checked })}
          />{' '}
          {say('glutenAmongFirst')}
        </label>
        <label>
          <input
            type="checkbox"
            checked={draft.otherProteins}
            onChange={({ currentTarget }) => onDraft({ otherProteins: currentTarget.checked })}
          />{' '}
          {say('otherProteins')}
        </label>
      </fieldset>
      <AllergenBoxes
        legend={say('packageAllergens')}
        chosen={draft.allergens}
        onChosen={(allergens) => onDraft({ allergens })}
      />
    </>
  );
}

export function LabelForm({ start, onKeep }: Props) {
  const id = useId();
  const idOf = (field: string): string => `${id}-${field}`;
  const [draft, setDraft] = useState<Draft>(start ? draftFrom(start) : EMPTY_DRAFT);
  const [errors, setErrors] = useState<Errors>([]);
  const [warnings, setWarnings] = useState<readonly Note[]>([]);
  const change = (part: Partial<Draft>) => {
    setDraft({ ...draft, ...part });
    setWarnings([]);
  };
  const refuse = (found: Errors) => {
    setErrors(found);
    setWarnings([]);
  };
  const keep = async () => {
    const label = labelFrom(draft);
    if ('length' in label) return refuse(label);
    const result = foodFromLabel(label);
    if (!result.ok) return refuse([{ field: null, text: toldHere(result.why).text }]);
    setErrors([]);
    if (result.warnings.length > 0 && warnings.length === 0) return setWarnings(result.warnings);
    const why = await onKeep(result.food, label);
    if (why !== null) return refuse([{ field: null, text: why }]);
    if (!start) setDraft({ ...EMPTY_DRAFT, form: draft.form });
    setWarnings([]);
  };
  const wrong = (name: string): boolean => errors.some(({ field }) => field === name);
  return (
    <form
      class="label-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <div class="field">
        <label for={idOf('name')}>{say('packageName')}</label>
        <input
          id={idOf('name')}
          type="text"
          maxLength={80}
          autocomplete="off"
          value={draft.name}
          required
          aria-invalid={wrong('name')}
          onInput={({ currentTarget }) => change({ name: currentTarget.value })}
        />
      </div>
      <StandIn
        id={idOf('standsInFor')}
        draft={draft}
        wrong={wrong('standsInFor')}
        onDraft={change}
      />
      <Figures draft={draft} errors={errors} idOf={idOf} onDraft={change} />
      <Ingredients draft={draft} onDraft={change} />
      <ErrorSummary errors={errors} idOf={idOf} />
      <div role="status">
        {warnings.length > 0 && (
          <div class="label-warnings">
            <p>{say('checkBeforeUse')}</p>
            <ul>
              {warnings.map(({ text }) => (
                <li key={text}>
                  <ToldSentence text={text} />
                </li>
              ))}
            </ul>
          </div>
        )}
      </div>
      <button type="submit" class="button first">
        {say(warnings.length > 0 ? 'checkedKeep' : 'checkAndKeep')}
      </button>
    </form>
  );
}
