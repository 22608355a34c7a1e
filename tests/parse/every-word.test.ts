/**
 * Nothing that a line says is lost: every word and number of it stands in the result, is told by an
 * amount, or is one of the few small words listed here. Checked with this file's own splitting, not
 * with the reader's.
 */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Amount, Line } from '../../engine/model.ts';
import en from '../../engine/parse/data/languages/en.json' with { type: 'json' };
import shared from '../../engine/parse/data/units.json' with { type: 'json' };
import { parseLine } from '../../engine/parse/index.ts';

/** Words that the result tells without repeating them, and when. */
const SMALL: Record<string, (line: Line) => boolean> = {};
for (const word of ['a', 'an', 'of', 'the', 'and', 'plus', 'or', 'x']) SMALL[word] = () => true;
for (const word of ['to', 'through', 'between']) SMALL[word] = (l) => amountsOf(l).length > 0;
for (const word of [
  'about',
  'around',
  'approx',
  'approximately',
  'roughly',
  'nearly',
  'almost',
  'circa',
  'ca',
])
  SMALL[word] = () => true;
SMALL.each = (l) => l.items.length > 1 || amountsOf(l).some((a) => a.kind === 'each');
SMALL.apiece = SMALL.each;
SMALL.per = SMALL.each;
SMALL.optional = (l) => l.optional;
SMALL.few = (l) => amountsOf(l).some((a) => a.approximate);
SMALL.several = SMALL.few;
SMALL.minus = (l) => amountsOf(l).length > 0;
SMALL.less = SMALL.minus;

const FRACTION = String.raw`(?:[½⅓⅔¼¾⅛⅜⅝⅞]|\d+\/\d+|0\.\d+)`;
const DIGITS = String.raw`\d+(?:\s+and\s+|\s*)${FRACTION}(?!\d)|${FRACTION}|\d+(?:,\d{3})+|\d+(?:[.,]\d+)?`;
const PIECES = new RegExp(`${DIGITS}|\\p{L}+(?:['’]\\p{L}+)*`, 'gu');
const VULGAR: Record<string, number> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const pieces = (text: string): string[] =>
  text.toLowerCase().replaceAll('’', "'").match(PIECES) ?? [];

/** '6 and 3/4' may be two numbers that came to stand together. */
const partsOf = (piece: string): string[] => piece.split(/\s+and\s+|\s+/);

function numberOf(piece: string): number {
  const words = piece
    .replace(' and ', ' ')
    .replace(/([½⅓⅔¼¾⅛⅜⅝⅞])/, ' $1')
    .trim()
    .split(/\s+/);
  return words.reduce((sum, word) => {
    const [over = 0, under = 1] = word
      .replace(/,(?=\d{3})/g, '')
      .replace(',', '.')
      .split('/')
      .map(Number);
    return sum + (VULGAR[word] ?? over / under);
  }, 0);
}

function amountsOf(line: Line): Amount[] {
  return line.items.flatMap((item) => [
    ...item.amounts,
    ...item.alternatives.flatMap((a) => a.amounts),
  ]);
}

const textsOf = (line: Line): string[] => [
  line.name,
  line.note ?? '',
  line.purpose ?? '',
  ...line.items.flatMap((item) => [
    item.name,
    item.size ?? '',
    item.preparation ?? '',
    ...item.alternatives.map((other) => other.name),
  ]),
];

const UNIT_WORDS = new Map<string, Set<string>>();
for (const [unit, forms] of [
  ...Object.entries(shared).map(([unit, { forms }]) => [unit, forms] as const),
  ...Object.entries(en.units).map(([unit, [, forms = '']]) => [unit, forms] as const),
])
  for (const word of forms.replaceAll('_', ' ').split(' ')) {
    const owners = UNIT_WORDS.get(word) ?? new Set();
    UNIT_WORDS.set(word, owners.add(unit));
  }
UNIT_WORDS.set('t', new Set(['tbsp', 'tsp']));
const NUMBER_WORDS = new Set([
  ...Object.keys(en.numbers).flatMap((word) => word.split('-')),
  ...['halves', 'thirds', 'quarters', 'fourths', 'eighths'],
]);

/** Words and numbers of the line that its reading does not tell. */
function lost(text: string, line: Line): string[] {
  const texts = textsOf(line);
  const said = new Set(texts.flatMap(pieces));
  const amounts = amountsOf(line);
  const values = amounts.flatMap((a) => [a.quantity, a.max ?? a.quantity]);
  const near = (value: number) => values.some((v) => Math.abs(v - value) < 1e-6);
  const told = (piece: string): boolean => {
    if (said.has(piece)) return true;
    if (/\d|[½⅓⅔¼¾⅛⅜⅝⅞]/.test(piece))
      return (
        near(numberOf(piece)) ||
        partsOf(piece).every((part) => near(numberOf(part)) || texts.some((t) => t.includes(part)))
      );
    if (SMALL[piece]?.(line)) return true;
    if (NUMBER_WORDS.has(piece)) return amounts.length > 0;
    if (piece === 'leaves') return said.has('leaf') || amounts.some((a) => a.unit === 'leaf');
    return amounts.some((a) => a.unit !== null && UNIT_WORDS.get(piece)?.has(a.unit));
  };
  return pieces(text).filter((piece) => !told(piece));
}

function check(text: string, source = text): void {
  const line = parseLine(source, { language: 'en' });
  if (line.kind === 'heading') return;
  expect(lost(text, line), `${source}\n${JSON.stringify(line)}`).toEqual([]);
}

const NUMBERS = [
  '1',
  '2',
  '12',
  '½',
  '1½',
  '1 1/2',
  '3/4',
  '0.5',
  '1,000',
  '2-3',
  '1 to 2',
  '3 or 4',
  'one',
  'a',
  'half a',
  'a few',
  'several',
  'about 2',
  'a scant 1',
  'two and a half',
  '5 to 6',
];
const UNITS = [
  '',
  'cup',
  'cups',
  'tbsp',
  'T.',
  'tsp.',
  'g',
  'kg',
  'ml',
  'oz',
  'fl. oz.',
  'lb',
  'pinch',
  'cloves',
  'sprigs',
  'can',
  'large',
  'heaped tablespoons',
  'packed cups',
  '(14 oz) can',
  '8-ounce packages',
  'x 400 g tins',
  'plus 2 tbsp',
  'cup (120 g)',
  'cups / 250 ml',
  'lb 2 oz',
  '2-inch piece',
];
const BEFORE = [
  '',
  'finely chopped',
  'fresh',
  'boneless, skinless',
  'unsalted',
  'freshly ground',
  'ripe medium',
  'peeled and diced',
  'low-fat',
  'whole',
  'good',
];
const FOODS = [
  'bread flour',
  'butter',
  'olive oil or lard',
  'salt and pepper',
  'milk or 3/4 cup cream',
  'eggs',
  'parsley leaves',
  'sweet, red or white onions',
  'chicken or vegetable stock',
  '2% milk',
  '70% chocolate',
  'garlic',
  'plain (all-purpose) flour',
  'tomatoes (about 1 lb)',
  'basil, mint, or dill',
  'baking potato such as a floury one',
];
const AFTER = [
  '',
  ', softened',
  ', at room temperature',
  ', plus extra for dusting',
  ' (optional)',
  ', divided',
  ', cut into 2-inch (5 cm) pieces',
  ' for frying',
  ', to taste',
  ' (see note 3)',
  ', peeled and thinly sliced (about 2 cups)',
  ', or as needed',
  '; I used a mild one',
  ', plus 1 egg yolk, beaten',
  ' (about 2 cups total)',
  ' (15 oz drained weight)',
  ', such as kale, chard, or cress',
  ' - the riper the better',
  ', preferably organic',
  ', 500 g in all',
  ' (from about 3 stalks), halved to serve',
];

describe('every word and number of a line', () => {
  it('of generated lines', () => {
    const pick = (list: string[]) => fc.constantFrom(...list);
    fc.assert(
      fc.property(
        pick(NUMBERS),
        pick(UNITS),
        pick(BEFORE),
        pick(FOODS),
        pick(AFTER),
        pick(AFTER),
        (...parts) => {
          const [number, unit, before, food, after, last] = parts;
          check([number, unit, before, food].filter(Boolean).join(' ') + after + last);
        },
      ),
      { numRuns: process.env.CRUMBSHIFT_LONG ? 50_000 : 3000 },
    );
  });

  it('of words in any order', () => {
    // one number of each kind, since two together may be one: 'two dozen', '1 ½'
    const words = [
      '7',
      '3 or 4',
      ...UNITS,
      ...BEFORE,
      ...FOODS,
      ...AFTER,
      'and',
      'or',
      'plus',
      'each',
      '(',
      ')',
      'to',
      'minus',
      'of',
      'about',
    ];
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...words.filter(Boolean)), { minLength: 1, maxLength: 9 }),
        (run) => check(run.join(' ')),
      ),
      { numRuns: process.env.CRUMBSHIFT_LONG ? 50_000 : 2000 },
    );
  });

  it("of the planner's recipes", () => {
    const file = new URL('../plan/recipes.json', import.meta.url);
    const { recipes } = JSON.parse(readFileSync(file, 'utf8')) as {
      recipes: { lines: string[] }[];
    };
    const lines = recipes.flatMap((recipe) => recipe.lines);
    expect(lines.length).toBeGreaterThan(300);
    for (const text of lines) check(text);
  });

  it('of the pages', () => {
    const folder = new URL('../pages/patterns/', import.meta.url);
    const lines = readdirSync(folder)
      .filter((name) => name.endsWith('.json'))
      .flatMap((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8')).groups ?? [])
      .flatMap((group: { lines: string[] }) => group.lines)
      .filter((text) => !/[$€£]|[^\p{Script=Latin}\p{N}\p{P}\p{S}\s]/u.test(text));
    expect(lines.length).toBeGreaterThan(200);
    for (const text of lines) check(text);
  });

  it('but prices, footnote marks, bullets, addresses and quotes round the line', () => {
    for (const [source, text] of [
      ['▢ 1 cup flour ($1.50)*', '1 cup flour'],
      ['[ ] 2 eggs†', '2 eggs'],
      ['3) 1 tsp salt [2]', '1 tsp salt'],
      ['“2 cups milk”', '2 cups milk'],
      ['1 onion https://example.org/onion', '1 onion'],
    ] as const) {
      check(text, source);
      expect(parseLine(source)).toEqual({ ...parseLine(text), text: source });
    }
  });

  it('is missed by the check when a reading drops it', () => {
    const line = parseLine('1 cup flour, sifted (about 120 g)');
    expect(lost('1 cup rye flour, sifted (about 120 g) 7', line)).toEqual(['rye', '7']);
  });
});
