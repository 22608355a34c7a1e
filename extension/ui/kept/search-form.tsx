/** What is looked for among the kept dishes: words, a tag, what worked, and the order. */
import { useId } from 'preact/hooks';
import { type MessageKey, say } from '../words/say.ts';
import { ORDERS, type Order, type Wanted } from './search-kept.ts';

const ORDER_WORDS: Record<Order, MessageKey> = {
  changed: 'orderChanged',
  netCarbs: 'orderNetCarbs',
  family: 'orderFamily',
  title: 'orderTitle',
};

interface Props {
  wanted: Wanted;
  tags: readonly string[];
  onWanted(wanted: Wanted): void;
}

function TagChoice({ wanted, tags, onWanted }: Props) {
  return (
    <fieldset class="acts">
      <legend class="hidden">{say('tags')}</legend>
      <button
        type="button"
        class="button"
        aria-pressed={wanted.tag === null && !wanted.worked}
        onClick={() => onWanted({ ...wanted, tag: null, worked: false })}
      >
        {say('everything')}
      </button>
      <button
        type="button"
        class="button"
        aria-pressed={wanted.worked}
        onClick={() => onWanted({ ...wanted, worked: !wanted.worked })}
      >
        {say('whatWorked')}
      </button>
      {tags.map((tag) => (
        <button
          key={tag}
          type="button"
          class="button"
          aria-pressed={wanted.tag === tag}
          onClick={() => onWanted({ ...wanted, tag: wanted.tag === tag ? null : tag })}
        >
          {tag}
        </button>
      ))}
    </fieldset>
  );
}

export function KeptSearch({ wanted, tags, onWanted }: Props) {
  const id = useId();
  return (
    <div class="kept-search">
      <div class="field">
        <label for={`${id}-text`}>{say('findKept')}</label>
        <input
          id={`${id}-text`}
          type="search"
          autocomplete="off"
          placeholder={say('dishOrIngredient')}
          value={wanted.text}
          onInput={({ currentTarget }) => onWanted({ ...wanted, text: currentTarget.value })}
        />
      </div>
      <div class="field">
        <label for={`${id}-order`}>{say('orderBy')}</label>
        <select
          id={`${id}-order`}
          value={wanted.order}
          onChange={({ currentTarget }) => {
            const order = ORDERS.find((one) => one === currentTarget.value);
            if (order) onWanted({ ...wanted, order });
          }}
        >
          {ORDERS.map((order) => (
            <option key={order} value={order}>
              {say(ORDER_WORDS[order])}
            </option>
          ))}
        </select>
      </div>
      <TagChoice wanted={wanted} tags={tags} onWanted={onWanted} />
    </div>
  );
}
