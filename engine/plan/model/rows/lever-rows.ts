/** Rows for accepted changes after a bake that act on what the flours and sweeteners are. */
import { hasTag } from '../../../foods/tags.ts';
import type { Adjustment, Food, Lever } from '../../../model.ts';
import type { Dish, Section } from '../../dish/dish.ts';
import * as figure from '../../dish/food-figures.ts';
import { type Attribute, evaluate, type Linear, plus, scaled } from '../expressions.ts';
import { type Builder, within } from '../row-builder.ts';
import { alluloseIn, erythritolIn, isIntense, ofSweeteners } from './taste-rows.ts';

/** Closeness paid for missing a change by all of it. Own choice. */
const MISSED = 3;
/** The same when another part of the dish moves the other way. Own choice. */
const MISSED_ELSEWHERE = 1;

/** What a lever counts, per gram of a food in the section; none for levers that act on kitchen amounts. */
function counted(lever: Lever, section: Section): Attribute | null {
  const ofBase = (of: (food: Food) => number): Attribute =>
    within(section, (c) => (c.base ? of(c.food) : 0));
  switch (lever) {
    case 'gluten':
      return ofBase((f) => (f.id === 'vital-wheat-gluten' ? 1 : 0));
    case 'insoluble-fibre':
      return ofBase((f) => figure.functionOf(f).insolubleFibre);
    case 'resistant-starch':
      return ofBase((f) => (hasTag(f, 'resistant-starch') ? 1 : 0));
    case 'allulose':
      return ofSweeteners(section, alluloseIn);
    default:
      return null;
  }
}

/** What a share lever counts, and what it is a share of. */
function shareOf(lever: Lever, section: Section): { part: Attribute; whole: Attribute } | null {
  if (lever === 'erythritol-share')
    return { part: ofSweeteners(section, erythritolIn), whole: ofSweeteners(section, figure.bulk) };
  if (lever === 'intense-share')
    return {
      part: ofSweeteners(section, (f) => (isIntense(f) ? figure.sweetness(f) : 0)),
      whole: ofSweeteners(section, figure.sweetness),
    };
  return null;
}

export const ROW_LEVERS: ReadonlySet<Lever> = new Set<Lever>([
  'gluten',
  'insoluble-fibre',
  'resistant-starch',
  'allulose',
  'erythritol-share',
  'intense-share',
]);

/** What a lever must come to, and from where. */
export interface LeverTarget {
  lever: Lever;
  /** g, or a share 0..1 for share levers. */
  level: number;
  from: number;
  /** Where the other parts of the dish stand, in the same unit; null for shares. */
  elsewhere: number | null;
}

/** An amount after accepted changes: each factor and each shift (percent of `base`) in turn. */
export function adjusted(amount: number, changes: readonly Adjustment[], base: number): number {
  return changes.reduce(
    (now, { factor, shiftPct }) =>
      Math.max(0, now * (factor ?? 1) + ((shiftPct ?? 0) / 100) * base),
    amount,
  );
}

/** Mass that a shift in percent refers to: the flour base, else the whole section. */
export const shiftBase = (section: Section): number =>
  section.dough ? section.flourBase : section.mass;

/** How a lever stands at these values, in the unit of its target; null for levers without rows. */
function levelOf(
  sum: (attribute: Attribute) => Linear,
  lever: Lever,
  section: Section,
  values: ReadonlyMap<string, number>,
): number | null {
  const mass = counted(lever, section);
  if (mass) return evaluate(sum(mass), values);
  const share = shareOf(lever, section);
  if (!share) return null;
  const whole = evaluate(sum(share.whole), values);
  return whole > 0 ? evaluate(sum(share.part), values) / whole : 0;
}

/** What a lever counts in the parts besides the main one; null for levers that do not count masses. */
function countedElsewhere(lever: Lever, { sections, main }: Dish): Attribute | null {
  if (counted(lever, main) === null) return null;
  const each = sections.flatMap((s) => (s === main ? [] : (counted(lever, s) ?? [])));
  return (c) => each.reduce((sum, of) => sum + of(c), 0);
}

/** Targets for the accepted changes, from a plan made without them. */
export function leverTargets(
  sum: (attribute: Attribute) => Linear,
  dish: Dish,
  values: ReadonlyMap<string, number>,
): LeverTarget[] {
  const section = dish.main;
  const changes = dish.goals.adjustments;
  return [...ROW_LEVERS].flatMap((lever): LeverTarget[] => {
    const own = changes.filter((c) => c.lever === lever);
    const now = own.length > 0 ? levelOf(sum, lever, section, values) : null;
    if (now === null) return [];
    const isShare = shareOf(lever, section) !== null;
    const level = adjusted(now, own, isShare ? 1 : shiftBase(section));
    const others = countedElsewhere(lever, dish);
    const elsewhere = others ? evaluate(sum(others), values) : null;
    return Math.abs(level - now) < 1e-9 ? [] : [{ lever, level, from: now, elsewhere }];
  });
}

/** Name of the variable that says how far a change was missed. */
export const missedChange = (lever: Lever): string => `missed change ${lever}`;

/** A share's distance from its level in units of the change: held as `part - level x whole`, which is linear. */
function shareOver(
  b: Builder,
  share: { part: Attribute; whole: Attribute },
  level: number,
  unit: number,
): Linear {
  const whole = b.sum(share.whole);
  return scaled(plus(b.sum(share.part), whole, -level), 1 / (unit * Math.max(whole.constant, 1)));
}

/** Foods that a change asks for, so that little of them may be enough. */
export const askedFor = (targets: readonly LeverTarget[], food: Food): boolean =>
  targets.some(
    ({ lever, level, from }) =>
      level > from &&
      ((lever === 'gluten' && food.id === 'vital-wheat-gluten') ||
        (lever === 'resistant-starch' && hasTag(food, 'resistant-starch')) ||
        (lever === 'allulose' && alluloseIn(food) > 0)),
  );

/** What the main part gives up or takes on is not taken on or given up by another part instead. */
function elsewhereRow(b: Builder, { lever, level, from, elsewhere }: LeverTarget): void {
  const others = countedElsewhere(lever, b.dish);
  const over = others ? scaled(b.sum(others), 1 / Math.abs(level - from)) : null;
  if (!over || elsewhere === null || over.terms.length === 0) return;
  const bound = elsewhere / Math.abs(level - from) - over.constant;
  const id = `${missedChange(lever)} elsewhere`;
  b.missed(id, MISSED_ELSEWHERE);
  if (level > from) b.row({ id: `${id} least`, min: bound, terms: [...over.terms, [id, 1]] }, null);
  else b.row({ id: `${id} most`, max: bound, terms: [...over.terms, [id, -1]] }, null);
}

/** Holds the main section to the targets; what cannot be met is paid for, never refused. */
export function leverRows(b: Builder, targets: readonly LeverTarget[]): void {
  const section = b.dish.main;
  for (const target of targets) {
    const { lever, level, from } = target;
    elsewhereRow(b, target);
    const mass = counted(lever, section);
    const share = shareOf(lever, section);
    const over: Linear | null = mass
      ? scaled(b.sum(mass), 1 / Math.abs(level - from))
      : share
        ? shareOver(b, share, level, Math.abs(level - from))
        : null;
    if (!over) continue;
    const bound = (mass ? level / Math.abs(level - from) : 0) - over.constant;
    const missed = missedChange(lever);
    b.missed(missed, MISSED);
    b.row({ id: `change ${lever} up`, min: bound, terms: [...over.terms, [missed, 1]] }, null);
    b.row({ id: `change ${lever} down`, max: bound, terms: [...over.terms, [missed, -1]] }, null);
  }
}
