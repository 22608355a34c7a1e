import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { recipesIn } from '../page-file.ts';
import { LISTS, METHODS, type Part } from './page-shapes.ts';

/** One invented dish a language, with the words that pages in it use. */
type Page = {
  language: string;
  title: string;
  headings: { ingredients: string[]; method: string[]; after: string[] };
  servings: { count: number; statements: string[] };
  time: string;
  lines: string[];
  group: { title: string; lines: string[] };
  steps: string[];
  intro: string;
  remark: string;
  comment: string;
  buttons: string[];
  links: string[];
};

const PAGES = JSON.parse(
  readFileSync(new URL('languages.json', import.meta.url), 'utf8'),
) as Page[];

const at = <T>(list: readonly T[], n: number): T => list[n % list.length] as T;

/** What stands after a recipe, under a heading that ends it. */
function after(page: Page, n: number): string {
  const word = at(page.headings.after, n);
  return at(
    [
      `<h3>${word}</h3><p>${page.remark}</p>`,
      `<p><strong>${word}:</strong> ${page.remark}</p>`,
      `<h2>${word}</h2><ul>${page.links.map((link) => `<li><a href="x">${link}</a></li>`).join('')}</ul>`,
      `<h3>${word}</h3>${`<div><b>Ada</b><p>${page.comment}</p></div>`.repeat(3)}`,
      '',
    ],
    n,
  );
}

/** Page number `n` of a language: headings, statements and surroundings change with it. */
function draw(page: Page, n: number, list: string, method: string, methodFirst = false): string {
  const grouped = n % 2 === 0;
  const parts: Part[] = grouped
    ? [{ title: null, lines: page.lines }, page.group]
    : [{ title: null, lines: [...page.lines, ...page.group.lines] }];
  const ingredients = LISTS[list]?.(at(page.headings.ingredients, n), parts) ?? '';
  const steps = METHODS[method]?.(at(page.headings.method, n), page.steps) ?? '';
  const buttons = `<div>${page.buttons.map((one) => `<a href="#">${one}</a>`).join(' ')}</div>`;
  const meta = `<ul class="meta"><li>${page.time}</li><li>${at(page.servings.statements, n)}</li></ul>`;
  return (
    `<!doctype html><html lang="${page.language}"><title>${page.title} - Site</title><body>` +
    `<nav><a href="/">Home</a></nav><div class="content"><h1>${page.title}</h1>${n % 3 ? buttons : ''}` +
    `<p>${page.intro}</p>${meta}${methodFirst ? steps + ingredients : ingredients + steps}${after(page, n)}` +
    '</div><footer><p>Words</p></footer>'
  );
}

function check(page: Page, n: number, html: string): void {
  const [recipe] = recipesIn(html);
  expect(recipe?.title).toBe(page.title);
  expect(recipe?.language).toBe(page.language);
  expect(recipe?.groups.flatMap((group) => group.lines)).toEqual([
    ...page.lines,
    ...page.group.lines,
  ]);
  if (n % 2 === 0)
    expect(recipe?.groups.map((group) => group.title)).toEqual([null, page.group.title]);
  expect(recipe?.steps.map((step) => step.text)).toEqual(page.steps);
  expect(recipe?.yield.servings?.low).toBe(page.servings.count);
}

describe('pages without markup, in their languages', () => {
  it('knows at least ten languages', () => {
    expect(PAGES.length).toBeGreaterThanOrEqual(10);
  });

  describe.each(PAGES)('$language', (page) => {
    it.each(Object.keys(LISTS).map((list, i) => [list, i] as const))('list as %s', (list, i) => {
      for (const n of [i, i + 1, i + 7])
        check(page, n, draw(page, n, list, at(Object.keys(METHODS), n)));
    });

    it.each(Object.keys(METHODS).map((method, i) => [method, i] as const))(
      'method as %s',
      (method, i) => {
        for (const n of [i, i + 3])
          check(page, n, draw(page, n, at(Object.keys(LISTS), n), method));
      },
    );

    it('the method before the list', () => {
      for (const n of [0, 1, 5])
        check(page, n, draw(page, n, 'lists under headings', 'ordered list', true));
    });
  });
});
