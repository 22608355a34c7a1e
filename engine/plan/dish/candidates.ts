/** The swaps that fit a dish's lines, and those the user's wishes or the dish itself forbid. */
import { hasTag } from '../../foods/tags.ts';
import type { Food, Goals } from '../../model.ts';
import type { Candidate, Dish, Part, Refused, Section } from './dish.ts';
import { netPerGram } from './food-figures.ts';
import { brokenPromise } from './promises.ts';
import { isPureSweetener, soldIn } from './shopping.ts';
import { isCrispSugar, turnsSticky } from './sugars/crisp-sugar.ts';
import { isFor, mustKeep, rulesFor, type SwapRule, suits } from './swap-rules.ts';
import { isBodyOfItsOwn } from './thickens.ts';
import { titleFoods } from './title-foods.ts';
import { mentionsAny } from './word-search.ts';

/** Foods that every kitchen has, whatever the list of what is at home says. */
const ALWAYS_AT_HOME = new Set(['water', 'ice']);

type Larder = Pick<Dish, 'goals' | 'parts' | 'promises'>;

const atHome = (food: Food, { goals, parts }: Larder): boolean =>
  goals.pantry === null ||
  goals.pantry.includes(food.id) ||
  ALWAYS_AT_HOME.has(food.id) ||
  parts.some((part) => part.food.id === food.id);

const wished = (food: Food, goals: Goals): string | null => {
  const allergen = food.allergens.find((a) => goals.avoid.includes(a));
  if (allergen) return `${food.name} contains ${allergen}, which you avoid`;
  return goals.excludedFoods.includes(food.id) ? `you excluded ${food.name}` : null;
};

/** What cannot be bought here, or not be measured in a kitchen. */
function impractical(food: Food, { goals }: Larder): string | null {
  if (goals.pantry?.includes(food.id)) return null;
  if (!soldIn(food, goals.rule)) return `${food.name} is not sold in the EU and the UK`;
  return isPureSweetener(food) ? `${food.name} is too strong to be weighed at home` : null;
}

/** Why the user's wishes forbid a food, or null when they do not. */
export const forbidden = (food: Food, dish: Larder): string | null =>
  wished(food, dish.goals) ??
  impractical(food, dish) ??
  brokenPromise(food, dish.promises) ??
  (atHome(food, dish) ? null : `${food.name} is not among the foods you have`);

/** Whether a food may be added of its own accord, such as a binder. */
export const mayAdd = (food: Food, dish: Larder): boolean =>
  forbidden(food, dish) === null && !dish.goals.excludedSwaps.includes(`add-${food.id}`);

/** Batters and short doughs come out well with what is easily bought; yeast doughs need more help. */
const EASILY_HELPED: ReadonlySet<string> = new Set(['QB', 'CK', 'CO']);

const isTooRare = (food: Food, { limits }: Section, { pantry }: Goals): boolean =>
  EASILY_HELPED.has(limits.share ?? '') && hasTag(food, 'rare') && !pantry?.includes(food.id);

/** Whether someone who cannot eat gluten has to leave it. */
const hasWheat = ({ allergens }: Food): boolean =>
  allergens.includes('wheat') || allergens.includes('gluten');

interface Place {
  part: Part;
  section: Section;
  dish: Dish;
}

/** Whether a swap is for a line: its role, the family, the food and the words of the dish. */
function fits(rule: SwapRule, { part, section, dish }: Place): boolean {
  const bareCoat = part.role === 'coating' && part.class.endsWith('flours');
  if (rule.role === undefined ? bareCoat : rule.role !== part.role) return false;
  if (rule.titled !== undefined && !mentionsAny(rule.titled, titleOf(section, dish))) return false;
  return suits(rule, section.family) && isFor(rule, part.food.id, wordsFor(part, section, dish));
}

const titleOf = (section: Section, dish: Dish): string => `${dish.title}\n${section.title ?? ''}`;

/** What says how a line is used: title, heading, the line itself and the steps that name it; not what the dish is served with. */
const wordsFor = (part: Part, section: Section, dish: Dish): string =>
  `${titleOf(section, dish)}\n${part.text}\n${part.steps}`;

/** A spoon, g a serving. */
const SPOON_G = 10;

/** Whether a serving has a spoon or more of foods that a stand-in does not go with. */
const isSpoiledBy = (ids: readonly string[], { parts, servings }: Dish): boolean =>
  parts.reduce((sum, p) => sum + (ids.includes(p.food.id) ? p.grams * p.eaten : 0), 0) >=
  SPOON_G * servings;
/** What may be put on top or eaten with it says nothing of how a food is used: '... topped with marshmallows'. */
const TOPPINGS =
  /\b(?:optional(?:ly)?|if (?:you like|desired)|topp(?:ed|ings?)|garnish\w*|serve[ds]?) [^.;\n]*/gi;

const withoutToppings = (words: string): string => words.replace(TOPPINGS, ' ');

/** Lists of words that tell of a dough or batter in steps that name no flour. */
const OF_THE_METHOD: readonly string[] = ['@laminated', '@batters'];

type Component = Candidate['to'][number];

/** Why the dish or the user's wishes forbid a swap, or null when they do not. */
function whyNot(
  rule: SwapRule,
  to: readonly Component[],
  { part, section, dish }: Place,
): string | null {
  const { goals } = dish;
  if (goals.excludedSwaps.includes(rule.id)) return 'you excluded it';
  const title = titleOf(section, dish);
  const told = OF_THE_METHOD.filter((list) => rule.unless?.includes(list));
  if (
    mentionsAny(told, dish.method) ||
    mentionsAny(rule.unless, withoutToppings(wordsFor(part, section, dish)))
  )
    return 'it would spoil this kind of dish';
  if (rule.notBeside !== undefined && isSpoiledBy(rule.notBeside, dish))
    return 'it would spoil this kind of dish';
  const kept = mustKeep(part.class, title, dish.method);
  if (kept) return kept;
  if (part.role === 'thickener' && to.length > 0 && isBodyOfItsOwn(part, dish))
    return 'it is more than thickens the liquid there is, so it is the body of something';
  if (isCrispSugar(part, dish) && turnsSticky(to.map(({ food }) => food)))
    return 'it would turn sticky what has to stay dry or crisp';
  const wished = to.map(({ food }) => forbidden(food, dish)).find((why) => why !== null);
  if (wished) return wished;
  const rare = to.find(({ food }) => isTooRare(food, section, goals));
  if (rare) return `few shops sell ${rare.food.name}`;
  const wheat = part.base ? to.find(({ food }) => hasWheat(food)) : undefined;
  if (wheat && !dish.parts.some((p) => hasWheat(p.food)))
    return `${wheat.food.name} would bring wheat into a dish without it`;
  const added = to.reduce(
    (sum, { food, ratio }) => sum + (netPerGram(food, goals.rule) ?? 1) * ratio,
    0,
  );
  if (added >= part.net * 0.9) return 'it would not lower the net carbs';
  const column = part.base ? section.limits.share : undefined;
  const unfit = to.find(({ food }) => column && food.function?.maxShare[column] === 0);
  return unfit ? `${unfit.food.name} does not suit this dish` : null;
}

/** Flour that coats, g a serving, below which there may be less of it but nothing in its place. Own choice. */
const DUSTING_G = 8;

const isDusting = ({ role, base, class: cls, grams }: Part, { servings }: Dish): boolean =>
  role === 'coating' && !base && cls.endsWith('flours') && grams < DUSTING_G * servings;

/** A sweet line of a dish that is not worth a bought sweetener: below so many g, and g a serving. Own choice. */
const LITTLE_SWEET = { line: 30, serving: 6 } as const;

const isLittleSweet = ({ role, grams }: Part, { main, servings }: Dish): boolean =>
  role === 'sweetness' &&
  !main.dough &&
  grams < Math.min(LITTLE_SWEET.line, LITTLE_SWEET.serving * servings);

/** Foods and g of a sweet line from and below which a stand-in is a recipe of its own for a few spoons. Own choice. */
const MIXED = { foods: 3, line: 50 } as const;

/** The same of dried fruit: a handful in a batter is less, or nuts, but no berries and sweetener. Own choice. */
const MIXED_FRUIT = { foods: 2, line: 60 } as const;

const isMixedForLittle = ({ to }: SwapRule, { role, class: cls, grams }: Part): boolean =>
  (role === 'sweetness' && to.length >= MIXED.foods && grams < MIXED.line) ||
  (cls === 'dried-fruit' && to.length >= MIXED_FRUIT.foods && grams < MIXED_FRUIT.line);

/** Whether there is too little of a line for a stand-in to be worth it; less of it may be. */
const isLittle = (part: Part, dish: Dish): boolean =>
  part.sparing || isDusting(part, dish) || isLittleSweet(part, dish);

function candidateFor(rule: SwapRule, place: Place): Candidate | Refused | null {
  const { part, section, dish } = place;
  if (!fits(rule, place) || (isLittle(part, dish) && rule.to.length > 0)) return null;
  if (isMixedForLittle(rule, part)) return null;
  const to = rule.to.flatMap(({ food: id, ratio }): Component[] => {
    const food = id === part.food.id ? null : dish.foods.byId(id);
    return food ? [{ food, ratio }] : [];
  });
  if (to.length < rule.to.length) return null;
  const why = whyNot(rule, to, place);
  if (why !== null) return { rule, key: part.key, why };
  return { rule, part, to, cap: rule.capBy?.[section.family] ?? rule.cap };
}

/** A spoon of sugar, g, that is not worth a second product on the scale. Own choice. */
const PINCH_OF_SUGAR_G = 12;

const isPinch = ({ role, grams }: Part): boolean =>
  role === 'sweetness' && grams < PINCH_OF_SUGAR_G;

/** A handful of nuts over a dish, g a serving: another nut there is a change that nobody tastes (common practice, no source). */
const HANDFUL_OF_NUTS_G = 18;

const isHandfulOfNuts = ({ food, grams }: Part, { main, servings }: Dish): boolean =>
  !main.dough && hasTag(food, 'nut') && grams <= HANDFUL_OF_NUTS_G * servings;

/** Lines with a negligible share of the dish's carbohydrate are left alone. */
function worthwhile(candidates: Candidate[]): Candidate[] {
  const carbs = (c: Candidate): number => c.part.grams * c.part.net * c.part.eaten;
  const most = Math.max(0, ...candidates.map(carbs));
  return candidates.filter((c) => carbs(c) >= 0.03 * most);
}

/** What another fruit must save, g a serving, to be mixed with the one that the title names. Own choice. */
const WORTH_ANOTHER_FRUIT_G = 3;

/** The most of a fruit named in the title that another may stand in for. Own choice. */
const MOST_ANOTHER_FRUIT = 0.35;

/** Another fruit in part of the one that a title names is told at once: little of it, and not for little. */
function withoutMixedFruit(candidates: Candidate[], dish: Dish): Candidate[] {
  const titled = new Set([...titleFoods(dish).values()].flat().map(({ key }) => key));
  const isAnother = ({ part, to }: Candidate): boolean =>
    titled.has(part.key) &&
    part.role === 'fruit' &&
    to.length > 0 &&
    to.every(({ food }) => food.group === 'fruit');
  const saved = ({ part, to, cap }: Candidate): number => {
    const now = to.reduce((sum, { food, ratio }) => {
      return sum + (netPerGram(food, dish.goals.rule) ?? 1) * ratio;
    }, 0);
    return (cap * part.grams * part.eaten * (part.net - now)) / dish.servings;
  };
  return candidates
    .map((one) => (isAnother(one) ? { ...one, cap: Math.min(one.cap, MOST_ANOTHER_FRUIT) } : one))
    .filter((one) => !isAnother(one) || saved(one) >= WORTH_ANOTHER_FRUIT_G);
}

/** Every swap that fits a line of the dish, and those refused, in the table's order line by line. */
export function candidatesOf(dish: Dish): Pick<Dish, 'candidates' | 'refused'> {
  const candidates: Candidate[] = [];
  const refused: Refused[] = [];
  for (const part of dish.parts) {
    const section = dish.sections[part.section] ?? dish.main;
    if (part.fixed || part.net < 0.02 || part.eaten <= 0 || isPinch(part)) continue;
    if (isHandfulOfNuts(part, dish)) continue;
    for (const rule of rulesFor(part.class)) {
      const found = candidateFor(rule, { part, section, dish });
      if (found === null) continue;
      if ('to' in found) candidates.push(found);
      else refused.push(found);
    }
  }
  return { candidates: worthwhile(withoutMixedFruit(candidates, dish)), refused };
}
