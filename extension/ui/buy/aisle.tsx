/** What is sold in one kind of shop; a tick says that it is at home now. */
import type { FoodTable } from '../../../engine/index.ts';
import { shelfNote } from '../cupboard/shelf-notes.ts';
import { foodWord } from '../words/food-words.ts';
import { capital, say } from '../words/say.ts';
import type { Aisle, ToBuy } from './buy-list.ts';
import { AISLE_TITLES } from './buy-text.ts';
import { shopAmount } from './shop-amount.ts';

export interface AisleProps {
  aisle: Aisle;
  foods: readonly ToBuy[];
  table: Pick<FoodTable, 'byId'>;
  atHome: ReadonlySet<string>;
  onHome(food: ToBuy, atHome: boolean): void;
  /** Plans the recipe on the bench without this food; left out where it cannot be. */
  onWithout?: ((food: ToBuy) => void) | undefined;
}

const HINTS = { seldom: 'aisleSeldomHow', grocer: null, usual: 'aisleUsualHow' } as const;

function BuyRow({
  one,
  table,
  atHome,
  onHome,
  onWithout,
}: Omit<AisleProps, 'aisle' | 'foods'> & {
  one: ToBuy;
}) {
  const note = shelfNote(one.foodId);
  const has = atHome.has(one.foodId);
  const name = foodWord(one.foodId, one.food);
  return (
    <li class="buy-row">
      <label class={has ? 'tick buy-has' : 'tick'}>
        <input
          type="checkbox"
          checked={has}
          onChange={(event) => onHome(one, event.currentTarget.checked)}
        />
        <span>
          <b class="buy-food">
            {capital(name)}, <span class="unbroken">{shopAmount(one, table.byId(one.foodId))}</span>
          </b>
          {note && (
            <span class="soft buy-note">
              {capital(note.is)}. {say('alsoCalled', note.called)}
            </span>
          )}
        </span>
      </label>
      {onWithout && !has && (
        <button type="button" class="button bare" onClick={() => onWithout(one)}>
          {say('cannotGetIt')}
          <span class="hidden">: {name}</span>
        </button>
      )}
    </li>
  );
}

export function AislePart({ aisle, foods, ...rest }: AisleProps) {
  if (foods.length === 0) return null;
  const hint = HINTS[aisle];
  return (
    <section class="aisle" aria-labelledby={`aisle-${aisle}`}>
      <h2 id={`aisle-${aisle}`}>{say(AISLE_TITLES[aisle])}</h2>
      {hint && <p class="soft">{say(hint)}</p>}
      <ul>
        {foods.map((one) => (
          <BuyRow key={one.foodId} one={one} {...rest} />
        ))}
      </ul>
    </section>
  );
}
