/** Invented pages beside the demo pages: none, long, hostile, and one with forty ingredients. */

const withRecipe = (recipe: Record<string, unknown>): string =>
  `<!doctype html><title>Page</title><script type="application/ld+json">${JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    ...recipe,
  })}</script>`;

export const LONG_NAME = 'Grandmother’s-Sunday-'.repeat(12);
const NO_RECIPE = '<!doctype html><title>Notes</title><p>We met on Tuesday and talked.</p>';

const LONG_PAGE = withRecipe({
  name: LONG_NAME,
  recipeYield: '8 servings',
  recipeIngredient: [
    `300 g ${'unbleached-stone-ground-'.repeat(8)}bread flour`,
    '200 g sugar',
    '<img src=x onerror=alert(1)> 100 g butter',
    'a handful of zibbelwort',
  ],
  recipeInstructions: '<b>Mix</b> everything and bake.',
});

const VEGETABLES = ['carrots', 'celeriac', 'leeks', 'parsnips', 'swede', 'kale', 'peas', 'spinach'];
const SPICES = ['cumin', 'coriander seed', 'paprika', 'turmeric', 'black pepper', 'bay leaf'];

const FORTY_PAGE = withRecipe({
  name: 'Feast-day pot pie',
  recipeYield: '10 servings',
  recipeIngredient: [
    '500 g all-purpose flour',
    '250 g butter',
    '2 eggs',
    '60 ml milk',
    ...Array.from(
      { length: 22 },
      (_, at) => `${100 + at * 5} g ${VEGETABLES[at % VEGETABLES.length]}`,
    ),
    ...SPICES.map((spice) => `1 tsp ${spice}`),
    '400 g potatoes',
    '200 g cooked chickpeas',
    '2 onions',
    '3 cloves garlic',
    '300 ml cream',
    '40 g cornflour',
    '1 stock cube',
    'salt to taste',
  ],
  recipeInstructions: [
    'Rub the butter into the flour.',
    'Simmer the vegetables with the spices for 25 minutes.',
    'Fill, cover and bake at 200 °C for 40 minutes.',
  ].map((text) => ({ '@type': 'HowToStep', text })),
});

/** By address, as {@link serveDemo} takes them. */
export const EXTRA_PAGES: Record<string, string> = {
  '/none.html': NO_RECIPE,
  '/long.html': LONG_PAGE,
  '/forty.html': FORTY_PAGE,
};
