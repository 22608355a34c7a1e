/** What is shaped by hand has to hold: cauliflower does not stand in there, a smaller piece is better. */
import { describe, expect, it } from 'vitest';
import { adapted, dishesOf, type Pasted } from '../pasted.ts';

const dish = dishesOf('rice-dish', 'potato-dish', 'other');

const SHAPED: [string, Pasted][] = [
  [
    'rice balls',
    dish(
      'Grilled onigiri with miso',
      ['300 g short-grain rice', '400 ml water', '2 tbsp miso', '1 tbsp sesame oil'],
      ['Cook the rice in the water.', 'Shape into triangles with wet hands, brush and grill.'],
    ),
  ],
  [
    'balls of cooked rice',
    dish(
      'Fried rice balls with cheese',
      ['500 g cooked rice', '100 g mozzarella', '1 egg', '40 g parmesan'],
      ['Mix the rice with egg and parmesan.', 'Shape into balls round the cheese and fry.'],
    ),
  ],
  [
    'potato pancakes',
    dish(
      'Crisp potato pancakes',
      ['800 g potatoes', '1 onion', '2 eggs', '2 tbsp flour', '4 tbsp oil'],
      ['Grate the potatoes and onion and squeeze dry.', 'Stir in eggs and flour and fry in heaps.'],
    ),
  ],
  [
    'fish cakes',
    dish(
      'Cod fish cakes',
      ['500 g potatoes', '400 g cod', '1 egg', '2 tbsp parsley', '3 tbsp oil'],
      ['Boil and mash the potatoes.', 'Mix with cod, egg and parsley, form patties and fry.'],
    ),
  ],
  [
    'patties of grain',
    dish(
      'Quinoa patties with herbs',
      ['200 g quinoa', '2 eggs', '80 g feta', '1 onion', '3 tbsp oil'],
      ['Boil the quinoa and cool it.', 'Mix with the rest, form patties and fry.'],
    ),
  ],
];

describe('what has to hold its shape', () => {
  it.each(SHAPED)('%s get no cauliflower', (_, recipe) => {
    const { plan, ways } = adapted(recipe);
    const plans = [plan, ...ways.map((way) => way.plan)];
    const ids = plans.flatMap(({ items }) => items.map(({ foodId }) => foodId));
    expect(ids.length).toBeGreaterThan(0);
    expect(ids.filter((id) => id.startsWith('cauliflower'))).toEqual([]);
  });

  it('the filling of a dumpling keeps half of its potato', () => {
    const pierogi = dish(
      'Pierogi with cheese',
      ['400 g flour', '200 ml water', '900 g potatoes', '250 g cottage cheese', '1 onion'],
      [
        'Knead flour and water to a dough and roll it out.',
        'Boil and mash the potatoes with cheese and onion and serve with a salad of beets.',
        'Fill rounds of the dough, close them and boil for 5 minutes.',
      ],
    );
    const { ways, ingredients } = adapted({ ...pierogi, family: ['fresh-pasta', 'potato-dish'] });
    const potato = ingredients.find(({ match }) => match?.foodId.startsWith('potato'));
    for (const { plan } of ways) {
      const left = plan.items.find(({ foodId }) => foodId === potato?.match?.foodId);
      expect(left?.grams ?? 0).toBeGreaterThan(0.45 * 900);
    }
  });

  it('a dough of plantain gets no other root', () => {
    const tortillas = dish(
      'Beef in plantain tortillas',
      ['800 g green plantains', '500 g ground beef', '1 tsp salt', '1 tbsp oil'],
      ['Boil the plantains and blend them to a dough.', 'Press into tortillas and fry in the oil.'],
    );
    const ids = adapted(tortillas).ways.flatMap(({ plan }) => plan.items.map((i) => i.foodId));
    expect(ids.some((id) => /plantain/.test(id))).toBe(true);
    expect(ids.filter((id) => /rutabaga|kohlrabi/.test(id))).toEqual([]);
  });

  it('a loose bowl of rice still does', () => {
    const bowl = dish(
      'Chicken and rice bowl',
      ['300 g white rice', '500 g chicken breast', '1 cucumber', '2 tbsp oil'],
      ['Boil the rice.', 'Fry the chicken and serve on the rice.'],
    );
    const { plan } = adapted(bowl);
    const taken = plan.swaps.flatMap(({ to }) => to.map(({ foodId }) => foodId));
    expect(taken.some((id) => /cauliflower|konjac|palm|broccoli/.test(id))).toBe(true);
  });
});
