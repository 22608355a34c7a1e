/** What a plan says of its lines agrees with what it says of a serving. */
import { describe, expect, it } from 'vitest';
import { adapted, PASTED } from '../pasted.ts';

/** 'fall from 40.0 to 8.0 g a serving', as numbers. */
function fallOf(why: string): { from: number; to: number } | null {
  const [, from, to] = /fall from ([\d.]+) to ([\d.]+) g a serving/.exec(why) ?? [];
  return from === undefined ? null : { from: Number(from), to: Number(to) };
}

describe('reasons of lines', () => {
  const results = PASTED.slice(0, 30).flatMap((recipe) => {
    const { before, ways } = adapted(recipe, { budgetG: 15 });
    return ways.map((rework) => ({ recipe, before, ...rework }));
  });

  it('count in the servings of their way: no line has more than the whole serving', () => {
    const cut = results.filter(({ plan, before }) => plan.servings > before.servings);
    expect(cut.length).toBeGreaterThan(5);
    for (const { recipe, plan, after } of results) {
      const whole = after.perServing.netCarbsG?.best ?? 0;
      for (const { why } of plan.swaps) {
        const fall = fallOf(why);
        // Told to a tenth of a gram.
        if (fall) expect(fall.to, `${recipe.title}: ${why}`).toBeLessThanOrEqual(whole + 0.1);
      }
    }
  });

  it('name the budget only where it is met', () => {
    const missed = results.filter(({ plan }) => !plan.met);
    expect(missed.length).toBeGreaterThan(0);
    for (const { plan } of missed)
      for (const { why } of plan.swaps) expect(why).not.toContain('budget');
  });
});
