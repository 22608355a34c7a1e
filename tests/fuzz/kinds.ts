/** What is tried with damaged input, and what must hold whatever comes in. */
import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { parsePage } from '../../engine/cli/light-document/parse-page.ts';
import {
  type Adaptation,
  Allergen,
  adaptRecipe,
  DEFAULT_GOALS,
  type Goals,
  type Recipe,
  readPage,
  toCsv,
  toJsonLd,
  toMarkdown,
  toText,
  weighRecipe,
} from '../../engine/index.ts';
import { exportBackup, importBackup } from '../../extension/store/backup/transfer.ts';
import { openStore } from '../../extension/store/db.ts';
import { saveRecipe } from '../../extension/store/kept/saved.ts';
import { processorClock } from '../faults/growth.ts';
import { PASTED } from '../plan/pasted.ts';
import { sampleRecipe, sampleWork } from '../store/sample.ts';
import { damagedText } from './mutations.ts';

/** Processor time that anything may take at most, ms. */
const MOST_MS = 2000;

/** Looks before a time is believed: a busy machine makes one of them long. */
const LOOKS = 3;

/** @throws {Error} when the work throws or takes too long. */
async function inTime<Result>(work: () => Result | Promise<Result>): Promise<Result> {
  let least = Number.POSITIVE_INFINITY;
  for (let look = 0; look < LOOKS; look += 1) {
    const spent = processorClock();
    const result = await work();
    least = Math.min(least, spent());
    if (least <= MOST_MS) return result;
  }
  throw new Error(`took ${least.toFixed(0)} ms`);
}

function checkMass(what: string, grams: number): void {
  if (!Number.isFinite(grams) || grams < 0) throw new Error(`${what} weighs ${grams} g`);
}

const recipeOf = (title: string, lines: string[], steps: string[]): Recipe =>
  sampleRecipe({
    title,
    groups: [{ title: null, lines }],
    steps: steps.map((text) => ({ section: null, text })),
  });

const LINES = PASTED.flatMap(({ lines }) => lines);
const STEPS = PASTED.flatMap(({ steps }) => steps);
const TITLES = PASTED.map(({ title }) => title);

async function tryLine(line: string): Promise<void> {
  const ingredients = await inTime(() => weighRecipe(recipeOf('Dish', [line], [])));
  for (const { weight } of ingredients) {
    if (weight === null) continue;
    const { low, best, high } = weight.grams;
    for (const grams of [low, best, high]) checkMass(line, grams);
    if (!(low <= best && best <= high)) throw new Error(`${low} to ${high} g, best ${best}`);
  }
}

const goals: fc.Arbitrary<Partial<Goals>> = fc.record({
  budgetG: fc.integer({ min: 0, max: 60 }),
  servings: fc.option(fc.integer({ min: 1, max: 40 }), { nil: null }),
  avoid: fc.subarray([...Allergen.options], { maxLength: 3 }),
});

function checkAdaptation(adaptation: Adaptation): void {
  for (const { plan } of [adaptation, ...adaptation.ways])
    for (const { foodName, grams } of plan.items) checkMass(foodName, grams);
  for (const write of [toCsv, toMarkdown, toText])
    if (write(adaptation) === '') throw new Error(`${write.name} wrote nothing`);
  JSON.parse(toJsonLd(adaptation));
}

async function tryRecipe([title, lines, steps, wishes]: [
  string,
  string[],
  string[],
  Partial<Goals>,
]): Promise<void> {
  const recipe = recipeOf(title, lines, steps);
  checkAdaptation(await inTime(() => adaptRecipe(recipe, { ...DEFAULT_GOALS, ...wishes })));
}

const PAGES = new URL('../pages/', import.meta.url);
const pages = readdirSync(PAGES, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.html'))
  .map((name) => readFileSync(new URL(name, PAGES), 'utf8'));

async function tryPage(html: string): Promise<void> {
  const read = await inTime(() => readPage(parsePage(html)));
  if (!read.ok && read.why === '') throw new Error('no recipe and no reason');
}

let stores = 0;

/** A damaged file adds something or says why not, and what was there stays. */
async function tryBackup(text: string): Promise<void> {
  stores += 1;
  const store = openStore(() => {}, `fuzz-${stores}`);
  try {
    const mine = sampleWork({ recipe: sampleRecipe({ title: 'Mine' }) });
    const { id } = await saveRecipe(store, mine, 'mine', 1);
    const result = await inTime(() => importBackup(store, text));
    if (!result.ok && result.why === '') throw new Error('refused without a reason');
    const after = JSON.parse(await exportBackup(store, 0));
    const kept = after.recipes.some((row: { id: string }) => row.id === id);
    if (!kept) throw new Error('what was here is gone');
  } finally {
    await store.delete();
  }
}

async function backupText(): Promise<string> {
  const store = openStore(() => {}, 'fuzz-source');
  await saveRecipe(store, sampleWork(), 'sample', 1);
  await saveRecipe(store, sampleWork({ goals: { ...DEFAULT_GOALS, budgetG: 9 } }), 'sample', 2);
  const text = await exportBackup(store, 0);
  await store.delete();
  return text;
}

export interface Kind {
  name: string;
  /** Cases of a minute's worth. */
  cases: number;
  property: fc.IAsyncProperty<unknown>;
}

const many = (texts: readonly string[], least: number, most: number) =>
  fc.array(damagedText(texts, 2), { minLength: least, maxLength: most });

export const KINDS: readonly Kind[] = [
  { name: 'lines', cases: 2000, property: fc.asyncProperty(damagedText(LINES), tryLine) },
  {
    name: 'adaptations with every export',
    cases: 300,
    property: fc.asyncProperty(
      fc.tuple(damagedText(TITLES), many(LINES, 1, 12), many(STEPS, 0, 5), goals),
      tryRecipe,
    ),
  },
  { name: 'documents', cases: 350, property: fc.asyncProperty(damagedText(pages), tryPage) },
  {
    name: 'backups',
    cases: 30,
    property: fc.asyncProperty(damagedText([await backupText()]), tryBackup),
  },
] as Kind[];
