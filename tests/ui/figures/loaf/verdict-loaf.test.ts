import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { LoafFigures } from '../../../../extension/ui/figures/loaf/loaf-figures.ts';
import { reachWords, VerdictLoaf } from '../../../../extension/ui/figures/loaf/verdict-loaf.tsx';
import { type Drawn, drawn } from '../../screen.ts';

const side = (grams: number) => ({ grams, groups: { flour: grams, sugar: 0, plant: 0, rest: 0 } });
const figures = (beforeG: number, afterG: number, highG: number, budgetG: number): LoafFigures => ({
  before: side(beforeG),
  after: side(afterG),
  highG,
  budgetG,
});

let screen: Drawn | null = null;
afterEach(() => screen?.clear());
const draw = (given: LoafFigures, untold = false) => {
  screen = drawn(h(VerdictLoaf, { figures: given, untold }));
  return screen.root;
};
const words = (root: HTMLElement) =>
  [...root.querySelectorAll('.loaf text')].map((text) => text.textContent);

describe('the words of the picture', () => {
  it('name each loaf at its side, and what the dotted heel stands for', () => {
    expect(words(draw(figures(49, 12, 16.2, 15)))).toEqual([
      'budget 15 g',
      'before',
      'now',
      'may be up to 17 g',
    ]);
  });

  it('say nothing of a heel that is not drawn', () => {
    expect(words(draw(figures(49, 12, 12, 15)))).not.toContain('may be up to 12 g');
  });

  it('are as long as there is room for', () => {
    expect(reachWords(16.2, 300)).toBe('may be up to 17 g');
    expect(reachWords(16.2, 90)).toBe('up to 17 g?');
    expect(reachWords(16.2, 20)).toBe('');
  });

  it('name no upper end where what is missing may take it anywhere', () => {
    expect(reachWords(16.2, 300, true)).toBe('and what is not counted');
    expect(words(draw(figures(49, 12, 16.2, 15), true)).join(' ')).not.toContain('17');
  });
});

describe('the knife', () => {
  const isAfter = (root: HTMLElement, one: string, other: string): boolean => {
    const [a, b] = [root.querySelector(one), root.querySelector(other)];
    if (!a || !b) throw new Error(`no ${one} or no ${other}`);
    return (b.compareDocumentPosition(a) & b.DOCUMENT_POSITION_FOLLOWING) !== 0;
  };

  it('lies under a loaf that it does not cut', () => {
    const root = draw(figures(48, 14.8, 17, 15));
    expect(isAfter(root, '.baked', '.knife')).toBe(true);
    expect(isAfter(root, '.may-reach', '.knife-line')).toBe(true);
  });

  it('cuts through one that is too long', () => {
    const root = draw(figures(48, 30, 33, 15));
    expect(isAfter(root, '.knife', '.baked')).toBe(true);
    expect(root.querySelector('.knife-line')).toBeNull();
  });
});
