/** Packaged goods under the words every shop uses: never the fresh food that one of the words names. */
import { expect, test } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import { parseLine } from '../../engine/parse/index.ts';

const foods = foodTable();

function foodOf(text: string, language: string): string | undefined {
  const line = parseLine(text, { language });
  const [item] = line.items;
  return item && matchItem(item, line, { foods, language })?.foodId;
}

test.each([
  ['3 cups cheese puffs, crushed', 'cheese-puffs'],
  ['1 cup cheese crackers', 'crackers-cheese'],
  ['6 custard creams', 'cookies-cream-filled'],
  ['2 tbsp salad cream', 'salad-cream'],
  ['1 cup peanut butter cups, halved', 'peanut-butter-cups'],
  ['1 cup malted milk balls', 'malted-milk-balls'],
  ['2 toaster pastries', 'toaster-pastry'],
  ['1 frozen pizza', 'pizza-frozen'],
  ['4 spring rolls', 'spring-rolls'],
  ['2 fruit leather rolls', 'fruit-leather'],
  ['1 can beef stew', 'beef-stew-canned'],
  ['1 tin spaghetti hoops', 'pasta-canned-tomato'],
  ['1 tin rice pudding', 'rice-pudding-canned'],
  ['4 corn thins', 'rice-cakes'],
  ['1 packet leek and potato soup mix', 'onion-soup-mix'],
  ['1 cup fruit punch', 'fruit-drink'],
  ['1/4 cup lemonade concentrate', 'lemonade-concentrate'],
  ['2 tbsp iced tea mix', 'drink-powder-sweet'],
  ['1 cup queso dip', 'cheese-dip'],
  ['1 cup French onion dip', 'sour-cream-dip'],
  ['1 cup candy melts', 'chocolate-white'],
  ['200 g processed cheese spread', 'processed-cheese-block'],
  ['1 swiss roll, sliced', 'sponge-cake'],
  ['2 cups rice bubbles', 'crisped-rice-cereal'],
  ['1 cup SR flour', 'self-raising-flour'],
  ['1/3 cup butterscotch topping', 'caramel-sauce'],
])('%s', (text, id) => {
  expect(foodOf(text, 'en')).toBe(id);
});

test.each([
  ['200 g Krautsalat', 'coleslaw'],
  ['1 Packung Kroketten', 'potato-tots'],
  ['100 g Baiser', 'meringue-nests'],
  ['8 Schokoküsse', 'chocolate-marshmallow'],
  ['1 Packung Backmischung Schokokuchen', 'cake-mix-chocolate'],
  ['1 Packung Brotbackmischung', 'bread-mix-dry'],
  ['1 Pck. Vanillesoße', 'custard-powder'],
  ['300 ml Vanillesoße', 'custard-ready'],
  ['1 Pck. Vanillepudding', 'custard-powder'],
  ['1 Becher Vanillepudding', 'custard-ready'],
  ['1 Pck. Schokoladenpuddingpulver', 'custard-powder'],
  ['250 ml Kakao', 'milk-chocolate-drink'],
  ['2 EL Kakao', 'cocoa-powder'],
  ['2 EL Preiselbeeren', 'cranberry-sauce'],
  ['200 g Preiselbeeren', 'cranberries'],
  ['3 EL Currywurstsoße', 'ketchup'],
  ['100 g Gummibärchen', 'gumdrop'],
  ['1 Packung Toastbrötchen', 'english-muffin'],
  ['1 Packung Croissantteig', 'crescent-dough'],
  ['1 Tiefkühlpizza', 'pizza-frozen'],
  ['200 ml Multivitaminsaft', 'orange-juice'],
  ['250 g Halbfettmargarine', 'vegetable-spread'],
  ['500 g Kloßteig', 'gnocchi'],
])('%s', (text, id) => {
  expect(foodOf(text, 'de')).toBe(id);
});
