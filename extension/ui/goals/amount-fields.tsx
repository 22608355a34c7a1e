/** How amounts are shown and how much is made. A serving stays what it is. */
import { useId } from 'preact/hooks';
import { NumberField } from '../controls/number-field.tsx';
import { short } from '../figures/format.ts';
import { type AmountWish, factorText } from '../recipe/shown-amounts.ts';
import { type MessageKey, say } from '../words/say.ts';
import { PanFields } from './pan-fields.tsx';

const SYSTEMS: readonly [AmountWish['system'], MessageKey][] = [
  ['page', 'asInRecipe'],
  ['metric', 'metric'],
  ['us', 'usCups'],
];

const FACTORS = [0.5, 1, 2] as const;

interface Props {
  wish: AmountWish;
  servings: number;
  onWish(wish: AmountWish): void;
}

export function AmountFields({ wish, servings, onWish }: Props) {
  const id = useId();
  const { system, factor } = wish;
  const unit = system === 'us' ? 'in' : 'cm';
  return (
    <div class="amount-fields">
      <div class="amount-row">
        <div class="field">
          <label for={`${id}-system`}>{say('amounts')}</label>
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
                {say(text)}
              </option>
            ))}
          </select>
        </div>
        <fieldset class="factors">
          <legend>{say('howMuch')}</legend>
          {FACTORS.map((one) => (
            <label key={one} class="tick">
              <input
                type="radio"
                name={`${id}-factor`}
                checked={factor === one}
                onChange={() => onWish({ ...wish, factor: one })}
              />
              <span>{factorText(one)}</span>
            </label>
          ))}
        </fieldset>
        <NumberField
          label={say('orTimes')}
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
          {say('makesServings', factorText(factor), short(servings * factor))}
        </p>
      )}
    </div>
  );
}
