/** From the recipe's pan to the user's own: the batter stands as high as before. */
import { useId, useState } from 'preact/hooks';
import { type Pan, panFactor } from '../../../engine/index.ts';
import { NumberField } from '../controls/number-field.tsx';
import { factorText } from '../recipe/shown-amounts.ts';
import { type MessageKey, say } from '../words/say.ts';

type Shape = Pan['shape'];
type Unit = Pan['unit'];

interface Draft {
  shape: Shape;
  /** Across, side or length. */
  first: number;
  /** Width of a rectangle or loaf pan. */
  second: number;
}

const SHAPES: readonly [Shape, MessageKey, MessageKey][] = [
  ['round', 'panRound', 'panAcross'],
  ['square', 'panSquare', 'panSide'],
  ['rectangular', 'panRectangular', 'panLength'],
  ['loaf', 'panLoaf', 'panLength'],
];

const START: Record<Unit, Draft> = {
  cm: { shape: 'round', first: 23, second: 13 },
  in: { shape: 'round', first: 9, second: 5 },
};

function panOf({ shape, first, second }: Draft, unit: Unit): Pan {
  switch (shape) {
    case 'round':
      return { shape, across: first, unit };
    case 'square':
      return { shape, side: first, unit };
    default:
      return { shape, length: first, width: second, unit };
  }
}

interface OneProps {
  legend: string;
  draft: Draft;
  unit: Unit;
  onDraft(draft: Draft): void;
}

function OnePan({ legend, draft, unit, onDraft }: OneProps) {
  const id = useId();
  const first = SHAPES.find(([shape]) => shape === draft.shape)?.[2] ?? 'panAcross';
  const flat = draft.shape === 'rectangular' || draft.shape === 'loaf';
  return (
    <fieldset class="pan">
      <legend>{legend}</legend>
      <div class="field">
        <label for={id}>{say('panShape')}</label>
        <select
          id={id}
          value={draft.shape}
          onChange={({ currentTarget }) => {
            const picked = SHAPES.find(([shape]) => shape === currentTarget.value);
            if (picked) onDraft({ ...draft, shape: picked[0] });
          }}
        >
          {SHAPES.map(([shape, text]) => (
            <option key={shape} value={shape}>
              {say(text)}
            </option>
          ))}
        </select>
      </div>
      <NumberField
        label={say(first)}
        unit={unit}
        value={draft.first}
        min={1}
        max={200}
        onValue={(value) => onDraft({ ...draft, first: value })}
      />
      {flat && (
        <NumberField
          label={say('panWidth')}
          unit={unit}
          value={draft.second}
          min={1}
          max={200}
          onValue={(value) => onDraft({ ...draft, second: value })}
        />
      )}
    </fieldset>
  );
}

interface Props {
  unit: Unit;
  onFactor(factor: number): void;
}

export function PanFields({ unit, onFactor }: Props) {
  const [theirs, setTheirs] = useState<Draft>(START[unit]);
  const [mine, setMine] = useState<Draft>(START[unit]);
  const factor = panFactor(panOf(theirs, unit), panOf(mine, unit));
  const tidy = factor === null ? null : Math.round(factor * 100) / 100;
  return (
    <details class="plain-fold pans">
      <summary>{say('byPan')}</summary>
      <div class="pan-pair">
        <OnePan legend={say('theirPan')} draft={theirs} unit={unit} onDraft={setTheirs} />
        <OnePan legend={say('yourPan')} draft={mine} unit={unit} onDraft={setMine} />
      </div>
      {tidy !== null && (
        <button type="button" class="button" onClick={() => onFactor(tidy)}>
          {say('takeFactor', factorText(tidy))}
        </button>
      )}
    </details>
  );
}
