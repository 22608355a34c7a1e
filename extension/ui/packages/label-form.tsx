import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { foodFromLabel, type PackageLabel } from '../../../engine/index.ts';
import type { Food, Note } from '../../../engine/model.ts';
import { AllergenBoxes } from '../goals/allergen-boxes.tsx';
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

const FORMS: readonly [Form, string][] = [
  ['us', 'US: figures for one serving'],
  ['eu', 'EU or UK: figures for 100 g'],
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
          <p>Not kept yet:</p>
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
      <label for={id}>Stands in for</label>
      <select
        id={id}
        value={draft.standsInFor}
        aria-invalid={wrong}
        aria-describedby={`${id}-note`}
        onChange={({ currentTarget }) => onDraft({ standsInFor: currentTarget.value })}
      >
        <option value="">choose…</option>
        {standIns().map(([kind, foods]) => (
          <optgroup key={kind} label={kind}>
            {foods.map((food) => (
              <option key={food.id} value={food.id}>
                {food.name}
              </option>
            ))}
          </optgroup>
        ))}
        <option value={OWN}>nothing: a food of its own, for correcting a line</option>
      </select>
      <span id={`${id}-note`} class="field-note">
        Plans and recipes then use your package wherever they would use this food.
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
        <legend>Which label</legend>
        {FORMS.map(([form, text]) => (
          <label key={form}>
            <input
              type="radio"
              name={idOf('form')}
              checked={draft.form === form}
              onChange={() => onDraft({ form })}
            />{' '}
            {text}
          </label>
        ))}
      </fieldset>
      <p class="quiet" id={idOf('figures')}>
        As printed, for the dry product. Leave empty what the label does not give; type &lt;1 for
        “less than 1 g”.
      </p>
      <div class="label-figures">
        {FIELDS[draft.form].map(({ name, label, unit, required }) => (
          <div class="field" key={name}>
            <label for={idOf(name)}>
              {label}
              {!required && <span class="quiet"> (if given)</span>}
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
        <legend>List of ingredients</legend>
        <label>
          <input
            type="checkbox"
            checked={draft.glutenAmongFirst}
            onChange={({ currentTarget }) => onDraft({ glutenAmongFirst: currentTarget.checked })}
          />{' '}
          wheat gluten is among the first three
        </label>
        <label>
          <input
            type="checkbox"
            checked={draft.otherProteins}
            onChange={({ currentTarget }) => onDraft({ otherProteins: currentTarget.checked })}
          />{' '}
          soy, pea, faba bean or lupin protein is listed
        </label>
      </fieldset>
      <AllergenBoxes
        legend="Allergens the package names"
        chosen={draft.allergens}
        onChosen={(allergens) => onDraft({ allergens })}
      />
    </>
  );
}

/** One package label, typed in. What looks wrong is shown first and kept only when confirmed. */
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
    if (!result.ok) return refuse([{ field: null, text: result.why }]);
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
        <label for={idOf('name')}>Name of the package</label>
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
            <p>Please check before it is used:</p>
            <ul>
              {warnings.map(({ text }) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </div>
        )}
      </div>
      <button type="submit" class="primary">
        {warnings.length > 0 ? 'Checked, keep it as typed' : 'Check and keep this package'}
      </button>
    </form>
  );
}
