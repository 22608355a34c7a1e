import { useEffect, useRef, useState } from 'preact/hooks';
import type { PackageLabel } from '../../../engine/index.ts';
import { foodTable } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';
import type { OwnFood } from '../../store/records.ts';
import { amount } from '../figures/format.ts';
import { LabelForm } from './label-form.tsx';

interface Props {
  foods: readonly OwnFood[];
  /** Rows on disk that cannot be read. */
  damaged: number;
  /**
   * Resolves to the package it replaced, or null. `instead` is the kept package that was changed.
   * Rejects with an error whose message is for the user.
   */
  onKeep(food: OwnFood, instead: OwnFood | null): Promise<OwnFood | null>;
  onRemove(food: OwnFood): Promise<void>;
}

/** 'about 21.0 g net carbs in 100 g, 20.5 to 21.5 by its rounding' */
function netText({ per100g, carbohydrateBasis, spread }: Food): string {
  const range = spread.netCarbsG;
  if (!range) return 'net carbs not known';
  const [low, high] = range.map(amount);
  const basis = carbohydrateBasis === 'available' ? 'EU label' : 'US label';
  const fiber = per100g.fiberG === null ? 'fibre not given' : `${amount(per100g.fiberG)} g fibre`;
  return `100 g: ${low} to ${high} g net carbs, ${fiber}, ${basis}`;
}

function standsFor({ id }: Food): string {
  const like = foodTable().byId(id);
  return like ? `stands in for ${like.name}` : 'a food of its own';
}

const words = (error: unknown): string =>
  error instanceof Error ? error.message : 'The browser could not store this.';

interface RowProps {
  food: OwnFood;
  onChange(food: Food, label: PackageLabel): Promise<string | null>;
  onRemove(): void;
}

function PackageRow({ food, onChange, onRemove }: RowProps) {
  const [editing, setEditing] = useState(false);
  const toggle = useRef<HTMLButtonElement>(null);
  const { label } = food;
  const change = async (changed: Food, typed: PackageLabel): Promise<string | null> => {
    const why = await onChange(changed, typed);
    if (why === null) {
      setEditing(false);
      toggle.current?.focus();
    }
    return why;
  };
  return (
    <li>
      <span class="package-name">{food.name}</span>
      <span>{standsFor(food)}</span>
      <span class="quiet">{netText(food)}</span>
      {label ? (
        <button
          type="button"
          ref={toggle}
          aria-expanded={editing}
          onClick={() => setEditing(!editing)}
        >
          {editing ? 'Leave it as it was' : 'Change'}
          <span class="hidden"> {food.name}</span>
        </button>
      ) : (
        <span class="quiet">kept without its label: add it again to change it</span>
      )}
      <button type="button" onClick={onRemove}>
        Remove<span class="hidden"> {food.name}</span>
      </button>
      {editing && label && <LabelForm start={label} onKeep={change} />}
    </li>
  );
}

/** The user's own packages: a list with change, remove and undo, and a form for another label. */
export function OwnFoods({ foods, damaged, onKeep, onRemove }: Props) {
  const [said, setSaid] = useState('');
  const [gone, setGone] = useState<OwnFood | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const undo = useRef<HTMLButtonElement>(null);
  useEffect(() => undo.current?.focus(), [gone]);
  const keep = async (food: OwnFood, instead: OwnFood | null): Promise<string | null> => {
    try {
      const old = await onKeep(food, instead);
      const place =
        old && old.name !== food.name && old.name !== instead?.name
          ? ` It takes the place of ${old.name}.`
          : '';
      setSaid(`${food.name} is kept and ${standsFor(food)}.${place}`);
      setGone(null);
      setFailure(null);
      return null;
    } catch (error) {
      return words(error);
    }
  };
  const remove = async (food: OwnFood) => {
    try {
      await onRemove(food);
      setSaid('');
      setGone(food);
      setFailure(null);
    } catch (error) {
      setFailure(words(error));
    }
  };
  const bringBack = async (food: OwnFood) => setFailure(await keep(food, null));
  return (
    <section id="packages" class="no-print" aria-labelledby="packages-title">
      <h2 id="packages-title">Your packages</h2>
      <p>
        Flours, fibres and sweeteners differ between makers. Type in the label of yours and the
        numbers go by it. The range shown is that of the label's rounding; by law a package may
        itself differ from its label by about a fifth.
      </p>
      {failure && (
        <p role="alert" class="failure">
          {failure}
        </p>
      )}
      {damaged > 0 && (
        <p role="alert" class="failure">
          {damaged === 1 ? 'One package' : `${damaged} packages`} cannot be read and{' '}
          {damaged === 1 ? 'is' : 'are'} not used. Nothing was removed.
        </p>
      )}
      {foods.length > 0 && (
        <ul class="packages">
          {foods.map((food) => (
            <PackageRow
              key={food.id}
              food={food}
              onChange={(changed, label) => keep({ ...changed, label }, food)}
              onRemove={() => void remove(food)}
            />
          ))}
        </ul>
      )}
      <details>
        <summary>Add a package</summary>
        <LabelForm onKeep={(food, label) => keep({ ...food, label }, null)} />
      </details>
      <div role="status" class="undo">
        {said !== '' && <p>{said}</p>}
        {gone && (
          <p>
            {gone.name} is removed.{' '}
            <button type="button" ref={undo} onClick={() => void bringBack(gone)}>
              Undo
            </button>
          </p>
        )}
      </div>
    </section>
  );
}
