/** Sugar that has to stay dry or crisp: what is rolled in it, strewn with it, and icings that set hard. */
import { hasTag } from '../../../foods/tags.ts';
import type { Food } from '../../../model.ts';
import type { Dish, Part } from '../dish.ts';
import { mentionsAny } from '../word-search.ts';

/** A crumble may be soft and chewy, a crunch may not. */
const CRUNCH = /crunch|crispy|knusper|krokant|croustillant|croquant|crujiente|croccante/i;

/** 'Roll them in the cinnamon sugar.' */
const ROLLED = /\b(?:roll|coat|dip|toss|dredge)\w*\b[^.]{0,40}\bin\b[^.]{0,40}\bsugar\b/i;

/** What a dry mix of sugar and spice consists of. */
const DRY: ReadonlySet<string> = new Set(['sweetness', 'flavour', 'salt']);
/** What makes a crumble of sugar and butter, and what makes it wet. */
const BODY: ReadonlySet<string> = new Set(['structure', 'starch-bulk', 'nut', 'other']);
const WET: ReadonlySet<string> = new Set(['liquid', 'fruit', 'egg', 'vegetable']);

/** White of egg beside sugar, of an icing that dries hard: share of the sugar. Own choice. */
const WHITE_OF_SUGAR = 0.08;

const massOf = (parts: readonly Part[]): number => parts.reduce((sum, { grams }) => sum + grams, 0);

const isSugar = ({ class: cls }: Part): boolean => cls === 'dry-sugars';

/** The lines under the part's own heading; none where the page has no headings. */
const groupOf = ({ group, section }: Part, { parts }: Pick<Dish, 'parts'>): Part[] =>
  group === null ? [] : parts.filter((one) => one.group === group && one.section === section);

/** A heading of sugar and spice alone. */
const isSpiceMix = (own: readonly Part[]): boolean =>
  own.length > 1 && own.every(({ role }) => DRY.has(role));

/** A heading of crisp crumbs: flour, oats or nuts with sugar and butter, and nothing wet. */
const isCrunch = (own: readonly Part[], group: string | null): boolean =>
  CRUNCH.test(group ?? '') &&
  own.some(({ role, food }) => BODY.has(role) || hasTag(food, 'nut')) &&
  !own.some(({ role, food }) => WET.has(role) || hasTag(food, 'filling-fat'));

/** Icing sugar beaten with white of egg and no fat dries hard. */
function isHardIcing({ food, steps, section }: Part, own: readonly Part[], dish: Dish): boolean {
  if (food.id !== 'powdered-sugar') return false;
  if (
    mentionsAny(
      ['royal icing', 'eiweissglasur', 'eiweissspritzglasur', 'glace royale'],
      `${dish.title}\n${steps}`,
    )
  )
    return true;
  const beside = own.length > 0 ? own : dish.parts.filter((part) => part.section === section);
  const whites = massOf(beside.filter((part) => part.food.id === 'egg-white'));
  // Over a whole cake the same icing is a soft one.
  if (dish.main.family !== 'cookie') return false;
  const isPlain = !beside.some(({ role }) => role === 'fat' || role === 'structure');
  return isPlain && whites >= WHITE_OF_SUGAR * massOf(beside.filter(isSugar));
}

/** A second sugar listed behind the flour, where the method rolls pieces in sugar. */
function isForRolling(part: Part, { parts }: Pick<Dish, 'parts'>): boolean {
  const at = parts.indexOf(part);
  const before = parts.slice(0, at);
  return (
    ROLLED.test(part.steps) &&
    before.some(isSugar) &&
    before.some(({ role }) => role === 'structure') &&
    !parts.slice(at + 1).some((next) => isSugar(next) || next.role === 'structure')
  );
}

/** Whether a sugar is there for a dry or crisp surface. */
export function isCrispSugar(part: Part, dish: Dish): boolean {
  if (!isSugar(part)) return false;
  const own = groupOf(part, dish);
  return (
    mentionsAny(['@strewn-sugar'], part.text) ||
    isSpiceMix(own) ||
    isCrunch(own, part.group) ||
    isHardIcing(part, own, dish) ||
    isForRolling(part, dish)
  );
}

/** Whether foods draw moisture and brown, so that nothing of them stays dry or crisp. */
export const turnsSticky = (foods: readonly Food[]): boolean =>
  foods.some((food) => hasTag(food, 'allulose')) &&
  !foods.some((food) => (food.per100g.polyolsG?.erythritol ?? 0) > 50);

/** Whether all the sugar of a part is to be dry, crisp or grainy, as erythritol is. */
export const isAllCrisp = (section: number, dish: Dish): boolean => {
  const sugars = dish.parts.filter((part) => part.section === section && isSugar(part));
  return sugars.length > 0 && sugars.every((part) => isCrispSugar(part, dish));
};
