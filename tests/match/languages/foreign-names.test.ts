import { describe, expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import de from '../../../engine/match/data/names/de.json' with { type: 'json' };
import es from '../../../engine/match/data/names/es.json' with { type: 'json' };
import fr from '../../../engine/match/data/names/fr.json' with { type: 'json' };
import it from '../../../engine/match/data/names/it.json' with { type: 'json' };
import nl from '../../../engine/match/data/names/nl.json' with { type: 'json' };
import pt from '../../../engine/match/data/names/pt.json' with { type: 'json' };
import sv from '../../../engine/match/data/names/sv.json' with { type: 'json' };
import { matchItem } from '../../../engine/match/index.ts';
import { lineLanguage, parseLine } from '../../../engine/parse/index.ts';

const foods = foodTable();

const match = (name: string, language: string) => {
  const line = parseLine('100 g x');
  const [item] = line.items;
  return item ? matchItem({ ...item, name }, line, { foods, language }) : null;
};

describe('names in other languages that are known only in part', () => {
  test.each([
    ['de', 'Wildschweinhackfleisch', 'ground-beef-80'],
    ['de', 'Orzo-Nudeln', 'pasta-dry'],
    ['de', 'Quark/Topfen', 'quark'],
    ['nl', 'halfgedroogde tomaten', 'sun-dried-tomato-oil'],
    ['nl', 'sushi azijn', 'rice-vinegar-seasoned'],
    ['it', 'grappolo di pomodorini', 'cherry-tomato'],
    ['de', 'Selleriegrün', 'celery'],
    ['de', 'Tomaten getrocknet in Öl', 'sun-dried-tomato-oil'],
    ['nl', 'kipenbouillon', 'chicken-stock'],
    ['fr', 'yaourt nature sans sucre', 'yogurt-plain'],
    ['fr', 'pommes de terre blanches', 'potato'],
    ['it', 'latte senza lattosio', 'milk-whole'],
    ['nl', 'zout en peper', 'salt'],
    ['de', 'Salz und Pfeffer', 'salt'],
    ['fr', 'sel et poivre', 'salt'],
    ['es', 'sal y pimienta', 'salt'],
    ['it', 'agnolotti', 'ravioli'],
    ['it', 'ditaloni rigati', 'pasta-dry'],
    ['de', 'Nürnberger Rostbratwürstchen', 'bratwurst'],
    ['es', 'levadura', 'fresh-yeast'],
  ])('%s: %s -> %s', (language, name, id) => {
    expect(match(name, language)?.foodId).toBe(id);
  });

  test('the end of a compound is no food where its start is one of another kind', () => {
    expect(match('Pistaziensahne', 'de')).toBeNull();
    expect(match('Wildschweinhackfleisch', 'de')?.confidence).toBeLessThan(0.6);
  });
});

describe('names in other languages', () => {
  test.each([
    ['de', 'Mehl', 'all-purpose-flour'],
    ['de-AT', 'Topfen', 'quark'],
    ['de', 'Äpfel', 'apple'],
    ['de', 'weiche Butter', 'butter-unsalted'],
    ['fr', 'huile d’olive', 'olive-oil'],
    ['fr', "gousses d'ail", 'garlic'],
    ['fr', 'farine de blé', 'all-purpose-flour'],
    ['es', 'azúcar moreno', 'brown-sugar'],
    ['it', "olio extravergine d'oliva", 'olive-oil'],
    ['nl', 'eieren', 'egg'],
    ['pt', 'açúcar', 'sugar'],
    ['sv', 'vetemjöl', 'all-purpose-flour'],
    ['da', 'sukker', 'sugar'],
    ['nb', 'smør', 'butter'],
    ['cs', 'hladké mouky', 'all-purpose-flour'],
    ['cs', 'brambory', 'potato'],
    ['sk', 'kryštálový cukor', 'sugar'],
    ['sk', 'smotana na šľahanie', 'cream-whipping-light'],
    ['el', 'ζάχαρη', 'sugar'],
    ['el', 'πατάτες', 'potato'],
    ['ru', 'пшеничной муки', 'all-purpose-flour'],
    ['ru', 'сахара', 'sugar'],
    ['ru', 'картофеля', 'potato'],
  ])('%s: %s -> %s', (language, name, id) => {
    expect(match(name, language)?.foodId).toBe(id);
    expect(match(name, language)?.confidence).toBeGreaterThan(0.9);
  });

  test('a word of the name is taken with less confidence', () => {
    const found = match('Urgroßmutters Weizenmehl', 'de');
    expect(found?.foodId).toBe('all-purpose-flour');
    expect(found?.confidence).toBeLessThan(0.7);
  });

  test('an English name still counts, a foreign word is not bent into an English one', () => {
    expect(match('Cheddar', 'de')?.foodId).toBe('cheddar');
    expect(match('Quatschkram', 'de')).toBeNull();
  });

  test.each([
    ['100 g Mehl', 'all-purpose-flour'],
    ['250 g de farine', 'all-purpose-flour'],
    ['2 cucharadas de azúcar', 'sugar'],
    ['3 uova', 'egg'],
    ['500 g vetemjöl', 'all-purpose-flour'],
    ['2 Zwiebeln', 'onion'],
    ['100 g fromage blanc', 'quark'],
  ])('a page that says it is English: %s', (text, id) => {
    const line = parseLine(text, { language: lineLanguage(text) });
    const [item] = line.items;
    const found = item ? matchItem(item, line, { foods, language: 'en' }) : null;
    expect(found?.foodId).toBe(id);
    expect(found?.confidence).toBeLessThan(0.8);
    expect(found?.reason).toContain('no name in the language of the page');
  });

  test.each(['pain', 'ail', 'sale', 'fond', 'mel', 'burro', 'art', 'is'])(
    'an English word is no food of another language: %s',
    (name) => {
      expect(match(name, 'en')).toBeNull();
    },
  );

  test.each([
    ['de', 'Saft von 1 Zitrone', 'lemon-juice'],
    ['it', 'il succo e la scorza di un limone', 'lemon-juice'],
    ['fr', '1 boîte de lentilles', 'lentils-canned'],
    ['es', '250 g de garbanzos secos', 'chickpeas-dry'],
    ['nl', '200 g gekookte rijst', 'rice-white-cooked'],
    ['de', '1 Bund Koriander', 'cilantro'],
    ['de', '1 TL Koriander', 'coriander-seed'],
    ['de', '100 g gemahlene Mandeln', 'almond-flour'],
    ['de', '100 g Weizen- oder Reismehl', 'all-purpose-flour'],
    ['de', '2 EL Sonnenblumen- oder Rapsöl', 'sunflower-oil'],
  ])('%s: %s is the part or state asked for: %s', (language, text, id) => {
    const line = parseLine(text, { language });
    const [item] = line.items;
    expect(item && matchItem(item, line, { foods, language })?.foodId).toBe(id);
  });

  test.each([
    ['fr', 'soupe de légumes'],
    ['fr', 'farine de banane'],
    ['de', 'Tomaten Milch Irgendwas'],
  ])('%s: %s is another food than its words', (language, name) => {
    expect(match(name, language)?.confidence ?? 0).toBeLessThan(0.5);
  });

  test('no name stands for two foods', () => {
    const twice = [de, es, fr, it, nl, pt, sv].flatMap((names) => {
      const all = Object.values(names)
        .flat()
        .map((name) => name.toLowerCase());
      return all.filter((name, at) => all.indexOf(name) !== at);
    });
    expect(twice).toEqual([]);
  });

  test('every listed food is in the table', () => {
    const ids = [de, es, fr, it, nl, pt, sv].flatMap((names) => Object.keys(names));
    expect(ids.filter((id) => foods.byId(id) === null)).toEqual([]);
  });
});

test.each([
  ['es', '1 sobre (16 g) de levadura', 'baking-powder'],
  ['es', '20 g de levadura fresca', 'fresh-yeast'],
  ['es', '16 g de levadura de panadero', 'fresh-yeast'],
  ['es', '1 naranja de mesa, con o sin piel', 'orange'],
  ['es', 'la piel de 1 naranja', 'orange-zest'],
])('%s: %s -> %s', (language, text, id) => {
  const line = parseLine(text, { language });
  const [item] = line.items;
  expect(item && matchItem(item, line, { foods, language })?.foodId).toBe(id);
});
