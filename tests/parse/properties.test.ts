import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Line } from '../../engine/model.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { tidy } from '../../engine/parse/words/tidy-line.ts';

const UNITS = [
  'g',
  'kg',
  'mg',
  'ml',
  'cl',
  'dl',
  'l',
  'oz',
  'lb',
  'fl oz',
  'cup',
  'tbsp',
  'tsp',
  'pint',
  'quart',
  'gallon',
];
const NAMES = ['bread flour', 'whole milk', 'sugar', 'olive oil', 'black beans', 'cream cheese'];
const WORDS = [
  '1',
  '½',
  '2-3',
  '1/2',
  '(',
  ')',
  ',',
  'cup',
  'g',
  'oz',
  'or',
  'and',
  'plus',
  'to',
  'x',
  'a',
  'of',
  'can',
  '/',
  '-',
  'chopped',
  'fresh',
  'large',
  'about',
  'flour',
  'milk',
  'for',
  'serve',
  'optional',
  ':',
  'EL',
  'c. à soupe',
  "d'",
  'zum',
];

const anyLine = fc.oneof(
  fc.string({ maxLength: 80 }),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.array(fc.constantFrom(...WORDS), { maxLength: 14 }).map((w) => w.join(' ')),
);
const language = fc.constantFrom(null, 'en', 'de', 'fr', 'nl', 'es', 'it', 'pt', 'sv', 'da', 'xx');

/** A quantity as kitchen text: whole, decimal or mixed fraction, with its value. */
const quantity = fc.oneof(
  fc.integer({ min: 1, max: 2000 }).map((n) => ({ text: `${n}`, value: n })),
  fc.integer({ min: 1, max: 9999 }).map((n) => ({ text: (n / 100).toFixed(2), value: n / 100 })),
  fc
    .tuple(
      fc.integer({ min: 0, max: 20 }),
      fc.constantFrom('1/2', '1/3', '2/3', '1/4', '3/4', '1/8', '5/8'),
    )
    .map(([whole, part]) => {
      const [over = 1, under = 1] = part.split('/').map(Number);
      return { text: whole > 0 ? `${whole} ${part}` : part, value: whole + over / under };
    }),
);

describe('every string', () => {
  it('gives a valid line, and an item or a heading when it says anything', () => {
    fc.assert(
      fc.property(anyLine, language, (text, lang) => {
        const line = parseLine(text, { language: lang });
        expect(Line.safeParse(line).success).toBe(true);
        if (/[\p{L}\d]/u.test(line.name) && line.kind !== 'heading')
          expect(line.items.length).toBeGreaterThan(0);
      }),
      { numRuns: 1500 },
    );
  });

  it('has ranges whose low end is not above the high end', () => {
    fc.assert(
      fc.property(anyLine, language, (text, lang) => {
        for (const item of parseLine(text, { language: lang }).items)
          for (const amount of item.amounts) {
            expect(Number.isFinite(amount.quantity)).toBe(true);
            expect(amount.quantity).toBeGreaterThanOrEqual(0);
            if (amount.max !== null) expect(amount.max).toBeGreaterThanOrEqual(amount.quantity);
          }
      }),
      { numRuns: 1500 },
    );
  });

  it('takes absurdly long input without failing and keeps it', () => {
    for (const piece of ['(', '1 ', 'chopped and ', '1/2 cup ', ', ', '1-', 'a.b.', '<', '&amp;']) {
      const line = parseLine(piece.repeat(60_000), { language: 'en' });
      expect(line.items.length).toBeGreaterThan(0);
    }
    expect(parseLine(`1 cup flour, ${'x'.repeat(9000)}`).note).toContain('xxxx');
  });

  it('reads the same twice', () => {
    fc.assert(
      fc.property(anyLine, (text) => {
        expect(parseLine(text)).toEqual(parseLine(text));
      }),
    );
  });
});

describe('the same line written otherwise', () => {
  const said = (text: string) => {
    const { items, note, purpose, optional, kind } = parseLine(text, { language: 'en' });
    return { items, note, purpose, optional, kind };
  };

  it('with other spaces reads the same', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...WORDS.filter((w) => w.trim() === w)), {
          minLength: 1,
          maxLength: 10,
        }),
        fc.constantFrom('  ', '\t', '\n ', '\u00a0', ' \u200b '),
        (words, space) => {
          expect(said(` ${words.join(space)} `)).toEqual(said(words.join(' ')));
        },
      ),
      { numRuns: 500 },
    );
  });

  it('with units in capitals reads the same amounts', () => {
    const forms = ['cups', 'tbsp', 'tsp', 'oz', 'lbs', 'grams', 'ml', 'pinches', 'cloves', 'cans'];
    fc.assert(
      fc.property(
        quantity,
        fc.constantFrom(...forms),
        fc.constantFrom(...NAMES),
        (q, unit, name) => {
          const lower = said(`${q.text} ${unit} ${name}`);
          expect(said(`${q.text} ${unit.toUpperCase()} ${name}`)).toEqual(lower);
        },
      ),
    );
  });

  it('is read the same again after it was tidied', () => {
    fc.assert(
      fc.property(anyLine, (text) => {
        const once = tidy(text);
        expect(said(once)).toEqual(said(text));
      }),
      { numRuns: 1000 },
    );
  });
});

describe('amounts survive printing and reading again', () => {
  it('one amount', () => {
    fc.assert(
      fc.property(
        quantity,
        fc.constantFrom(...UNITS),
        fc.constantFrom(...NAMES),
        (q, unit, name) => {
          const line = parseLine(`${q.text} ${unit} ${name}`, { language: 'en' });
          expect(line.name).toBe(name);
          expect(line.items[0]?.amounts).toHaveLength(1);
          const amount = line.items[0]?.amounts[0];
          expect(amount?.unit).toBe(unit);
          expect(amount?.quantity).toBeCloseTo(q.value, 9);
        },
      ),
    );
  });

  it('scaled by any factor', () => {
    fc.assert(
      fc.property(
        quantity,
        fc.constantFrom(...UNITS),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (q, unit, factor) => {
          const first = parseLine(`${q.text} ${unit} bread flour`, { language: 'en' }).items[0]
            ?.amounts[0];
          const scaled = (first?.quantity ?? 0) * factor;
          const again = parseLine(`${scaled.toFixed(3)} ${first?.unit} bread flour`, {
            language: 'en',
          });
          // printed to three decimals
          const read = again.items[0]?.amounts[0]?.quantity ?? Number.NaN;
          expect(Math.abs(read - scaled)).toBeLessThan(0.000501);
          expect(again.items[0]?.amounts[0]?.unit).toBe(unit);
        },
      ),
    );
  });

  it('ranges with every dash and word', () => {
    const links = ['-', '–', '—', ' - ', ' – ', ' to ', ' or '];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50 }),
        fc.integer({ min: 1, max: 50 }),
        fc.constantFrom(...links),
        (low, step, link) => {
          const [amount] =
            parseLine(`${low}${link}${low + step} tbsp sugar`).items[0]?.amounts ?? [];
          expect(amount?.quantity).toBe(low);
          expect(amount?.max).toBe(low + step);
          expect(amount?.unit).toBe('tbsp');
        },
      ),
    );
  });

  it('a second measure in any bracket or after any mark', () => {
    const forms = [
      (a: string, b: string) => `${a} (${b}) bread flour`,
      (a: string, b: string) => `${a} / ${b} bread flour`,
      (a: string, b: string) => `${a}/${b} bread flour`,
      (a: string, b: string) => `${a} | ${b} bread flour`,
      (a: string, b: string) => `${a} [${b}] bread flour`,
      (a: string, b: string) => `${a} bread flour (${b})`,
      (a: string, b: string) => `${a} bread flour, ${b}`,
    ];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 10, max: 900 }),
        fc.constantFrom(...forms),
        (cups, grams, form) => {
          const line = parseLine(form(`${cups} cups`, `${grams} g`), { language: 'en' });
          expect(line.name).toBe('bread flour');
          expect(line.items[0]?.amounts.map((a) => [a.quantity, a.unit, a.kind])).toEqual([
            [cups, 'cup', 'stated'],
            [grams, 'g', 'same'],
          ]);
        },
      ),
    );
  });
});
