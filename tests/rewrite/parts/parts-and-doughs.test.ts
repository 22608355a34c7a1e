/** Whose sugar a step takes, and what of a dough is told where: whole recipes of our own wording. */
import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS } from '../../../engine/index.ts';
import { statedTime } from '../../../engine/rewrite/cues/stated-time.ts';
import { makeRecipe } from '../fixtures.ts';

interface Page {
  title: string;
  language: string;
  serves: number;
  groups: { title: string | null; lines: string[] }[];
  steps: string[];
}

const NO_PIECES = { pieces: null } as const;

function told({ title, language, serves, groups, steps }: Page): string[] {
  const recipe = {
    ...makeRecipe(title, [], steps),
    language,
    groups,
    yield: { text: `${serves}`, servings: { low: serves, high: serves }, ...NO_PIECES },
  };
  const { steps: made } = adaptRecipe(recipe, { ...DEFAULT_GOALS, budgetG: 15 });
  return made.map(({ after }) => after);
}

const found = (steps: readonly string[], words: RegExp): string =>
  steps.find((step) => words.test(step)) ?? '';

describe('the sugar of a part', () => {
  it('is the one that its purpose names at the end of a sentence', () => {
    const steps = told({
      title: 'Lemon loaf with drizzle',
      language: 'en',
      serves: 10,
      groups: [
        {
          title: null,
          lines: ['220 g butter', '220 g caster sugar', '4 eggs', '220 g self-raising flour'],
        },
        { title: 'For the drizzle topping', lines: ['juice of 2 lemons', '85 g caster sugar'] },
      ],
      steps: [
        'Heat the oven to 180C. Beat butter and caster sugar, then add the eggs.',
        'Fold in the flour, spoon into a loaf tin and bake for 45 minutes.',
        'While the loaf is cooling in its tin, mix the lemon juice and caster sugar to make the drizzle. Pour it over.',
      ],
    });
    expect(found(steps, /to make the drizzle/)).toMatch(/allulose[^.]*to make the drizzle/);
  });

  it('is told by what opens the sentence in other languages', () => {
    const steps = told({
      title: 'Apfelkuchen mit Streuseln',
      language: 'de',
      serves: 20,
      groups: [
        {
          title: 'Für den Teig',
          lines: ['250 g Butter', '200 g Zucker', '4 Eier', '400 g Mehl', '1 Pck. Backpulver'],
        },
        { title: 'Für den Belag', lines: ['1,5 kg Äpfel'] },
        {
          title: 'Für die Streusel',
          lines: ['200 g Mehl', '120 g Zucker', '1 TL Zimt', '130 g Butter'],
        },
      ],
      steps: [
        'Für den Teig Butter und Zucker cremig rühren, Eier, Mehl und Backpulver unterrühren. Auf ein Blech streichen und mit den Äpfeln belegen.',
        'Für die Streusel Mehl, Zucker, Zimt und Butter verkneten und über die Äpfel streuen.',
        'Bei 180 °C ca. 40 Minuten backen und in 20 Stücke schneiden.',
      ],
    });
    expect(found(steps, /^Für die Streusel/)).toMatch(/Zucker \(jetzt \d+ g[^)]*\), Zimt/);
  });

  it('is that of the foods that follow in its step', () => {
    const steps = told({
      title: 'Lemon bars',
      language: 'en',
      serves: 24,
      groups: [
        {
          title: 'For the crust',
          lines: ['225 g butter, melted', '100 g sugar', '265 g plain flour'],
        },
        {
          title: 'For the filling',
          lines: ['400 g sugar', '45 g plain flour', '6 eggs', '240 ml lemon juice'],
        },
      ],
      steps: [
        'Mix the butter and sugar, add the flour and press into a 9x13-inch pan. Bake at 325 F for 20 minutes.',
        'Sift the sugar and flour together. Whisk in the eggs, then the lemon juice.',
        'Pour over the crust and bake for 25 minutes. Cool and cut into 24 bars.',
      ],
    });
    expect(found(steps, /^Sift/)).not.toMatch(/flours/);
    expect(found(steps, /^Sift/)).toMatch(/allulose/);
  });
});

describe('a dough', () => {
  it('does not rise before its yeast is in', () => {
    const steps = told({
      title: 'Baguettes',
      language: 'fr',
      serves: 15,
      groups: [
        {
          title: null,
          lines: ['500 g de farine T65', "350 ml d'eau", '10 g de sel', '10 g de levure fraîche'],
        },
      ],
      steps: [
        "Mélanger la farine et l'eau et laisser reposer 30 minutes.",
        'Ajouter le sel et la levure puis pétrir 10 minutes.',
        'Laisser lever 1 h 30 sous un torchon.',
        'Façonner 3 baguettes et cuire 25 minutes au four à 240 °C.',
      ],
    });
    expect(found(steps, /laisser reposer 30 minutes/)).not.toMatch(/rabattre|pousse/);
    expect(found(steps, /^Laisser lever/)).toMatch(/^Laisser lever 115 minutes sous/);
  });

  it('takes new water that the method alone has', () => {
    const steps = told({
      title: 'Plain bagels',
      language: 'en',
      serves: 10,
      groups: [{ title: null, lines: ['7 g dried yeast', '450 g bread flour', '2 tsp salt'] }],
      steps: [
        'Stir the yeast into 100 ml warm water until it foams.',
        'Pour 200 ml warm water into a bowl, add the salt, the flour and the yeast and mix to a dough.',
        'Knead for 10 minutes, let rise for 1 hour and shape 10 bagels.',
        'Boil for 1 minute and bake at 200C for 25 minutes.',
      ],
    });
    expect(steps.join('\n')).toMatch(/Add \d+ g[^.]* water here too/);
  });

  it('that a starter raises is not left with flour and water alone', () => {
    const steps = told({
      title: 'Sourdough bread',
      language: 'en',
      serves: 14,
      groups: [
        {
          title: null,
          lines: [
            '100 g active sourdough starter',
            '350 g water',
            '500 g bread flour',
            '10 g salt',
          ],
        },
      ],
      steps: [
        'Whisk the starter and water until milky. Add the flour and salt, mix, cover and rest for 30 minutes.',
        'Let the dough rise for 5 hours, shape it and bake at 450 F for 40 minutes.',
      ],
    });
    expect(steps.join('\n')).not.toMatch(/the yeast go in only after|rested flour/);
  });
});

describe('a time in hours and minutes', () => {
  it.each([
    ['laisser lever 1 h 30 à température ambiante', 90],
    ['lever 1h15 sous un torchon', 75],
    ['let rise for 1 hour and 20 minutes', 80],
    ['1 ½ Std. aufgehen lassen', 90],
    ['cuire 1 h 180 °C', 60],
  ])('%s', (text, minutes) => {
    expect(statedTime(text)?.low).toBe(minutes);
  });
});
