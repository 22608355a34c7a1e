/** The fields of a package label and how their typed words become the engine's label. */
import { foodTable, type PackageLabel, Printed } from '../../../engine/index.ts';
import type { Allergen, Food } from '../../../engine/model.ts';
import { type MessageKey, say } from '../words/say.ts';

export type Form = PackageLabel['form'];

export type FieldName =
  | 'servingG'
  | 'energyKcal'
  | 'fatG'
  | 'saturatedG'
  | 'carbohydrateG'
  | 'fiberG'
  | 'sugarsG'
  | 'polyolsG'
  | 'alluloseG'
  | 'proteinG'
  | 'sodiumMg'
  | 'saltG';

export interface LabelField {
  name: FieldName;
  label: MessageKey;
  unit: string;
  /** Without it nothing can be counted. */
  required: boolean;
}

const field = (name: FieldName, label: MessageKey, unit = 'g', required = false): LabelField => ({
  name,
  label,
  unit,
  required,
});

/** In the order of the printed label. */
export const FIELDS: Record<Form, readonly LabelField[]> = {
  us: [
    field('servingG', 'labelServing', 'g', true),
    field('energyKcal', 'labelCalories', 'kcal', true),
    field('fatG', 'labelTotalFat', 'g', true),
    field('saturatedG', 'labelSaturated'),
    field('sodiumMg', 'labelSodium', 'mg'),
    field('carbohydrateG', 'labelTotalCarb', 'g', true),
    field('fiberG', 'labelDietaryFibre'),
    field('sugarsG', 'labelTotalSugars'),
    field('polyolsG', 'labelSugarAlcohol'),
    field('alluloseG', 'labelAllulose'),
    field('proteinG', 'labelProtein', 'g', true),
  ],
  eu: [
    field('energyKcal', 'labelEnergy', 'kcal', true),
    field('fatG', 'labelFat', 'g', true),
    field('saturatedG', 'labelSaturates'),
    field('carbohydrateG', 'labelCarb', 'g', true),
    field('sugarsG', 'labelSugars'),
    field('polyolsG', 'labelPolyols'),
    field('fiberG', 'labelFibre'),
    field('proteinG', 'labelProtein', 'g', true),
    field('saltG', 'labelSalt'),
  ],
};

/** What is typed and ticked. `standsInFor` is '' until chosen and 'own' for a food of its own. */
export interface Draft {
  name: string;
  form: Form;
  typed: Partial<Record<FieldName, string>>;
  allergens: readonly Allergen[];
  standsInFor: string;
  glutenAmongFirst: boolean;
  otherProteins: boolean;
}

export const OWN = 'own';

export const EMPTY_DRAFT: Draft = {
  name: '',
  form: 'us',
  typed: {},
  allergens: [],
  standsInFor: '',
  glutenAmongFirst: false,
  otherProteins: false,
};

/** What was typed for a label that is kept: {@link labelFrom} gives the same label again. */
export function draftFrom(label: PackageLabel): Draft {
  const names = FIELDS[label.form].map(({ name }) => name);
  const typed = names.flatMap((name): [FieldName, string][] => {
    const value = label[name];
    return value === null ? [] : [[name, String(value)]];
  });
  return {
    name: label.name,
    form: label.form,
    typed: Object.fromEntries(typed),
    allergens: label.allergens,
    standsInFor: label.standsInFor ?? OWN,
    glutenAmongFirst: label.glutenAmongFirst,
    otherProteins: label.otherProteins,
  };
}

export interface FieldError {
  field: FieldName | 'name' | 'standsInFor';
  text: string;
}

/** A typed figure: a number, '<1', null for nothing, undefined for anything else. */
export function typedFigure(text: string): Printed | null | undefined {
  const bare = text.trim();
  if (bare === '') return null;
  const value = /^\d+([.,]\d+)?$/.test(bare) ? Number(bare.replace(',', '.')) : bare;
  const read = Printed.safeParse(value);
  return read.success ? read.data : undefined;
}

function fieldErrors(draft: Draft): FieldError[] {
  return FIELDS[draft.form].flatMap(({ name, label, required }): FieldError[] => {
    const value = typedFigure(draft.typed[name] ?? '');
    if (value === undefined || (name === 'servingG' && typeof value === 'string'))
      return [{ field: name, text: say('typeAsPrinted', say(label)) }];
    if (value === null && name === 'servingG')
      return [{ field: name, text: say('servingMissing', say(label)) }];
    if (value === null && required) return [{ field: name, text: say('nothingTyped', say(label)) }];
    return [];
  });
}

/** The label as typed, or what has to be put right first. */
export function labelFrom(draft: Draft): PackageLabel | readonly FieldError[] {
  const errors: FieldError[] = [];
  if (draft.name.trim() === '') errors.push({ field: 'name', text: say('giveName') });
  if (draft.standsInFor === '') errors.push({ field: 'standsInFor', text: say('chooseStandIn') });
  errors.push(...fieldErrors(draft));
  if (errors.length > 0) return errors;
  const shown = new Set(FIELDS[draft.form].map(({ name }) => name));
  const figure = (name: FieldName): Printed | null =>
    (shown.has(name) ? typedFigure(draft.typed[name] ?? '') : null) ?? null;
  const serving = figure('servingG');
  return {
    name: draft.name,
    form: draft.form,
    servingG: typeof serving === 'number' ? serving : null,
    energyKcal: figure('energyKcal') ?? 0,
    fatG: figure('fatG') ?? 0,
    saturatedG: figure('saturatedG'),
    carbohydrateG: figure('carbohydrateG') ?? 0,
    fiberG: figure('fiberG'),
    sugarsG: figure('sugarsG'),
    polyolsG: figure('polyolsG'),
    alluloseG: figure('alluloseG'),
    proteinG: figure('proteinG') ?? 0,
    sodiumMg: figure('sodiumMg'),
    saltG: figure('saltG'),
    allergens: [...draft.allergens],
    standsInFor: draft.standsInFor === OWN ? null : draft.standsInFor,
    glutenAmongFirst: draft.glutenAmongFirst,
    otherProteins: draft.otherProteins,
  };
}

const BLEND = 'low-carb-wheat-flour-blend';
/** Bought ready-made, so that what is in it is the maker's choice. */
const isBought = ({ id, group }: Food): boolean =>
  group === 'vegetable stand-ins' ||
  group === 'alternative baking and sweetening' ||
  /sugar-free|reduced-sugar|low-carb|^konjac-|^(soybean|lupin)-pasta/.test(id);

const byName = (a: Food, b: Food): number => a.name.localeCompare(b.name, 'en');

/** Built-in foods a package may stand in for, by kind; the wheat flour blend first. */
export function standIns(): readonly (readonly [MessageKey, readonly Food[]])[] {
  const acting = foodTable().foods.filter((food) => food.function !== null);
  const of = (...groups: string[]): Food[] =>
    acting.filter((food) => groups.includes(food.group)).sort(byName);
  const sweet = (food: Food): boolean => (food.function?.sweetness ?? 0) > 0;
  const baking = of(foodTable().byId(BLEND)?.group ?? '');
  const blend = baking.filter((food) => food.id === BLEND);
  const kinds: [MessageKey, readonly Food[]][] = [
    ['kindFlour', [...blend, ...baking.filter((food) => food.id !== BLEND && !sweet(food))]],
    ['kindSugar', baking.filter(sweet)],
    ['kindFlours', of('flours', 'starches')],
    ['kindSugars', of('sugars and syrups')],
  ];
  const listed = new Set(kinds.flatMap(([, foods]) => foods.map(({ id }) => id)));
  const others = foodTable().foods.filter((food) => isBought(food) && !listed.has(food.id));
  return [...kinds, ['kindReady', others.sort(byName)]];
}
