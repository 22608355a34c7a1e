/** The command line's documents are read as a browser's; jsdom stands for the browser. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import { parsePage } from '../../../engine/cli/light-document/parse-page.ts';
import { mayHoldRecipe, readPage } from '../../../engine/read/index.ts';

const PAGES = new URL('../../pages/', import.meta.url);

const pages = readdirSync(PAGES, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.html'),
);

const parser = new new JSDOM('').window.DOMParser();

/** As in a browser, `noscript` holds text because scripts are allowed; none is run. */
const inWindow = (html: string): Document =>
  new JSDOM(html, { runScripts: 'outside-only' }).window.document;

/** Every node of a light document in order, as text. */
function outline(node: Node, depth = 0): string[] {
  const element = node as Element;
  const own =
    node.nodeType === 1
      ? [
          `${depth} <${element.localName}>`,
          ...element.getAttributeNames().map((name) => `${name}=${element.getAttribute(name)}`),
        ]
      : node.nodeType === 3
        ? [`${depth} ${node.nodeValue}`]
        : [];
  const kids: string[] = [];
  for (let kid = node.firstChild; kid; kid = kid.nextSibling) kids.push(...outline(kid, depth + 1));
  return [...own, ...kids];
}

type PlainNode = DefaultTreeAdapterTypes.Node;

/** The same of the parser's own tree. */
function plainOutline(node: PlainNode, depth = 0): string[] {
  const own =
    'tagName' in node
      ? [`${depth} <${node.tagName}>`, ...node.attrs.map(({ name, value }) => `${name}=${value}`)]
      : 'value' in node
        ? [`${depth} ${node.value}`]
        : [];
  const kids = 'childNodes' in node ? node.childNodes : [];
  return [...own, ...kids.flatMap((kid) => plainOutline(kid, depth + 1))];
}

const PIECES = [
  ...'p div table tr td ul li b i a select option template svg title script noscript form h1 br'
    .split(' ')
    .flatMap((name) => [`<${name}>`, `</${name}>`, `<${name} class="a b" id=x>`]),
  'flour &amp; water',
  '<!-- note -->',
  '<!doctype html>',
  '<body lang="en">',
  '</head>',
  '<',
];

const markup = fc
  .array(fc.constantFrom(...PIECES), { maxLength: 40 })
  .map((parts) => parts.join(''));

describe('a page as a light document', () => {
  it.each(pages)('%s is read as in a browser', (name) => {
    const html = readFileSync(new URL(name, PAGES), 'utf8');
    expect(readPage(parsePage(html))).toEqual(readPage(inWindow(html)));
  });

  it('has the nodes that the parser makes of any markup', () => {
    fc.assert(
      fc.property(markup, (html) => {
        expect(outline(parsePage(html))).toEqual(plainOutline(parse(html)));
      }),
      { numRuns: 400 },
    );
  });

  it('finds elements as a browser does', () => {
    const html =
      '<h1 id="t" class="x\ty">A <b itemprop="name">b</b></h1><p class="xy"><b>c</b></p><nav><i class="x">d</i></nav>';
    const light = parsePage(html);
    const same = parser.parseFromString(html, 'text/html');
    for (const selector of ['b', '.x', '[itemprop]', 'h1,[itemprop],.xy', 'em']) {
      const texts = (document: Document) =>
        [...document.querySelectorAll(selector)].map(({ textContent }) => textContent);
      expect(texts(light), selector).toEqual(texts(same));
      expect(light.querySelector(selector)?.textContent).toBe(
        same.querySelector(selector)?.textContent,
      );
    }
    expect(light.getElementsByTagName('b')).toHaveLength(2);
    expect(light.getElementsByClassName('x')).toHaveLength(2);
    expect(light.querySelector('i')?.closest('p,nav')?.localName).toBe('nav');
    expect(light.querySelector('h1')?.id).toBe('t');
    expect(mayHoldRecipe(parsePage('<h2>Ingredients</h2>'))).toBe(true);
  });

  it('refuses a selector it does not understand', () => {
    expect(() => parsePage('<p>').querySelector('p > b')).toThrow(SyntaxError);
  });

  it('stands nesting without end', () => {
    const deep = `${'<div>'.repeat(20_000)}flour`;
    expect(parsePage(deep).documentElement.textContent).toBe('flour');
  });
});
