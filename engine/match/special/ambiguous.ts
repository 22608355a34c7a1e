/** Words that stand for several foods whose carbohydrate differs: the common one first, the others beside it. */
import type { FoodTable } from '../../foods/index.ts';
import type { Food, Match } from '../../model.ts';
import ambiguous from '../data/ambiguous.json' with { type: 'json' };
import type { Lookup } from '../lookup.ts';
import { keyOf } from '../name-keys.ts';
import { tokensOf } from '../normalise.ts';

/** Own choice: which food a bare word means most often in recipes, and how sure that is. */
const MEANINGS = new Map(
  ambiguous.flatMap(({ names, foods, confidence }) =>
    names.map((name): [string, { foods: string[]; confidence: number }] => [
      keyOf(tokensOf(name)),
      { foods, confidence },
    ]),
  ),
);

/** 'Any milk of your choice', 'your favourite milk' are milk. */
const OF_CHOICE =
  /^(?:any|your favou?rite|your preferred)\s+|\s+(?:of (?:your )?(?:own )?(?:choice|choosing)|of any kind|as you like|you like)$/gi;

/** A package of the user's own that bears the word settles what it means. */
const isSettled = (key: string, lookup: Lookup): boolean =>
  lookup.exact(key).some(({ food }) => /^(label|user)$/.test(food.source.kind));

/** Each further food is less likely than the one before it. */
const FALL = 0.85;

const round = (value: number): number => Math.round(value * 100) / 100;

/** The foods of a word that has several meanings, else null. The name must be the word alone. */
export function ambiguousMatch(name: string, foods: FoodTable, lookup: Lookup): Match | null {
  const key = keyOf(tokensOf(name.replace(OF_CHOICE, '')));
  const meaning = MEANINGS.get(key);
  if (!meaning || isSettled(key, lookup)) return null;
  const known = meaning.foods.map((id) => foods.byId(id)).filter((food): food is Food => !!food);
  const [first, ...others] = known;
  if (!first) return null;
  return {
    foodId: first.id,
    foodName: first.name,
    confidence: meaning.confidence,
    reason: others.length === 0 ? 'same name' : 'the most usual food of this name',
    others: others.map((food, at) => ({
      foodId: food.id,
      foodName: food.name,
      confidence: round(meaning.confidence * FALL ** (at + 1)),
    })),
  };
}
