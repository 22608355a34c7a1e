import type { Adaptation, RewrittenLine } from '../../engine/model.ts';

const WORDS: Record<RewrittenLine['change'], string> = {
  kept: '',
  amount: 'other amount',
  replaced: 'replaced',
  added: 'added',
  removed: 'left out',
};

interface Props {
  adaptation: Adaptation;
  onPin(key: string, pinned: boolean): void;
}

function PinBox({ line, adaptation, onPin }: Props & { line: RewrittenLine }) {
  if (line.before === null) return null;
  const pinned = adaptation.goals.pinned.includes(line.key);
  return (
    <label class="pin">
      <input
        type="checkbox"
        checked={pinned}
        onChange={(event) => onPin(line.key, event.currentTarget.checked)}
      />{' '}
      leave as it is<span class="hidden">: {line.before}</span>
    </label>
  );
}

function Row(props: Props & { line: RewrittenLine }) {
  const { line } = props;
  return (
    <tr class={`row row-${line.change}`}>
      <td data-label="Original" lang={props.adaptation.recipe.language ?? undefined}>
        {line.before ?? <span class="quiet">not in the original</span>}
      </td>
      <td data-label="Reworked">
        {line.after ?? <span class="quiet">left out</span>}
        {line.change !== 'kept' && <span class="mark">{WORDS[line.change]}</span>}
        {line.why && <p class="why">{line.why}</p>}
      </td>
      <td class="row-pin no-print">
        <PinBox {...props} />
      </td>
    </tr>
  );
}

/** Original and reworked ingredients, row by row. */
export function RecipeRows(props: Props) {
  const { lines } = props.adaptation;
  const groups = [...new Set(lines.map((line) => line.group))];
  return (
    <section class="recipe-rows" aria-labelledby="rows-title">
      <h2 id="rows-title">Ingredients</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Original</th>
            <th scope="col">Reworked</th>
            <th scope="col" class="no-print">
              <span class="hidden">Leave as it is</span>
            </th>
          </tr>
        </thead>
        {groups.map((group) => (
          <tbody key={group ?? ''}>
            {group && (
              <tr>
                <th colSpan={3} scope="rowgroup">
                  {group}
                </th>
              </tr>
            )}
            {lines
              .filter((line) => line.group === group)
              .map((line) => (
                <Row key={`${line.key}.${line.after}`} {...props} line={line} />
              ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}
