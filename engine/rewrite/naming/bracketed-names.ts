/**
 * Names in a method of another language. Endings and articles of the text stay right because the
 * recipe's word stays, with what it stands for now in brackets.
 */
import type { FoodTable } from '../../foods/index.ts';
import type { PlannedItem } from '../../model.ts';
import { parseLine } from '../../parse/index.ts';
import { joinedWith, keyed, localFoodName, type MethodWords } from '../languages/method-words.ts';
import { kitchenGrams, pieceText } from '../lines/written-amounts.ts';
import { boiledOf } from '../steps/boils-as.ts';
import type { UsedSoFar } from '../steps/used-so-far.ts';
import { shareNamed } from './amounts-in-steps.ts';
import { foreignPattern, formsOf } from './foreign-forms.ts';
import type { Mention } from './mention.ts';
import { shortName } from './method-names.ts';
import { inPart, type Stated, sentenceAt, statesAmount } from './owners.ts';

/** A number and at most four words at the end of a text: '20 grammes de ', '2 cuillères à soupe d’'. */
const AMOUNT_BEFORE =
  /(?<![\p{L}\p{N}])(?:\d+(?:[.,/]\d+)?|[¼-¾⅐-⅞])\s{0,2}[¼-¾⅐-⅞]?\s{0,2}(?:\p{L}{1,12}(?:\.\s{0,2}|\s{1,2}|['’])){0,4}$/u;

/** The amount that stands in front of a name; null when none does, or it is one of another thing. */
function statedBefore(before: string, name: string, { tag }: MethodWords): Stated | null {
  const lead = AMOUNT_BEFORE.exec(before.slice(-60))?.[0];
  if (lead === undefined) return null;
  const { items } = parseLine(`${lead}${name}`, { language: tag });
  const [item] = items;
  const [amount] = item?.amounts ?? [];
  if (items.length !== 1 || item?.name.toLowerCase() !== name.toLowerCase()) return null;
  return amount === undefined ? null : { quantity: amount.quantity, unit: amount.unit };
}

/** A planned food by its name in the language; by its English one where that is not known. */
export const foreignName = (item: PlannedItem, words: MethodWords): string =>
  localFoodName(item.foodId, words) ?? shortName(item.foodName);

const decimal = (grams: number): string => String(Math.round(grams * 100) / 100).replace('.', ',');

/** A planned food with its grams; the ingredient's own food keeps the recipe's word. */
function weighed(
  item: PlannedItem,
  { ingredient }: Mention,
  share: number,
  { words, foods }: { words: MethodWords; foods: FoodTable },
): string {
  const food = foods.byId(item.foodId);
  const mass = item.grams * share;
  const grams = food === null ? mass : kitchenGrams(food, mass, item.role);
  const own = item.foodId === ingredient.match?.foodId;
  const pieces = food === null || own ? null : pieceText(food, grams, words);
  if (pieces !== null) return pieces;
  return `${decimal(grams)} g ${own ? ingredient.item.name : foreignName(item, words)}`;
}

interface RemarkContext {
  words: MethodWords;
  foods: FoodTable;
  boils: boolean;
}

/** What stands for an ingredient that was said with its grams before: its names, none where some of it stays. */
function namesAgain(
  { items, ingredient, newName }: Mention,
  { words }: RemarkContext,
): string | null {
  const stays = items.some(({ foodId }) => foodId === ingredient.match?.foodId);
  if (stays || newName === null || newName === 'flours') return null;
  const names = items.map((item) => foreignName(item, words));
  return `${words.now} ${joinedWith([...new Set(names)], words.and)}`;
}

/** What stands in brackets behind an ingredient's name; null when nothing need be said. */
function remark(
  mention: Mention,
  { share, stated, again }: { share: number; stated: boolean; again: boolean },
  fresh: readonly PlannedItem[],
  context: RemarkContext,
): string | null {
  const { changed, items, newName } = mention;
  const { words, boils } = context;
  const additions = fresh.map((item) => `+ ${weighed(item, mention, 1, context)}`);
  const withAdditions = (text: string): string => [text, ...additions].join(' ');
  // What stands in for pasta or rice and is not boiled has no place in the pot.
  const unboiled = boils && boiledOf(mention)?.length === 0;
  if (changed && (items.length === 0 || unboiled)) return words.leaveOut;
  if (changed && again && !stated) return namesAgain(mention, context);
  if (changed && newName !== null && newName !== 'flours') {
    const list = items.map((item) => weighed(item, mention, share, context));
    return withAdditions(`${words.now} ${joinedWith(list, words.and)}`);
  }
  if (changed && stated) {
    const grams = items.reduce((sum, item) => sum + item.grams, 0) * share;
    return withAdditions(`${words.now} ${decimal(Math.round(grams * 10) / 10)} g`);
  }
  return additions.length > 0 ? additions.join(' ') : null;
}

/** Mentions by name. */
function byName(mentions: readonly Mention[]): Map<string, Mention[]> {
  const owners = new Map<string, Mention[]>();
  for (const mention of mentions)
    for (const name of mention.names) owners.set(name, [...(owners.get(name) ?? []), mention]);
  return owners;
}

/** The one a name means: the line with the amount in front of it, else a changed line of the part made here. */
function ownerOf(
  all: readonly Mention[],
  stated: Stated | null,
  part: number | null,
): Mention | null {
  const same = stated === null ? [] : all.filter((mention) => statesAmount(mention, stated));
  if (same.length === 1) return same[0] ?? null;
  const own = inPart(all, { part });
  // Of lines of one name, an amount means one that has as much.
  const enough =
    stated === null || own.length < 2
      ? own
      : own.filter((mention) => shareNamed(mention, stated.quantity, stated.unit) !== null);
  return enough.find(({ changed }) => changed) ?? enough[0] ?? null;
}

/** 'Étape 1 : Cuisson des carottes', 'Für den Teig': a few words without a full stop. */
const isHeading = (text: string): boolean =>
  !/[.!?]\s*$/.test(text) &&
  text.trim().split(/\s+/).length <= 6 &&
  !/\d\s?(?:g|ml|°|min)/i.test(text);

/** Talk of what else one may take. */
const OTHER_WAY =
  /(?<!\p{L})(?:statt|anstelle|au lieu de|à la place|in plaats van|en lugar de|en vez de|invece di|al posto di|em vez de|i stället för|istället för|i stedet for)(?!\p{L})/iu;

/** The step with remarks behind changed ingredients, and which of them it names. Each remark once a step; amounts each get their own. */
export function renameForeign(
  text: string,
  mentions: readonly Mention[],
  context: { words: MethodWords; foods: FoodTable; used: UsedSoFar },
  partAt: (at: number) => number | null = () => null,
): { text: string; named: Mention[] } {
  const owners = byName(mentions);
  const forms = formsOf([...owners.keys()]);
  if (forms.size === 0 || isHeading(text)) return { text, named: [] };
  const pattern = foreignPattern([...forms.keys()]);
  const named = new Set<Mention>();
  const boils = /\bboil\b/.test(keyed(text, context.words));
  const renamed = text.replace(pattern, (...found) => {
    const whole = found[0] as string;
    const groups = found.at(-1) as { name?: string; stem?: string };
    const form = (groups.name ?? groups.stem ?? '').toLowerCase();
    const name = forms.get(form) ?? form;
    const at = found.at(-3) as number;
    const stated = statedBefore(text.slice(0, at), whole, context.words);
    const mention = ownerOf(owners.get(name) ?? [], stated, partAt(at));
    if (mention === null || OTHER_WAY.test(sentenceAt(text, at))) return whole;
    const share = stated === null ? null : shareNamed(mention, stated.quantity, stated.unit);
    if (named.has(mention) && share === null) return whole;
    named.add(mention);
    if (share !== null) context.used.use(mention, share);
    const fresh = context.used.takeAdditions(mention);
    const leftOut = boils && boiledOf(mention)?.length === 0;
    const again = mention.changed && !leftOut && context.used.introduce(mention);
    const said = { share: share ?? 1, stated: stated !== null, again };
    const put = remark(mention, said, fresh, { ...context, boils });
    return put === null ? whole : `${whole} (${put})`;
  });
  return { text: renamed, named: [...named] };
}
