/** The dishes that are bought for; kept ones can be added. */
import { useState } from 'preact/hooks';
import type { ShelfRow } from '../../store/kept/shelf-row.ts';
import { say } from '../words/say.ts';

interface Props {
  /** Title of the recipe on the bench, always in the list; null when there is none. */
  open: string | null;
  kept: readonly ShelfRow[];
  chosen: ReadonlySet<string>;
  onChoose(id: string, chosen: boolean): void;
}

/** More dishes than this are found by typing. Own choice. */
const MOST_SHOWN = 12;

function KeptDishes({ kept, chosen, onChoose }: Omit<Props, 'open'>) {
  const [wanted, setWanted] = useState('');
  const word = wanted.trim().toLocaleLowerCase();
  const found = kept.filter(({ title }) => title.toLocaleLowerCase().includes(word));
  return (
    <div class="kept-dishes">
      {kept.length > MOST_SHOWN && (
        <label class="field">
          <span>{say('findDish')}</span>
          <input
            type="search"
            value={wanted}
            onInput={(event) => setWanted(event.currentTarget.value)}
          />
        </label>
      )}
      <div class="acts">
        {found.slice(0, MOST_SHOWN).map(({ id, title, language }) => (
          <button
            key={id}
            type="button"
            class="button"
            aria-pressed={chosen.has(id)}
            lang={language ?? undefined}
            dir="auto"
            onClick={() => onChoose(id, !chosen.has(id))}
          >
            {title}
          </button>
        ))}
      </div>
    </div>
  );
}

export function DishChoice({ open, kept, chosen, onChoose }: Props) {
  const [adding, setAdding] = useState(open === null);
  const chosenTitles = kept.filter(({ id }) => chosen.has(id)).map(({ title }) => title);
  const titles = [...(open === null ? [] : [open]), ...chosenTitles];
  if (titles.length === 0 && kept.length === 0) return null;
  return (
    <div class="dish-choice">
      <p>
        {titles.length > 0 && (
          <>
            {say('buyFor')} <b>{titles.join(', ')}</b>{' '}
          </>
        )}
        {kept.length > 0 && (
          <button
            type="button"
            class="button bare"
            aria-expanded={adding}
            onClick={() => setAdding(!adding)}
          >
            {say('addDish')}
          </button>
        )}
      </p>
      {adding && kept.length > 0 && <KeptDishes kept={kept} chosen={chosen} onChoose={onChoose} />}
    </div>
  );
}
