import { useMemo } from 'preact/hooks';
import type { Adaptation, Food, RewrittenLine } from '../../../engine/model.ts';
import { AmountFields } from '../goals/amount-fields.tsx';
import { isHeading } from './group-headings.ts';
import { reasonOf } from './row-reasons.ts';
import { RowSources } from './row-sources.tsx';
import { type AmountWish, factorText, wishedTexts } from './shown-amounts.ts';

const WORDS: Record<RewrittenLine['change'], string> = {
  kept: '',
  amount: 'other amount',
  replaced: 'replaced',
  added: 'added',
  removed: 'left out',
};

interface Props {
  adaptation: Adaptation;
  wish: AmountWish;
  ownFoods: readonly Food[];
  onWish(wish: AmountWish): void;
  onPin(key: string, pinned: boolean): void;
}

interface RowProps extends Props {
  line: RewrittenLine;
  /** The reworked line as it is to be read; null when it is left out. */
  text: string | null;
  /** Why the line changed; null when a row above says so already. */
  why: string | null;
}

function PinBox({ line, adaptation, onPin }: RowProps) {
  if (line.before === null) return null;
  const pinned = adaptation.goals.pinned.includes(line.key);
  return (
    <label class="pin no-print" lang="en">
      <input
        type="checkbox"
        checked={pinned}
        onChange={(event) => onPin(line.key, event.currentTarget.checked)}
      />{' '}
      leave as it is<span class="hidden">: {line.before}</span>
    </label>
  );
}

function Row(props: RowProps) {
  const { line, text, why } = props;
  const language = props.adaptation.recipe.language ?? undefined;
  if (isHeading(line, props.adaptation)) {
    return (
      <tr>
        <th colSpan={2} scope="colgroup" lang={language}>
          {line.before}
        </th>
      </tr>
    );
  }
  return (
    <tr class={`row row-${line.change}`}>
      <td data-label="Original" lang={language}>
        <div class="row-original">
          {line.before === null ? (
            <span class="quiet" lang="en">
              not in the original
            </span>
          ) : (
            <span>{line.before}</span>
          )}
          <PinBox {...props} />
        </div>
      </td>
      <td data-label="Reworked">
        {text === null ? (
          <span class="quiet">left out</span>
        ) : (
          <span lang={line.change === 'kept' ? language : undefined}>{text}</span>
        )}
        {line.change !== 'kept' && <span class="mark">{WORDS[line.change]}</span>}
        {why && <p class="why">{why}</p>}
        <RowSources line={line} rows={props.adaptation.lines} />
      </td>
    </tr>
  );
}

/** Original and reworked ingredients, row by row. */
export function RecipeRows(props: Props) {
  const { adaptation, wish, ownFoods, onWish } = props;
  const { lines } = adaptation;
  const texts = useMemo(
    () => wishedTexts(adaptation, wish, ownFoods),
    [adaptation, wish, ownFoods],
  );
  const textOf = ({ key, after }: RewrittenLine): string | null =>
    after === null ? null : (texts?.get(key) ?? after);
  const groups = [...new Set(lines.map((line) => line.group))];
  return (
    <section class="recipe-rows" aria-labelledby="rows-title">
      <h2 id="rows-title">Ingredients</h2>
      <AmountFields wish={wish} servings={adaptation.after.servings} onWish={onWish} />
      <table>
        <thead>
          <tr>
            <th scope="col">Original</th>
            <th scope="col">Reworked{wish.factor !== 1 && `, ${factorText(wish.factor)}`}</th>
          </tr>
        </thead>
        {groups.map((group) => (
          <tbody key={group ?? ''}>
            {group && (
              <tr>
                <th colSpan={2} scope="rowgroup">
                  {group}
                </th>
              </tr>
            )}
            {lines
              .filter((line) => line.group === group)
              .map((line) => (
                <Row
                  key={`${line.key}.${line.after}`}
                  {...props}
                  line={line}
                  text={textOf(line)}
                  why={reasonOf(line, lines)}
                />
              ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}
