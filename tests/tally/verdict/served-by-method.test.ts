/** What the method serves a dish with counts only where it is said of this dish, and not of its own potatoes. */
import { describe, expect, it } from 'vitest';
import { servedByMethod } from '../../../engine/tally/verdict/served-with.ts';

const kindOf = (sentence: string, lines: string[]): string | null | undefined =>
  servedByMethod([sentence], lines, 'method.9')?.kind;

describe('what the method serves a dish with', () => {
  it('is named', () => {
    expect(kindOf('serve it over rice.', ['600 g beef'])).toBe('rice or grain');
  });

  it('is three spoons to a cup of it, cooked', () => {
    const rice = servedByMethod(['serve it over rice.'], ['600 g beef'], 'method.9');
    expect(rice?.netCarbsG?.low).toBeCloseTo(7.2, 5);
    expect(rice?.netCarbsG?.high).toBeCloseTo(44.8, 5);
  });

  it.each([
    ['serve hot with sour cream and apple sauce.', 'jam or sweet spread'],
    ['serve drizzled with honey or with maple syrup.', 'sugar or syrup'],
  ])('is sweet by the spoon: %s', (sentence, kind) => {
    expect(kindOf(sentence, ['600 g potatoes'])).toBe(kind);
    const all = ['600 g potatoes', '2 tbsp honey', '100 g apple sauce'];
    expect(kindOf(sentence, all)).toBe(undefined);
  });

  it.each([
    ['serve warm with maple syrup if desired.', 'sugar or syrup'],
    [
      'serve at once with optional toppings such as whipped cream, chocolate sauce and nuts.',
      'chocolate',
    ],
    [
      'serve with crème fraîche, a fragrant soy dip, lime wedges or sweet chilli sauce.',
      'jam or sweet spread',
    ],
  ])('is sweet though the dish has other sugar: %s', (sentence, kind) => {
    expect(kindOf(sentence, ['250 g flour', '50 g brown sugar', '3 eggs'])).toBe(kind);
  });

  it('is not what a group of the recipe makes', () => {
    const sentence = 'serve hot with the apple sauce.';
    const lines = ['1 kg potatoes', '750 g apples'];
    const own = {
      title: 'Potato cakes',
      lines: ['1 kg potatoes', '750 g apples For the apple sauce'],
    };
    expect(servedByMethod([sentence], lines, 'method.9', own)).toBe(null);
    expect(servedByMethod([sentence], lines, 'method.9')?.kind).toBe('jam or sweet spread');
  });

  it('is what no line has, though another sweet of the list is in the dish', () => {
    const lines = ['500 ml milk', '60 g dark chocolate'];
    const offered = 'serve at once with toppings such as chocolate sauce or small marshmallows.';
    expect(kindOf(offered, lines)).toBe('cake, cookies or sweets');
    expect(kindOf('serve with shaved chocolate.', lines)).toBe(undefined);
  });

  it('is not in the dish for the wine or the seasoning of its name', () => {
    expect(kindOf('serve hot with rice.', ['2 tbsp rice wine', '1 tsp rice vinegar'])).toBe(
      'rice or grain',
    );
    expect(kindOf('serve with sourdough bread.', ['2 tsp everything bagel seasoning'])).toBe(
      'bread or rolls',
    );
  });

  it('is no jam that is in the dish', () => {
    expect(kindOf('spoon the batter over the jam.', ['200 g flour'])).toBe(undefined);
  });

  it('is no chocolate', () => {
    expect(kindOf('spoon in the chocolate chips.', ['200 g flour'])).toBe(undefined);
  });

  it('is not what one may do instead', () => {
    expect(kindOf('if you are serving it over pasta, boil that now.', ['150 g polenta'])).toBe(
      undefined,
    );
  });

  it('is not the chips that are made of its potatoes', () => {
    expect(kindOf('serve the peas with the fish and chips.', ['4 potatoes in wedges'])).toBe(
      undefined,
    );
  });

  it.each([
    'spoon the mash over a shallow bowl or pasta dish and top with the sauce.',
    'serve in soup bowls with the herbs.',
    'auf nudeltellern anrichten und servieren.',
  ])('is not the plate it lies on: %s', (sentence) => {
    expect(kindOf(sentence, ['400 g pork'])).toBe(undefined);
  });

  it.each([
    'if using potatoes, add those to the bottom of the pot.',
    'add the leeks (and potatoes if using) on top.',
  ])('is what it takes only by choice, too: %s', (sentence) => {
    expect(kindOf(sentence, ['600 g chicken'])).toBe('potatoes or starchy vegetable');
    expect(kindOf(sentence, ['600 g chicken', '300 g potatoes'])).toBe(undefined);
  });

  it.each([
    'if using a bread machine, put everything in its tin.',
    'if using wooden skewers, soak them.',
  ])('is no tool: %s', (sentence) => {
    expect(kindOf(sentence, ['600 g chicken'])).toBe(undefined);
  });

  it('is the syrup at the table, not that of the batter', () => {
    const batter = ['200 g rolled oats', '1 tbsp maple syrup'];
    const share = 'share with butter, real maple syrup and a dollop of unsweetened yogurt.';
    expect(kindOf(share, batter)).toBe('sugar or syrup');
    expect(kindOf('serve with the maple syrup.', batter)).toBe(undefined);
  });

  it('is no biscuit that the page bakes', () => {
    const serve = 'serve the creams with a biscuit alongside.';
    const bake = 'for the biscuits, roll the dough into balls and bake them.';
    const lines = ['180 g flour', '250 g butter'];
    expect(servedByMethod([serve], lines, 'm')?.kind).toBe('cake, cookies or sweets');
    expect(servedByMethod([bake, serve], lines, 'm')).toBe(null);
  });

  it.each([
    ['spoon the mushrooms over the polenta.', 'Creamy polenta', '1 cup polenta (cornmeal)'],
    ['whisk the dip and serve with the rolls.', 'Shrimp summer rolls', '8 sheets of rice paper'],
  ])('is no part of the dish itself: %s', (sentence, title, line) => {
    const served = (own?: { title: string; lines: string[] }) =>
      servedByMethod([sentence], ['cornmeal', 'shrimp'], 'method.9', own)?.kind;
    expect(served()).not.toBe(undefined);
    expect(served({ title, lines: [line] })).toBe(undefined);
  });

  it('is more of it all the same, or what is only made of it', () => {
    const served = (sentence: string, line: string) =>
      servedByMethod([sentence], ['soup'], 'method.9', { title: 'Soup', lines: [line] })?.kind;
    expect(served('serve over more rice.', '100 g rice')).toBe('rice or grain');
    expect(served('serve over rice.', '1 tbsp rice vinegar')).toBe('rice or grain');
    expect(served('serve with rolls.', '100 g rice')).toBe('bread or rolls');
  });
});
