/** Whatever the engine says on a screen has German words; what is added without them fails here. */
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import shownNames from '../../../engine/match/data/shown-names.json' with { type: 'json' };
import type { Adaptation } from '../../../engine/model.ts';
import failures from '../../../engine/plan/data/failures.json' with { type: 'json' };
import keeps from '../../../engine/plan/data/keeps.json' with { type: 'json' };
import leftAlone from '../../../engine/plan/data/left-alone.json' with { type: 'json' };
import promises from '../../../engine/plan/data/promises.json' with { type: 'json' };
import { SWAP_FILES } from '../../../engine/plan/data/swap-files.ts';
import titledKinds from '../../../engine/plan/data/titled-kinds.json' with { type: 'json' };
import cues from '../../../engine/rewrite/data/cues.json' with { type: 'json' };
import warnings from '../../../engine/rewrite/data/warnings.json' with { type: 'json' };
import bakeFaults from '../../../engine/rewrite/languages/data/told-de/bake-faults.json' with {
  type: 'json',
};
import lineReasons from '../../../engine/rewrite/languages/data/told-de/line-reasons.json' with {
  type: 'json',
};
import stepReasons from '../../../engine/rewrite/languages/data/told-de/step-reasons.json' with {
  type: 'json',
};
import swapEffects from '../../../engine/rewrite/languages/data/told-de/swap-effects.json' with {
  type: 'json',
};
import swapReasons from '../../../engine/rewrite/languages/data/told-de/swap-reasons.json' with {
  type: 'json',
};
import { toldOnScreen } from '../../../engine/rewrite/languages/told-screens.ts';
import yields from '../../../engine/tally/data/yields.json' with { type: 'json' };
import { adaptedPage, DEMO_PAGES } from '../../ui/adapted.ts';

interface Told {
  source?: string;
  swaps: { effect: string; cautions?: string[]; source?: string }[];
}

const FILES: readonly Told[] = Object.values(SWAP_FILES);

/** Texts that have no words in German, each once. */
const untold = (texts: readonly string[]): string[] => [
  ...new Set(texts.filter((text) => text !== '' && toldOnScreen(text, 'de') === null)),
];

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** With a figure in each blank, as the engine tells it. */
const withFigures = (text: string): string =>
  text.replace(/\{\w*Food\}/g, 'oat fibre').replace(/\{\w+\}/g, '7');

describe('German words', () => {
  it('are there for every swap: what it does, its cautions, its source', () => {
    const swaps = FILES.flatMap((file) => file.swaps);
    expect(swaps.length).toBeGreaterThan(600);
    expect(untold(swaps.map(({ effect }) => effect))).toEqual([]);
    expect(untold(swaps.flatMap(({ cautions = [] }) => cautions))).toEqual([]);
    expect(untold([...FILES, ...swaps].flatMap(({ source = '' }) => source))).toEqual([]);
  });

  it('are there for every fault of a bake, its causes and what to change', () => {
    const { rows, conflicts } = failures;
    const told = rows.flatMap(({ label, causes, adjust }) => [
      ...Object.values<{ text: string; else?: string }>(causes)
        .flatMap((cause) => [cause.text, cause.else ?? cause.text])
        .flatMap((text) =>
          ['Likely here', 'Possible', 'Less likely'].map(
            (how) => `${label}. ${how}: ${withFigures(text)}.`,
          ),
        ),
      ...adjust.map(({ text }) => withFigures(text)),
    ]);
    expect(told.length).toBeGreaterThan(300);
    expect(untold(told)).toEqual([]);
    expect(untold(conflicts.flatMap(({ text, why }) => [text, why]))).toEqual([]);
    expect(untold(rows.flatMap(({ source = '' }) => source))).toEqual([]);
  });

  it('are there for why a page or a food stays as it is', () => {
    expect(untold(leftAlone.map(({ why }) => why))).toEqual([]);
    expect(untold(keeps.map(({ why }) => `sugar: ${why}`))).toEqual([]);
    expect(
      untold(promises.map(({ promise, means }) => `egg: the page says ${promise}: ${means}`)),
    ).toEqual([]);
    expect(
      untold(titledKinds.map(({ kind }) => `the title names a ${kind}, and its parts agree`)),
    ).toEqual([]);
  });

  it('are there for what a finished dish weighs, and why', () => {
    const { families, bakeLoss, dry } = yields;
    const sources = [...Object.values(families), ...Object.values(dry)].map(({ source }) => source);
    expect(untold(sources.map((source) => `estimated: 80 % of what goes in (${source})`))).toEqual(
      [],
    );
    expect(untold(sources)).toEqual([]);
    expect(
      untold(bakeLoss.holders.map(({ words }) => `${words}: 70 % of the usual loss (own choice)`)),
    ).toEqual([]);
  });

  it('are there for the reason of every cue and warning in a step', () => {
    expect(untold([...cues, ...warnings].map(({ why }) => why))).toEqual([]);
  });

  it('are one name for every food of the table, each another', () => {
    const rows: Record<string, { en: string; de: string }> = shownNames;
    const foods = foodTable().foods.map(({ id, name }) => [id, name]);
    expect(Object.entries(rows).map(([id, { en }]) => [id, en])).toEqual(
      expect.arrayContaining(foods),
    );
    expect(Object.keys(rows)).toHaveLength(foods.length);
    const german = Object.values(rows).map(({ de }) => de.toLowerCase());
    expect(german.filter((name, at) => name === '' || german.indexOf(name) !== at)).toEqual([]);
  });

  const tables = { bakeFaults, lineReasons, stepReasons, swapEffects, swapReasons };
  it.each(Object.entries<Record<string, string>>(tables))(
    'keep every figure and blank of %s',
    (_, table) => {
      const marks = (text: string): string[] =>
        (text.replaceAll('.', ',').match(/\{\w+\}|\d+(?:,\d+)?/g) ?? [])
          .filter((mark) => mark !== '{dropped}')
          .sort();
      for (const [english, said] of Object.entries(table)) {
        expect(marks(said), english).toEqual(marks(english));
        expect(said, english).not.toMatch(/\b(?:the|with|would|until|of)\b/);
      }
    },
  );
});

/** All that the engine says of a result, in its English. */
const saidOf = ({
  plan,
  lines,
  steps,
  methodNotes,
  ingredients,
  ...rest
}: Adaptation): string[] => [
  ...plan.swaps.flatMap(({ why, effect, cautions, considered, source }) => [
    ...[why, effect, source],
    ...cautions,
    ...considered,
  ]),
  ...lines.flatMap(({ why }) => why ?? []),
  ...steps.flatMap(({ why }) => why ?? []),
  ...methodNotes.flatMap(({ text }) => text ?? []),
  ...plan.limits.map(({ text }) => text),
  ...[plan.family, ...plan.parts].map(({ why }) => why),
  ...[...rest.notes, ...rest.questions, ...rest.recipe.notes].map(({ text }) => text),
  ...[rest.before.cookedSource, rest.after.cookedSource],
  ...[...rest.before.uncounted, ...rest.after.uncounted].map(({ why }) => why),
  ...ingredients.flatMap(({ match, weight }) => [
    ...(match ? [match.reason] : []),
    ...(weight?.assumptions ?? []),
    ...(weight?.disagreement ? [weight.disagreement.text] : []),
  ]),
];

describe('what is said of the demo pages', () => {
  it('has German words, every sentence of it', () => {
    const said = DEMO_PAGES.flatMap((page) =>
      saidOf(adaptedPage(page, { budgetG: 12, avoid: ['milk'] })),
    );
    expect(said.length).toBeGreaterThan(400);
    expect(untold(said)).toEqual([]);
  });
});

describe('a sentence', () => {
  it.each([
    [
      'almond flour + allulose: at most 20 % of the flour',
      'Gemahlene Mandeln + Allulose: Höchstens 20 % des Mehls',
    ],
    ['optional, so not in the totals; 1.5 g net carbs a serving if eaten', /; 1,5 g .*gegessen/],
    ['One serving would have about 2,200 kcal. Does the recipe make 4 servings?', /2200 kcal/],
    ['large piece of 50 g', 'Stück (groß) zu 50 g'],
    ['US cup of 149 g (of a cut without words)', 'US-Tasse zu 149 g'],
    [
      'Almond flour for part of the plain flour; allulose instead of sugar. Less milk.',
      'Gemahlene Mandeln für einen Teil von: plain flour; Allulose statt: sugar. Weniger milk.',
    ],
    [
      'Dough too wet. Possible: this flour holds less water than the table says.',
      'Teig zu nass. Möglich: Dieses Mehl hält weniger Wasser, als die Tabelle sagt.',
    ],
    [
      'Against “less water” for “dough too wet” stands “more water” for “dry”: one bake cannot tell which.',
      /„Teig zu nass“ .* „Trocken“/,
    ],
  ])('%s', (english, german) => {
    const said = toldOnScreen(english, 'de-AT');
    if (typeof german === 'string') expect(capital(said ?? '')).toBe(german);
    else expect(said).toMatch(german);
  });

  it('is left to English where any part of it has no words, and on other screens', () => {
    expect(toldOnScreen('Richer. Nobody put this one into German.', 'de')).toBeNull();
    expect(toldOnScreen('Richer.', 'en')).toBeNull();
    expect(toldOnScreen('Richer.', 'nl')).toBeNull();
  });
});
