import { describe, expect, it } from 'vitest';
import { cleanLines, cleanText } from '../../../engine/read/document/clean-text.ts';
import { decodeEntities } from '../../../engine/read/document/html-entities.ts';
import { readText } from '../../../engine/read/index.ts';
import { isHeadingLine, tidyLine } from '../../../engine/read/markup/ingredient-values.ts';
import { splitMethod } from '../../../engine/read/markup/instruction-values.ts';
import { readMinutes } from '../../../engine/read/values/duration.ts';
import { recipeLanguage } from '../../../engine/read/values/language.ts';
import { growthOf, MOST_GROWTH } from '../../faults/growth.ts';
import { documentFrom } from '../page-file.ts';

describe('readMinutes', () => {
  it.each([
    ['PT1H30M', 90],
    ['PT95M', 95],
    ['P1DT2H', 1560],
    ['PTH7M', 7],
    ['PT2HMS', 120],
    ['PT0D3H', 180],
    ['P30M', 30],
    ['20 minutes', 20],
    ['1 hour 20 minutes', 80],
    ['45', 45],
    ['PT0M', null],
    ['PTundefinedM', null],
    ['PT-5M', null],
    ['PT900000H', null],
    ['', null],
  ])('%s', (text, minutes) => {
    expect(readMinutes(text)).toBe(minutes);
  });
});

describe('cleaning', () => {
  it('decodes entities up to three rounds and leaves unknown ones', () => {
    expect(decodeEntities('&amp;#39; &frac12; &nosuch; &copyright &#150; &#x41;')).toBe(
      "' ½ &nosuch; &copyright \u2013 A",
    );
  });
  it('spells accented letters as a browser does', () => {
    const letters = [...'ABCDEGHIJKLNORSTUWYZabcdeghijklnorstuwyz'];
    const accents = ['acute', 'grave', 'circ', 'uml', 'tilde', 'caron', 'cedil', 'ring', 'breve'];
    const names = letters.flatMap((one) => accents.map((accent) => `&${one}${accent};`));
    const decoded = documentFrom(names.join(' ')).body.textContent?.split(' ') ?? [];
    // What a browser does not know stays as it is in its text.
    const known = names.flatMap((name, i) =>
      decoded[i]?.length === 1 ? [[name, decoded[i]]] : [],
    );
    expect(known.length).toBeGreaterThan(100);
    expect(known.map(([name = '']) => decodeEntities(name))).toEqual(known.map(([, one]) => one));
  });
  it('makes block tags breaks and lets inline tags vanish', () => {
    expect(cleanLines('<p>One</p><p>two<br/>three</p>')).toEqual(['One', 'two', 'three']);
    expect(cleanText('<b>400 g</b><span>plums</span>')).toBe('400 g plums');
    expect(cleanText('200<b>g</b> egg<i>s</i>')).toBe('200 g eggs');
    expect(cleanText('1<sup>1</sup>&frasl;<sub>2</sub> cups')).toBe('1 1/2 cups');
  });
  it('keeps a plain less-than sign', () => {
    expect(cleanText('bake < 5 min')).toBe('bake < 5 min');
  });
  it.each(['<script>', '<!--', '<a ', '<p', '<b><style>'])(
    'takes long runs of unclosed %s in linear time',
    (tag) => {
      const made = (count: number) => tag.repeat(count);
      expect(growthOf({ made, run: cleanLines, from: 20_000 })).toBeLessThan(MOST_GROWTH);
    },
  );
  it('drops scripts in values and stray mojibake', () => {
    expect(cleanText('1 cup<script>alert(1)</script> oats')).toBe('1 cup oats');
    expect(cleanText('180\u00c2\u00a0g')).toBe('180 g');
  });
});

describe('ingredient lines', () => {
  it.each([
    ['▢ 1 cup oats', '1 cup oats'],
    ['1 cup 1 cup milk', '1 cup milk'],
    ['500 g g flour', '500 g flour'],
    ['oats ((rolled))', 'oats (rolled)'],
    ['oats (, rolled)', 'oats (rolled)'],
    ['salt*', 'salt*'],
  ])('%s', (before, after) => {
    expect(tidyLine(before)).toBe(after);
  });
  it.each([
    ['For the glaze:', true],
    ['GLAZE', true],
    ['Optional: nuts', false],
    ['2 cups flour:', false],
    ['Salt', false],
  ])('heading %s', (line, heading) => {
    expect(isHeadingLine(line)).toBe(heading);
  });
});

describe('splitMethod', () => {
  it('cuts at breaks, then numbers, then glued stops, and nowhere else', () => {
    expect(splitMethod('A b.\nC d.')).toEqual(['A b.', 'C d.']);
    expect(splitMethod('1.Heat it. 2.Mix it.')).toEqual(['1.Heat it.', '2.Mix it.']);
    expect(splitMethod('Fry until golden.Add salt.')).toEqual(['Fry until golden.', 'Add salt.']);
    expect(splitMethod('Bake approx. 5 min. Use 2.5 dl.')).toEqual([
      'Bake approx. 5 min. Use 2.5 dl.',
    ]);
  });
});

describe('recipeLanguage', () => {
  const german =
    'Die Butter mit dem Zucker in einer Schüssel und dann die Eier und das Mehl zu dem Teig geben und für zwei Minuten lassen';
  it('keeps what the page says, puts tags in order, and lets the words overrule', () => {
    expect(recipeLanguage('de_DE', german)).toBe('de-DE');
    expect(recipeLanguage('en-US', german)).toBe('de');
    expect(recipeLanguage(null, german)).toBe('de');
    expect(recipeLanguage('en', '2 cups flour')).toBe('en');
    expect(recipeLanguage(null, '')).toBeNull();
  });

  it('tells a bare list by its foods, and keeps the page’s word where one is in its language', () => {
    expect(recipeLanguage('en', '3 EL Olivenöl 2 Zehen Knoblauch 1 Prise Pfeffer')).toBe('de');
    expect(recipeLanguage('en', '3 Zehen Knoblauch 1 Prise Pfeffer 1 lemon')).toBe('en');
    expect(recipeLanguage('en', '2 Zehen Knoblauch')).toBe('en');
    expect(recipeLanguage('sv', '2 dl fløte 1 kylling 2 dl melk')).toBe('sv');
    expect(recipeLanguage(null, '2 gousses d’ail 1 oignon 20 cl de lait')).toBe('fr');
  });
});

describe('readText', () => {
  it('reads a paste with headings', () => {
    const result = readText(
      'Oat bake\nServes 4\n\nIngredients\n- 200 g oats\n- 2 eggs\n\nFor the top:\n- 5 plums\n\nMethod\n1. Mix the oats and the eggs.\n2. Bake with the plums for 30 minutes.\n\nNotes\nGood cold.',
      { url: 'https://millrace-kitchen.example/x', language: 'en' },
    );
    if (!result.ok) throw new Error(result.why);
    const [recipe] = result.recipes;
    expect(recipe).toMatchObject({
      title: 'Oat bake',
      markup: 'pasted',
      url: 'https://millrace-kitchen.example/x',
      yield: { servings: { low: 4, high: 4 } },
      groups: [
        { title: null, lines: ['200 g oats', '2 eggs'] },
        { title: 'For the top', lines: ['5 plums'] },
      ],
    });
    expect(recipe?.steps.map((step) => step.text)).toEqual([
      'Mix the oats and the eggs.',
      'Bake with the plums for 30 minutes.',
    ]);
  });
  it('reads a paste without headings', () => {
    const result = readText(
      '500 g bread flour\n370 g water\n10 g salt\n2 g dry yeast\n\nMix everything and let it rise for a night.\nBake it in a hot pot.',
    );
    if (!result.ok) throw new Error(result.why);
    expect(result.recipes[0]?.groups[0]?.lines).toHaveLength(4);
    expect(result.recipes[0]?.steps).toHaveLength(2);
  });
  it('reads a selection: lists with drawn marks, no heading, the title from the page', () => {
    const result = readText(
      'Serves 4\n- 300 g bread flour\n- 200 g water\n- 6 g salt\n1. Mix everything.\n2. Bake for 40 minutes.',
      { title: 'Pan loaf' },
    );
    if (!result.ok) throw new Error(result.why);
    expect(result.recipes[0]).toMatchObject({
      title: 'Pan loaf',
      yield: { servings: { low: 4, high: 4 } },
      groups: [{ title: null, lines: ['300 g bread flour', '200 g water', '6 g salt'] }],
      steps: [{ text: 'Mix everything.' }, { text: 'Bake for 40 minutes.' }],
    });
  });
  it('takes the number off a method of one step', () => {
    const result = readText('500 g flour\n10 g salt\n\nMethod\n1. Mix both and bake for an hour.');
    expect(result.ok && result.recipes[0]?.steps.map((step) => step.text)).toEqual([
      'Mix both and bake for an hour.',
    ]);
  });
  it('reads ingredient lines alone', () => {
    const result = readText('500 g bread flour\n370 g water\n10 g salt');
    expect(result.ok && result.recipes[0]?.groups[0]?.lines).toHaveLength(3);
  });
  it('says what to do when there is nothing to read', () => {
    expect(readText('A walk by the river.').ok).toBe(false);
    expect(readText('').ok).toBe(false);
  });
});
