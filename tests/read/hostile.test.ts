import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Recipe } from '../../engine/model.ts';
import { readPage, readText } from '../../engine/read/index.ts';
import { parseJson, parseTolerant } from '../../engine/read/markup/tolerant-json.ts';
import { growthOf, leastMs, MOST_GROWTH, processorClock } from '../faults/growth.ts';
import { documentFrom, recipesIn } from './page-file.ts';

const LD = (text: string) => `<script type="application/ld+json">${text}</script>`;

const GOOD = JSON.stringify({
  '@context': 'https://schema.org',
  '@graph': [
    {
      '@type': 'Recipe',
      name: 'Plain rolls',
      recipeYield: ['8', '8 rolls'],
      recipeIngredient: ['300 g flour', '200 g water', '6 g salt'],
      recipeInstructions: [{ '@type': 'HowToStep', text: 'Mix and bake.' }],
    },
  ],
});

/** One document for all, because making one takes longer than reading it. */
const shared = documentFrom('');

function checked(html: string): void {
  shared.documentElement.innerHTML = html;
  let result = readPage(shared, { elapsedMs: () => 1_000 });
  const read = () => {
    result = readPage(shared, { elapsedMs: processorClock() });
  };
  // Five times the reader's own bound, for a busy machine.
  expect(leastMs(read, 2_000)).toBeLessThan(2_000);
  if (result.ok) for (const recipe of result.recipes) Recipe.parse(recipe);
  else expect(result.why).not.toBe('');
}

const FRAGMENTS = [
  '<ul>',
  '</ul>',
  '<li>',
  '<h2>Ingredients</h2>',
  '<h2>Method</h2>',
  '<p>',
  '<br>',
  '<b>',
  '</b>',
  '<table><tr><td>',
  '</table>',
  '2 cups flour',
  '1/2',
  'Serves 4',
  '12.',
  'Bake 20 min.',
  '&frac12;',
  '<',
  '>',
  '&',
  '\u202e',
  '\u0000',
  '<div itemscope itemtype="https://schema.org/Recipe">',
  '<span itemprop="recipeIngredient">',
  '</div>',
  '</span>',
  '<article class="h-recipe">',
  '<i class="p-ingredient">',
  '<div typeof="Recipe">',
  '<p property="name">',
  LD(GOOD),
  LD('{"@type":"Recipe",'),
];

/** Documents a property makes; three make documents: 1,050 in all, or 21,000 when asked for. */
const LONG = process.env.CRUMBSHIFT_LONG === '1';
const RUNS = LONG ? 7_000 : 350;

describe('hostile input', { timeout: LONG ? 3_600_000 : 90_000 }, () => {
  it('reads random documents without throwing', () => {
    const piece = fc.oneof(
      fc.constantFrom(...FRAGMENTS),
      fc.string({ maxLength: 20, unit: 'binary' }),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 25 }), (pieces) => checked(pieces.join(''))),
      { numRuns: RUNS },
    );
  });

  it('reads mutated JSON-LD without throwing', () => {
    const cut = fc.record({
      at: fc.nat(GOOD.length),
      drop: fc.nat(6),
      add: fc.string({ maxLength: 3 }),
    });
    fc.assert(
      fc.property(fc.array(cut, { maxLength: 5 }), (cuts) => {
        let text = GOOD;
        for (const { at, drop, add } of cuts)
          text = text.slice(0, at) + add + text.slice(at + drop);
        checked(LD(text.replaceAll('</', '<')));
      }),
      { numRuns: RUNS },
    );
  });

  it('reads JSON-LD of any values without throwing', () => {
    const node = fc.record(
      {
        '@type': fc.constantFrom<unknown>('Recipe', ['Recipe', 'Thing'], 7, null),
        name: fc.jsonValue(),
        recipeIngredient: fc.jsonValue(),
        recipeInstructions: fc.jsonValue(),
        recipeYield: fc.jsonValue(),
        totalTime: fc.jsonValue(),
        author: fc.jsonValue(),
        image: fc.jsonValue(),
        nutrition: fc.jsonValue(),
      },
      { requiredKeys: ['@type'] },
    );
    fc.assert(
      fc.property(node, (value) => checked(LD(JSON.stringify(value).replaceAll('<', '\\u003c')))),
      { numRuns: RUNS },
    );
  });

  it('takes any pasted text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 400, unit: 'binary' }), (text) => {
        const result = readText(text);
        if (result.ok) for (const recipe of result.recipes) Recipe.parse(recipe);
      }),
      { numRuns: RUNS },
    );
  });

  it('parses whatever a strict parser does, to the same value', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.array(fc.jsonValue()), fc.dictionary(fc.string(), fc.jsonValue())),
        (value) => {
          // Objects of the tolerant parser have no prototype; a round trip makes them comparable.
          const text = JSON.stringify(value);
          expect(JSON.stringify(parseTolerant(text)[0])).toBe(JSON.stringify(JSON.parse(text)));
        },
      ),
      { numRuns: RUNS },
    );
  });

  it('survives nesting 10,000 deep in JSON and 1,500 deep in elements', () => {
    const deep = `${'['.repeat(10_000)}1${']'.repeat(10_000)}`;
    expect(parseJson(deep)).toHaveLength(1);
    expect(parseTolerant(deep.slice(0, 15_000))).toHaveLength(1);
    expect(recipesIn(`${LD(`{"x":${deep}}`)}${LD(GOOD)}`)[0]?.title).toBe('Plain rolls');
    const steps = `${'['.repeat(10_000)}"Bake."${']'.repeat(10_000)}`;
    checked(LD(`{"@type":"Recipe","name":"x","recipeInstructions":${steps}}`));
    checked(`${'<div>'.repeat(1_500)}<h2>Ingredients</h2><ul><li>1 cup flour`);
  });

  it('does not read 20 MB of JSON-LD, and says the page was cut', () => {
    const filler = `{"@type":"Recipe","name":"${'x'.repeat(20_000_000)}"}`;
    let recipes: Recipe[] = [];
    const read = () => {
      recipes = recipesIn(`${LD(GOOD)}${LD(filler)}`);
    };
    expect(leastMs(read, 5_000)).toBeLessThan(5_000);
    const [recipe] = recipes;
    expect(recipe?.title).toBe('Plain rolls');
    expect(recipe?.notes.map((note) => note.code)).toContain('page-cut');
  });

  it('never sets a prototype from __proto__ keys', () => {
    const text =
      '{"@type":"Recipe","name":"Rolls","__proto__":{"polluted":true},"recipeIngredient":["1 cup flour","1 egg"],}';
    const [value] = parseTolerant(text);
    expect(Object.getPrototypeOf(value)).toBeNull();
    expect(recipesIn(LD(text))[0]?.groups[0]?.lines).toEqual(['1 cup flour', '1 egg']);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('ends on cycles by @id', () => {
    const graph = {
      '@graph': [
        {
          '@type': 'Recipe',
          '@id': '#r',
          name: 'Rolls',
          author: { '@id': '#a' },
          image: { '@id': '#r' },
          recipeIngredient: ['1 cup flour', '1 egg'],
        },
        { '@id': '#a', author: { '@id': '#r' }, isPartOf: { '@id': '#a' } },
      ],
    };
    expect(recipesIn(LD(JSON.stringify(graph)))[0]?.author).toBeNull();
  });

  it('drops direction overrides and invisible characters, and keeps markup as text', () => {
    const value = {
      '@type': 'Recipe',
      name: 'Rolls\u202e\u200b',
      recipeIngredient: ['1 cup <img src=x onerror=alert(1)>flour', '2 eg\u00adgs'],
    };
    const [recipe] = recipesIn(LD(JSON.stringify(value).replaceAll('<', '\\u003c')));
    expect(recipe?.title).toBe('Rolls');
    expect(recipe?.groups[0]?.lines).toEqual(['1 cup flour', '2 eggs']);
  });

  it('stops when its time is up, keeps what it has and says that parts may be missing', () => {
    const document = documentFrom(
      `<h1>Bake</h1><h2>Ingredients</h2><ul>${'<li>1 cup flour</li><li>2 eggs</li><li>3 g salt</li>'.repeat(700)}</ul>`,
    );
    const result = readPage(document, { elapsedMs: () => 1_000 });
    if (!result.ok) throw new Error(result.why);
    const [recipe] = result.recipes;
    expect(recipe?.groups[0]?.lines.slice(0, 3)).toEqual(['1 cup flour', '2 eggs', '3 g salt']);
    expect(recipe?.notes.map((note) => note.code)).toContain('time-up');
  });

  it('reads markup at the end of a page too long to copy in time', () => {
    const html = `${'<p>Some words.</p>'.repeat(2_000)}${LD(GOOD)}`;
    const result = readPage(documentFrom(html), { elapsedMs: () => 1_000 });
    expect(result.ok && result.recipes[0]?.groups[0]?.lines).toHaveLength(3);
  });

  it('reads a frame of the page’s own origin, and passes over one it may not look into', () => {
    const document = documentFrom(
      '<h1>Frame rolls</h1><iframe id="closed"></iframe><iframe id="own"></iframe>',
    );
    const closed = document.querySelector('#closed') as HTMLIFrameElement;
    Object.defineProperty(closed, 'contentDocument', {
      get: () => {
        throw new Error('not of this origin');
      },
    });
    const inner = (document.querySelector('#own') as HTMLIFrameElement).contentDocument;
    if (inner?.body)
      inner.body.innerHTML =
        '<h2>Ingredients</h2><ul><li>300 g flour</li><li>200 g water</li></ul><h2>Method</h2><p>Mix both and bake for 40 minutes.</p>';
    const result = readPage(document);
    expect(result.ok && result.recipes[0]?.title).toBe('Frame rolls');
    expect(result.ok && result.recipes[0]?.groups[0]?.lines).toEqual([
      '300 g flour',
      '200 g water',
    ]);
  });

  it('ends on frames within frames', () => {
    const document = documentFrom('<p>Words.</p>');
    let at: Document | null = document;
    for (let level = 0; level < 25 && at; level += 1) {
      const frame: HTMLIFrameElement = at.createElement('iframe');
      at.body.appendChild(frame);
      at = frame.contentDocument;
      at?.body.append('1 cup flour');
    }
    expect(readPage(document).ok).toBe(false);
  });

  it.each(['{', '[', '"', '<', '&', '1 ', '1.', '(', 'a.B', ' \n', '\\"', '{]'])(
    'does not blow up in time on long runs of %j',
    (one) => {
      const page = (text: string) =>
        LD(`{"@type":"Recipe","name":"x","recipeYield":"${text}","recipeInstructions":"${text}`);
      const made = (count: number) => {
        const text = one.repeat(count);
        return { text, document: documentFrom(page(text)) };
      };
      const run = ({ text, document }: ReturnType<typeof made>) => {
        parseJson(text);
        readText(text);
        return readPage(document);
      };
      expect(growthOf({ made, run, from: 10_000 })).toBeLessThan(MOST_GROWTH);
      checked(page(one.repeat(30_000)));
    },
  );

  it('reads what an open shadow tree shows', () => {
    const document = documentFrom('<h1>Oat bake</h1><oat-card></oat-card>');
    const root = document.querySelector('oat-card')?.attachShadow({ mode: 'open' });
    for (const [tag, texts] of [
      ['ul', ['200 g oats', '2 eggs']],
      ['ol', ['Mix the oats and the eggs.', 'Bake for 30 minutes.']],
    ] as const) {
      const heading = document.createElement('h2');
      heading.textContent = tag === 'ul' ? 'Ingredients' : 'Method';
      const list = document.createElement(tag);
      for (const text of texts) list.appendChild(document.createElement('li')).textContent = text;
      root?.append(heading, list);
    }
    const result = readPage(document);
    expect(result.ok && result.recipes[0]?.groups[0]?.lines).toEqual(['200 g oats', '2 eggs']);
    expect(result.ok && result.recipes[0]?.steps).toHaveLength(2);
  });
});
