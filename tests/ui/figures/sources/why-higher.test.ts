import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { traceFigures } from '../../../../engine/index.ts';
import type { Adaptation } from '../../../../engine/model.ts';
import { TraceContext } from '../../../../extension/ui/figures/sources/trace-context.ts';
import { mayBeAbove } from '../../../../extension/ui/figures/sources/why-higher.ts';
import { VerdictCard } from '../../../../extension/ui/figures/verdict-card.tsx';
import { adaptedPage, adaptedText } from '../../adapted.ts';
import { type Drawn, drawn } from '../../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

/** What stands at the head of the sources once the figure of the verdict is pressed. */
async function pressed(adaptation: Adaptation): Promise<string | null> {
  const trace = traceFigures(adaptation);
  const card = h(VerdictCard, { adaptation });
  screen = drawn(h(TraceContext.Provider, { value: async () => trace }, card));
  const figure = screen.root.querySelector<HTMLElement>('.verdict-say .figure-button');
  await act(async () => figure?.click());
  await act(async () => {});
  expect(screen.root.querySelector('.sources')).not.toBeNull();
  return screen.root.querySelector('.why-higher')?.textContent ?? null;
}

/** Invented stew, its vegetables counted in pieces. */
const stew = (budgetG: number) =>
  adaptedText(
    'Ford Stew\n\nServes 4\n\nIngredients\n600 g beef\n4 small carrots\n1 onion\n500 ml water\n\nMethod\n1. Simmer everything for two hours.',
    { budgetG },
  );

describe('why a figure may be higher', () => {
  it('is asked where the budget lies between the best figure and the upper end', () => {
    expect(mayBeAbove({ low: 10, best: 14, high: 20 }, 15)).toBe(true);
    expect(mayBeAbove({ low: 10, best: 14, high: 15 }, 15)).toBe(false);
    expect(mayBeAbove({ low: 10, best: 16, high: 20 }, 15)).toBe(false);
  });

  it('is told one press away, with the food that could bring most', async () => {
    const { after } = stew(30);
    const net = after.perServing.netCarbsG;
    if (!net) throw new Error('not counted');
    const told = await pressed(stew((net.best + net.high) / 2));
    expect(told).toMatch(/A serving may have as much as \d+ g/);
    expect(told).toMatch(/onion: its amount is not certain, up to [\d.]+ g more/i);
  });

  it('names the resistant starch that is counted as fibre', async () => {
    const loaf = adaptedPage('hearth-loaf.html');
    const told = await pressed(loaf);
    expect(told).toMatch(/resistant.*starch.*Counted in full it is [\d.]+ g more/i);
  });

  it('is not told where the whole range fits', async () => {
    expect(await pressed(stew(60))).toBeNull();
  });
});
