/** Cauliflower and the like in place of rice that cooks in the pot: they join when the rest is done. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { adapted, dishesOf, type Pasted } from '../../plan/pasted.ts';

const pot = dishesOf('rice-dish');

const told = (recipe: Pasted): string =>
  adapted(recipe, { budgetG: 15, way: 'within', excludedFoods: ['konjac-rice'] })
    .steps.map(({ after }) => after)
    .join('\n');

const ONE_PAN = pot(
  'One-pan paprika chicken',
  ['4 chicken breasts', '200 g white rice', '450 ml chicken stock', '1 onion', '2 tbsp oil'],
  [
    'Brown the chicken in the oil and set it aside.',
    'Soften the onion. Stir in the rice and cook for 1 minute. Pour in the stock and bring it to a boil.',
    'Return the chicken, cover and simmer for 18 minutes, or until the rice is tender and has absorbed the liquid.',
    'Serve at once.',
  ],
);

describe('rice cooked in the pot', () => {
  it('is not spoken of once it is gone, and what stands in joins at the end', () => {
    const text = told(ONE_PAN);
    expect(text).toMatch(/simmer for 18 minutes\. Stir in the cauliflower at the end/);
    expect(text).not.toMatch(/\bthe rice\b|until has/);
  });

  it('is rolled up with what else was cooked, where the rice was', () => {
    const text = told(
      pot(
        'Bean and rice wraps',
        [
          '300 g cooked white rice',
          '200 g cooked black beans',
          '150 g cheddar',
          '4 flour tortillas',
        ],
        [
          'Warm the tortillas.',
          'Each one gets rice, beans and cheese. Cook the wraps in a dry pan for 2 minutes a side, with a splash of water, until crisp.',
        ],
      ),
    );
    expect(text).not.toMatch(/at the end|cooking liquid/);
    expect(text).toMatch(
      /Each one gets (?:rice, )?(?:cauliflower|hearts of palm rice), beans and cheese/,
    );
  });

  it('is not cooked in water that went with it', () => {
    const text = told(
      pot(
        'Salmon poke bowls',
        ['300 g sushi rice', '2 tbsp rice vinegar', '1 tbsp sugar', '450 g salmon', '1 avocado'],
        [
          'Rinse the rice until the water runs clear and cook it in 350 ml of water. Warm the vinegar and sugar and fold into the hot rice.',
          'Divide the rice between four bowls and top with salmon and avocado.',
        ],
      ),
    );
    expect(text).toMatch(/fold into the hot cauliflower/);
    expect(text).not.toMatch(/runs clear|cooking liquid|Leave out/);
  });

  it('leaves rice boiled by itself to its own handling', () => {
    const text = told(
      pot(
        'Chicken curry with rice',
        ['4 chicken breasts', '200 g white rice', '400 ml coconut milk', '2 tbsp curry powder'],
        [
          'Cook the rice in plenty of salted water for 12 minutes and drain.',
          'Fry the chicken with the curry powder, pour in the coconut milk and simmer for 15 minutes.',
          'Serve the curry over the rice.',
        ],
      ),
    );
    expect(text).not.toMatch(/at the end and heat/);
    expect(text).toMatch(/over the (?:cauliflower|riced broccoli)/);
  });

  it('joins before the dish is served', () => {
    const text = told(
      pot(
        'One-pan tomato rice with beef',
        ['500 g ground beef', '200 g white rice', '450 ml beef stock', '1 onion', '2 tbsp oil'],
        [
          'Brown the beef with the onion. Stir in the rice and the stock.',
          'Cover and simmer for 18 minutes. Stir well and serve at once.',
        ],
      ),
    );
    expect(text).toMatch(/at the end and heat it through for 2-3 minutes\. Stir well and serve/);
  });

  it('is not waited for in another language either', () => {
    const { after } = (() => {
      const result = adapted(
        pot(
          'Rijstpan met gehakt',
          ['500 g rundergehakt', '200 g witte rijst', '450 ml runderbouillon', '1 ui', '2 el olie'],
          [
            'Bak het gehakt met de ui rul in de olie. Voeg de bouillon en de rijst toe.',
            'Laat 15 minuten pruttelen totdat de rijst gaar is. Na 15 minuten is de rijst gaar en kun je de kaas toevoegen. Roer goed en serveer direct.',
          ],
        ),
        { budgetG: 15, way: 'within', excludedFoods: ['konjac-rice'] },
      );
      return { after: result.steps.map((step) => step.after).join('\n') };
    })();
    if (/bloemkool/i.test(after)) {
      expect(after).not.toMatch(/rijst(?: \(weglaten\))? gaar/);
      expect(after).toMatch(/Bloemkool: roer op het eind[^.]*\. Roer goed en serveer/);
    }
  });
});
