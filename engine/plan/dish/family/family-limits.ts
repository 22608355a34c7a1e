/** The limits of each dish family: `data/families.json` with what it leaves out. */
import { FAMILIES, type Family } from '../../../model.ts';
import familyRows from '../../data/families.json' with { type: 'json' };
import type { FamilyLimits, FamilyRow } from '../../data/schemas.ts';

const withDefaults = (row: FamilyRow): FamilyLimits => ({
  ...row,
  yeast: row.yeast ?? false,
  starch: row.starch ?? { min: 0, strong: 0, atGluten: 99 },
  yeastFood: row.yeastFood ?? 0,
  inertFibre: row.inertFibre ?? 100,
  binder: row.binder ?? {},
  binderLift: row.binderLift ?? 0,
  binderAlways: row.binderAlways ?? false,
  fat: row.fat ?? {},
  eggStructure: row.eggStructure ?? 0,
  alluloseShare: row.alluloseShare ?? 1,
  sweetShares: row.sweetShares ?? {},
  erythritolOfSweet: row.erythritolOfSweet ?? 1,
  flourCaps: row.flourCaps ?? {},
});

const LIMITS = new Map<Family, FamilyLimits>(
  FAMILIES.map((id) => [id, withDefaults(familyRows[id] as FamilyRow)]),
);

export const limitsOf = (family: Family): FamilyLimits =>
  LIMITS.get(family) ?? withDefaults(familyRows.other as FamilyRow);

/** Whether the family's parts are doughs or batters, by the flour in them. */
export const isDoughFamily = (family: Family): boolean => limitsOf(family).kind === 'dough';
