/** Shapes of what is kept on disk and in the exported file. Every read goes through these. */
import * as z from 'zod';
import { PackageLabel } from '../../engine/foods/label/package-label.ts';
import { Adaptation, Corrections, Food, Goals, Interval, Recipe } from '../../engine/model.ts';
import { BakedPlan } from '../../engine/plan/bakes/bake-facts.ts';

/** What the user is working on: a recipe as read, what was asked of it, what was put right. */
export const Work = z.object({ recipe: Recipe, goals: Goals, corrections: Corrections });
export type Work = z.infer<typeof Work>;

const Id = z.string().min(1).max(200);
/** Milliseconds since 1970 UTC, to the end of the year 9999: no later moment can be written as a date. */
const Moment = z.number().int().nonnegative().max(253_402_300_799_999);

/** What a household can have baked; what is beyond came from a damaged file. */
const Grams = z.number().positive().max(1_000_000);
const Count = z.number().positive().max(10_000);

/** What the user says of one state of a recipe. */
const Said = z.object({
  /** The user's own name for this state; '' for none. */
  name: z.string().max(200).default(''),
  /** The user has baked it and it came out well. */
  worked: z.boolean().default(false),
  /** What the user wrote to it. */
  note: z.string().max(5000).catch('').default(''),
});
export type Said = z.infer<typeof Said>;

/** The result at the moment of saving; null when an older or newer build wrote it in another shape. */
const Result = Adaptation.nullable().catch(null);

/** A saved recipe, as it stands now. */
export const SavedRecipe = Work.extend({
  ...Said.shape,
  /** The user's own words to find it by. */
  tags: z.array(z.string().max(40)).max(30).catch([]).default([]),
  id: Id,
  savedAt: Moment,
  updatedAt: Moment,
  /** Written by itself while it was worked on: it gives way to the next state without becoming a version. */
  auto: z.boolean().catch(false).default(false),
  /** When it was put in the bin, else null. */
  deletedAt: Moment.nullable(),
  /** Copy of `recipe.url`, so that it can be looked up. */
  url: z.string(),
  adaptation: Result,
});
export type SavedRecipe = z.infer<typeof SavedRecipe>;

/** An earlier state of a saved recipe. */
export const SavedVersion = Work.extend({
  ...Said.shape,
  id: Id,
  recipeId: Id,
  savedAt: Moment,
  adaptation: Result,
});
export type SavedVersion = z.infer<typeof SavedVersion>;

/** Glucose readings after one piece, as the meter shows them; kept beside the bake, never read as advice. */
export const Readings = z.object({
  unit: z.enum(['mg/dL', 'mmol/L']),
  before: z.number().positive().nullable(),
  hour1: z.number().positive().nullable(),
  hour2: z.number().positive().nullable(),
  /** What was eaten of the dish, g. */
  pieceGrams: Grams.nullable(),
  /** What was eaten with it, in the user's words. */
  besides: z.string().max(500),
});
export type Readings = z.infer<typeof Readings>;

/** One bake of a saved recipe: what was baked, what the scale said, how it came out. */
export const Bake = z.object({
  id: Id,
  recipeId: Id,
  /** The day it was baked, by the user's calendar: '2026-11-25'. */
  day: z.iso.date(),
  addedAt: Moment,
  /** The state that was baked. */
  baked: Work,
  /** Figures of that state when it was logged: what went in, and net carbs of the whole dish, g. */
  servings: Count,
  rawGrams: z.number().positive().nullable(),
  netCarbsG: Interval.nullable(),
  /** How much of the recipe was made; the weights below are of all of it. */
  factor: Count.default(1),
  /** The whole dish on the scale after baking, g. */
  dishGrams: Grams.nullable(),
  /** Servings cut from it. */
  pieces: Count.nullable(),
  /** One slice on the scale, g. */
  sliceGrams: Grams.nullable(),
  /** Centre when it came out, °C, and hours it cooled before it was cut. */
  innerC: z.number().min(-50).max(400).nullable(),
  cooledHours: z.number().nonnegative().max(1000).nullable(),
  /** Water that went in beyond the list, g, less than none when some was left out. */
  extraWaterG: z.number().nullable().catch(null).default(null),
  /** What the oven was set to, what a thermometer in it said, °C, and how long it took. */
  ovenSetC: z.number().nullable().catch(null).default(null),
  ovenReadC: z.number().nullable().catch(null).default(null),
  minutes: z.number().nonnegative().nullable().catch(null).default(null),
  /** Flours and water of the plan that was baked; null for a bake told before they were kept. */
  plan: BakedPlan.nullable().catch(null).default(null),
  /** How it was, in one word; null when not said. */
  how: z.enum(['good', 'so-so', 'no']).nullable().catch(null).default(null),
  readings: Readings.nullable().catch(null).default(null),
  /** Ids of what went wrong, from the engine's table. */
  symptoms: z.array(z.string()),
  notes: z.string().max(5000),
});
export type Bake = z.infer<typeof Bake>;

/** A food from a package, with its label as typed; null for one kept before labels were kept. */
export const OwnFood = Food.extend({ label: PackageLabel.nullable().catch(null).default(null) });
export type OwnFood = z.infer<typeof OwnFood>;

/** A name that the user gave to a food: lines with this name are taken for it from then on. */
export const Alias = z.object({
  name: z.string().min(1).max(200),
  foodId: z.string(),
  foodName: z.string(),
  addedAt: Moment,
});
export type Alias = z.infer<typeof Alias>;

/** Longest photo, as text: a picture of 1200 px at a good quality has a fifth of it. Own choice. */
const LONGEST_PHOTO = 2_000_000;

const PhotoData = z
  .string()
  .max(LONGEST_PHOTO)
  .regex(/^data:image\/(jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/);

/** A photo of a kept recipe ('recipe:id') or of a bake ('bake:id'), made small, as a data address. */
export const Photo = z.object({
  id: Id,
  /** As it stands in lists. */
  small: PhotoData,
  data: PhotoData,
  addedAt: Moment,
});
export type Photo = z.infer<typeof Photo>;

export const BACKUP_FORMAT = 'crumbshift-backup';
/** 2 added bakes, names and the pantry, 3 photos, 4 settings; older ones are read as well. */
export const BACKUP_VERSION = 4;

const Entries = z.array(z.unknown()).default([]);

/** The exported file. Its parts stay `unknown` here so that one damaged entry does not hide the rest. */
export const BackupFile = z.object({
  format: z.literal(BACKUP_FORMAT),
  version: z.number().int().positive(),
  exportedAt: z.string(),
  recipes: z.array(z.unknown()),
  versions: Entries,
  foods: Entries,
  bakes: Entries,
  aliases: Entries,
  pantry: Entries,
  photos: Entries,
  /** The user's preferences; none in older files and in those of a few recipes. */
  settings: z.unknown().optional(),
});
export type BackupFile = z.infer<typeof BackupFile>;
