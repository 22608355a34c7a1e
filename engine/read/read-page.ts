/** Reads a page: every markup, then the visible lines, and settles between them. */
import type { Note, Recipe } from '../model.ts';
import type { Block } from './document/block.ts';
import { blocksOf } from './document/blocks.ts';
import { copyTree } from './document/copy-tree.ts';
import { pageFactsOf } from './document/page-facts.ts';
import { jsonLdScripts } from './document/recipe-signs.ts';
import type { Tree } from './document/tree.ts';
import { type Draft, linesIn } from './draft.ts';
import { readNote, recipeOf } from './draft-to-recipe.ts';
import { readHRecipe } from './markup/h-recipe.ts';
import { readJsonLd } from './markup/json-ld-recipes.ts';
import { readLooseProperties, readMicrodata } from './markup/microdata.ts';
import { readRdfa } from './markup/rdfa.ts';
import { differingAmounts, pageListIsFuller, pageStepsAreBetter } from './markup-or-page.ts';
import { fillFrom, mergeDrafts, titlesAgree } from './merge-drafts.ts';
import { withoutStrays } from './stray-steps.ts';
import { listedTools, withoutTools } from './visible/equipment.ts';
import { regainGroups } from './visible/groups-on-page.ts';
import { pageDrafts } from './visible/several-recipes.ts';
import { findInPage, type PageRecipe } from './visible/visible-recipe.ts';

/**
 * Tells whether the time for reading is used up, or that share of it. Shares: copying the page
 * ends early, so that time is left to make lines of the copy and to look through them.
 */
export type Spent = (share?: number) => boolean;
const COPY_SHARE = 0.6;
const BLOCKS_SHARE = 0.9;

/** Every draft the page's markup gives. */
function markedDrafts(document: Document, tree: Tree, spent: Spent): Draft[] {
  // A copy cut short may lack the scripts at the page's end; they are quick to ask for.
  const scripts = tree.late ? jsonLdScripts(document).texts : tree.scripts;
  const drafts = readJsonLd(scripts, spent);
  if (!spent()) drafts.push(...readMicrodata(tree));
  if (!spent()) drafts.push(...readRdfa(tree));
  if (!spent()) drafts.push(...readHRecipe(tree));
  return drafts;
}

const FROM_PAGE = 'Taken from the visible page';

/** Lets the visible page settle what the markup of the main recipe leaves out or damages. */
function settleWithPage(
  draft: Draft,
  page: PageRecipe | null,
  blocks: readonly Block[],
): { draft: Draft; notes: Note[] } {
  const notes: Note[] = [];
  const settled: Draft = { ...draft };
  if (page) {
    const lines = pageListIsFuller(draft, page);
    if (lines) {
      settled.groups = page.groups;
      settled.glued = false;
      notes.push(readNote('ingredients-from-page', `${FROM_PAGE}: ingredients (${lines}).`));
    } else {
      for (const pair of differingAmounts(draft.groups, page.groups).slice(0, 10)) {
        notes.push(
          readNote(
            'amounts-differ',
            `Markup says ‘${pair.marked}’, the page shows ‘${pair.page}’.`,
          ),
        );
      }
    }
    const steps = pageStepsAreBetter(draft.steps, page);
    if (steps) {
      settled.steps = page.steps;
      notes.push(readNote('method-from-page', `${FROM_PAGE}: method (${steps}).`));
    }
    if (settled.yields.length > 0) settled.otherYields = [...draft.otherYields, ...page.yields];
    else if (page.yields.length > 0) {
      settled.yields = page.yields;
      notes.push(readNote('yield-from-page', `${FROM_PAGE}: yield.`));
    }
    const { prep, cook, total } = draft.minutes;
    if (prep === null && cook === null && total === null) settled.minutes = page.minutes;
  }
  const tools = listedTools(blocks);
  if (tools.size > 0) settled.groups = withoutTools(settled.groups, tools);
  if (settled.groups.length === 1 && settled.groups[0]?.title == null) {
    settled.groups = regainGroups(blocks, linesIn(settled)) ?? settled.groups;
  }
  return { draft: settled, notes };
}

function isEmpty(draft: Draft): boolean {
  return draft.groups.length === 0 && draft.steps.length === 0;
}

/** The draft that bears the page's title before the others, which keep their order. */
function mainFirst(drafts: readonly Draft[], title: string | null): Draft[] {
  const main = drafts.find((draft) => titlesAgree(draft.title, title));
  return main ? [main, ...drafts.filter((draft) => draft !== main)] : [...drafts];
}

/**
 * Reads every recipe of a document, the main one first; empty when there is none. `url` is the
 * page's address if known; `spent` ends the work early when it answers true.
 */
export function readDocument(document: Document, url: string | null, spent: Spent): Recipe[] {
  const tree = copyTree(document, () => spent(COPY_SHARE));
  const blocks = blocksOf(tree.root, () => spent(BLOCKS_SHARE));
  const facts = pageFactsOf(tree, blocks, url);
  const cut = tree.cut
    ? [readNote('page-cut', 'The page is very large; only its first part was read.')]
    : [];
  if (tree.late || spent(BLOCKS_SHARE))
    cut.push(readNote('time-up', 'Reading took too long and was ended; parts may be missing.'));
  const marked = markedDrafts(document, tree, spent).map((draft) => ({
    ...draft,
    steps: withoutStrays(draft.steps, linesIn(draft)),
  }));
  const drafts = mergeDrafts(marked, facts.title);
  // What was found by then is short enough to be looked through, late or not.
  const page = findInPage(blocks);
  const loose = drafts.length === 0 || drafts.every(isEmpty) ? readLooseProperties(tree) : null;
  const main = drafts[0];
  const base = main && loose ? fillFrom(main, loose) : (main ?? loose);
  if (!base) {
    const found = mainFirst(pageDrafts(blocks, page), facts.title);
    return found.map((draft) => recipeOf(draft, facts, cut));
  }
  const settled = settleWithPage(base, page, blocks);
  const first = recipeOf(settled.draft, facts, [...cut, ...settled.notes]);
  const others = drafts.slice(1).map((draft) => {
    const groups = draft.groups.length === 1 ? regainGroups(blocks, linesIn(draft)) : null;
    return recipeOf({ ...draft, groups: groups ?? draft.groups }, { ...facts, title: null }, cut);
  });
  return [first, ...others].filter((recipe) => recipe.groups.length > 0 || recipe.steps.length > 1);
}
