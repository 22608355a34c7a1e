/** The shapes of a dish as the planner sees it: weighed foods with roles, the parts they belong to, and what may be changed. */
import type { FoodTable } from '../../foods/index.ts';
import type { Adjustment, Family, Food, Goals, KeptPromise, Role } from '../../model.ts';
import type { FamilyLimits } from '../data/schemas.ts';
import type { SwapRule } from './swap-rules.ts';

/** A counted ingredient of the dish. */
export interface Part {
  key: string;
  food: Food;
  grams: number;
  /** Grams as the page has them: more than `grams` where the plan begins with less of it. */
  written: number;
  /** Grams with their bounds. */
  gramsRange: { low: number; best: number; high: number };
  /** How sure the food is, 0..1. */
  sure: number;
  /** Share that is eaten, 0..1. */
  eaten: number;
  eatenRange: { low: number; best: number; high: number };
  class: string;
  role: Role;
  /** Belongs to the flour base of a dough. */
  base: boolean;
  /** g net carbs per g; 0 when unknown (such parts are never swapped). */
  net: number;
  fixed: boolean;
  /** It coats what is fried, so there may be less of it, but nothing in its place. */
  sparing: boolean;
  /** Heading the line stands under, or null. */
  group: string | null;
  /** The line as written. */
  text: string;
  /** What the line calls the food. */
  name: string;
  /** The steps that name it, one a line. */
  steps: string;
  /** Number of the dish's section it belongs to. */
  section: number;
}

/** A part of the dish with a family of its own, such as crust or filling. */
export interface Section {
  /** Its place among the sections; the main one is 0. */
  id: number;
  /** Heading, or null when the dish is one part. */
  title: string | null;
  family: Family;
  confidence: number;
  why: string;
  keys: string[];
  limits: FamilyLimits;
  /** A dough with flour in it. */
  dough: boolean;
  /** g of flours and what counts as such; 0 outside doughs. */
  flourBase: number;
  /** g of everything in it. */
  mass: number;
}

/** A swap that fits a line of the dish. */
export interface Candidate {
  rule: SwapRule;
  part: Part;
  to: { food: Food; ratio: number }[];
  cap: number;
}

/** A swap that fits the ingredient but may not be used, and why. */
export interface Refused {
  rule: SwapRule;
  key: string;
  why: string;
}

export interface Dish {
  promises: KeptPromise[];
  /** Why it is not reworked at all; null when it may be. */
  notReworked: string | null;
  /** At least one; the first is the main part. */
  sections: Section[];
  main: Section;
  servings: number;
  goals: Goals;
  /** Changes that earlier bakes taught, beside those the user accepted. */
  taught: readonly Adjustment[];
  foods: FoodTable;
  title: string;
  method: string;
  parts: Part[];
  candidates: Candidate[];
  refused: Refused[];
}
