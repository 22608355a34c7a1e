/** A vegetable that is soft sooner than the potatoes beside it joins them by a sentence of its own. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { weighRecipe } from '../../../engine/walk.ts';
import { type Change, foods, makePlan, makeRecipe } from '../fixtures.ts';

const PARTLY: readonly Change[] = [{ key: '0', kept: 300, to: [['cauliflower', 400]] }];

function method(language: string, line: string, steps: string[], changes = PARTLY): string[] {
  const recipe: Recipe = { ...makeRecipe('Supper', [line, '2 l stock'], steps), language };
  const read = weighRecipe(recipe);
  const plan = makePlan('potato-dish', read, changes);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'eu' }).steps.map(({ after }) => after);
}

describe('cauliflower beside potatoes in a pot', () => {
  it('goes in for the last minutes, before what looks back on the boiling', () => {
    const steps = method('en', '700 g potatoes', [
      'Cut the potatoes into small bite-size pieces, put them into a pot and cover with water.',
      'While the potatoes are cooking, chop the herbs.',
      'After boiling the potatoes for 15 to 20 minutes, drain them in a colander.',
      'Transfer the potatoes to plates.',
    ]);
    expect(steps).toEqual([
      'Cut the potatoes into small bite-size pieces, put them into a pot and cover with water.',
      'While the potatoes are cooking, chop the herbs.',
      'For the last 6-8 minutes add the cauliflower. After boiling the potatoes for 15 to 20 minutes, drain them in a colander.',
      'Transfer the potatoes and cauliflower to plates.',
    ]);
  });

  it('goes in between the boiling and the draining of one sentence', () => {
    const [first] = method('en', '700 g potatoes', [
      'Cover the potatoes with water and boil 20 minutes until tender, then drain and keep warm.',
    ]);
    expect(first).toBe(
      'Cover the potatoes with water and boil 20 minutes until tender. For the last 10-12 minutes add the cauliflower in large florets. Drain and keep warm.',
    );
  });

  it('goes in between the boiling and the draining of one sentence in German', () => {
    const [first] = method('de', '700 g Kartoffeln', [
      'Kartoffeln in der Schale 25 Minuten kochen, abgießen, pellen und in Scheiben schneiden.',
    ]);
    expect(first).toMatch(
      /^Kartoffeln in der Schale 25 Minuten kochen\. In den letzten [^.]*Blumenkohl[^.]* zugeben\. Abgießen, pellen/,
    );
  });

  it('is not peeled or quartered with them where all are mashed', () => {
    const steps = method('en', '700 g potatoes', [
      'Peel and cut the potatoes into quarters.',
      'Boil the potatoes for 20 minutes until tender, drain and mash the potatoes.',
    ]);
    expect(steps[0]).toBe('Peel and cut the potatoes into quarters.');
    expect(steps[1]).toMatch(/^Boil the potatoes and cauliflower/);
  });

  it.each([
    [
      'de',
      '700 g Kartoffeln',
      'Die Kartoffeln schälen und in die Brühe geben. 25 Minuten kochen.',
      'In den letzten 10-12 Minuten 400 g Blumenkohl in großen Röschen zugeben.',
    ],
    [
      'fr',
      '700 g de pommes de terre',
      'Ajouter les pommes de terre au bouillon. Laisser cuire 25 minutes.',
      'Pour les 10-12 dernières minutes, ajouter 400 g de chou-fleur en gros bouquets.',
    ],
    [
      'es',
      '700 g de patatas',
      'Añadir las patatas al caldo. Cocer 25 minutos.',
      'En los últimos 10-12 minutos, añadir 400 g de coliflor en ramilletes grandes.',
    ],
    [
      'it',
      '700 g di patate',
      'Unire le patate al brodo. Cuocere 25 minuti.',
      'Negli ultimi 10-12 minuti unire 400 g di cavolfiore in cimette grandi.',
    ],
    [
      'pt',
      '700 g de batatas',
      'Juntar as batatas ao caldo. Cozer 25 minutos.',
      'Nos últimos 10-12 minutos, juntar 400 g de couve-flor em floretes grandes.',
    ],
    [
      'nl',
      '700 g aardappelen',
      'Doe de aardappelen bij de bouillon. Kook 25 minuten.',
      'Voeg de laatste 10-12 minuten 400 g bloemkool in grote roosjes toe.',
    ],
    [
      'sv',
      '700 g potatis',
      'Lägg potatisen i buljongen. Koka 25 minuter.',
      'Lägg i 400 g blomkål i stora buketter de sista 10-12 minuterna.',
    ],
    [
      'da',
      '700 g kartofler',
      'Kom kartoflerne i bouillonen. Kog 25 minutter.',
      'Kom 400 g blomkål i store buketter i de sidste 10-12 minutter.',
    ],
    [
      'nb',
      '700 g poteter',
      'Ha potetene i kraften. Kok 25 minutter.',
      'Ha i 400 g blomkål i store buketter de siste 10-12 minuttene.',
    ],
  ])('%s: told in the language, the page’s words as they are', (language, line, step, told) => {
    const [first] = method(language, line, [step]);
    expect(first).toBe(`${step} ${told}`);
  });
});

describe('a pot that boils hardly longer than cauliflower', () => {
  it('takes both together, and keeps nothing back', () => {
    const [text = ''] = method('en', '700 g potatoes', [
      'Place the potatoes in a pot, cover with water and bring to a boil. Simmer the potatoes for 10-12 minutes, then drain.',
    ]);
    expect(text).toMatch(/^Place the potatoes and cauliflower in a pot/);
    expect(text).not.toMatch(/last \d/);
  });
});
