import { h } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { Concerns, NotCounted } from '../../../extension/ui/figures/concerns.tsx';
import { adaptedPage, adaptedText } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

/** Invented supper with one line that has no amount. */
const supper = (line: string, budgetG: number) =>
  adaptedText(
    `Weir Supper\n\nServes 4\n\nIngredients\n400 g chicken breast\n200 g cream\n${line}\n\nMethod\n1. Cook the chicken in the cream.`,
    { budgetG },
  );

function shown(line: string, budgetG = 15): Element | null {
  screen = drawn(h(NotCounted, { adaptation: supper(line, budgetG), onSay: () => {} }));
  return screen.root.querySelector('.missing');
}

describe('lines that are not counted', () => {
  it('are told with a way to put them right where they may weigh on the verdict', () => {
    const crust = shown('1 batch of dumpling dough');
    expect(crust?.textContent).toContain('dumpling dough');
    expect(crust?.classList.contains('slight')).toBe(false);
    expect(crust?.querySelector('button')).not.toBeNull();
  });

  it('are said to be too much where what the dish is eaten with takes it past the budget', () => {
    const rice = shown('cooked rice, to serve', 8);
    expect(rice?.textContent).toContain('Eaten with it, a serving is above your budget.');
  });

  it('are told quietly where they do not', () => {
    const herb = shown('fresh basil');
    expect(herb?.textContent).toContain('fresh basil');
    expect(herb?.classList.contains('slight')).toBe(true);
    expect(herb?.querySelector('button')).toBeNull();
  });
});

describe('what has to be ordered', () => {
  const FLOURS = ['one long name of a flour', 'another flour', 'a third'];
  const orderLine = (brief: boolean, names = FLOURS) => {
    const adaptation = adaptedPage('milk-rolls.html');
    const rare = names.map((food) => ({
      foodId: `no-such-${food}`,
      food,
      grams: 10,
      poured: false,
      availability: 'speciality' as const,
    }));
    screen = drawn(
      h(Concerns, {
        adaptation: { ...adaptation, plan: { ...adaptation.plan, shopping: rare } },
        brief,
      }),
    );
    return [...screen.root.querySelectorAll('li')].at(-1)?.textContent;
  };

  it('is told in full', () => {
    expect(orderLine(false)).toContain('one long name of a flour, another flour, and a third');
  });

  it('is told in one line where something graver needs the room', () => {
    expect(orderLine(true)).toBe('Order ahead: one long name of a flour and 2 more.');
    expect(orderLine(true, ['a name too long for any line of its own', 'another flour'])).toBe(
      'Order ahead: another flour and one more.',
    );
    expect(orderLine(true, ['a name too long for any line of its own'])).toBe(
      'Order ahead: a name too long for any line of its own.',
    );
  });
});
