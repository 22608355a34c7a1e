/** Packets, cubes and pots as they are sold where the line's language is spoken, common practice. */
import { expect, test } from 'vitest';
import { weighed } from './weighed-line.ts';

test.each([
  ['de', '1 Päckchen Backpulver', 'baking-powder', 16],
  ['de', '2 Pck. Vanillezucker', 'sugar', 16],
  ['de', '1 Tüte Trockenhefe', 'dry-yeast', 7.2],
  ['de', '1 Päckchen Hefe', 'dry-yeast', 7.2],
  ['de', '½ Würfel Hefe', 'fresh-yeast', 21],
  ['de', '1 Päckchen Vanillepuddingpulver', 'custard-powder', 37],
  ['de', '1 Becher Sahne', 'cream-whipping-light', 200],
  ['de', '1 Fläschchen Rumaroma', 'almond-extract', 2],
  ['de', '4 Rinderrouladen', 'beef-round', 640],
  ['de', '1 Knolle Sellerie', 'celeriac', 500],
  ['fr', '1 rouleau de pâte filo', 'phyllo', 250],
  ['fr', '1 sachet de levure chimique', 'baking-powder', 11],
  ['fr', '2 sachets de sucre vanillé', 'sugar', 16],
  ['fr', '1 sachet de levure de boulanger', 'dry-yeast', 7.2],
  ['fr', '1 pot de yaourt', 'yogurt-plain', 125],
  ['fr', '2 yaourts nature', 'yogurt-plain', 250],
  ['fr', '6 feuilles de lasagnes', 'lasagne-dry', 120],
  ['fr', '1 briquette de crème liquide', 'cream-whipping-light', 200],
  ['it', '1 bustina di lievito per dolci', 'baking-powder', 16],
  ['it', '1 bustina di vanillina', 'vanilla-powder', 0.5],
  ['it', '1 bustina di zafferano', 'saffron', 0.15],
  ['it', '1 panetto di lievito di birra', 'fresh-yeast', 25],
  ['nl', '1 zakje vanillesuiker', 'sugar', 8],
  ['nl', '1 zakje gist', 'dry-yeast', 7.2],
  ['nl', '10 plakjes bladerdeeg', 'puff-pastry', 450],
  ['es', '1 sobre de levadura', 'baking-powder', 16],
  ['es', '1 sobre de azúcar avainillado', 'sugar', 8],
  ['es', '1 barra de pan', 'bread-french', 250],
  ['pt', '1 caixinha de creme de leite', 'cream-light', 200],
  ['sv', '1 paket jäst', 'fresh-yeast', 50],
  ['sv', '1 påse jäst', 'dry-yeast', 7.2],
  ['da', '1 pakke gær', 'fresh-yeast', 50],
  ['nb', '1 pakke gjær', 'fresh-yeast', 50],
])('%s: %s', (language, text, id, expected) => {
  const [food, weight] = weighed(text, language);
  expect(food).toBe(id);
  expect(weight).toBeCloseTo(expected, 6);
});

test.each([
  ['de', '1 große Zwiebel', '1 kleine Zwiebel'],
  ['fr', '1 gros oignon', '1 petit oignon'],
  ['es', '1 cebolla grande', '1 cebolla pequeña'],
  ['it', '1 cipolla grande', '1 cipolla piccola'],
  ['nl', '1 grote ui', '1 kleine ui'],
  ['pt', '1 cebola grande', '1 cebola pequena'],
  ['sv', '1 stor lök', '1 liten lök'],
  ['de', '1 gehäufter EL Mehl', '1 EL Mehl'],
])('%s: %s weighs more than %s', (language, more, less) => {
  expect(weighed(more, language)[1]).toBeGreaterThan(weighed(less, language)[1] ?? Number.NaN);
});
