/** Measures and packets of one country that a word-for-word reading gets wrong; grams are common practice. */
import { expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import { parseLine } from '../../../engine/parse/index.ts';
import { weighItem } from '../../../engine/weigh/index.ts';

const foods = foodTable();

function weighed(text: string, language: string): [string | undefined, number | undefined] {
  const line = parseLine(text, { language });
  const [item] = line.items;
  if (!item) return [undefined, undefined];
  const match = matchItem(item, line, { foods, language });
  const food = match && foods.byId(match.foodId);
  const recipe = { title: '', steps: [], lines: [line] };
  return [match?.foodId, weighItem(item, line, food, { region: 'eu', recipe })?.grams.best];
}

test.each([
  ['de', '1 Dose rote Kidneybohnen (Abtropfgewicht 250 g)', 'kidney-beans-canned', 250],
  ['de', '2 m.-große Kartoffeln', 'potato', 300],
  ['de', '1 Pck. Sahnesteif', 'cream-stabiliser', 8],
  ['de', '1 Pck. Tortenguss', 'custard-powder', 12],
  ['de', '6 Nürnberger Bratwürstchen', 'bratwurst', 150],
  ['de', '2 Fl. Bier', 'beer', 712],
  ['de', '1 Bund Suppengemüse', 'root-vegetables', 350],
  ['de', '1 Schnapsglas Rum', 'rum', 37.5],
  ['de', '1 Becher Mehl', 'all-purpose-flour', 105.7],
  ['de', '1 Becher Zucker', 'sugar', 169.1],
  ['de', '300 g Kasseler', 'back-bacon', 300],
  ['de', '2 Mini-Salatgurken', 'cucumber', 160],
  ['de', '50 g kandierter Ingwer', 'crystallized-ginger', 50],
  ['de', '1 Fladenbrot', 'pita', 400],
  ['de', '2 Weißwürste', 'bratwurst', 130],
  ['de', '1 Pck. Butter', 'butter-unsalted', 250],
  ['de', '1 Pck. Zitronenschalenaroma', 'almond-extract', 6],
  ['fr', '2 galettes de sarrasin', 'pancakes-ready', 160],
  ['fr', '1 pain de campagne', 'bread-french', 450],
  ['fr', '1 sachet de pépites de chocolat', 'chocolate-semisweet', 100],
  ['nl', '1 brood', 'bread-white', 500],
  ['sv', '1 påse ruccola', 'arugula', 85],
  ['fr', '3 pots de farine', 'all-purpose-flour', 198.1],
  ['fr', '2 pots de sucre', 'sugar', 211.3],
  ['fr', "1/2 pot d'huile de tournesol", 'sunflower-oil', 57.6],
  ['fr', '1 branche de céleri', 'celery', 40],
  ['fr', '1 camembert', 'camembert', 250],
  ['fr', '2 petits-suisses', 'quark', 120],
  ['fr', '6 portions de fromage fondu', 'processed-cheese-block', 102],
  ['fr', '4 merguez', 'chorizo-fresh', 220],
  ['fr', "1 c. à soupe de fleur d'oranger", 'flower-water', 15],
  ['es', '2 medidas de yogur de azúcar', 'sugar', 211.3],
  ['es', '1 barra de mantequilla', 'butter-unsalted', 100],
  ['es', '1 morcilla', 'blood-sausage', 120],
  ['es', '500 g de masa de maíz', 'masa-dough', 500],
  ['it', '1 bicchierino di rum', 'rum', 37.5],
  ['it', '1 mozzarella di bufala', 'mozzarella', 125],
  ['it', '2 vasetti di farina', 'all-purpose-flour', 132.1],
  ['it', '2 patate', 'potato', 300],
  ['nl', '1 rookworst', 'sausage-smoked', 275],
  ['nl', '2 speklappen', 'pork-belly', 220],
  ['nl', '2 el ketjap manis', 'soy-sauce-sweet', 39.6],
  ['sv', '4 port ris', 'rice-white-dry', 300],
  ['da', '1 stang vanilje', 'vanilla-bean', 3],
  ['da', '1 ds flåede tomater', 'tomatoes-canned', 400],
  ['da', '1 knsp. kanel', 'cinnamon', 0.3],
  ['da', '2 spsk maizenamel', 'cornstarch', 16.2],
  ['nb', '100 g brunost', 'brown-whey-cheese', 100],
  ['pl', '1 kostka masła', 'butter', 200],
  ['pl', '1 puszka mleka skondensowanego', 'milk-condensed', 397],
  ['pl', '1 galaretka truskawkowa', 'gelatin-dessert-mix', 75],
  ['pl', '2 opakowania cukru waniliowego', 'sugar', 32],
  ['cs', '1 vanilkový cukr', 'sugar', 20],
  ['cs', '2 lžíce rajského protlaku', 'tomato-paste', 32.5],
  ['cs', '2 papriky', 'bell-pepper-red', 238],
  ['cs', '300 g kuřecích prsou', 'chicken-breast', 300],
  ['cs', '1 lilek', 'eggplant', 300],
  ['da', '1 rød peber', 'bell-pepper-red', 119],
  ['pt', '1 cálice de vinho do Porto', 'wine-fortified-sweet', 40.6],
  ['pt', '1 embalagem de massa folhada', 'puff-pastry', 240],
  ['it', '100 g di limoncello', 'orange-liqueur', 100],
  ['el', '1 φλ. τσαγιού αλεύρι', 'all-purpose-flour', 132.1],
  ['hu', '1 csomag vaníliás cukor', 'sugar', 10],
  ['ru', '1 пакетик ванильного сахара', 'sugar', 10],
  ['ru', '3 картофелины', 'potato', 450],
  ['ru', '200 мл сливок 33%', 'cream-whipping-light', 202],
])('%s: %s', (language, text, id, expected) => {
  const [food, weight] = weighed(text, language);
  expect(food).toBe(id);
  expect(weight).toBeCloseTo(expected, 0);
});
