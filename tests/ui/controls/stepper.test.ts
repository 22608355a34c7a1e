import { h } from 'preact';
import { expect, it } from 'vitest';
import { Stepper, typedNumber } from '../../../extension/ui/controls/stepper.tsx';
import { drawn } from '../screen.ts';

it('reads numbers in either way of writing them, and nothing else', () => {
  expect(['12', '12.5', '12,5', ' 7 ', '.5'].map(typedNumber)).toEqual([12, 12.5, 12.5, 7, 0.5]);
  expect(['', 'e', '1.2.3', '-4', '1e3', '12 g'].map(typedNumber)).toEqual([
    null,
    null,
    null,
    null,
    null,
    null,
  ]);
});

it('tells of each valid number at once, keeps the last one while the text is none, and steps to whole ones', () => {
  const told: number[] = [];
  const props = {
    label: 'Budget',
    unit: 'g',
    caption: 'budget',
    min: 0,
    max: 500,
    onValue: (n: number) => told.push(n),
  };
  const screen = drawn(h(Stepper, { ...props, value: 14.5 }));
  const input = screen.root.querySelector('input');
  if (!input) throw new Error('no field');
  const type = (text: string) => {
    input.value = text;
    input.dispatchEvent(new window.Event('input', { bubbles: true }));
  };
  type('2');
  type('20');
  type('20x');
  type('900');
  expect(told).toEqual([2, 20]);
  const [less, more] = [...screen.root.querySelectorAll('button')];
  more?.click();
  less?.click();
  expect(told.slice(2)).toEqual([15, 14]);
  screen.clear();
});
