import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Current } from '../../../extension/store/working/current.ts';
import { type Past, recorded, redone, undone } from '../../../extension/ui/hooks/work-past.ts';
import { adaptedPage } from '../adapted.ts';

const { recipe, goals } = adaptedPage('hearth-loaf.html');
const state = (budgetG: number): Current => ({
  recipe,
  goals: { ...goals, budgetG },
  corrections: {},
  savedId: null,
});

it('any number of steps back and forward again ends where it began', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 99 }), { maxLength: 30 }),
      fc.nat(30),
      (budgets, back) => {
        let past: Past = { before: [], after: [] };
        let now = state(0);
        for (const budget of budgets) {
          past = recorded(past, now);
          now = state(budget);
        }
        const end = now;
        const steps = Math.min(back, budgets.length);
        for (let step = 0; step < steps; step += 1) {
          const moved = undone(past, now);
          if (!moved) throw new Error('a step is missing');
          past = moved.past;
          now = moved.state;
        }
        expect(now.goals.budgetG).toBe([0, ...budgets][budgets.length - steps]);
        for (let step = 0; step < steps; step += 1) {
          const moved = redone(past, now);
          if (!moved) throw new Error('a step is missing');
          past = moved.past;
          now = moved.state;
        }
        expect(now.goals).toEqual(end.goals);
      },
    ),
  );
});

it('a change after a step back takes what was undone away', () => {
  const past = recorded({ before: [], after: [] }, state(1));
  const back = undone(past, state(2));
  if (!back) throw new Error('nothing to undo');
  expect(recorded(back.past, back.state).after).toEqual([]);
  expect(redone(recorded(back.past, back.state), state(3))).toBeNull();
});
