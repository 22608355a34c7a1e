/** Makes recipes of what was gathered in a page: chooses between markup and visible page, finishes each. */
import type { Note, ReadResult, Recipe } from '../model.ts';
import { type Draft, linesIn, readNote } from './draft.ts';
import { recipeOf } from './draft-to-recipe.ts';
import type { Gathered, NothingFound } from './gather.ts';
import { fillFrom, isBare, mergeDrafts, titlesAgree } from './merge-drafts.ts';
import { settleWithPage } from './settle.ts';
import { Stages } from './stages.ts';
import { withoutNoFood, withoutStrays } from './strays.ts';
import { withLanguage } from './values/language.ts';
import { versionsOf } from './variations.ts';
import { namesNoFood, speaksOfCooking } from './visible/cooking-words.ts';
import { withoutTools } from './visible/equipment.ts';
import { draftOfPage, type PageRecipe } from './visible/visible-recipe.ts';

const NOT_FOUND: NothingFound = {
  ok: false,
  why: 'No recipe found on this page. Select the recipe’s text and read the selection, or paste it.',
};

const SEVERAL =
  'The page gives several versions of this dish; each is offered as a recipe of its own.';

/** A draft without what is no line and no step. */
function tidied<T extends Pick<Draft, 'groups' | 'steps'>>(draft: T): T {
  const groups = withoutNoFood(draft.groups);
  return { ...draft, groups, steps: withoutStrays(draft.steps, linesIn({ groups })) };
}

/** Food and kitchen work in the words of what was found on a page without markup. */
function isRecipe(draft: Draft): boolean {
  if (draft.markup !== 'page-text') return true;
  if (namesNoFood(linesIn(draft))) return false;
  return !draft.unsure || speaksOfCooking(draft.steps.map(({ text }) => text));
}

/** Those of the drafts that are recipes; of several on a page without markup two, or the page as a whole. */
function recipesAmong(drafts: readonly Draft[], page: PageRecipe | null): Draft[] {
  const found = drafts.filter(isRecipe);
  if (found.length === drafts.length || found.length > 1 || !page) return found;
  return [draftOfPage(page)].filter(isRecipe);
}

/** What holds for all that was read of a page. */
function wholeNotes({ cut, late, failed }: Gathered, stages: Stages): Note[] {
  const notes = [...failed, ...stages.failed].map((stage) =>
    readNote('stage-failed', `An error ended one part of reading (${stage}); the rest was read.`),
  );
  if (cut)
    notes.push(readNote('page-cut', 'The page is very large; only its first part was read.'));
  if (late)
    notes.push(readNote('time-up', 'Reading took too long and was ended; parts may be missing.'));
  return notes;
}

/** The draft that bears the page's title before the others, which keep their order. */
function mainFirst(drafts: readonly Draft[], title: string | null): Draft[] {
  const main = drafts.find((draft) => titlesAgree(draft.title, title));
  return main ? [main, ...drafts.filter((draft) => draft !== main)] : [...drafts];
}

/** What was gathered, one draft for each recipe, the one that the page is about first. */
function merged({ recipes, loose, facts: { title } }: Gathered): Draft[] {
  if (recipes.some(({ markup }) => markup === 'page-text')) return mainFirst(recipes, title);
  const [main, ...others] = mergeDrafts(recipes, title);
  const all = main ? [main, ...others] : [];
  if (!loose || !all.every(isBare)) return all;
  return [main ? fillFrom(main, loose) : loose, ...others];
}

function finish(gathered: Gathered): Recipe[] {
  const stages = new Stages();
  const { facts } = gathered;
  const page = gathered.page && tidied(gathered.page);
  const drafts = recipesAmong(
    merged(gathered).map((draft) =>
      tidied({ ...draft, groups: withoutTools(draft.groups, gathered.tools) }),
    ),
    page,
  );
  const recipes = drafts.flatMap((draft, i) => {
    const compared = i === 0 && page !== null && draft.markup !== 'page-text';
    const { draft: settled, notes } = stages.run(
      'comparing markup and page',
      () => (compared ? settleWithPage(draft, page) : { draft, notes: [] }),
      { draft, notes: [] },
    );
    const isMain = i === 0 || draft.markup === 'page-text';
    const own = isMain ? facts : { ...facts, title: null };
    const all = [...wholeNotes(gathered, stages), ...notes];
    const versions = versionsOf(settled);
    if (versions.length > 1) all.push(readNote('versions', SEVERAL));
    return versions.map((version) => recipeOf(version, own, all));
  });
  return recipes
    .filter(({ groups, steps }) => groups.length > 0 || steps.length > 1)
    .map((recipe) => stages.run('language', () => withLanguage(recipe), recipe));
}

/** The recipes of what was gathered, or what the user can do when there are none. Never throws. */
export function finishReading(gathered: Gathered | NothingFound): ReadResult {
  if (!gathered.ok) return gathered.why === '' ? NOT_FOUND : gathered;
  try {
    const recipes = finish(gathered);
    return recipes.length > 0 ? { ok: true, recipes } : NOT_FOUND;
  } catch {
    return NOT_FOUND;
  }
}
