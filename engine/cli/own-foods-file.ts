/** The user's own packages from a file: a JSON array of labels, as `PackageLabel` describes them. */
import { readFileSync } from 'node:fs';
import { foodFromLabel } from '../foods/label/label.ts';
import { PackageLabel } from '../foods/label/package-label.ts';
import type { Food } from '../model.ts';
import { reason } from './print.ts';

/** What a label need not say. */
const UNSAID: Partial<PackageLabel> = {
  servingG: null,
  saturatedG: null,
  fiberG: null,
  sugarsG: null,
  polyolsG: null,
  alluloseG: null,
  sodiumMg: null,
  saltG: null,
  allergens: [],
  standsInFor: null,
  glutenAmongFirst: false,
  otherProteins: false,
};

export interface OwnFoods {
  foods: Food[];
  /** What looks odd on a label, one line each. */
  warnings: string[];
}

function parsed(path: string): unknown[] {
  let content: unknown;
  try {
    content = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    throw new Error(`${path}: cannot be read as JSON (${reason(error)})`);
  }
  if (Array.isArray(content)) return content;
  throw new Error(`${path}: must hold a list of package labels, [ ... ]`);
}

/** Name and place of an entry, for messages. */
function entryName(entry: unknown, at: number): string {
  const name = (entry as { name?: unknown } | null)?.name;
  return typeof name === 'string' ? `label ${at + 1} ('${name.slice(0, 80)}')` : `label ${at + 1}`;
}

function foodOf(entry: unknown, where: string): { food: Food; warnings: string[] } {
  if (typeof entry !== 'object' || entry === null || Array.isArray(entry))
    throw new Error(`${where}: is no label`);
  const stray = Object.keys(entry).find((key) => !Object.hasOwn(PackageLabel.shape, key));
  if (stray !== undefined) throw new Error(`${where}: does not know '${stray.slice(0, 40)}'`);
  const result = foodFromLabel({ ...UNSAID, ...entry } as PackageLabel);
  if (!result.ok) throw new Error(`${where}: ${result.why}`);
  return { food: result.food, warnings: result.warnings.map(({ text }) => `${where}: ${text}`) };
}

/**
 * Foods of the labels in a file, in its order; null path means none.
 * @throws {Error} when the file or one of its labels cannot be read; the message names which.
 */
export function readOwnFoods(path: string | null): OwnFoods {
  const foods: Food[] = [];
  const warnings: string[] = [];
  for (const [at, entry] of (path === null ? [] : parsed(path)).entries()) {
    const where = `${path}: ${entryName(entry, at)}`;
    const made = foodOf(entry, where);
    const twin = foods.findIndex(({ id }) => id === made.food.id);
    if (twin >= 0)
      throw new Error(`${where}: takes the place of the same food as label ${twin + 1}`);
    foods.push(made.food);
    warnings.push(...made.warnings);
  }
  return { foods, warnings };
}
