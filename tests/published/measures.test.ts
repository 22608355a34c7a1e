/**
 * Household measures through parse, match and weigh against gram weights of the USDA portion table
 * (SR Legacy FoodData Central ids beside each), within 5 %.
 */
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { weighItem } from '../../engine/weigh/index.ts';

const foods = foodTable();

/** Line, food id, grams by USDA, FoodData Central id. */
const MEASURES: readonly (readonly [string, string, number, number])[] = [
  ['1 cup all-purpose flour', 'all-purpose-flour', 125, 168894],
  ['2 cups bread flour', 'bread-flour', 274, 168896],
  ['1 cup whole wheat flour', 'whole-wheat-flour', 120, 168893],
  ['1/2 cup cornstarch', 'cornstarch', 64, 169698],
  ['1 cup oat bran', 'oat-bran', 94, 168872],
  ['1 cup wheat bran', 'wheat-bran', 58, 169722],
  ['1 cup granulated sugar', 'sugar', 200, 169655],
  ['1 tsp sugar', 'sugar', 4.2, 169655],
  ['1 cup packed brown sugar', 'brown-sugar', 220, 168833],
  ['1 cup confectioners’ sugar', 'powdered-sugar', 120, 169656],
  ['1/2 cup honey', 'honey', 169.5, 169640],
  ['1 cup maple syrup', 'maple-syrup', 315, 169661],
  ['1 cup molasses', 'molasses', 337, 168820],
  ['1 stick butter', 'butter', 113, 173410],
  ['2 tablespoons butter, melted', 'butter', 28.4, 173410],
  ['1/4 cup olive oil', 'olive-oil', 54, 171413],
  ['1 tbsp vegetable oil', 'vegetable-oil', 14, 172336],
  ['1 cup mayonnaise', 'mayonnaise', 220, 171009],
  ['2 tbsp tahini', 'tahini', 30, 170189],
  ['1 1/2 cups whole milk', 'milk-whole', 366, 171265],
  ['1 quart whole milk', 'milk-whole', 976, 171265],
  ['1 cup buttermilk', 'buttermilk', 245, 170874],
  ['1 cup heavy cream', 'cream-heavy', 238, 170859],
  ['1 cup sour cream', 'sour-cream', 230, 171257],
  ['1 cup plain yogurt', 'yogurt-plain', 245, 171284],
  ['1 cup cream cheese', 'cream-cheese', 232, 173418],
  ['2 cups shredded mozzarella', 'mozzarella', 224, 170845],
  ['1 cup shredded cheddar cheese', 'cheddar', 113, 173414],
  ['3 large eggs', 'egg', 150, 171287],
  ['2 medium eggs', 'egg', 88, 171287],
  ['2 eggs', 'egg', 100, 171287],
  ['4 large egg whites', 'egg-white', 132, 172183],
  ['2 large egg yolks', 'egg-yolk', 34, 172184],
  ['1 packet active dry yeast', 'dry-yeast', 7.2, 175043],
  ['2 tsp active dry yeast', 'dry-yeast', 8, 175043],
  ['1 tsp baking powder', 'baking-powder', 4.6, 172803],
  ['1/2 teaspoon baking soda', 'baking-soda', 2.3, 175040],
  ['1 tbsp salt', 'salt', 18, 173468],
  ['1 tsp salt', 'salt', 6, 173468],
  ['1 dash of salt', 'salt', 0.4, 173468],
  ['1 tsp vanilla extract', 'vanilla-extract', 4.2, 173471],
  ['1 tbsp ground cinnamon', 'cinnamon', 7.8, 171320],
  ['1 cup unsweetened cocoa powder', 'cocoa-powder', 86, 169593],
  ['1 cup semisweet chocolate chips', 'chocolate-semisweet', 168, 167976],
  ['2 medium apples', 'apple', 364, 171688],
  ['1 cup mashed banana', 'banana', 225, 173944],
  ['1 medium banana', 'banana', 118, 173944],
  ['1 cup blueberries', 'blueberries', 148, 171711],
  ['1 cup sliced strawberries', 'strawberries', 166, 167762],
  ['1 cup unsweetened applesauce', 'applesauce-unsweetened', 244, 171695],
  ['juice of 1 lemon', 'lemon-juice', 48, 167747],
  ['1 medium onion, chopped', 'onion', 110, 170000],
  ['1 large onion', 'onion', 150, 170000],
  ['1 cup chopped onion', 'onion', 160, 170000],
  ['3 cloves garlic, minced', 'garlic', 9, 169230],
  ['1 cup grated carrot', 'carrot', 110, 170393],
  ['2 medium carrots', 'carrot', 122, 170393],
  ['2 stalks celery', 'celery', 80, 169988],
  ['1 medium zucchini', 'zucchini', 196, 169291],
  ['1 medium head cauliflower', 'cauliflower', 588, 169986],
  ['2 medium potatoes', 'potato', 426, 170026],
  ['1 can (6 oz) tomato paste', 'tomato-paste', 170, 170459],
  ['1 cup canned pumpkin', 'pumpkin-canned', 245, 168450],
  ['1 cup quinoa', 'quinoa-dry', 170, 168874],
  ['1 cup lentils', 'lentils-dry', 192, 172420],
  ['1 cup cooked black beans', 'black-beans-cooked', 172, 173735],
  ['1/2 cup chopped walnuts', 'walnuts', 58.5, 170187],
  ['1 cup sliced almonds', 'almonds', 92, 170567],
  ['1 cup dry bread crumbs', 'breadcrumbs-dry', 108, 174928],
  ['1 slice white bread', 'bread-white', 29, 174924],
  ['1/4 cup soy sauce', 'soy-sauce', 63.75, 174277],
];

describe('USDA household measures', () => {
  test.each(MEASURES)('%s is %s, %d g (SR %i)', (text, foodId, grams) => {
    const line = parseLine(text);
    const [item] = line.items;
    if (!item) throw new Error('no item on the line');
    const match = matchItem(item, line, { foods });
    expect(match?.foodId).toBe(foodId);
    const food = foods.byId(match?.foodId ?? '');
    const recipe = { title: '', steps: [], lines: [line] };
    const weight = weighItem(item, line, food, { region: 'us', recipe });
    const best = weight?.grams.best ?? Number.NaN;
    expect(Math.abs(best / grams - 1), `${best} g`).toBeLessThanOrEqual(0.05);
  });
});
