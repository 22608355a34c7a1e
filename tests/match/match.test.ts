import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import { Match } from '../../engine/model.ts';
import { parseLine } from '../../engine/parse/index.ts';

const foods = foodTable();

const match = (text: string, aliases?: Record<string, string>): Match | null => {
  const line = parseLine(text);
  const [item] = line.items;
  if (!item) return null;
  return matchItem(item, line, aliases ? { foods, aliases } : { foods });
};

describe('the head noun decides', () => {
  test.each([
    ['1 cup almond flour', 'almond-flour'],
    ['1 tsp seasoned salt', 'seasoned-salt'],
    ['250 g farmer’s cheese', 'farmer-cheese'],
    ['2 tbsp natural peanut butter', 'peanut-butter-unsalted'],
    ['80 g crispy wonton strips', 'chow-mein-noodles'],
    ['1 cup coconut flour', 'coconut-flour'],
    ['3 cups paleo flour blend (2 cups almond flour, 1 cup tapioca starch)', 'paleo-flour-blend'],
    ['24 savoiardi', 'ladyfingers-crisp'],
    ['200 g crisp ladyfingers', 'ladyfingers-crisp'],
    ['24 ladyfingers', 'ladyfingers'],
    ['1 cup rice flour', 'rice-flour'],
    ['1 tsp cream of tartar', 'cream-of-tartar'],
    ['2 tbsp peanut butter', 'peanut-butter'],
    ['1 cup unsweetened almond milk', 'almond-milk-unsweetened'],
    ['1 cup buttermilk', 'buttermilk'],
    ['1/2 cup sour cream', 'sour-cream'],
    ['8 oz cream cheese', 'cream-cheese'],
    ['2 tbsp tomato paste', 'tomato-paste'],
    ['1 tbsp lemon juice', 'lemon-juice'],
    ['1 butternut squash', 'butternut-squash'],
    ['1 (29 oz) can sliced peaches in heavy syrup', 'peach-canned-syrup'],
    ['1 tin pears in juice', 'pear-canned'],
    ['3 kiwis', 'kiwi'],
    ['4 small beetroots with leafy tops', 'beet'],
    ['a lump of butter the size of a walnut', 'butter'],
    ['250 g dried posole, soaked', 'hominy-dry'],
    ['80 g dark muscovado', 'brown-sugar'],
    ['1 sweet potato', 'sweet-potato'],
    ['1 spaghetti squash', 'spaghetti-squash'],
    ['300 ml chicken stock', 'chicken-stock'],
    ['1 cup cauliflower florets', 'cauliflower'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test.each([
    ['1 tbsp rice vinegar', /rice-(white|brown)/],
    ['1 cup coconut milk', /^milk|^coconut-oil|^coconut-flour/],
    ['2 tbsp apple butter', /^butter/],
    ['1 tbsp yuzu juice', /lemon|orange|apple|lime/],
    ['2 tbsp zzyzx seeds', /sesame|nigella|pumpkin|sunflower/],
    ['1 cup cookie butter', /^butter/],
  ])('%s is not another food of the same words', (text, wrong) => {
    expect(match(text)?.foodId ?? 'none').not.toMatch(wrong);
  });
});

describe('names are read in any spelling', () => {
  test.each([
    ['1 COURGETTE', 'zucchini'],
    ['2 courgettes', 'zucchini'],
    ['100 g caster sugar', 'sugar'],
    ['100 g icing sugar', 'powdered-sugar'],
    ['200 g plain flour', 'all-purpose-flour'],
    ['200 g self-raising flour', 'self-raising-flour'],
    ['1 tsp bicarbonate of soda', 'baking-soda'],
    ['100 ml double cream', 'cream-heavy'],
    ['100 g natural yoghurt', 'yogurt-plain'],
    ['2 tbsp corn starch', 'cornstarch'],
    ['3 TOMATOES, chopped', 'tomato'],
    ['2 tbsp good-quality extra virgin olive oil', 'olive-oil'],
    ['500 g strong white bread flour', 'bread-flour'],
  ])('%s -> %s', (text, id) => {
    const found = match(text);
    expect(found?.foodId).toBe(id);
    expect(found?.confidence).toBeGreaterThan(0.8);
  });

  test.each([
    ['1 zuchini', 'zucchini'],
    ['2 tsp cinammon', 'cinnamon'],
    ['1 cup mozzarela', 'mozzarella'],
    ['1 cup buttermlik', 'buttermilk'],
  ])('a slip: %s -> %s, with less confidence', (text, id) => {
    const found = match(text);
    expect(found?.foodId).toBe(id);
    expect(found?.confidence).toBeLessThan(0.95);
  });
});

describe('the state follows the line', () => {
  test.each([
    ['1 cup cooked black beans', 'black-beans-cooked'],
    ['1 can chickpeas, drained', 'chickpeas-canned'],
    ['1 cup cooked white rice', 'rice-white-cooked'],
    ['1 cup lentils, cooked', 'lentils-cooked'],
    ['200 g brown lentils, cooked according to the packet', 'lentils-dry'],
    ['400 g spaghetti, cooked until al dente', 'pasta-dry'],
    ['200 g white beans, soaked overnight', 'white-beans-dry'],
    ['1 cup white rice', 'rice-white-dry'],
    ['400 g spaghetti', 'pasta-dry'],
    ['1 cup lentils', 'lentils-dry'],
    ['2 x 400g tins chopped tomatoes', 'tomatoes-canned'],
    ['4 tomatoes', 'tomato'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('choices, parts and own names', () => {
  test('the first of a choice is taken', () => {
    expect(match('2 tbsp butter or margarine')?.foodId).toBe('butter');
    expect(match('1 tbsp lemon or lime juice')?.foodId).toBe('lemon-juice');
  });

  test('a word said once belongs to both', () => {
    expect(match('2 cups vegetable or chicken stock')?.foodId).toBe('vegetable-stock');
    expect(match('1/2 cup canned or fresh coconut milk')?.foodId).toMatch(/^coconut-milk/);
    expect(match('4 corn or flour tortillas')?.foodId).toBe('corn-tortilla');
    expect(match('1 tbsp sugar or corn syrup')?.foodId).toBe('sugar');
    expect(match('1 cup whole or coconut milk')?.foodId).toBe('milk-whole');
  });

  test('a squeezed lemon is its juice', () => {
    expect(match('juice of 1 lemon')?.foodId).toBe('lemon-juice');
    expect(match('2 lemons, juiced')?.foodId).toBe('lemon-juice');
    expect(match('1 lemon')?.foodId).not.toBe('lemon-juice');
  });

  test.each([
    ['1/2 cup ground or shredded coconut', 0, 'coconut-dried-sweetened'],
    ['Zest of 1 lime plus 2 tablespoons juice', 1, 'lime-juice'],
    ['1 cup sweet pickled peppers, plus 2 tablespoons juice', 1, 'pickle-juice'],
    ['1 tbsp light com syrup', 0, 'corn-syrup'],
    ['3 tbsp olive oill', 0, 'olive-oil'],
    ['1 cup chocolate-covered espresso beans', 0, 'chocolate-coffee-bean'],
    ['1 cup chopped mixed herbs', 0, 'mixed-herbs-fresh'],
    ['1 tsp mixed herbs', 0, 'italian-seasoning'],
    ['3 cups ripe tomatoes, diced; canned are also fine', 0, 'tomato'],
    ['2 garnet yams', 0, 'sweet-potato'],
    ['1 lb albacore loin', 0, 'tuna'],
    ['100 ml extra virgin olive', 0, 'olive-oil'],
  ])('%s', (text, at, id) => {
    const line = parseLine(text);
    const item = line.items[at];
    expect(item && matchItem(item, line, { foods })?.foodId).toBe(id);
  });

  test("the user's own names win", () => {
    const found = match('200 g butter', { Butter: 'olive-oil' });
    expect(found).toMatchObject({ foodId: 'olive-oil', confidence: 1 });
  });

  test('an own name for a food that does not exist is passed over', () => {
    expect(match('200 g butter', { butter: 'no-such-food' })?.foodId).toBe('butter');
  });

  test('nothing near enough is null', () => {
    expect(match('1 string mop')).toBeNull();
    expect(match('2 blorptofinks')).toBeNull();
  });

  test('others are different foods, no surer than the first', () => {
    const found = match('1 cup milk');
    expect(found).not.toBeNull();
    for (const other of found?.others ?? []) {
      expect(other.foodId).not.toBe(found?.foodId);
      expect(other.confidence).toBeLessThanOrEqual(found?.confidence ?? 0);
    }
  });
});

describe('every food is found', () => {
  test('under its own name, with high confidence', () => {
    const lost = foods.foods.filter((food) => {
      const line = parseLine('100 g x');
      const [item] = line.items;
      if (!item) return true;
      const found = matchItem({ ...item, name: food.name }, line, { foods });
      return found === null || found.foodName !== food.name || found.confidence < 0.7;
    });
    expect(lost.map((food) => food.name)).toEqual([]);
  });
});

describe('properties', () => {
  test('no text makes it throw, and the answer keeps its shape', () => {
    const line = parseLine('1 cup flour');
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (name) => {
        const [item] = line.items;
        if (!item) return false;
        const found = matchItem({ ...item, name }, line, { foods });
        return found === null || Match.safeParse(found).success;
      }),
      { numRuns: 500 },
    );
  });

  test('the same line gives the same food', () => {
    const lines = ['1 cup milk', '2 onions', '1 can beans', 'some cheese'];
    for (const text of lines) expect(match(text)).toEqual(match(text));
  });
});
