/** What can go wrong in a bake, why, and what to change: the failure table, checked once on load. */
import * as z from 'zod';
import { Allergen, Family, Lever } from '../../model.ts';
import table from '../data/failures.json' with { type: 'json' };
import { FIGURE_NAMES, type FigureName } from './value-names.ts';

export interface Condition {
  figure: FigureName;
  is: '<' | '<=' | '>' | '>=';
  than: number;
}

const FigureWord = z.enum(FIGURE_NAMES);

/** 'glutenPct < 9': a figure of the plan against a number. */
const Condition = z
  .string()
  .regex(/^\w+ (<|<=|>|>=) -?\d+(\.\d+)?$/)
  .transform((text): Condition => {
    const [figure, is, than] = text.split(' ') as [string, Condition['is'], string];
    return { figure: FigureWord.parse(figure), is, than: Number(than) };
  });

const Cause = z.strictObject({
  /** All must hold for the cause to be likely; without any it is possible only. */
  if: z.array(Condition).default([]),
  text: z.string(),
  /** Said instead when a figure of `text` was not measured. */
  else: z.string().optional(),
});
export type Cause = z.infer<typeof Cause>;

const Change = z.strictObject({
  /** The cause it answers; of several, the likeliest. */
  cause: z.union([z.string().transform((one) => [one]), z.array(z.string()).min(1)]),
  lever: Lever,
  factor: z.number().positive().optional(),
  shift: z.number().optional(),
  /** Shift of a figure times a number, at most `most` percent either way. */
  shiftBy: z
    .strictObject({ figure: FigureWord, times: z.number(), most: z.number().positive() })
    .optional(),
  /** Factor that brings a figure down to `most`. */
  factorTo: z.strictObject({ figure: FigureWord, most: z.number().positive() }).optional(),
  if: z.array(Condition).default([]),
  in: z.array(z.string()).optional(),
  notAvoid: Allergen.optional(),
  /** Not proposed when the reworked method says it already. */
  unlessSaid: z.string().optional(),
  text: z.string(),
});
export type Change = z.infer<typeof Change>;

const Row = z.strictObject({
  id: z.string().regex(/^[a-z-]+$/),
  label: z.string(),
  in: z.array(z.string()).min(1),
  /** About the eater, not the bake. */
  safety: z.boolean().default(false),
  causes: z.record(z.string(), Cause),
  adjust: z.array(Change).min(1),
  source: z
    .string()
    .default(
      'causes in wheat bakes: US Armed Forces Recipe Service, TM 10-412; rest common practice, no source',
    ),
});
export type Row = z.infer<typeof Row>;

const Table = z.strictObject({
  families: z.record(z.string(), z.array(Family)),
  rows: z.array(Row),
  conflicts: z.array(
    z.strictObject({
      pair: z.tuple([z.string(), z.string()]),
      /** What is left alone. */
      lever: Lever,
      text: z.string(),
      why: z.string(),
    }),
  ),
});

const { families, rows, conflicts } = Table.parse(table);

export const FAILURES: readonly Row[] = rows;
export const CONFLICTS = conflicts;

/** Whether a list of families and names of family groups ('*' for all) holds a family. */
export const suitsFamily = (words: readonly string[], family: Family): boolean =>
  words.some(
    (word) => word === '*' || word === family || families[word]?.includes(family) === true,
  );

/** Things that may go wrong in dishes of a family, in the order of the table, for a screen's list. */
export function bakeSymptoms(family: Family): { id: string; label: string }[] {
  return FAILURES.filter((row) => suitsFamily(row.in, family)).map(({ id, label }) => ({
    id,
    label,
  }));
}
