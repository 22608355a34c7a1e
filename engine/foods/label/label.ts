/** A food of the user's own, from the label of its package. */
import { withoutAccents } from '../../accents.ts';
import type { Allergen, Composition, Food, Interval, Note } from '../../model.ts';
import { BUILT_IN_FOODS } from '../built-in.ts';
import { impossible, labelWarnings } from './label-checks.ts';
import { type LabelFigures, labelFigures, withinHundred } from './label-figures.ts';
import { labelFunction } from './label-function.ts';
import { PackageLabel } from './package-label.ts';

export type LabelResult = { ok: true; food: Food; warnings: Note[] } | { ok: false; why: string };

const fail = (why: string): LabelResult => ({ ok: false, why });

const oneLine = (text: string): string => text.replace(/[\p{C}\s]+/gu, ' ').trim();

/** A name without case, accents, signs and a plural's end. */
const plain = (name: string): string =>
  withoutAccents(name)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/s$/, '');

/** 'own-' and the name's letters and digits; letters outside a-z by their code points. */
function ownId(name: string): string {
  const slug = withoutAccents(name)
    .toLowerCase()
    .replace(/[^a-z0-9\s-]/gu, (sign) =>
      /\p{L}|\p{N}/u.test(sign) ? (sign.codePointAt(0) ?? 0).toString(36) : ' ',
    )
    .split(/[\s-]+/)
    .filter((word) => word !== '')
    .join('-');
  return `own-${slug}`;
}

let owners: Map<string, Food> | null = null;

/** The built-in food that recipes call by this name. */
function nameOwner(name: string): Food | undefined {
  if (!owners) {
    owners = new Map();
    for (const food of BUILT_IN_FOODS)
      for (const one of [food.name, ...food.aliases])
        if (!owners.has(plain(one))) owners.set(plain(one), food);
  }
  return owners.get(plain(name));
}

const best = (value: Interval | null): number | null => value?.best ?? null;

/** The kind of the polyols: the built-in food's when it has one kind only, else not known. */
function polyolsOf(grams: Interval | null, like: Food | null): Record<string, number> {
  if (grams === null || grams.best === 0) return {};
  const [kind, second] = Object.keys(like?.per100g.polyolsG ?? {});
  return { [kind !== undefined && second === undefined ? kind : 'not stated']: grams.best };
}

const compositionOf = (figures: LabelFigures, like: Food | null): Composition => ({
  waterG: null,
  energyKcal: figures.energyKcal.best,
  proteinG: figures.proteinG.best,
  fatG: figures.fatG.best,
  saturatedG: best(figures.saturatedG),
  carbohydrateG: figures.carbohydrateG.best,
  fiberG: best(figures.fiberG),
  sugarsG: best(figures.sugarsG),
  starchG: null,
  polyolsG: polyolsOf(figures.polyolsG, like),
  alluloseG: best(figures.alluloseG) ?? 0,
  alcoholG: 0,
  sodiumMg: best(figures.sodiumMg),
  potassiumMg: null,
});

const bounds = ({ low, high }: Interval): [number, number] => [low, high];

const spreadOf = (figures: LabelFigures): Food['spread'] => ({
  energyKcal: bounds(figures.energyKcal),
  carbohydrateG: bounds(figures.carbohydrateG),
  ...(figures.fiberG === null ? {} : { fiberG: bounds(figures.fiberG) }),
  proteinG: bounds(figures.proteinG),
  netCarbsG: bounds(figures.netCarbsG),
});

/** Allergens as ticked; a package with wheat gluten has wheat and gluten, ticked or not. */
const allergensOf = (label: PackageLabel): Allergen[] => {
  const gluten: Allergen[] = label.glutenAmongFirst ? ['gluten', 'wheat'] : [];
  return [...new Set([...label.allergens, ...gluten])].sort();
};

function build(label: PackageLabel, figures: LabelFigures, like: Food | null): Food {
  const per100g = compositionOf(figures, like);
  return {
    id: like?.id ?? ownId(label.name),
    name: label.name,
    aliases: like ? [like.name, ...like.aliases] : [],
    group: like?.group ?? 'your packages',
    state: like?.state ?? 'as-is',
    source: {
      kind: 'user',
      id: null,
      note: `package label, ${label.form === 'us' ? 'US' : 'EU'} form`,
    },
    per100g,
    spread: spreadOf(figures),
    carbohydrateBasis: label.form === 'us' ? 'total' : 'available',
    polyolsInCarbohydrate: true,
    fiberMethod: null,
    refuseShare: null,
    measures: like?.measures ?? [],
    allergens: allergensOf(label),
    function: like && labelFunction(label, per100g, like),
  };
}

/** Why the label's name cannot be used, or null. */
function nameTrouble(name: string, like: Food | null): string | null {
  if (plain(name) === '') return 'Give the package a name.';
  const owner = nameOwner(name);
  if (!owner || owner.id === like?.id) return null;
  return `Recipes call another food "${name}". Give a name that tells this package apart, or let it stand in for ${owner.name}.`;
}

/**
 * The food a label describes, per 100 g, with the range its rounding leaves; or why no food can have
 * such a label. When it stands in for a built-in food it takes that food's id, names, measures and
 * function, so that it shadows it everywhere. Only rounding is in the range: by law the package itself
 * may differ from its label by up to a fifth (21 CFR 101.9(g)). Never throws.
 */
export function foodFromLabel(input: PackageLabel): LabelResult {
  const read = PackageLabel.safeParse(input);
  if (!read.success)
    return fail(`This figure cannot be read: ${read.error.issues[0]?.path.join('.') ?? 'label'}.`);
  const label = { ...read.data, name: oneLine(read.data.name) };
  const like = BUILT_IN_FOODS.find((food) => food.id === label.standsInFor) ?? null;
  if (label.standsInFor !== null && !like) return fail('The food it stands in for is not known.');
  const trouble = nameTrouble(label.name, like);
  if (trouble !== null) return fail(trouble);
  if (label.form === 'us' && label.servingG === null)
    return fail('Give the grams of one serving; they stand in brackets beside the serving size.');
  const printed = labelFigures(label, like);
  if (!printed) return fail('A figure of this label cannot be read.');
  const why = impossible(label, printed);
  if (why !== null) return fail(why);
  const figures = withinHundred(printed);
  const food = build(label, figures, like);
  const warnings = labelWarnings(
    { ...label, allergens: food.allergens },
    figures,
    food.per100g,
    like,
  );
  return { ok: true, food, warnings };
}
