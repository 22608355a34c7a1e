import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

/** The method when the rice of a pot gives way to cauliflower rice, which is not boiled. */
function method(steps: string[]): string {
  const recipe = makeRecipe(
    'Supper in a pot',
    ['200 g white rice', '400 g ground veal', '1 litre chicken broth', '1 onion'],
    steps,
  );
  const ingredients = understand(recipe);
  const plan = makePlan('rice-dish', ingredients, [
    { key: '0', kept: 0, to: [['cauliflower-rice', 500]] },
  ]);
  const told = rewriteRecipe(recipe, ingredients, plan, { foods, region: 'us' });
  return told.steps.map(({ after }) => after).join(' ');
}

describe('a boil that cooks more than what is gone', () => {
  it('stays for raw balls of meat, without word of the gone grains', () => {
    const told = method([
      'Roll the veal into balls and brown them; they stay raw inside. Return the balls to the broth.',
      'Bring the soup to a boil, then add the rice and stir. Boil until the meatballs are cooked through and the rice is tender, about 14 minutes.',
    ]);
    expect(told).toMatch(/Bring the soup to a boil/);
    expect(told).toMatch(/Boil until the meatballs are cooked through, about 14 minutes\./);
    expect(told).not.toMatch(/is tender/);
  });

  it.each([
    'Cover and simmer the rice until the thighs are no longer pink.',
    'Cook the rice and the sausages for 20 minutes.',
    'Simmer everything with the rice for 25 minutes.',
    'Cook the rice until the centre reaches 74 °C.',
  ])('stays: %s', (step) => {
    const told = method(['Brown the veal with the onion.', step]);
    const [verb = ''] = step.split(' ');
    expect(told).toContain(verb);
    expect(told).not.toMatch(/Skip this step/);
    expect(told).toContain(/\d+ minutes|no longer pink|74 °C/.exec(step)?.[0]);
  });

  it('stays after a boiling that goes', () => {
    const told = method([
      'Boil the rice in salted water. Cover and cook the chops until no longer pink.',
    ]);
    expect(told).toContain('Cover and cook the chops until no longer pink.');
    expect(told).not.toMatch(/salted water/);
  });

  it.each([
    'Boil the rice in salted water for 15 minutes.',
    'Boil the rice while the sauce simmers.',
    'Meanwhile, cook the rice for the curry.',
  ])('goes where only the grains cook: %s', (step) => {
    expect(method(['Brown the veal with the onion.', step])).toMatch(/Skip this step/);
  });
});
