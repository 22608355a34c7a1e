/**
 * Text of twice the length takes about twice the time, whatever is repeated in it: measured in processor time
 * at n, 2n and 4n. A pattern that goes back over blanks would take four or eight times as long.
 */
import { describe, expect, it } from 'vitest';
import { parsePage } from '../../engine/cli/light-document/parse-page.ts';
import { toFiguresTable } from '../../engine/export/figures-table.ts';
import { toPublishing } from '../../engine/export/for-publishing.ts';
import {
  adaptRecipe,
  cautionText,
  DEFAULT_GOALS,
  type Recipe,
  readPage,
  readText,
  scaledLines,
  scaledSteps,
  tallyRecipe,
  toCsv,
  toJsonLd,
  toMarkdown,
  toText,
  weighRecipe,
} from '../../engine/index.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { toldNote } from '../../engine/rewrite/languages/told-notes.ts';
import { stepTimes } from '../../extension/ui/stove/step-times.ts';
import { sampleRecipe } from '../store/sample.ts';
import { ATOMS, repeated } from './atoms.ts';
import { growthOf, MOST_GROWTH } from './growth.ts';

const LINES = ['500 g bread flour', '370 g water', '9 g salt', '3 g instant yeast', '50 g sugar'];
const STEPS = ['Mix the flour and the water, then the sugar.', 'Bake at 230 °C for 35 minutes.'];

const loaf = (changes: Partial<Recipe> = {}): Recipe =>
  sampleRecipe({
    groups: [{ title: null, lines: LINES }],
    steps: STEPS.map((text) => ({ section: null, text })),
    ...changes,
  });

const adaptation = adaptRecipe(loaf(), DEFAULT_GOALS);

const listPage = (line: string, step: string): string =>
  `<h1>Loaf</h1><h2>Ingredients</h2><ul><li>500 g flour<li>200 g water<li>${line}</ul><h2>Method</h2><ol><li>Mix it.<li>${step}</ol>`;

const headPage = (text: string): string =>
  `<title>${text}</title><h1>${text}</h1><p>By ${text}</p><p>Serves ${text}</p><p>${text} minutes</p><h2>Ingredients ${text}</h2><ul><li>500 g flour<li>200 g water</ul><h2>Method</h2><ol><li>Mix it.<li>Bake it.</ol>`;

const jsonPage = (text: string): string =>
  `<script type="application/ld+json">${JSON.stringify({
    '@type': 'Recipe',
    name: text,
    author: text,
    inLanguage: text,
    recipeYield: text,
    prepTime: text,
    cookTime: `PT${text}`,
    nutrition: { calories: text },
    recipeIngredient: ['500 g flour', text],
    recipeInstructions: text,
  }).replaceAll('</', '<\\/')}</script>`;

interface Work {
  /** Characters of the shortest text; less where a piece of work is done many times over. */
  length: number;
  run(text: string): unknown;
}

const WORKS: Record<string, Work> = {
  'a line': { length: 1500, run: (text) => parseLine(text, { language: 'en' }) },
  'a line of no known language': {
    length: 1500,
    run: (text) => parseLine(text, { language: null }),
  },
  'a line after an amount': {
    length: 1500,
    run: (text) => parseLine(`2 cups ${text}`, { language: 'de' }),
  },
  'pasted text': {
    length: 1500,
    run: (text) => readText(`Loaf\n\nIngredients\n500 g flour\n${text}\n\nMethod\n1. Mix ${text}`),
  },
  'lines and steps of a page': {
    length: 1500,
    run: (text) => readPage(parsePage(listPage(text, text))),
  },
  'head of a page': { length: 3000, run: (text) => readPage(parsePage(headPage(text))) },
  'markup of a page': { length: 3000, run: (text) => readPage(parsePage(jsonPage(text))) },
  'a weighed line': {
    length: 1000,
    run: (text) =>
      tallyRecipe(loaf({ groups: [{ title: text, lines: [...LINES, text] }] }), DEFAULT_GOALS),
  },
  'lines for other servings': {
    length: 750,
    run: (text) =>
      scaledLines(weighRecipe(loaf({ groups: [{ title: null, lines: [text] }] })), 2, 'us'),
  },
  'a reworked step': {
    length: 400,
    run: (text) =>
      adaptRecipe(
        loaf({ steps: [{ section: null, text: `Mix the flour ${text} water.` }] }),
        DEFAULT_GOALS,
      ),
  },
  'a reworked title': {
    length: 400,
    run: (text) => adaptRecipe(loaf({ title: text }), DEFAULT_GOALS),
  },
  'every export': {
    length: 1500,
    run: (text) => {
      const steps = adaptation.steps.map((step) => ({ ...step, after: text }));
      const long = { ...adaptation, steps, recipe: { ...adaptation.recipe, title: text } };
      const sources = [toCsv, toJsonLd, toMarkdown, toText].map((write) => write(long));
      return [...sources, toPublishing(long, { note: text }), toFiguresTable([long])];
    },
  },
  'a step for more servings': {
    length: 750,
    run: (text) => scaledSteps([`Add ${text} of it.`], 2),
  },
  'times in a step': { length: 1500, run: (text) => stepTimes(`Bake ${text} minutes.`) },
  'a note and a caution in another language': {
    length: 1500,
    run: (text) => [toldNote(text, 'de'), cautionText({ code: 'LOW', text, key: null }, 'de')],
  },
};

/** Looks at the same text differ in their last sign, so that none is answered from memory. */
const growth = ({ length, run }: Work, atom: string): number =>
  growthOf({ made: (size, look) => `${repeated(atom, size)}${'wxyz'[look]}`, run, from: length });

describe('time grows with the length of', () => {
  it.each(Object.entries(WORKS))(
    '%s',
    (_, work) => {
      work.run('1 cup flour');
      const slow = ATOMS.flatMap((atom) => {
        const times = growth(work, atom);
        return times > MOST_GROWTH ? [`${JSON.stringify(atom)}: ${times.toFixed(1)} times`] : [];
      });
      expect(slow).toEqual([]);
    },
    600_000,
  );
});
