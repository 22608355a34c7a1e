/** What stands in brackets behind an ingredient's word in a method of another language. */
import type { FoodTable } from '../../foods/index.ts';
import { hasTag } from '../../foods/tags.ts';
import { keptFor } from '../../kept-results.ts';
import type { PlannedItem } from '../../model.ts';
import { joinedWith, localFoodName, type MethodWords, withOf } from '../languages/method-words.ts';
import { kitchenGrams, pieceText } from '../lines/written-amounts.ts';
import { boiledOf } from '../steps/boils-as.ts';
import type { Mention } from './mention.ts';
import { isMade, shortName } from './method-names.ts';

/** A planned food by its name in the language; by its English one where that is not known. */
export const foreignName = (item: PlannedItem, words: MethodWords): string =>
  localFoodName(item.foodId, words) ?? shortName(item.foodName);

const decimal = (grams: number): string => String(Math.round(grams * 100) / 100).replace('.', ',');

export interface RemarkContext {
  words: MethodWords;
  foods: FoodTable;
  /** The step boils something. */
  boils: boolean;
  /** The sentence peels something. */
  peels: boolean;
}

/** What the method says where the ingredient is named. */
export interface Said {
  /** The word itself, as it is written there. */
  word: string;
  /** Share of the ingredient that is meant, 0..1. */
  share: number;
  /** An amount stands in front of it. */
  stated: boolean;
  /** It was told before what it is now. */
  again: boolean;
  /** Only a part of it is meant, and not said how much: 'half of the sugar', 'a little honey'. */
  partOnly: boolean;
}

/** The ingredient's own name as the line has it, with a small letter where the method writes it so. */
function ownName({ ingredient }: Mention, word: string): string {
  const { name } = ingredient.item;
  const [first = ''] = name;
  const [written = ''] = word;
  return written === written.toLowerCase() ? `${first.toLowerCase()}${name.slice(1)}` : name;
}

const isOwn = ({ foodId }: PlannedItem, { ingredient }: Mention): boolean =>
  foodId === ingredient.match?.foodId;

const nameOf = (item: PlannedItem, mention: Mention, word: string, words: MethodWords): string =>
  isOwn(item, mention) ? ownName(mention, word) : foreignName(item, words);

/** A planned food with its grams; the ingredient's own food keeps the recipe's word. */
export function weighed(
  item: PlannedItem,
  mention: Mention,
  { word, share }: Pick<Said, 'word' | 'share'>,
  { words, foods }: RemarkContext,
): string {
  const food = foods.byId(item.foodId);
  const mass = item.grams * share;
  const grams = food === null ? mass : kitchenGrams(food, mass, item.role);
  const pieces = food === null || isOwn(item, mention) ? null : pieceText(food, grams, words);
  if (pieces !== null) return pieces;
  return `${decimal(grams)} g ${withOf(nameOf(item, mention, word, words), words)}`;
}

/** The names alone of what stands for an ingredient. */
function namesOnly({ items, ...mention }: Mention, word: string, words: MethodWords): string {
  const names = items.map((item) => nameOf(item, { items, ...mention }, word, words));
  return `${words.now} ${joinedWith([...new Set(names)], words.and)}`;
}

/** What stands for an ingredient that was said with its grams before: its names, none where some of it stays. */
function namesAgain(mention: Mention, word: string, words: MethodWords): string | null {
  const { items, newName } = mention;
  const stays = items.some((item) => isOwn(item, mention));
  if (stays || newName === null || newName === 'flours' || isMade(newName)) return null;
  return namesOnly(mention, word, words);
}

/** Stand-ins with their grams: those that boil with the rest, and those that go in once it has boiled. */
function listed(mention: Mention, said: Said, context: RemarkContext): string {
  const { words, boils } = context;
  const list = (items: readonly PlannedItem[]): string =>
    joinedWith(
      items.map((item) => weighed(item, mention, said, context)),
      words.and,
    );
  const pot = boils ? boiledOf(mention) : null;
  const late = pot === null ? [] : mention.items.filter((item) => !pot.includes(item));
  if (pot === null || pot.length === 0 || late.length === 0) {
    const made = mention.newName !== null && isMade(mention.newName);
    return (made ? words.brackets.made : `${words.now} {list}`).replace(
      '{list}',
      list(mention.items),
    );
  }
  return `${words.now} ${list(pot)}; ${words.brackets.late.replace('{list}', list(late))}`;
}

/** Whether none of what came in is peeled. */
const isUnpeeled = (mention: Mention): boolean =>
  mention.items.length > 0 && mention.items.every(({ foodId }) => hasTag(foodId, 'unpeeled'));

/** What stands in brackets behind an ingredient's name; null when nothing need be said. */
export function remark(
  mention: Mention,
  said: Said,
  fresh: readonly PlannedItem[],
  context: RemarkContext,
): string | null {
  const { changed, items, newName } = mention;
  const { words, boils, peels } = context;
  const additions = fresh.map(
    (item) => `+ ${weighed(item, mention, { ...said, share: 1 }, context)}`,
  );
  const withAdditions = (text: string): string => [text, ...additions].join(' ');
  // What stands in for pasta or rice and is not boiled has no place in the pot.
  const unboiled = boils && boiledOf(mention)?.length === 0;
  if (changed && (items.length === 0 || unboiled)) return words.leaveOut;
  if (changed && said.again && !said.stated) return namesAgain(mention, said.word, words);
  if (changed && newName !== null && newName !== 'flours') {
    if (said.partOnly) return withAdditions(namesOnly(mention, said.word, words));
    const told = withAdditions(listed(mention, said, context));
    return peels && isUnpeeled(mention) ? `${told}, ${words.brackets.unpeeled}` : told;
  }
  if (changed && said.stated) {
    const grams = items.reduce((sum, item) => sum + item.grams, 0) * said.share;
    return withAdditions(`${words.now} ${decimal(Math.round(grams * 10) / 10)} g`);
  }
  return additions.length > 0 ? additions.join(' ') : null;
}

/** Patterns of a language, made once. */
export const bracketPatterns = keptFor(({ brackets }: MethodWords) => ({
  share: new RegExp(`(?<!\\p{L})(?:${brackets.share})\\s?$`, 'iu'),
  peel: new RegExp(brackets.peel, 'iu'),
}));
