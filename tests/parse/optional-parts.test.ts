import { describe, expect, it } from 'vitest';
import { parseLine } from '../../engine/parse/index.ts';
import { underHeading } from '../../engine/parse/optional-parts.ts';

const optional = (group: string | null, title: string, language = 'en'): boolean =>
  underHeading(parseLine('90 g flour', { group, language }), { title, language }).optional;

describe('lines under a heading', () => {
  it.each([
    ['For the oat biscuits (optional)', 'en', true],
    ['Optional toppings', 'en', true],
    ['Zum Servieren (optional)', 'de', true],
    ['For the topping', 'en', false],
    [null, 'en', false],
  ])('%s: optional %s', (group, language, may) => {
    expect(optional(group, 'Plum fool', language)).toBe(may);
  });

  it('keep what they say of themselves', () => {
    const line = parseLine('sprinkles, optional', { group: 'For the top' });
    expect(underHeading(line, { title: 'Fool with top hats', language: 'en' }).optional).toBe(true);
  });
});

describe('a part that the title names is needed', () => {
  it.each([
    ['For the ginger biscuits (optional)', 'Plum fool with ginger biscuits', 'en', false],
    ['For the ginger crumble (optional)', 'Baked pears and ginger cream', 'en', false],
    ['Für die Vanille-Soße (optional)', 'Rote Grütze mit Vanille-Soße', 'de', false],
    ['For the glaze (optional)', 'Lemon loaf', 'en', true],
    ['For the lemon glaze (optional)', 'Lemon loaf', 'en', true],
    ['For the cream (optional)', 'Poached pears with biscuits', 'en', true],
  ])('%s of %s', (group, title, language, may) => {
    expect(optional(group, title, language)).toBe(may);
  });
});
