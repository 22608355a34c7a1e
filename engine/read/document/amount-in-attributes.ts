/** Units that a page keeps in its attributes and writes only by script. */
import { startsWithUnit } from '../visible/line-shapes.ts';

const UNIT_NAME = /^data-(.*)unit$/;
const UNIT = /^\p{L}[\p{L}. ]{0,19}$/u;
const AMOUNT = /^\d+(?:[.,]\d+)?$/;

/** The measures ('2.5 cup') that the attributes of an element pair up, in the order they stand. */
function measuresOf(element: Element): { amount: string; text: string }[] {
  return element.getAttributeNames().flatMap((name) => {
    const prefix = UNIT_NAME.exec(name)?.[1];
    if (prefix === undefined) return [];
    const unit = (element.getAttribute(name) ?? '').trim();
    const amount = (element.getAttribute(`data-${prefix}amount`) ?? '').trim();
    return UNIT.test(unit) && AMOUNT.test(amount) ? [{ amount, text: `${amount} ${unit}` }] : [];
  });
}

/** Elements around the figure that may end with it. */
const AROUND = 3;

/** The text that goes on behind an element: beside it, or beside one of the elements around it. */
function textBehind(element: Element): string {
  let around: Element | null = element;
  for (let level = 0; around && level <= AROUND; level += 1, around = around.parentElement) {
    let text = '';
    for (let next = around.nextSibling; next; next = next.nextSibling)
      text += ` ${next.textContent ?? ''}`;
    if (text.trim() !== '') return text.trim();
  }
  return '';
}

/**
 * The amount of an element with its unit ('2.5 cup (250 g)') when the element shows the bare figure and
 * its attributes hold the unit; null when the page shows the unit, or there is none.
 */
export function amountWithUnit(element: Element): string | null {
  const [first, ...others] = measuresOf(element);
  if (first === undefined || (element.textContent ?? '').trim() !== first.amount) return null;
  if (startsWithUnit(textBehind(element))) return null;
  return [first.text, ...others.map(({ text }) => `(${text})`)].join(' ');
}
