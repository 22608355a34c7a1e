/**
 * Names in a method of another language. Endings and articles of the text stay right because the
 * recipe's word stays, with what it stands for now in brackets.
 */
import type { FoodTable } from '../../foods/index.ts';
import type { PlannedItem } from '../../model.ts';
import { joinedWith, keyed, localFoodName, type MethodWords } from '../languages/method-words.ts';
import { kitchenGrams } from '../lines/written-amounts.ts';
import { boiledOf } from '../steps/boils-as.ts';
import type { UsedSoFar } from '../steps/used-so-far.ts';
import type { Mention } from './mention.ts';
import { shortName } from './method-names.ts';
import { END, literal, START } from './name-patterns.ts';

const AMOUNT = String.raw`(?<amount>\d+(?:[.,]\d+)?\s*(?:g|kg|ml|cl|dl|l)\b\s*(?:de |d'|d’|di |van |von )?)?`;

/** A planned food by its name in the language; by its English one where that is not known. */
export const foreignName = (item: PlannedItem, words: MethodWords): string =>
  localFoodName(item.foodId, words) ?? shortName(item.foodName);

const decimal = (grams: number): string => String(Math.round(grams * 100) / 100).replace('.', ',');

/** A planned food with its grams; the ingredient's own food keeps the recipe's word. */
function weighed(
  item: PlannedItem,
  { ingredient }: Mention,
  words: MethodWords,
  foods: FoodTable,
): string {
  const food = foods.byId(item.foodId);
  const grams = food === null ? item.grams : kitchenGrams(food, item.grams, item.role);
  const own = item.foodId === ingredient.match?.foodId;
  return `${decimal(grams)} g ${own ? ingredient.item.name : foreignName(item, words)}`;
}

/** What stands in brackets behind an ingredient's name; null when nothing need be said. */
function remark(
  mention: Mention,
  stated: boolean,
  fresh: readonly PlannedItem[],
  { words, foods, boils }: { words: MethodWords; foods: FoodTable; boils: boolean },
): string | null {
  const { changed, items, newName } = mention;
  const additions = fresh.map((item) => `+ ${weighed(item, mention, words, foods)}`);
  const withAdditions = (text: string): string => [text, ...additions].join(' ');
  // What stands in for pasta or rice and is not boiled has no place in the pot.
  const unboiled = boils && boiledOf(mention)?.length === 0;
  if (changed && (items.length === 0 || unboiled)) return words.leaveOut;
  if (changed && newName !== null && newName !== 'flours') {
    const list = items.map((item) => weighed(item, mention, words, foods));
    return withAdditions(`${words.now} ${joinedWith(list, words.and)}`);
  }
  if (changed && stated) {
    const grams = items.reduce((sum, item) => sum + item.grams, 0);
    return withAdditions(`${words.now} ${decimal(Math.round(grams * 10) / 10)} g`);
  }
  return additions.length > 0 ? additions.join(' ') : null;
}

/** The step with remarks behind changed ingredients, and which of them it names. Each remark once a step. */
export function renameForeign(
  text: string,
  mentions: readonly Mention[],
  context: { words: MethodWords; foods: FoodTable; used: UsedSoFar },
): { text: string; named: Mention[] } {
  const owners = new Map<string, Mention>();
  for (const mention of mentions)
    for (const name of mention.names)
      if (!owners.has(name) || (mention.changed && !owners.get(name)?.changed))
        owners.set(name, mention);
  const names = [...owners.keys()].sort((a, b) => b.length - a.length);
  if (names.length === 0) return { text, named: [] };
  const pattern = new RegExp(
    `${START}${AMOUNT}(?<name>${names.map(literal).join('|')})(?:[esnx]|en|er)?${END}`,
    'giu',
  );
  const named = new Set<Mention>();
  const boils = /\bboil\b/.test(keyed(text, context.words));
  const renamed = text.replace(pattern, (...found) => {
    const whole = found[0] as string;
    const groups = found.at(-1) as { amount?: string; name: string };
    const mention = owners.get(groups.name.toLowerCase());
    if (mention === undefined || named.has(mention)) return whole;
    named.add(mention);
    const fresh = context.used.takeAdditions(mention);
    const text = remark(mention, groups.amount !== undefined, fresh, { ...context, boils });
    return text === null ? whole : `${whole} (${text})`;
  });
  return { text: renamed, named: [...named] };
}
