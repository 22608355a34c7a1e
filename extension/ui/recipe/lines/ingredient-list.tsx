/** The one list of ingredients: the amount to weigh large, what it was small and struck out. */
import { useMemo, useState } from 'preact/hooks';
import type { Adaptation } from '../../../../engine/model.ts';
import { arrowKeys } from '../../controls/arrow-keys.ts';
import { wayMeaning } from '../../ways/way-switch.tsx';
import { say } from '../../words/say.ts';
import { type AmountWish, wishedTexts } from '../shown-amounts.ts';
import { IngredientLine } from './ingredient-line.tsx';
import { type IngredientRow, ingredientRows } from './ingredient-rows.ts';
import type { LineActions } from './line-actions.ts';

interface Props {
  adaptation: Adaptation;
  wish: AmountWish;
  actions: LineActions;
  /** The open line's key, or null. */
  open: string | null;
  onOpen(key: string | null): void;
}

const rowId = (key: string): string => `line-${key.replace(/[^\w.-]/g, '_')}`;

function Group({
  title,
  rows,
  ...rest
}: Omit<Props, 'wish'> & { title: string | null; rows: IngredientRow[] }) {
  const { adaptation, actions, open, onOpen } = rest;
  const language = adaptation.recipe.language ?? undefined;
  return (
    <>
      {title && (
        <h3 class="part" lang={language} dir="auto">
          {title}
        </h3>
      )}
      <ul class="lines">
        {rows.map((row) => (
          <li key={`${row.line.key}.${row.line.change}`} id={rowId(row.line.key)}>
            {row.heading ? (
              <h3 class="part" lang={language} dir="auto">
                {row.line.before}
              </h3>
            ) : (
              <IngredientLine
                row={row}
                adaptation={adaptation}
                actions={actions}
                open={open === row.line.key}
                onOpen={(on) => onOpen(on ? row.line.key : null)}
              />
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

export function IngredientList({ adaptation, wish, actions, open, onOpen }: Props) {
  const { ownFoods } = actions;
  const [system, factor] = [wish.system, wish.factor];
  const rows = useMemo(() => {
    const texts = wishedTexts(adaptation, { system, factor }, ownFoods);
    return ingredientRows(adaptation, ({ key, after }) =>
      after === null ? null : (texts?.get(key) ?? after),
    );
  }, [adaptation, system, factor, ownFoods]);
  const meaning = wayMeaning(adaptation);
  const groups = [...new Set(rows.map(({ line }) => line.group))];
  return (
    <section
      class="ingredients"
      aria-labelledby="ingredients-title"
      onKeyDown={arrowKeys('button.line')}
    >
      <h2 id="ingredients-title">{say('ingredients')}</h2>
      {meaning !== '' && <p class="way-meaning">{meaning}</p>}
      {groups.map((group) => (
        <Group
          key={group ?? ''}
          title={group}
          rows={rows.filter(({ line }) => line.group === group)}
          adaptation={adaptation}
          actions={actions}
          open={open}
          onOpen={onOpen}
        />
      ))}
    </section>
  );
}

/** Which line is open; opening one from elsewhere brings it into sight. */
export function useOpenLine() {
  const [open, setOpen] = useState<string | null>(null);
  return {
    open,
    setOpen,
    show: (key: string) => {
      setOpen(key);
      setTimeout(() => document.getElementById(rowId(key))?.scrollIntoView({ block: 'center' }));
    },
  };
}
