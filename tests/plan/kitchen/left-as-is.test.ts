/** Notes of the lines that a plan leaves alone. */
import { expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { readText } from '../../../engine/read/index.ts';
import { adaptRecipe } from '../../../engine/walk.ts';

const TEXT = `Snorvel noodles with herb butter

Serves 4

Ingredients

For the herb butter
- 200 g unsalted butter, soft
- 10 g parsley, chopped

For the noodles
- 300 g dry spaghetti
- 4 tbsp herb butter (from above)
- 2 quillberry pods

Method

1. Beat the butter with the parsley.
2. Boil the spaghetti and toss it with the herb butter and the pods.
`;

it('name what is not known, not what other lines of the page make', () => {
  const found = readText(TEXT);
  if (!found.ok || !found.recipes[0]) throw new Error('the sample must be readable');
  const { notes } = adaptRecipe(found.recipes[0], { ...DEFAULT_GOALS, budgetG: 15 });
  const left = notes.filter(({ code }) => code === 'NOT_PLANNED').map(({ text }) => text);
  expect(left).toEqual([expect.stringContaining('quillberry pods')]);
});
