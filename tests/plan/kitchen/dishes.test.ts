/** What a cook does first with sandwiches, bowls, pulses and drinks; invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, type Pasted } from '../pasted.ts';

const dish = (title: string, serves: string, lines: string[], steps: string[]): Pasted => ({
  title,
  serves,
  lines,
  steps,
  family: ['other'],
});

const foodsIn = ({ plan }: Adaptation): string[] =>
  plan.swaps.flatMap(({ to }) => to.map(({ foodId }) => foodId));
const linesOf = ({ lines }: Adaptation): string[] => lines.flatMap(({ after }) => after ?? []);

describe('dishes a cook would serve', () => {
  it('a pressed cheese sandwich keeps its slices, thinner ones', () => {
    const found = adapted(
      dish(
        'Pressed cheese sandwich',
        'Serves 2',
        ['4 slices sourdough bread', '120 g cheddar, sliced', '20 g butter'],
        ['Butter the bread, lay the cheese between the slices.', 'Fry until golden on both sides.'],
      ),
    );
    expect(linesOf(found)[0]).toMatch(/^4 slices high-fibre bread \(\d+ g\)$/);
    expect(found.after.perServing.netCarbsG?.best).toBeLessThan(15);
  });

  it('a filled baguette becomes a small roll, not a batter of eggs', () => {
    const found = adapted(
      dish(
        'Marinated tofu baguette',
        'Serves 1',
        ['1 small baguette', '120 g firm tofu', '20 g cucumber', '1 tsp soy sauce'],
        ['Split the baguette.', 'Fry the tofu with the soy sauce, fill the baguette with it.'],
      ),
    );
    expect(foodsIn(found)).toEqual(['low-carb-bun']);
    expect(found.allergensAdded).not.toContain('egg');
  });

  it('lentils stay lentils, half of them', () => {
    const found = adapted(
      dish(
        'Warm lentil bowl',
        'Serves 4',
        ['250 g green lentils', '200 g cauliflower florets', '2 tbsp oil', '1 avocado'],
        ['Boil the lentils until tender and drain.', 'Roast the cauliflower and serve it on top.'],
      ),
    );
    expect(foodsIn(found).filter((id) => /soy/.test(id))).toEqual([]);
  });

  it('oats in a salad are no porridge', () => {
    const found = adapted(
      dish(
        'Toasted oat and pepper salad',
        'Serves 4',
        ['200 g steel cut oats', '1 red bell pepper', '1 zucchini', '2 tbsp oil', '400 ml water'],
        ['Toast the oats, pour on the water and cover.', 'Fold in the vegetables.'],
      ),
    );
    expect(foodsIn(found)).not.toContain('chia-seed');
  });

  it('a porridge with fewer oats takes less milk', () => {
    const found = adapted(
      dish(
        'Apricot porridge',
        'Serves 2',
        ['90 g rolled oats', '350 ml milk', '2 apricots', '10 g butter'],
        ['Simmer the oats in the milk for 5 minutes.', 'Top with apricots and butter.'],
      ),
      { way: 'within' },
    );
    const oats = found.plan.items.find(({ foodId }) => foodId === 'rolled-oats')?.grams ?? 0;
    const milk = found.plan.items
      .filter(({ key }) => key.startsWith('1'))
      .reduce((sum, { grams }) => sum + grams, 0);
    expect(oats).toBeLessThan(90);
    expect(milk).toBeLessThan(330);
  });

  it('toppings that a drink may have do not keep its sugar', () => {
    const found = adapted(
      dish(
        'Winter cocoa',
        'Serves 4',
        ['500 ml milk', '300 ml cream', '25 g cocoa powder', '70 g sugar'],
        ['Warm all with the sugar; optional toppings such as mini marshmallows or brittle.'],
      ),
    );
    expect(found.plan.swaps.some(({ from }) => from?.foodId === 'sugar')).toBe(true);
  });

  it('turnovers are not cut into more pieces than were shaped', () => {
    const found = adapted(
      dish(
        'Plum turnovers',
        'Makes 8',
        ['500 g puff pastry', '300 g plums', '120 g powdered sugar', '2 tbsp milk'],
        [
          'Cut the pastry into 8 squares, fill with plums and fold.',
          'Bake, then glaze with sugar and milk.',
        ],
      ),
    );
    expect(found.ways.every(({ plan }) => plan.servings === 8)).toBe(true);
  });

  it('a smaller plate is not proposed where the pasta is not counted', () => {
    const found = adapted(
      dish(
        'Camp lasagne',
        'Serves 6',
        [
          '600 g ground beef',
          '1300 g tomato sauce',
          'lasagne sheets',
          '250 g ricotta',
          '200 g mozzarella',
        ],
        ['Layer sauce, sheets, beef and cheese.', 'Bake for 30 minutes.'],
      ),
    );
    expect(found.recommended).not.toBe('smaller');
  });
});
