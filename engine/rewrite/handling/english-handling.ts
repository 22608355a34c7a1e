/** A handling in English, as a cook would tell it. */
import type { Swap } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';
import { capital, isMade, listOf, shortName } from '../naming/method-names.ts';
import { isNamedIn } from '../wording/name-patterns.ts';
import { type Handling, handledIn, heldClauses, namesFood } from './handling.ts';
import { isTold, withObject } from './spoken-handling.ts';

/** A head that is steamed or boiled is cut first, where the page cuts nothing of the kind; 'before the sauce' where there is one. */
function inFlorets(text: string | null, food: string, said: string): string | null {
  const told = /\bsauce\b/i.test(said) ? text : (text?.replace(/ before the sauce\b/i, '') ?? null);
  const [, verb] = /^(Steam|Boil) the (?:cauliflower|broccoli)\b/i.exec(told ?? '') ?? [];
  if (told === null || verb === undefined || /floret/i.test(said)) return told;
  const rest = told.slice(`${verb} the ${food}`.length);
  return `Cut the ${food} into florets and ${verb.toLowerCase()} them${rest}`;
}

/** How many bought bases a line has: each is pressed into a plate of its own. */
const basesOf = (mention: Mention | undefined): number =>
  mention?.ingredient.item.amounts.find(({ unit }) => unit === null)?.quantity ?? 1;

/** 'press into a greased pie plate', for as many as the page has, with the butter melted. */
function pressed(method: string, list: string, mention: Mention | undefined): string {
  const bases = basesOf(mention);
  const plates =
    Number.isInteger(bases) && bases > 1
      ? method.replace(/\ba greased pie plate\b/i, `${bases} greased pie plates`)
      : method;
  const melts = /\bbutter\b/.test(list) && /^press into\b/i.test(plates);
  return melts ? `melt the butter and mix it in, ${plates}` : plates;
}

const COUNTED = /(?:tortilla|wrap|bun|bagel|pita|naan)$/i;
const MUSHROOM = /mushroom$/i;

/** A food by its name, in the plural where the page has several pieces of what it stands for. */
function manyOf(food: string, mention: Mention | undefined): string {
  const name = shortName(food);
  const isMany = MUSHROOM.test(name) || (COUNTED.test(name) && basesOf(mention) > 1);
  return isMany ? `${name}s` : name;
}

/** 'Warm the tortillas so that they do not crack'. */
const agreeing = (text: string | null, list: string): string | null =>
  /s$/.test(list)
    ? (text?.replace(/ so that it does not /, ' so that they do not ') ?? null)
    : text;

/** 'Slice the eggplant 1 cm thick'; 'Make the curd of egg and butter: stir it'. */
export function englishText(
  { swap, spoken: whole, holds, mention, shared, object }: Handling,
  said: string,
  place: string,
): string | null {
  const method = heldClauses(whole, holds);
  if (object !== undefined) return method.replace(/^dry(?: it)?\b/i, () => `Dry ${object}`);
  const list = listOf([...new Set(handledIn(swap).map(({ food }) => manyOf(food, mention)))]);
  const name = mention?.newName;
  const lower = `${method.charAt(0).toLowerCase()}${method.slice(1)}`;
  if (name && isMade(name)) {
    if (TOASTS.test(method)) return `For the ${name}, ${lower}${unspoken(method, swap, shared)}`;
    const weighed = weighedList(handledIn(swap), shared, mention);
    if (method === '') return `For the ${name}, mix ${weighed}.`;
    return `Make the ${name} of ${weighed}: ${pressed(lower, list, mention)}`;
  }
  if (method === '') return null;
  const known = namesFood(place, swap) || (mention !== undefined && isNamedIn(place, mention));
  const ofStep = known && /^[a-z]+ (?:the|a) /i.test(method);
  const alone = namesFood(method, swap) || isTold(method) || ofStep;
  return (
    inFlorets(agreeing(withObject(method, list), list), list, said) ??
    (alone ? method : `${capital(list)}: ${lower}`)
  );
}

/** 'almond flour and 40 g allulose': with its grams what stands on other lines as well. */
function weighedList(
  foods: Swap['to'],
  shared: ReadonlySet<string>,
  mention?: Mention | undefined,
): string {
  const named = foods.map(({ foodId, food, grams }) => {
    const name = manyOf(food, mention);
    return shared.has(foodId) ? `${Math.round(grams)} g ${name}` : name;
  });
  return listOf([...new Set(named)]);
}

/** What is dry in a thing made first and its handling does not speak of: 'stir in the allulose'. */
function unspoken(method: string, swap: Swap, shared: ReadonlySet<string>): string {
  if (!TOASTS.test(method)) return '';
  const others = handledIn(swap).filter(
    ({ food }) => !namesFood(method, { ...swap, to: [{ foodId: '', food, grams: 0 }] }),
  );
  const article = others.some(({ foodId }) => shared.has(foodId)) ? '' : 'the ';
  return others.length === 0 ? '' : ` Stir in ${article}${weighedList(others, shared)}.`;
}

const TOASTS = /^toast\b[^;]*\bdry pan\b/i;
