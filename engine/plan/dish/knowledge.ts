/** The planner's knowledge as data: family limits, food classes and swaps, checked once on load. */
import * as z from 'zod';
import { FAMILIES, Family, type Food, Role } from '../../model.ts';
import classRows from '../data/classes.json' with { type: 'json' };
import familyRows from '../data/families.json' with { type: 'json' };
import keepRows from '../data/keeps.json' with { type: 'json' };
import swapRows from '../data/swaps.json' with { type: 'json' };

const Pair = z.tuple([z.number(), z.number()]);

/** Limits of a dish family; percentages are of the flour base. */
const FamilyLimits = z.strictObject({
  kind: z.enum(['dough', 'dish']),
  /** Column of the foods' largest shares. */
  share: z.enum(['YB', 'FT', 'QB', 'CK', 'CO', 'PA']).optional(),
  yeast: z.boolean().default(false),
  /** Gluten-forming protein, g per 100 g flour base. */
  gluten: z.strictObject({ min: z.number(), hard: z.number(), max: z.number() }).optional(),
  /** Digestible starch floor; `strong` once gluten reaches `atGluten`, on a straight line between. */
  starch: z
    .strictObject({ min: z.number(), strong: z.number(), atGluten: z.number() })
    .default({ min: 0, strong: 0, atGluten: 99 }),
  yeastFood: z.number().default(0),
  inertFibre: z.number().default(100),
  /** Dose without gluten deficit, at full deficit, and the cap, by binder. */
  binder: z.record(z.string(), z.tuple([z.number(), z.number(), z.number()])).default({}),
  /** Extra binder per share of flour replaced: the gel of the missing starch. */
  binderLift: z.number().default(0),
  hydration: Pair.optional(),
  fat: z
    .strictObject({
      window: Pair.optional(),
      addPct: z.number().optional(),
      maxPct: z.number().optional(),
    })
    .default({}),
  /** Bulk sweetener against the original's sugar, 0..1. */
  bulkFloor: z.number(),
  /** Egg solids, gluten-forming protein, whey and egg-white powder together. */
  eggStructure: z.number().default(0),
  saltPct: Pair.optional(),
  /** Erythritol: percent of the flour base in doughs, of the whole mass in dishes. */
  erythritolPct: z.number(),
  /** Largest share of allulose in the bulk sweetener. */
  alluloseShare: z.number().default(1),
  /** Share of erythritol in the bulk sweetener above which it costs closeness. */
  erythritolOfSweet: z.number().default(1),
  /** Largest shares of single flours in this family, where they are below the foods' own for its group; `unlessEgg` percent of egg lifts them. */
  flourCaps: z.record(z.string(), z.number()).default({}),
  unlessEgg: z.number().optional(),
  source: z.string(),
});
export type FamilyLimits = z.infer<typeof FamilyLimits>;

const FoodClass = z.strictObject({
  class: z.string(),
  role: Role,
  /** Last words of names of the user's own foods that belong here. */
  named: z.array(z.string()).optional(),
  foods: z.array(z.string()),
});

const SwapRule = z.strictObject({
  id: z.string(),
  /** Classes of foods it replaces. */
  replaces: z.array(z.string()),
  /** Ids of the foods in those classes it is for; all when left out. */
  only: z.array(z.string()).optional(),
  /** Families, or 'dough', 'dish', '*'. */
  in: z.array(z.string()),
  /** Grams of each component per gram replaced. */
  to: z.array(z.strictObject({ food: z.string(), ratio: z.number().positive() })).min(1),
  /** Largest share of the ingredient it may replace, 0..1. */
  cap: z.number().positive().max(1),
  capBy: z.partialRecord(Family, z.number()).optional(),
  /** Closeness lost when the whole of a dish's main ingredient is swapped, 0..1. */
  cost: z.number().positive().max(1),
  role: Role.optional(),
  /** All of the ingredient or nothing: half a jam or crust is not worth making. */
  whole: z.boolean().default(false),
  /** Words of title, line or method that it needs, as a pattern. */
  when: z.string().optional(),
  /** Title words of dishes it spoils, as a pattern. */
  unless: z.string().optional(),
  /** Water shift of the dish, g per gram replaced; negative when the replacement gives off water. */
  water: z.number().default(0),
  /** What it does to taste and texture. */
  effect: z.string(),
  /** What the cook does differently; empty when nothing. */
  method: z.string().default(''),
  cautions: z.array(z.string()),
  source: z.string(),
});
export type SwapRule = z.infer<typeof SwapRule>;

/** Foods that stay as they are where safety, ferment or set hangs on them. */
const KeepRule = z.strictObject({
  classes: z.array(z.string()),
  /** Patterns of words that say so, of the title and of the method. */
  title: z.string().optional(),
  method: z.string().optional(),
  why: z.string(),
  source: z.string(),
});

export const FAMILY_LIMITS: ReadonlyMap<Family, FamilyLimits> = new Map(
  FAMILIES.map((id) => [id, FamilyLimits.parse((familyRows as Record<string, unknown>)[id])]),
);

export const SWAP_RULES: readonly SwapRule[] = z.array(SwapRule).parse(swapRows);

const KEEP_RULES = z.array(KeepRule).parse(keepRows);

const CLASSES = z.array(FoodClass).parse(classRows);
const classById = new Map(CLASSES.flatMap((row) => row.foods.map((id) => [id, row] as const)));
const classByName = new Map(
  CLASSES.flatMap((row) => (row.named ?? []).map((word) => [word, row] as const)),
);

/** The last word of a food's name. */
const headOf = (name: string): string => /[a-z]+$/.exec(name.trim().toLowerCase())?.[0] ?? '';

/** The class of a food and the role it usually plays, or null when it is in none; own foods go by the last word of their name. */
export function classOf(food: Food): { class: string; role: Role } | null {
  const own = food.source.kind === 'label' || food.source.kind === 'user';
  return classById.get(food.id) ?? (own ? classByName.get(headOf(food.name)) : undefined) ?? null;
}

/** Whether a swap is meant for this dish family. */
export function suits(rule: SwapRule, family: Family): boolean {
  const kind = FAMILY_LIMITS.get(family)?.kind ?? 'dish';
  return rule.in.some((word) => word === '*' || word === family || word === kind);
}

const patterns = new Map<string, RegExp>();

/** Whether a text has a pattern of the tables, whatever its case; each pattern is compiled once. */
export function says(pattern: string | undefined, text: string): boolean {
  if (pattern === undefined) return false;
  const known = patterns.get(pattern) ?? new RegExp(pattern, 'i');
  patterns.set(pattern, known);
  return known.test(text);
}

/** Why a food of this class must stay in a dish of this title and method, or null when it need not. */
export function mustKeep(cls: string, title: string, method: string): string | null {
  const rule = KEEP_RULES.find(
    (keep) => keep.classes.includes(cls) && (says(keep.title, title) || says(keep.method, method)),
  );
  return rule?.why ?? null;
}

/** Whether a swap is for this food, and for a dish of these words (title, line and method). */
export function isFor(rule: SwapRule, foodId: string, words: string): boolean {
  if (rule.only !== undefined && !rule.only.includes(foodId)) return false;
  return rule.when === undefined || says(rule.when, words);
}
