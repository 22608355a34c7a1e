/** Shapes of what is kept on disk and in the exported file. Every read goes through these. */
import * as z from 'zod';
import { Adaptation, Corrections, Food, Goals, Recipe } from '../../engine/model.ts';

/** What the user is working on: a recipe as read, what was asked of it, what was put right. */
export const Work = z.object({ recipe: Recipe, goals: Goals, corrections: Corrections });
export type Work = z.infer<typeof Work>;

const Id = z.string().min(1).max(100);
/** Milliseconds since 1970 UTC. */
const Moment = z.number().int().nonnegative();

/** A saved recipe, as it stands now. `adaptation` is the result at the moment of saving. */
export const SavedRecipe = Work.extend({
  id: Id,
  savedAt: Moment,
  updatedAt: Moment,
  /** When it was put in the bin, else null. */
  deletedAt: Moment.nullable(),
  /** Copy of `recipe.url`, so that it can be looked up. */
  url: z.string(),
  adaptation: Adaptation,
});
export type SavedRecipe = z.infer<typeof SavedRecipe>;

/** An earlier state of a saved recipe. */
export const SavedVersion = Work.extend({
  id: Id,
  recipeId: Id,
  savedAt: Moment,
  adaptation: Adaptation,
});
export type SavedVersion = z.infer<typeof SavedVersion>;

export const BACKUP_FORMAT = 'crumbshift-backup';
export const BACKUP_VERSION = 1;

/** The exported file. Its parts stay `unknown` here so that one damaged entry does not hide the rest. */
export const BackupFile = z.object({
  format: z.literal(BACKUP_FORMAT),
  version: z.number().int().positive(),
  exportedAt: z.string(),
  recipes: z.array(z.unknown()),
  versions: z.array(z.unknown()).default([]),
  foods: z.array(z.unknown()).default([]),
});
export type BackupFile = z.infer<typeof BackupFile>;

export { Food };
