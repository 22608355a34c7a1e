/** A light row for each kept recipe: what a list shows and a search looks through. */
import * as z from 'zod';
import { verdictWord } from '../../../engine/index.ts';
import { Family, type Interval, VerdictWord } from '../../../engine/model.ts';
import type { SavedRecipe } from '../records.ts';

const Figures = z.object({
  beforeG: z.number(),
  afterG: z.number(),
  highG: z.number(),
  budgetG: z.number(),
});

export const ShelfRow = z.object({
  id: z.string(),
  title: z.string(),
  language: z.string().nullable(),
  /** What a search looks through, lower case: title, name, note, tags, ingredients. */
  words: z.string(),
  tags: z.array(z.string()),
  name: z.string(),
  worked: z.boolean(),
  family: Family.nullable(),
  state: VerdictWord.nullable(),
  /** Net carbs of a serving, g; null when the result has to be worked out again. */
  figures: Figures.nullable(),
  uncounted: z.number(),
  updatedAt: z.number(),
  deletedAt: z.number().nullable(),
});
export type ShelfRow = z.infer<typeof ShelfRow>;

function figuresOf({ adaptation }: SavedRecipe): ShelfRow['figures'] {
  const before: Interval | null | undefined = adaptation?.before.perServing.netCarbsG;
  const after: Interval | null | undefined = adaptation?.after.perServing.netCarbsG;
  if (!adaptation || !before || !after) return null;
  return {
    beforeG: Math.max(0, before.best),
    afterG: Math.max(0, after.best),
    highG: after.high,
    budgetG: adaptation.goals.budgetG,
  };
}

/** Foods of the reworked recipe beside the page's own lines: one finds a dish by either. */
function foodsOf({ adaptation, recipe }: SavedRecipe): string[] {
  return [
    ...recipe.groups.flatMap(({ lines }) => lines),
    ...(adaptation?.plan.items ?? []).map(({ foodName }) => foodName),
  ];
}

/** Longest text that is searched (characters). Own choice. */
const MOST_WORDS = 4000;

export function shelfRowOf(saved: SavedRecipe): ShelfRow {
  const { recipe, adaptation, tags, note, name } = saved;
  return {
    id: saved.id,
    title: recipe.title,
    language: recipe.language,
    words: [recipe.title, name, note, ...tags, ...foodsOf(saved)]
      .join('\n')
      .toLowerCase()
      .slice(0, MOST_WORDS),
    tags,
    name,
    worked: saved.worked,
    family: adaptation?.plan.family.id ?? null,
    state: adaptation ? verdictWord(adaptation.verdict) : null,
    figures: figuresOf(saved),
    uncounted: adaptation?.after.uncounted.length ?? 0,
    updatedAt: saved.updatedAt,
    deletedAt: saved.deletedAt,
  };
}
