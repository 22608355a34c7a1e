import { useId } from 'preact/hooks';
import { NumberField } from '../controls/number-field.tsx';
import { short } from '../figures/format.ts';
import { type AmountWish, factorText } from '../recipe/shown-amounts.ts';
import { PanFields } from './pan-fields.tsx';

const SYSTEMS: readonly [AmountWish['system'], string][] = [
  ['page', 'as in the recipe'],
  ['metric', 'metric'],
  ['us', 'US cups and spoons'],
];

const FACTORS = [0.5, 1, 2] as const;

interface Props {
  wish: AmountWish;
  servings: number;
  onWish(wish: AmountWish): void;
}

/** How amounts are shown and how much is made. A serving stays what it is. */
export function AmountFields({ wish, servings, onWish }: Props) {
  const id = useId();
  const { system, factor } = wish;
  const unit = system === 'us' ? 'in' : 'cm';
  return (
    <div class="amount-fields">
      <div class="amount-row no-print">
        <div class="field">
          <label for={`${id}-system`}>Amounts</label>
          <select
            id={`${id}-system`}
            value={system}
            onChange={({ currentTarget }) => {
              const picked = SYSTEMS.find(([one]) => one === currentTarget.value);
              if (picked) onWish({ ...wish, system: picked[0] });
            }}
          >
            {SYSTEMS.map(([one, text]) => (
              <option key={one} value={one}>
                {text}
              </option>
            ))}
          </select>
        </div>
        <fieldset class="factors">
          <legend>How much</legend>
          {FACTORS.map((one) => (
            <label key={one} class="tick">
              <input
                type="radio"
                name={`${id}-factor`}
                checked={factor === one}
                onChange={() => onWish({ ...wish, factor: one })}
              />{' '}
              {factorText(one)}
            </label>
          ))}
        </fieldset>
        <NumberField
          label="Or times"
          value={factor}
          min={0.05}
          max={50}
          onValue={(value) => onWish({ ...wish, factor: value })}
        />
        <PanFields
          key={unit}
          unit={unit}
          onFactor={(value) => onWish({ ...wish, factor: value })}
        />
      </div>
      {factor !== 1 && (
        <p role="status" class="factor-note">
          <strong>{factorText(factor)}</strong>: makes {short(servings * factor)} servings; the
          figures of one serving stay.
        </p>
      )}
    </div>
  );
}
