/** The few selectors that the reader uses: tag names, classes and attributes, with commas between. */

/** What a selector looks at. */
interface Selectable {
  readonly localName: string;
  getAttribute(name: string): string | null;
}

export type Test = (element: Selectable) => boolean;

const PLAIN = /^(?:([a-z][a-z0-9]*)|\.([\w-]+)|\[([a-z-]+)\])$/;

const hasClass = (element: Selectable, name: string): boolean =>
  ` ${(element.getAttribute('class') ?? '').replace(/[\t\n\f\r]/g, ' ')} `.includes(` ${name} `);

/** @throws {SyntaxError} on a selector that is not understood, so that none is silently taken for another. */
function parsePart(part: string): Test {
  const [, tag, className, attribute] = PLAIN.exec(part) ?? [];
  if (tag !== undefined) return ({ localName }) => localName === tag;
  if (className !== undefined) return (element) => hasClass(element, className);
  if (attribute !== undefined) return (element) => element.getAttribute(attribute) !== null;
  throw new SyntaxError(`'${part}' is no tag name, class or attribute`);
}

const parsed = new Map<string, Test>();

/** A test for elements that fit any part of the selector. */
export function parseSelector(selector: string): Test {
  const known = parsed.get(selector);
  if (known !== undefined) return known;
  const parts = selector.split(',').map((part) => parsePart(part.trim()));
  const test: Test = (element) => parts.some((part) => part(element));
  parsed.set(selector, test);
  return test;
}
