/** Names whose food the rest of the line tells. */
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import { parseLine } from '../../../engine/parse/index.ts';

const foods = foodTable();

function foodOf(text: string): string | undefined {
  const line = parseLine(text);
  const [item] = line.items;
  return (item ? matchItem(item, line, { foods }) : null)?.foodId;
}

describe('how lean', () => {
  test.each([
    ['700 g beef mince (90/10)', 'ground-beef-90'],
    ['2 lb ground beef 93/7', 'ground-beef-93'],
    ['1 lb ground beef (80% lean / 20% fat)', 'ground-beef-80'],
    ['500 g lean mince (5% fat)', 'ground-beef-95'],
    ['400 g minced beef, 12% fat', 'ground-beef-90'],
    ['500 g beef mince', 'ground-beef-80'],
    ['500 g turkey mince (2% fat)', 'turkey-ground'],
    ['500 g beef mince (1/2 for the freezer)', 'ground-beef-80'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('how much cocoa', () => {
  test.each([
    ['175 g dark chocolate, 90 % cocoa', 'chocolate-dark-90'],
    ['60 g very dark chocolate (90%)', 'chocolate-dark-90'],
    ['60 g dark chocolate, 85 % cocoa', 'chocolate-dark-85'],
    ['60 g dark chocolate (at least 70% cocoa)', 'chocolate-dark-70'],
    ['60 g dark chocolate', 'chocolate-dark-70'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('in what it is packed', () => {
  test.each([
    ['3 whole chipotle peppers packed in adobo sauce', 'chipotle-adobo'],
    ['2 chipotles, packed in adobo, finely chopped', 'chipotle-adobo'],
    ['2 dried chipotle peppers', 'ancho-chile'],
    ['1 small jar sun-dried tomatoes in oil, sliced', 'sun-dried-tomato-oil'],
    ['1 x 300/10oz jar sun-dried tomatoes in olive oil', 'sun-dried-tomato-oil'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('one of several', () => {
  test.each([
    [
      '1/4 cup of one of the following: plain flour, rye flour, coconut flour, or quinoa flour',
      'all-purpose-flour',
    ],
    ['2 tbsp of one of these: honey, maple syrup or agave', 'honey'],
    ['1 cup of any of the following: white rice, quinoa, couscous', 'rice-white-dry'],
    ['3 cups mixed greens, any of the following: chard, kale, beet tops', 'mixed-greens'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('how fresh, or cooked when', () => {
  test.each([
    ['300 g fresh thin wok noodles', 'pasta-fresh'],
    ['1 lb fresh wide pasta', 'pasta-fresh'],
    ['300 g fresh rice noodles', 'rice-noodles-cooked'],
    ['250 g thin noodles', 'pasta-dry'],
    ['9 oz udon noodles, cooked according to the packet', 'udon-dry'],
    ['2 packets udon noodles', 'udon-cooked'],
    ['9 oz fresh udon noodles, cooked according to the packet', 'udon-cooked'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('packed or coated with what', () => {
  test.each([
    ['6 tbsp sun-dried tomatoes, packed in oil', 'sun-dried-tomato-oil'],
    ['6 tbsp sun-dried tomatoes', 'sun-dried-tomato'],
    ['1/2 cup peanuts coated with sugar', 'walnuts-glazed'],
    ['1 cup hazelnuts covered in chocolate', 'nuts-chocolate'],
    ['1 cup raisins covered in chocolate', 'raisins-chocolate'],
    ['1 cup peanuts', 'peanuts'],
    ['15 oz artichokes (marinated)', 'artichoke-marinated'],
    ['2 artichokes', 'artichoke'],
    ['1 can artichoke hearts, drained', 'artichoke-hearts'],
    ['1 lb ravioli', 'ravioli'],
    ['1 lb tortellini', 'tortellini'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('skin and dairy', () => {
  test.each([
    ['2 lb chicken thighs (skinless, boneless)', 'chicken-thigh'],
    ['2 lb chicken thighs', 'chicken-thigh-skin'],
    ['2 lb bone-in chicken thighs (can also use skinless)', 'chicken-thigh-skin'],
    ['1 cup shredded vegan cheddar cheese', 'vegan-cheese'],
    ['1 cup dairy-free shredded mozzarella', 'vegan-cheese'],
    ['1 cup shredded cheddar', 'cheddar'],
    ['1 tbsp sun-dried tomato oil', 'olive-oil'],
    ['1 tsp red pepper chili flakes', 'chili-flakes'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('with how much salt', () => {
  test.each([
    ['1 can (15 oz) diced tomatoes, no salt added', 'tomatoes-canned-unsalted'],
    ['400 g no-salt-added chopped tomatoes', 'tomatoes-canned-unsalted'],
    ['400 g chopped tomatoes', 'tomatoes-canned'],
    ['2 cups low-sodium chicken broth', 'chicken-stock-low-sodium'],
    ['2 cups reduced-sodium chicken broth', 'chicken-stock-reduced-sodium'],
    ['1 cup low sodium beef stock', 'beef-stock-low-sodium'],
    ['1 cup less-sodium beef broth', 'beef-stock-reduced-sodium'],
    ['10 kalamata olives, pitted', 'olives-cured'],
    ['1 cup Spanish-style ready rice', 'rice-spanish-cooked'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});

describe('what a name shared by two foods means', () => {
  test.each([
    ['1 cup vegan chocolate protein powder', 'pea-protein-isolate'],
    ['30 g plant-based vanilla protein powder', 'pea-protein-isolate'],
    ['30 g whey protein isolate', 'whey-protein-isolate'],
    ['200 g light cream cheese', 'cream-cheese-low-fat'],
    ['200 g neufchatel', 'cream-cheese-light'],
    ['12 ounces brown fizz (not diet)', 'cola'],
    ['1 can ginger ale, not diet', 'ginger-ale'],
    ['1 lb chourico, sliced', 'chourico'],
    ['1 lb chorizo, sliced', 'chorizo-cured'],
  ])('%s -> %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });
});
