/** Fractions that lost the blank before them, which the line reader reads as mixed numbers. */
import type { Item, Line } from '../model.ts';

/** '12/3': a whole number run into a proper fraction in lowest terms. */
const RUN_TOGETHER = /(?<![\d.,/⁄])(\d{1,2})(1[/⁄]2|[12][/⁄]3|[13][/⁄]4|[1357][/⁄]8)(?![\d/⁄])/;

/** What was made of such a number in the line, for the user to see; null when it has none. */
export function lostBlankNote(item: Item, line: Line): string | null {
  const [written, whole, part = ''] = RUN_TOGETHER.exec(line.text) ?? [];
  const [over = '', under = ''] = part.split(/[/⁄]/);
  const value = Number(whole) + Number(over) / Number(under);
  const used = item.amounts.some(({ quantity, max }) => quantity === value || max === value);
  return written !== undefined && used ? `'${written}' read as ${whole} ${part}` : null;
}
