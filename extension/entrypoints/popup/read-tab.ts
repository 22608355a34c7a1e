/** Finishes what the reader script gathered in a tab. */
import * as z from 'zod';
import { finishReading, type Gathered, type NothingFound, Recipe } from '../../../engine/index.ts';
import type { Gathering } from './gather-tab.ts';

/** What the script in the page hands back, as far as it has to be known before it is finished. */
const Answer = z.discriminatedUnion('ok', [
  z.looseObject({ ok: z.literal(true), recipes: z.array(z.looseObject({})) }),
  z.object({ ok: z.literal(false), why: z.string() }),
]);
const Recipes = z.array(Recipe);

export type TabAnswer =
  | { kind: 'recipes'; recipes: Recipe[] }
  /** The page was read and holds no recipe. */
  | { kind: 'none'; why: string }
  /** The browser does not let extensions read this page, or reading failed. */
  | { kind: 'refused'; why: string };

const refused = (why: string): TabAnswer => ({ kind: 'refused', why });

/** Never rejects. */
export async function readTab(gathering: Promise<Gathering>): Promise<TabAnswer> {
  try {
    const { tabId, result } = await gathering;
    if (tabId === null) return refused('There is no page in this window.');
    const answer = Answer.safeParse(result);
    if (!answer.success) return refused('The browser gave no answer from this page.');
    // The script is our own; what it gathered is checked as recipes once it is finished.
    const read = finishReading(answer.data as Gathered | NothingFound);
    if (!read.ok) return { kind: 'none', why: read.why };
    const recipes = Recipes.safeParse(read.recipes);
    return recipes.success
      ? { kind: 'recipes', recipes: recipes.data }
      : refused('The page could not be read.');
  } catch {
    return refused(
      'Browsers keep their own pages, stores and some documents closed to extensions.',
    );
  }
}
