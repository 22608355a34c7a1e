/** A slice of a kept dish on the scale, right in the list. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Tally } from '../../../engine/model.ts';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { sliceNetCarbs } from '../bakes/slice.ts';
import { NumberField } from '../controls/number-field.tsx';
import { amount, rangeText, short } from '../figures/format.ts';
import { say } from '../words/say.ts';

/** Weights offered to be pressed. Own choice. */
const RECENT = 4;

export interface SliceActs {
  /** Figures of the dish as it is kept; null when they cannot be worked out. */
  figuresOf(row: ShelfRow): Promise<Tally | null>;
  /** Weights of slices typed lately, latest first; of this dish before others. */
  recent(row: ShelfRow): readonly number[];
  onWeighed(row: ShelfRow, grams: number): void;
}

interface Props extends SliceActs {
  row: ShelfRow;
  onDone(): void;
}

function Figure({ tally, grams }: { tally: Tally; grams: number }) {
  const net = sliceNetCarbs(tally, grams);
  if (!net) return <p>{say('weighDishFirst')}</p>;
  const range = rangeText(net);
  return (
    <p class="slice-figure">
      {say('sliceHas', short(grams), amount(net.best))}
      {range !== '' && ` (${say('likely', range)})`}.
    </p>
  );
}

export function RowSlice({ row, figuresOf, recent, onWeighed, onDone }: Props) {
  const [tally, setTally] = useState<Tally | null | 'reading'>('reading');
  const [grams, setGrams] = useState<number | null>(null);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    figuresOf(row).then(setTally, () => setTally(null));
    place.current?.querySelector('input')?.focus();
  }, []);
  const [offered] = useState(() => recent(row).slice(0, RECENT));
  const close = () => {
    if (grams !== null) onWeighed(row, grams);
    onDone();
  };
  return (
    <div class="row-slice" ref={place}>
      <NumberField
        label={say('sliceOf', row.title)}
        unit="g"
        min={0}
        max={100_000}
        value={grams}
        onValue={setGrams}
        onClear={() => setGrams(null)}
      />
      {offered.length > 0 && (
        <div class="acts">
          {offered.map((one) => (
            <button key={one} type="button" class="button" onClick={() => setGrams(one)}>
              {short(one)} g
            </button>
          ))}
        </div>
      )}
      <div role="status">
        {tally === null && <p>{say('weighDishFirst')}</p>}
        {tally !== null && tally !== 'reading' && grams !== null && (
          <Figure tally={tally} grams={grams} />
        )}
      </div>
      <button type="button" class="button" onClick={close}>
        {say('closeSlice')}
      </button>
    </div>
  );
}
