/** Rows for amounts that the user has set on a line of the reworked recipe: they hold, whatever the budget. */
import type { Food, Goals, SetAmount } from '../../../model.ts';
import type { Builder } from '../row-builder.ts';
import { additionKey } from '../variable-ids.ts';

const START = 'set ';

interface Placed {
  /** Null for an addition, which goes by its part and food. */
  key: string | null;
  food: Food;
  section: number;
}

/** Whether the user has set just this food on just this line, or this addition. */
export const isMeantBy = (set: SetAmount, { key, food, section }: Placed): boolean =>
  set.foodId === food.id && set.key === (key ?? additionKey({ food, section }));

/** The amount the user has set for a food on a line or for an addition, if any. */
export const setFor = (
  { setAmounts }: Pick<Goals, 'setAmounts'>,
  placed: Placed,
): SetAmount | undefined => setAmounts.find((one) => isMeantBy(one, placed));

/** Whether the user has set an amount on a line. */
export const isSetLine = ({ setAmounts }: Pick<Goals, 'setAmounts'>, key: string): boolean =>
  setAmounts.some((one) => one.key === key);

/** What is set is held exactly. */
export function setRows(b: Builder): void {
  const { goals } = b.dish;
  for (const set of goals.setAmounts) {
    const line = b.sum((c) => (setFor(goals, c) === set ? 1 : 0));
    // Water and the like are no choice of the programme: the kitchen's last step takes them as set.
    if (line.terms.length === 0 && set.key.startsWith('new.')) continue;
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
