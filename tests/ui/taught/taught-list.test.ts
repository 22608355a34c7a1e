import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { type BakeFacts, type Lesson, lessonsFrom } from '../../../engine/index.ts';
import { lessonBakes, lessonText } from '../../../extension/ui/taught/lesson-text.ts';
import { TaughtList } from '../../../extension/ui/taught/taught-list.tsx';
import { type Drawn, drawn } from '../screen.ts';

const facts = (id: string, day: string, changes: Partial<BakeFacts>): BakeFacts => ({
  id,
  recipeId: 'loaf',
  title: 'Invented loaf',
  day,
  addedAt: 0,
  plan: { family: 'lean-yeast-bread', flours: { 'bread-flour': 500 }, taughtWaterG: 0 },
  rawGrams: 900,
  dishGrams: null,
  extraWaterG: null,
  ovenSetC: 220,
  ovenReadC: null,
  ...changes,
});

const FACTS = [
  facts('a', '2026-11-01', { extraWaterG: 20, ovenReadC: 210 }),
  facts('b', '2026-11-08', { extraWaterG: 30, ovenReadC: 208 }),
];
const LESSONS = lessonsFrom(FACTS, new Set());
const named = { foods: {}, facts: FACTS };
const lesson = (of: Lesson['of']): Lesson => {
  const found = LESSONS.find((one) => one.of === of);
  if (!found) throw new Error(of);
  return found;
};

let screen: Drawn | undefined;
afterEach(() => screen?.clear());

describe('what the bakes taught', () => {
  it('is said in sentences, with the bakes', () => {
    // (20 + 30) / 2 g for 500 g of flour.
    expect(lessonText(lesson('dish-water'), named)).toBe(
      '“Invented loaf”: 5 g more water for each 100 g of flour.',
    );
    expect(lessonText(lesson('oven'), named)).toBe('Your oven is 11 °C cooler than it is set.');
    expect(lessonBakes(lesson('oven'), named)).toMatch(/^From 2 bakes: .*8, 2026.*1, 2026\.$/);
    expect(lessonBakes({ ...lesson('oven'), earlier: 4 }, named)).toContain('4 earlier bakes');
  });

  it('is switched off one by one; lessons of other dishes are folded away', () => {
    const turned: [string, boolean][] = [];
    const lessons = {
      facts: FACTS,
      lessons: LESSONS,
      off: ['oven'],
      own: [],
      reload: () => {},
      turn: (id: string, on: boolean) => void turned.push([id, on]),
    };
    screen = drawn(
      h(TaughtList, { lessons, recipeId: 'another', accepted: [], onWithdraw: () => {} }),
    );
    const boxes = () => [...(screen as Drawn).root.querySelectorAll('input')];
    expect(boxes().map(({ checked }) => checked)).toEqual([false]);
    act(() => boxes()[0]?.click());
    expect(turned).toEqual([['oven', true]]);
    expect(screen.root.querySelector('summary')?.textContent).toContain('from another dish');
  });
});
