/** Large rolls, the main load of a stuffed sandwich, get a stand-in of a size that one stomach takes. */
import { expect, it } from 'vitest';
import { adapted } from '../pasted.ts';

it('large rolls become smaller ones of more fibre', () => {
  const { plan, after } = adapted(
    {
      title: 'Stuffed sausage grinders',
      serves: 'Serves 8',
      lines: ['500 g frozen french fries', '700 g chorizo, sliced', '8 large grinder rolls'],
      steps: [
        'Bake the fries.',
        'Fry the sausage.',
        'Slice the rolls half way and stuff them with fries and sausage.',
      ],
      family: ['other'],
    },
    { budgetG: 15, way: 'within' },
  );
  const swap = plan.swaps.find(({ key }) => key === '2');
  expect(swap?.id).toBe('large-roll-to-small-high-fibre-bun');
  expect(after.perServing.netCarbsG?.best ?? 99).toBeLessThan(16);
});
