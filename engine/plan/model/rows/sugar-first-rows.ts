/** Rows by which a bake gives up its sugar before its flour: the sugar is missed less than the crumb. */
import type { Part } from '../../dish/dish.ts';
import type { Choice } from '../decisions.ts';
import type { Builder } from '../row-builder.ts';

/** Share of a dish's net carbs that its sugars have at least where they go first. Own choice. */
const MUCH_SUGAR = 0.15;

const netOf = (parts: readonly Part[]): number =>
  parts.reduce((sum, { grams, net, eaten }) => sum + grams * net * eaten, 0);

const massOf = (parts: readonly Part[]): number => parts.reduce((sum, { grams }) => sum + grams, 0);

/** The swaps of some lines, each with the share of all of their mass that it takes. */
function sharesOf(b: Builder, is: (part: Part) => boolean): [string, number][] {
  const all = massOf(b.dish.parts.filter(is));
  const partOf = ({ kind, candidate }: Choice): Part | undefined =>
    kind === 'swap' ? candidate?.part : undefined;
  return b.choices.flatMap((choice): [string, number][] => {
    const part = partOf(choice);
    return part !== undefined && is(part) ? [[choice.id, part.grams / all]] : [];
  });
}

/** No larger share of the flour goes than of the sugar, where there is much sugar that could. */
export function sugarFirstRows(b: Builder): void {
  const isSugar = ({ role }: Part): boolean => role === 'sweetness';
  const { parts, main } = b.dish;
  const sugars = parts.filter(isSugar);
  if (!main.dough || netOf(sugars) < MUCH_SUGAR * netOf(parts)) return;
  const sugar = sharesOf(b, isSugar);
  const flour = sharesOf(b, ({ base }) => base);
  if (sugar.length === 0 || flour.length === 0) return;
  const terms = [...flour, ...sugar.map(([id, share]): [string, number] => [id, -share])];
  b.row(
    { id: 'sugar-first', max: 0, terms },
    'The sugar goes before the flour, which holds it together.',
  );
}
