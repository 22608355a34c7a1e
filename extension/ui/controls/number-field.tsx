/** A typed number. Tells of each valid value at once and keeps the last one while the text is not valid. */
import { useEffect, useId, useState } from 'preact/hooks';
import { say } from '../words/say.ts';

interface Props {
  label: string;
  unit?: string;
  value: number | null;
  min: number;
  max: number;
  step?: number;
  hint?: string | undefined;
  onValue(value: number): void;
  /** Given where the field may be left empty. */
  onClear?(): void;
}

export function NumberField({ label, unit, value, min, max, step, hint, onValue, onClear }: Props) {
  const id = useId();
  const asText = value === null ? '' : String(Math.round(value * 100) / 100);
  const [text, setText] = useState(asText);
  const [wrong, setWrong] = useState(false);
  useEffect(() => {
    if (text.trim() === '' ? asText !== '' : Number(text.replace(',', '.')) !== Number(asText))
      setText(asText);
  }, [asText]);
  // While what is typed is no number the browser hands over an empty text: that lifts nothing.
  const typed = (next: string, isNumber: boolean) => {
    setText(next);
    if (next.trim() === '' && isNumber && onClear) {
      setWrong(false);
      onClear();
      return;
    }
    const number = next.trim() === '' ? Number.NaN : Number(next.replace(',', '.'));
    const good = Number.isFinite(number) && number >= min && number <= max;
    setWrong(!good);
    if (good && number !== value) onValue(number);
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <span class="field-input">
        <input
          id={id}
          type="number"
          inputMode="decimal"
          min={min}
          max={max}
          step={step ?? 'any'}
          value={text}
          aria-invalid={wrong}
          aria-describedby={wrong || hint ? `${id}-note` : undefined}
          onInput={({ currentTarget }) =>
            typed(currentTarget.value, !currentTarget.validity.badInput)
          }
        />
        {unit && <span aria-hidden="true">{unit}</span>}
      </span>
      {(wrong || hint) && (
        <span id={`${id}-note`} class="field-note">
          {wrong ? say('numberFromTo', min, max) : hint}
        </span>
      )}
    </div>
  );
}
