/** What stands in is cooked once, in time, and cooled where the dish is cold. */
import { describe, expect, it } from 'vitest';
import type { Family } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

interface Dish {
  title?: string;
  language?: string;
  family?: Family;
  lines: string[];
  steps: string[];
  to: Change['to'];
  method: string;
}

/** The steps after the first line has given way, with what the swap says of its handling. */
function told({
  title = 'Supper',
  language = 'en',
  family = 'rice-dish',
  lines,
  steps,
  to,
  method,
}: Dish): string[] {
  const recipe = { ...makeRecipe(title, lines, steps), language };
  const read = understand(recipe);
  const plan = makePlan(family, read, [{ key: '0', kept: 0, to }]);
  const swaps = plan.swaps.map((swap) => ({ ...swap, method }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' }).steps.map(
    ({ after }) => after,
  );
}

const GRAINS =
  'Chop to grains and fry it dry in a wide pan, or roast it at 220 °C for 10 minutes, before it joins the dish.';
const RICE: Pick<Dish, 'to' | 'method'> = { to: [['cauliflower', 500]], method: GRAINS };

describe('what joins a pot that is cooking', () => {
  const pot = told({
    family: 'pasta-dish',
    lines: ['150 g dry macaroni', '500 g beef', '1 litre water', '1 onion'],
    steps: [
      'Brown the beef and onion, add the water and simmer.',
      'Add dry pasta and continue to cook until pasta is soft, stirring often.',
    ],
    to: [['cauliflower', 300]],
    method: 'Steam until just tender, drain and dry well before the sauce.',
  }).join('\n');

  it('goes into it', () => {
    expect(pot).toMatch(/Add [^.]*cauliflower[^.]* and continue to cook/);
  });

  it('has the new name where the page calls it dry', () => {
    expect(pot).not.toMatch(/pasta/);
  });

  it('is not steamed apart', () => {
    expect(pot).not.toMatch(/steam/i);
  });
});

describe('what is fried dry', () => {
  it('is not cooked once more before it goes into bowls', () => {
    const steps = told({
      lines: ['280 g rice', '200 g tofu', '1 tbsp oil'],
      steps: [
        'Fry the tofu in the oil.',
        'Meanwhile, cook your rice and add into bowls before topping with your sticky tofu.',
      ],
      ...RICE,
    }).join('\n');
    expect(steps).not.toMatch(/cook (?:your|the) cauliflower/i);
    expect(steps).toMatch(/Add the cauliflower into bowls before topping with your sticky tofu/);
  });

  it('cools before it goes into a salad', () => {
    const salad = (steps: string[]): string =>
      told({
        title: 'Chicken salad',
        lines: ['600 g cooked rice', '400 g chicken', '120 g mayonnaise'],
        steps,
        ...RICE,
      }).join('\n');
    expect(salad(['Toss the rice with the chicken and mayonnaise.'])).toMatch(
      /before it joins the dish\. Let that cool before it goes in\./,
    );
    expect(salad(['Fry the rice in a pan.', 'Serve with the chicken and mayonnaise.'])).not.toMatch(
      /Let that cool/,
    );
  });

  it('is fried before the broth boils that it would wait beside', () => {
    const steps = told({
      lines: ['250 g white rice', '500 g chicken', '600 ml chicken broth', '1 onion'],
      steps: [
        'Season the chicken.',
        'Brown the chicken and onion in a pot.',
        'Pour in the broth. Bring the mixture to a boil.',
        'Stir in the rice, return the chicken, cover and simmer until the chicken is cooked through.',
      ],
      ...RICE,
    });
    const at = (said: RegExp): number => steps.findIndex((one) => said.test(one));
    expect(at(/fry it dry/)).toBeGreaterThan(at(/Season/));
    expect(at(/fry it dry/)).toBeLessThan(at(/Brown the chicken/));
  });
});

describe('a step that boils what is gone, in another language', () => {
  it('tells what is done instead', () => {
    const steps = told({
      language: 'nb',
      lines: ['300 g ris', '400 g kylling'],
      steps: ['Kok ris etter anvisningen på pakken.', 'Stek kyllingen.'],
      ...RICE,
    });
    expect(steps.join('\n')).not.toMatch(/utelates/);
    expect(steps).toHaveLength(2);
  });
});

describe('handling in a step that does not name the food', () => {
  const coated = (coats: string): string =>
    told({
      family: 'breaded-food',
      lines: ['30 g flour', '500 g chicken breast', '2 tbsp oil'],
      steps: [coats, 'Fry it in the oil on both sides.'],
      to: [['parmesan', 20]],
      method: 'Use the finest grate, dry the surface well and turn only once.',
    }).join(' ');

  it('names it', () => {
    expect(coated('Dredge the chicken in the seasoned mixture.')).toMatch(
      /Parmesan: use the finest grate/,
    );
  });

  it('stands alone where the step names it', () => {
    expect(coated('Dredge the chicken in the flour.')).toMatch(
      /Use the finest grate, .*Dredge the chicken in the parmesan/,
    );
  });
});

describe('a shell of its own beside soft wraps', () => {
  it('is not called after what stands for the wraps', () => {
    const steps = told({
      family: 'other',
      lines: ['6 flour tortillas', '6 hard taco shells', '300 g ground beef'],
      steps: ['Warm the tortillas.', 'Put the hard shell tortilla on top, then the beef.'],
      to: [['tortilla-low-carb', 290]],
      method: '',
    }).join(' ');
    expect(steps).toContain('Put the hard shell tortilla on top');
    expect(steps).not.toMatch(/Warm the tortillas/);
  });

  it('has the wraps warmed before they are used by the first word of their name', () => {
    const steps = told({
      family: 'other',
      lines: ['6 gordita flour tortillas', '6 hard taco shells', '300 g ground beef'],
      steps: [
        'Brown the beef.',
        'Lay the gorditas out.',
        'Add the hard shell tortilla.',
        'Serve at once.',
      ],
      to: [['tortilla-low-carb', 290]],
      method: 'Warm it so that it does not crack.',
    }).join(' ');
    expect(steps).toMatch(/Warm the high-fibre tortillas so that they do not crack\. Lay/);
  });
});

it('noodles that are readied in place of being cooked still go into the soup', () => {
  const [, readied, served] = told({
    title: 'Noodle soup',
    family: 'pasta-dish',
    lines: ['200 g ramen noodles', '1 l chicken broth'],
    steps: [
      'Simmer the broth.',
      'Add the noodles and cook for 3 minutes.',
      'Divide between bowls.',
    ],
    to: [['konjac-noodles', 400]],
    method: 'Rinse under cold water, drain, and dry-fry in a hot pan for 3-5 minutes.',
  });
  expect(readied).toMatch(/^Rinse the konjac noodles.*\. Then add to the rest and heat through\.$/);
  expect(served).toBe('Divide between bowls.');
});
