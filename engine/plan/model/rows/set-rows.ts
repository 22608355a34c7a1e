/** Rows for amounts that the user has set on a line of the reworked recipe: they hold, whatever the budget. */
import type { Food, Goals, SetAmount } from '../../../model.ts';
import type { Builder } from '../row-builder.ts';

const START = 'set ';

/** The amount the user has set for a food on a line, if any. */
export const setFor = (
  { setAmounts }: Pick<Goals, 'setAmounts'>,
  { key, food }: { key: string | null; food: Food },
): SetAmount | undefined => setAmounts.find((one) => one.key === key && one.foodId === food.id);

/** Whether the user has set an amount on a line. */
export const isSetLine = ({ setAmounts }: Pick<Goals, 'setAmounts'>, key: string): boolean =>
  setAmounts.some((one) => one.key === key);

/** What is set is held exactly; a line without choices has no row. */
export function setRows(b: Builder): void {
  const { goals } = b.dish;
  for (const set of goals.setAmounts) {
    const line = b.sum((c) => (setFor(goals, c) === set ? 1 : 0));
    const grams = set.grams - line.constant;
    b.row(
      { id: `${START}${set.key} ${set.foodId}`, min: grams, max: grams, terms: line.terms },
      'You have set an amount on a line.',
    );
  }
}

/** A programme without what the user has set, for dishes whose limits do not allow it. */
export const withoutSet = <M extends { rows: readonly { id: string }[] }>(model: M): M => ({
  ...model,
  rows: model.rows.filter(({ id }) => !id.startsWith(START)),
});
