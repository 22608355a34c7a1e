import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { StoveStep } from '../../../extension/ui/stove/stove-step.tsx';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

describe('a step at the stove', () => {
  it('has what it uses before what may be read later', () => {
    const step = {
      section: 'Dough',
      before: null,
      after: 'Mix the flour and the salt for 5 minutes.',
      change: 'kept' as const,
      why: 'Less flour needs less water.',
      told: [],
      compareWith: null,
    };
    const props = { step, at: 0, count: 3, factor: 1, language: undefined, onTimer: () => {} };
    screen = drawn(h(StoveStep, props, h('section', { class: 'at-hand' })));
    const order = [...screen.root.querySelectorAll('.stove-text, .at-hand, .acts, .stove-why')];
    expect(order.map(({ className }) => className)).toEqual([
      'stove-text',
      'at-hand',
      'acts',
      'stove-why',
    ]);
  });
});
