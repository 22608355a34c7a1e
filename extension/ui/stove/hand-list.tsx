/** The ingredients of a step, with boxes to tick as they are put ready. */
import type { IngredientRow } from '../recipe/lines/ingredient-rows.ts';
import { say } from '../words/say.ts';

interface Props {
  rows: readonly IngredientRow[];
  ticked: readonly string[];
  language: string | undefined;
  onTick(key: string, ticked: boolean): void;
}

function HandRow({
  row,
  isTicked,
  language,
  onTick,
}: Omit<Props, 'rows' | 'ticked'> & {
  row: IngredientRow;
  isTicked: boolean;
}) {
  const { now, line } = row;
  if (!now) return null;
  return (
    <li>
      <label class={isTicked ? 'hand-row hand-done' : 'hand-row'} lang={language} dir="auto">
        <input
          type="checkbox"
          checked={isTicked}
          onChange={(event) => onTick(line.key, event.currentTarget.checked)}
        />
        <span class={line.change === 'kept' ? 'hand-amount' : 'hand-amount new'}>{now.amount}</span>
        <span dir="auto">
          {now.kind !== '' && `${now.kind} `}
          {now.name}
          <span class="soft">{now.rest}</span>
        </span>
      </label>
    </li>
  );
}

export function HandList({ rows, ticked, language, onTick }: Props) {
  if (rows.length === 0) return null;
  return (
    <section class="at-hand" aria-labelledby="hand-title">
      <h2 id="hand-title">{say('atHand')}</h2>
      <ul>
        {rows.map((row) => (
          <HandRow
            key={row.line.key}
            row={row}
            isTicked={ticked.includes(row.line.key)}
            language={language}
            onTick={onTick}
          />
        ))}
      </ul>
    </section>
  );
}
