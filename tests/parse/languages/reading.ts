/** A line's reading and its foods as the texts that the line files hold. */
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import type { Amount } from '../../../engine/model.ts';
import { parseLine } from '../../../engine/parse/index.ts';

/** [line, amounts, names, size with preparation, note and purpose, food ids]. */
export type Row = [string, string, string, string, string];

const foods = foodTable();

function amountText(a: Amount): string {
  const quantity = `${Math.round(a.quantity * 1000) / 1000}`;
  const range = a.max === null ? quantity : `${quantity}-${a.max}`;
  const kind = a.kind === 'stated' ? '' : ` ${a.kind}`;
  return `${a.approximate ? '~' : ''}${range}${a.unit ? ` ${a.unit}` : ''}${kind}`;
}

/** What the engine makes of a line; '-' stands for a food it does not know. */
export function reading(text: string, language: string): Row {
  const line = parseLine(text, { language });
  if (line.kind === 'heading') return [text, 'heading', line.name, '', ''];
  const amounts = line.items.map((item) => item.amounts.map(amountText).join('; '));
  const names = line.items.map((item) =>
    [item.name, ...item.alternatives.map((other) => other.name)].join(' | '),
  );
  const rest = [
    line.items[0]?.size,
    ...line.items.map((item) => item.preparation),
    line.note,
    line.purpose,
  ];
  const ids = line.items.map((item) => matchItem(item, line, { foods, language })?.foodId ?? '-');
  return [
    text,
    amounts.filter(Boolean).join(' + '),
    names.join(' + '),
    rest.filter(Boolean).join('; '),
    ids.join(' + '),
  ];
}
