/** The user's own packages: a list with change, remove and undo, and a form for another label. */

import { useEffect, useRef, useState } from 'preact/hooks';
import type { PackageLabel } from '../../../engine/index.ts';
import { foodTable } from '../../../engine/index.ts';
import type { Food } from '../../../engine/model.ts';
import type { OwnFood } from '../../store/records.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { Fold } from '../controls/fold.tsx';
import { amount } from '../figures/format.ts';
import { foodWord } from '../words/food-words.ts';
import { say, sayCount } from '../words/say.ts';
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

/** 'In 100 g 20.5 to 21.5 g net carbs, 30 g fibre; EU label' */
function netText({ per100g, carbohydrateBasis, spread }: Food): string {
  const range = spread.netCarbsG;
  if (!range) return say('netNotKnown');
  const [low, high] = range.map(amount);
  const basis = say(carbohydrateBasis === 'available' ? 'labelEu' : 'labelUs');
  const fibre =
    per100g.fiberG === null ? say('fibreNotGiven') : say('fibreGrams', amount(per100g.fiberG));
  return say('packageFigures', String(low), String(high), fibre, basis);
}

function standsFor({ id }: Food): string {
  const like = foodTable().byId(id);
  return like ? say('standsInForFood', foodWord(like.id, like.name)) : say('foodOfItsOwn');
}

const words = (error: unknown): string =>
  error instanceof Error ? error.message : say('notStored');

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
      <p>
        <b class="package-name">{food.name}</b>, {standsFor(food)}
      </p>
      <p class="soft">{netText(food)}</p>
      <div class="package-acts">
        {label ? (
          <button
            type="button"
            class="button"
            ref={toggle}
            aria-expanded={editing}
            onClick={() => setEditing(!editing)}
          >
            {say(editing ? 'putItBack' : 'change')}
            <span class="hidden">{say('ofFood', food.name)}</span>
          </button>
        ) : (
          <span class="soft">{say('keptWithoutLabel')}</span>
        )}
        <button type="button" class="button bare" onClick={onRemove}>
          {say('remove')}
          <span class="hidden">{say('ofFood', food.name)}</span>
        </button>
      </div>
      {editing && label && <LabelForm start={label} onKeep={change} />}
    </li>
  );
}

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
          ? ` ${say('takesPlaceOf', old.name)}`
          : '';
      setSaid(`${say('packageKept', food.name, standsFor(food))}${place}`);
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
      <h2 id="packages-title">{say('yourPackages')}</h2>
      <p class="soft">{say('yourPackagesHow')}</p>
      <FailureLine text={failure} />
      <FailureLine text={damaged > 0 && sayCount('packagesDamaged', damaged)} />
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
      <Fold title={say('addPackage')} name="package">
        {() => <LabelForm onKeep={(food, label) => keep({ ...food, label }, null)} />}
      </Fold>
      <div role="status" class="undo">
        {said !== '' && <p>{said}</p>}
        {gone && (
          <p>
            {say('isRemoved', gone.name)}{' '}
            <button type="button" class="button" ref={undo} onClick={() => void bringBack(gone)}>
              {say('undo')}
            </button>
          </p>
        )}
      </div>
    </section>
  );
}
