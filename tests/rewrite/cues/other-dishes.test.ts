/** Handling that belongs to another kind of dish stays away, by whole recipes. */
import { describe, expect, it } from 'vitest';
import { adapted, dishesOf } from '../../plan/pasted.ts';

const pasted = dishesOf('other');

const methodOf = (title: string, lines: string[], steps: string[], serves = 4): string =>
  adapted({ ...pasted(title, lines, steps), serves: `Serves ${serves}` })
    .steps.map(({ after }) => after)
    .join('\n');

describe('boiled doughs', () => {
  it('are no loaf: no core temperature and no hours of cooling', () => {
    const told = methodOf(
      'Käsespätzle',
      ['400 g Mehl', '4 Eier', '200 ml Wasser', '1 TL Salz', '250 g Bergkäse, gerieben'],
      [
        'Mehl, Eier, Wasser und Salz zu einem zähen Teig schlagen.',
        'Teig durch eine Presse in kochendes Wasser drücken und herausheben.',
        'Mit dem Käse schichten und bei 180 °C 10 Minuten überbacken.',
      ],
    );
    expect(told).not.toMatch(/Kerntemperatur|auskühlen/);
  });
});

describe('beaten whites in a batter', () => {
  it('are no meringue', () => {
    const told = methodOf(
      'Zerrissener Pfannkuchen',
      ['240 g Mehl', '400 ml Milch', '8 Eier', '60 g Zucker', '60 g Butter'],
      [
        'Mehl, Milch und Eigelb glatt rühren.',
        'Eiweiß mit dem Zucker steif schlagen und unterheben.',
        'In der Butter stocken lassen, wenden und zerreißen.',
      ],
    );
    expect(told).toMatch(/steif schlagen/);
    expect(told).not.toMatch(/Baiser/);
  });
});

describe('a meringue', () => {
  it('of erythritol and allulose is not told to take just these', () => {
    const told = methodOf(
      'Pavlova',
      ['2 egg whites', '110 g caster sugar', '150 ml cream', '150 g strawberries'],
      [
        'Beat the egg whites to soft peaks. Add the sugar by spoons until stiff and glossy.',
        'Spread it out and bake at 120 °C for 90 minutes.',
        'Top with the whipped cream and strawberries.',
      ],
    );
    expect(told).toMatch(/pinch of xanthan gum/);
    expect(told).toMatch(/95 °C[^.]*instead of the heat and time below/);
    expect(told).not.toMatch(/Take care|0\.1 g/);
  });
});

describe('filled pastries', () => {
  it('are not dried like crackers', () => {
    const told = methodOf(
      'Beef empanadas',
      ['375 g flour', '5 g salt', '110 g butter', '1 egg', '110 ml water', '450 g ground beef'],
      [
        'Rub the butter into the flour and salt, add the egg and water, knead and chill.',
        'Fry the beef. Cut the dough into 16 rounds, fill, fold and crimp.',
        'Bake at 200 °C for 25 minutes.',
      ],
    );
    expect(told).not.toMatch(/crisp when cold/);
  });
});

describe('rolls in rice paper', () => {
  it('have nothing to soak once leaves stand in', () => {
    const told = methodOf(
      'Shrimp summer rolls',
      ['12 rice paper wrappers', '200 g rice vermicelli', '300 g cooked shrimp', '1 cucumber'],
      [
        'Cook the vermicelli and drain.',
        'Dip a rice paper in warm water for 15 seconds. Lay noodles, cucumber and shrimp on it.',
        'Roll up tightly.',
      ],
    );
    expect(told).toMatch(/lay one or two, overlapping, on a board\. Lay/);
    expect(told).not.toMatch(/warm water|rice paper/);
  });
});

describe('rice in layers', () => {
  it('is not given less liquid where the sentence only soaks saffron', () => {
    const told = methodOf(
      'Chicken biryani',
      [
        '300 g basmati rice',
        '700 g chicken thighs',
        '200 g yogurt',
        '60 ml milk',
        '1 pinch saffron',
      ],
      [
        'Boil the rice in salted water for 6 minutes and drain.',
        'Cook the chicken in the yogurt for 15 minutes.',
        'Layer the rice over the chicken. Sprinkle with saffron soaked in warm milk.',
        'Cover and cook on low heat for 25 minutes.',
      ],
    );
    expect(told).not.toMatch(/cooking liquid/);
  });
});

describe('crumbs in a sweet bake', () => {
  it('are no pork rind and no cheese', () => {
    const told = methodOf(
      'Apfelstrudel',
      [
        '250 g Mehl',
        '1 Ei',
        '2 EL Öl',
        '125 ml Wasser',
        '1 kg Äpfel',
        '100 g Zucker',
        '100 g Semmelbrösel',
        '80 g Butter',
      ],
      [
        'Mehl, Ei, Öl und Wasser zu einem Teig kneten.',
        'Brösel in Butter rösten. Äpfel mit Zucker mischen.',
        'Teig hauchdünn ausziehen, mit Bröseln bestreuen, Äpfel darauf verteilen und aufrollen.',
        'Bei 190 °C 40 Minuten backen.',
      ],
    );
    expect(told).toMatch(/Brösel \(jetzt/);
    expect(told).not.toMatch(/Schwein|Parmesan|Kerntemperatur/);
  });
});

describe('a thin unleavened dough', () => {
  it('is no quick bread: nothing thinned by the spoon, nothing cooled for hours', () => {
    const told = methodOf(
      'Flammkuchen',
      ['400 g Mehl', '200 ml Wasser', '3 EL Öl', '1 TL Salz', '200 g Schmand', '150 g Speck'],
      [
        'Mehl, Wasser, Öl und Salz zu einem glatten Teig kneten und 30 Minuten ruhen lassen.',
        'Hauchdünn ausrollen, mit Schmand bestreichen und mit Speck belegen.',
        'Bei 250 °C 12 Minuten knusprig backen.',
      ],
    );
    expect(told).toMatch(/knusprig/);
    expect(told).not.toMatch(/Löffel|Kerntemperatur|auskühlen/);
  });
});

describe('a pie with a lid', () => {
  it('is told of both halves of its almond dough', () => {
    const told = methodOf(
      'Chicken pot pie',
      [
        '2 refrigerated pie crusts',
        '75 g butter',
        '40 g flour',
        '400 ml chicken broth',
        '350 g cooked chicken',
        '300 g frozen mixed vegetables',
      ],
      [
        'Fit one pie crust into a pie plate.',
        'Melt the butter, stir in the flour, then the broth; cook until thick. Stir in the chicken and vegetables.',
        'Spoon into the crust. Top with the second crust, seal and bake 35 minutes at 220 °C.',
      ],
      8,
    );
    expect(told).toMatch(/Press half of it into the tin[^.]*roll the other half/);
    expect(told.match(/Make the almond crust first/g)).toHaveLength(1);
  });
});

describe('small crusty rolls', () => {
  it('are not baked under a lid nor cooled like a loaf', () => {
    const told = methodOf(
      'Knusprige Brötchen',
      ['500 g Weizenmehl', '10 g frische Hefe', '320 ml Wasser', '10 g Salz'],
      [
        'Mehl, Hefe, Wasser und Salz 10 Minuten kneten. 1 Stunde gehen lassen.',
        'In 10 Portionen teilen, zu Brötchen formen und 20 Minuten gehen lassen.',
        'Bei 220 °C 20-25 Minuten goldbraun backen.',
      ],
    );
    expect(told).not.toMatch(/zugedeckt \(Deckel|auskühlen/);
  });
});

describe('a batter that puffs up in a hot tin', () => {
  it('keeps its flour', () => {
    const pudding = adapted(
      pasted(
        'Toad in the hole',
        ['8 chipolatas', '140 g plain flour', '4 eggs', '200 ml milk', '2 tbsp oil'],
        [
          'Brown the sausages in a hot tin with the oil.',
          'Whisk the flour, eggs and milk to a batter and pour it in.',
          'Bake at 220 °C for 30 minutes until risen and golden.',
        ],
      ),
    );
    expect(pudding.plan.swaps.filter(({ from }) => /flour/.test(from?.food ?? ''))).toEqual([]);
    const sausages = pudding.ingredients.find(({ line }) => /chipolata/.test(line.text));
    expect(sausages?.weight?.grams.best).toBe(240);
  });
});

describe('both sugars', () => {
  it('are those of the batter, and not the one of the frosting', () => {
    const told = methodOf(
      'Carrot cake',
      [
        '250 g flour',
        '2 tsp baking soda',
        '250 ml oil',
        '200 g granulated sugar',
        '200 g brown sugar',
        '4 eggs',
        '300 g grated carrots',
        'For the frosting:',
        '225 g cream cheese',
        '140 g powdered sugar',
        '80 ml cream',
      ],
      [
        'Whisk the flour and baking soda.',
        'Whisk the oil, both sugars and the eggs. Stir in the flour and carrots.',
        'Bake at 180 °C for 40 minutes.',
        'For the frosting, beat the cream cheese with the powdered sugar, then the cream.',
      ],
      16,
    );
    expect(told).toMatch(/the oil, [^.]*brown sugar/);
    expect(told.split('\n').find((step) => step.includes('the oil'))).not.toMatch(/powdered/);
  });
});

describe('an allergen that only an optional line had', () => {
  it('is told as new', () => {
    const bread = adapted(
      pasted(
        'Banana bread',
        [
          '3 bananas',
          '75 g butter',
          '165 g brown sugar',
          '1 egg',
          '190 g flour',
          '1 tsp baking soda',
          '60 g walnuts (optional)',
        ],
        [
          'Mash the bananas, stir in the butter, sugar and egg.',
          'Mix in the flour and baking soda, and the walnuts, if using. Bake at 165 °C for 60 minutes.',
        ],
      ),
    );
    const brings = bread.plan.items.some(
      ({ foodId, grams }) => foodId === 'almond-flour' && grams > 0,
    );
    expect(brings).toBe(true);
    expect(bread.allergensAdded).toContain('tree nuts');
  });
});

describe('a mash of cauliflower', () => {
  it('is boiled as cauliflower and made once it is drained', () => {
    const told = methodOf(
      'Cottage pie',
      [
        '1 kg beef mince',
        '3 onions',
        '4 carrots',
        '3 tbsp flour',
        '500 ml beef stock',
        'For the mash:',
        '1.5 kg potatoes',
        '225 ml milk',
        '25 g butter',
      ],
      [
        'Brown the mince with the onions, carrots and flour, add the stock and simmer 45 minutes. Put it into a dish.',
        'Make the mash. In a large pan, cover the potatoes in salted cold water, bring to the boil and simmer for 15 mins. Drain well, then steam-dry. Mash with the milk and butter.',
        'Spoon the mash on top and bake at 220 °C for 25 minutes.',
      ],
      6,
    );
    expect(told).toMatch(/cover the cauliflower in salted cold water/);
    expect(told).not.toMatch(/boil the cauliflower apart/);
    expect(told).not.toMatch(/mash of cauliflower/);
    expect(told.indexOf('Dry it in the pan')).toBeGreaterThan(told.indexOf('Drain well'));
  });
});

describe('what is strewn on a dish of vegetables', () => {
  it('is no cake with hours in its tin', () => {
    const told = methodOf(
      'Sweet potato casserole',
      [
        '1.3 kg sweet potatoes',
        '100 g sugar',
        '2 eggs',
        '60 g butter',
        'For the pecan topping:',
        '220 g brown sugar',
        '60 g flour',
        '75 g butter, melted',
        '100 g pecans',
      ],
      [
        'Boil the sweet potatoes until tender, drain and mash.',
        'Beat in the sugar, eggs and butter and spread in a dish.',
        'For the topping, mix brown sugar, flour, butter and pecans and scatter over.',
        'Bake at 160 °C for 30 minutes.',
      ],
      12,
    );
    expect(told).toMatch(/allulose/);
    expect(told).not.toMatch(/rack|centre reaches/);
  });
});

describe('what is stirred in raw', () => {
  it('is not in the pot before', () => {
    const told = methodOf(
      'Quinoa salad',
      [
        '170 g quinoa',
        '480 ml water',
        '100 g cherry tomatoes',
        '30 ml olive oil',
        '30 ml lemon juice',
      ],
      [
        'Combine the quinoa and water in a pan. Bring to a boil and simmer for 15 minutes. Spread out to cool.',
        'Toss the quinoa with the tomatoes, oil and lemon juice.',
      ],
    );
    expect(told).toMatch(/Combine the quinoa and water/);
    expect(told.match(/hemp hearts/g)).toHaveLength(1);
    expect(told).toMatch(/Toss the quinoa and hemp hearts/);
  });
});

describe('a word of a list that begins with for', () => {
  it('stays where the list is what the step is for', () => {
    const told = methodOf(
      'Chicken and rice',
      ['600 g chicken thighs', '300 g basmati rice', '630 ml chicken stock'],
      [
        'Fry the chicken until done.',
        'For the rice, rinse the basmati until the water runs clear. Tip into a pan with the stock and cook for 10 mins.',
        'Serve the chicken with the rice.',
      ],
    );
    expect(told).toMatch(/For the rice, put the riced broccoli in a pan with the chicken stock/);
  });
});

describe('starch round pieces to be fried', () => {
  it('is no purée', () => {
    const chicken = adapted(
      pasted(
        'Orange chicken',
        [
          '700 g chicken thighs',
          '2 eggs',
          '64 g cornstarch',
          '30 g flour',
          '240 ml orange juice',
          '100 g sugar',
          '2 tbsp soy sauce',
        ],
        [
          'Mix the cornstarch and flour in a dish. Dip the chicken pieces in the egg, then in the flour mixture, and fry.',
          'Simmer the orange juice, sugar and soy sauce for 8 minutes and toss with the chicken.',
        ],
      ),
    );
    expect(
      chicken.plan.items.some(({ foodId, grams }) => foodId === 'cauliflower' && grams > 0),
    ).toBe(false);
  });
});

describe('a sponge in place of bought fingers', () => {
  it('is baked first, though the page bakes nothing', () => {
    const told = methodOf(
      'Tiramisu',
      ['300 g ladyfingers', '500 g mascarpone', '4 eggs', '100 g sugar', '300 ml espresso'],
      [
        'Beat the yolks with half of the sugar, then the mascarpone.',
        'Beat the whites with the rest of the sugar and fold in.',
        'Dip the ladyfingers in the coffee and layer with the cream. Chill for 3 hours.',
      ],
      8,
    );
    expect(told).toMatch(/Make the almond sponge[^.]*bake 15 minutes at 160-170 °C/);
    expect(told.indexOf('Make the almond sponge')).toBeLessThan(told.indexOf('Dip the'));
  });
});

describe('pieces fried in inches of oil', () => {
  it('get a thinner coat of starch, and no gum', () => {
    const chicken = adapted(
      pasted(
        'Sticky chicken',
        [
          '700 g chicken thighs',
          '2 eggs',
          '64 g cornstarch',
          '240 ml orange juice',
          '100 g sugar',
          '30 ml soy sauce',
        ],
        [
          'Dip the chicken pieces in the egg and then in the cornstarch.',
          'Heat 2 to 3 inches of oil in a pot and cook the pieces for 3 minutes.',
          'Simmer the juice, sugar and soy sauce for 8 minutes and toss with the chicken.',
        ],
      ),
    );
    const starch = chicken.plan.items.filter(({ foodId }) => foodId === 'cornstarch');
    expect(starch[0]?.grams).toBeGreaterThanOrEqual(30);
    expect(chicken.plan.items.some(({ foodId }) => foodId === 'xanthan-gum')).toBe(false);
  });
});

describe('what goes in off the heat', () => {
  it('is told behind the last cooking, and not toasted before', () => {
    const told = methodOf(
      'Porridge',
      ['160 g rolled oats', '480 ml milk', '40 g honey', '15 g butter'],
      [
        'Melt the butter and toast the oats for 2 minutes.',
        'Add the milk, bring to a boil and simmer for 5 minutes.',
        'Stir in the honey and serve.',
      ],
    );
    expect(told).toMatch(/toast the oats for 2 minutes/);
    expect(told).toMatch(/simmer for 5 minutes\. Stir the chia seeds? in off the heat/);
  });
});
