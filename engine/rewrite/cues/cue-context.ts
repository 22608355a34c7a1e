/** What cues look at: the plan, its flours and gums, the method's words. */
import type { FoodTable } from '../../foods/index.ts';
import { hasTag } from '../../foods/tags.ts';
import type { Adjustment, Ingredient, Plan, PlannedItem } from '../../model.ts';
import type { Region } from '../../units.ts';
import type { LateVegetable } from '../joining/joins-late.ts';
import type { MethodWords } from '../languages/method-words.ts';
import { type Mention, mergedByFood } from '../naming/mention.ts';
import type { Course } from '../parts/course.ts';

export interface CueContext {
  plan: Plan;
  ingredients: readonly Ingredient[];
  mentions: readonly Mention[];
  foods: FoodTable;
  region: Region;
  /** The original method, for what it says already; with English key words when it is in another language. */
  method: string;
  title: string;
  /** Words of the method's language; null for English and languages without any. */
  words: MethodWords | null;
  /** Whether the method lets flour and water stand together first. */
  autolyses: boolean;
  /** Changes accepted after earlier bakes. */
  adjustments: readonly Adjustment[];
  /** Heading of the part, when the dish has several; else null. */
  partTitle: string | null;
  /** Vegetables that join the potatoes of a pot for the last minutes; none where it is not asked. */
  late?: readonly LateVegetable[];
  /** A vegetable that is soft sooner goes in with the potatoes, as the pot boils hardly longer than it. */
  together?: boolean;
  /** The plan of all parts, where this is of one. */
  whole?: Plan;
  /** The part's way through the method. */
  course: Course;
}

/** The same for the whole method, before it is looked at part by part. */
export type MethodContext = Omit<CueContext, 'course'>;

/** Foods of the original. */
const originalIds = (context: CueContext): Set<string> =>
  new Set(context.ingredients.flatMap(({ match }) => (match === null ? [] : [match.foodId])));

/** Planned foods that the original did not have. */
export function addedItems(context: CueContext): PlannedItem[] {
  const had = originalIds(context);
  return context.plan.items.filter(({ foodId, grams }) => grams > 0 && !had.has(foodId));
}

/** The flours that are mixed, one item a food: what lines that changed have become, and added flours. */
export function floursOf({ plan, mentions }: CueContext): PlannedItem[] {
  // Words that several ingredients share have the foods of all of them: each line counts once.
  const lines = mentions.filter(
    ({ ingredient }, at) =>
      mentions.findIndex((one) => one.ingredient.key === ingredient.key) === at,
  );
  const inLines = lines
    .filter(
      ({ newName, role }) => newName === 'flours' && role !== 'thickener' && role !== 'coating',
    )
    .flatMap(({ items }) => items);
  const keys = new Set(mentions.map(({ ingredient }) => ingredient.key));
  const added = plan.items.filter(
    ({ key, foodId, grams, role }) =>
      !keys.has(key) && grams > 0 && role === 'structure' && hasTag(foodId, 'flour-like'),
  );
  const foods = new Set(inLines.map(({ key, foodId }) => `${key} ${foodId}`));
  const fresh = added.filter(({ key, foodId }) => !foods.has(`${key} ${foodId}`));
  return mergedByFood([...inLines, ...fresh]).filter(({ foodId }) => !hasTag(foodId, 'binder'));
}

/** What tells a flour from others: 'whole wheat' of whole wheat flour. */
const ownWords = (name: string): string[] =>
  name
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 2 && !/^(?:flours?|bread|all|purpose|fine)$/.test(word));

/** Flours that stay as they are and that the method means by 'the flours', never by their own names. */
export function floursBeside({ mentions, method, words, plan }: CueContext): PlannedItem[] {
  if (words !== null || !/\bflours\b/i.test(method)) return [];
  const said = method.toLowerCase();
  const lines = mentions.filter(
    ({ changed, role, ingredient }) =>
      !changed &&
      role !== 'thickener' &&
      role !== 'coating' &&
      hasTag(ingredient.match?.foodId ?? '', 'flour-like'),
  );
  const keys = new Set(
    lines.flatMap(({ ingredient }) => {
      const own = ownWords(ingredient.item.name);
      const isNamed = own.length === 0 || own.some((word) => said.includes(word));
      return isNamed ? [] : [ingredient.key];
    }),
  );
  return plan.items.filter(({ key, grams }) => keys.has(key) && grams > 0);
}

/** Gums for the flours of a dough, or, in other dishes and fillings, those that thicken. */
export const gumsOf = (context: CueContext, thickening: boolean): PlannedItem[] =>
  mergedByFood(
    context.plan.items.filter(
      ({ key, foodId, grams, role }) =>
        grams > 0 &&
        hasTag(foodId, 'binder') &&
        thickening === (role === 'thickener') &&
        !context.mentions.some(({ goesInWith }) => goesInWith.some((item) => item.key === key)),
    ),
  );

/** Share of the flours, by mass, that the original did not have. */
export function newShare(context: CueContext): number {
  const had = originalIds(context);
  const grams = (items: readonly PlannedItem[]): number => items.reduce((t, i) => t + i.grams, 0);
  const flours = context.plan.items.filter(
    ({ foodId, role }) =>
      (role === 'structure' || role === 'starch-bulk' || role === 'other') &&
      hasTag(foodId, 'flour-like') &&
      !hasTag(foodId, 'binder'),
  );
  const fresh = flours.filter(({ foodId }) => !had.has(foodId));
  return grams(flours) === 0 ? 1 : grams(fresh) / grams(flours);
}

/** Share (0..1) of an ingredient's grams that stays. */
export function keptShare({ ingredient, items }: Mention): number {
  const before = ingredient.weight?.grams.best ?? 0;
  const own = items.filter((item) => item.foodId === ingredient.match?.foodId);
  return before > 0 ? own.reduce((sum, { grams }) => sum + grams, 0) / before : 1;
}

/** A spoonful less leaves as much to season as before, g. Own choice. */
const SPOONFUL_G = 25;

/** Whether an ingredient is less by a third or more, and by more than a spoonful, with nothing in its place. */
export function isShrunk(mention: Mention): boolean {
  const { ingredient, items } = mention;
  const id = ingredient.match?.foodId;
  const alone = items.length > 0 && items.every(({ foodId }) => foodId === id);
  const now = items.reduce((sum, { grams }) => sum + grams, 0);
  const lost = (ingredient.weight?.grams.best ?? 0) - now;
  return alone && keptShare(mention) <= 2 / 3 && lost > SPOONFUL_G;
}
