/** A number between its two buttons: pressed up and down, or typed. */
import { useEffect, useId, useState } from 'preact/hooks';
import { digitsOf } from '../figures/format.ts';
import { say } from '../words/say.ts';

interface Props {
  /** Whole name, for readers. */
  label: string;
  /** Stands after the number. */
  unit: string;
  /** Stands below it. */
  caption: string;
  value: number;
  min: number;
  max: number;
  step?: number;
  onValue(value: number): void;
}

const shown = (value: number): string => digitsOf(value, 0, 2);

/** A typed number in either way of writing it; null for anything else. */
export function typedNumber(text: string): number | null {
  const bare = text.trim().replace(',', '.');
  return /^\d+(\.\d*)?$|^\.\d+$/.test(bare) ? Number(bare) : null;
}

export function Stepper({ label, unit, caption, value, min, max, step = 1, onValue }: Props) {
  const id = useId();
  const [text, setText] = useState(shown(value));
  const number = typedNumber(text);
  const wrong = number === null || number < min || number > max;
  useEffect(() => {
    if (typedNumber(text) !== value) setText(shown(value));
  }, [value]);
  const typed = (next: string) => {
    setText(next);
    const read = typedNumber(next);
    if (read !== null && read >= min && read <= max && read !== value) onValue(read);
  };
  const move = (by: number) => {
    const stepped =
      by > 0 ? Math.floor(value / step + 1e-9) + 1 : Math.ceil(value / step - 1e-9) - 1;
    onValue(Math.min(max, Math.max(min, stepped * step)));
  };
  return (
    <div class="stepper">
      <button
        type="button"
        aria-label={say('stepLess', label)}
        disabled={value <= min}
        onClick={() => move(-1)}
      >
        −
      </button>
      <label class="stepper-value" for={id}>
        <span class="stepper-figure">
          <input
            id={id}
            type="text"
            inputMode="decimal"
            autocomplete="off"
            size={Math.max(2, text.length)}
            value={text}
            aria-label={label}
            aria-invalid={wrong}
            onInput={({ currentTarget }) => typed(currentTarget.value)}
            onBlur={() => wrong && setText(shown(value))}
            onKeyDown={(event) => {
              if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
              event.preventDefault();
              move(event.key === 'ArrowUp' ? 1 : -1);
            }}
          />
          {unit !== '' && <span aria-hidden="true"> {unit}</span>}
        </span>
        <span class="stepper-caption" aria-hidden="true">
          {wrong ? say('numberFromTo', shown(min), shown(max)) : caption}
        </span>
      </label>
      <button
        type="button"
        aria-label={say('stepMore', label)}
        disabled={value >= max}
        onClick={() => move(1)}
      >
        +
      </button>
    </div>
  );
}
