/**
 * The nouns of the engine, as zod schemas with inferred types. Every stage takes and returns plain
 * JSON data of these shapes, so any value can be printed, saved, replayed or posted.
 *
 * Masses are grams, composition is per 100 g of the edible part, energy is kcal, sodium is mg,
 * temperatures are degrees Celsius. A value that is not known is `null`, never 0.
 */

export * from './model/adaptation.ts';
export * from './model/common.ts';
export * from './model/families.ts';
export * from './model/food.ts';
export * from './model/ingredient.ts';
export * from './model/method-note.ts';
export * from './model/nutrients.ts';
export * from './model/person.ts';
export * from './model/plan.ts';
export * from './model/recipe.ts';
export * from './model/tally.ts';
export * from './model/verdict.ts';
