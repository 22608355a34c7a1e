/** Units that a page keeps in its attributes and writes only by script. */
import { startsWithUnit } from '../visible/line-shapes.ts';

const UNIT_NAME = /^data-.*unit$/;
const MEASURE = /^\d+(?:[.,]\d+)? \p{L}[\p{L}. ]{0,19}$/u;

/** The measures ('2.5 cup') that the attributes of an element pair up, in the order they stand. */
function measuresOf(element: Element): string[] {
  const said = (name: string): string => (element.getAttribute(name) ?? '').trim();
  return element
    .getAttributeNames()
    .filter((name) => UNIT_NAME.test(name))
    .map((name) => `${said(name.replace(/unit$/, 'amount'))} ${said(name)}`)
    .filter((measure) => MEASURE.test(measure));
}

/** Elements around the figure that may end with it. */
const AROUND = 3;

/** The text that goes on behind an element: beside it, or beside one of the elements around it. */
function textBehind(element: Node, level = 0): string {
  let text = '';
  for (let next = element.nextSibling; next; next = next.nextSibling)
    text += ` ${next.textContent}`;
  const around = element.parentNode;
  return text.trim() || (around && level < AROUND ? textBehind(around, level + 1) : '');
}

/**
 * The amount of an element with its unit ('2.5 cup (250 g)') when the element shows the bare figure and
 * its attributes hold the unit; null when the page shows the unit, or there is none.
 */
export function amountWithUnit(element: Element): string | null {
  const [first, ...others] = measuresOf(element);
  if (!first || first.split(' ')[0] !== (element.textContent ?? '').trim()) return null;
  if (startsWithUnit(textBehind(element))) return null;
  return [first, ...others.map((measure) => `(${measure})`)].join(' ');
}
