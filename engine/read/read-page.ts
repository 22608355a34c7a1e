/** Reads a page: every markup, then the visible lines, and settles between them. */
import type { Note, Recipe } from '../model.ts';
import type { Block } from './document/block.ts';
import { blocksOf } from './document/blocks.ts';
import { copyTree } from './document/copy-tree.ts';
import { noFacts, type PageFacts, pageFactsOf } from './document/page-facts.ts';
import { jsonLdScripts } from './document/recipe-signs.ts';
import { emptyTree, type Tree } from './document/tree.ts';
import { type Draft, linesIn } from './draft.ts';
import { readNote, recipeOf } from './draft-to-recipe.ts';
import { readHRecipe } from './markup/h-recipe.ts';
import { readJsonLd } from './markup/json-ld-recipes.ts';
import { readLooseProperties, readMicrodata } from './markup/microdata.ts';
import { readRdfa } from './markup/rdfa.ts';
import { fillFrom, mergeDrafts, titlesAgree } from './merge-drafts.ts';
import { settleWithPage, withGroups } from './settle-with-page.ts';
import { Stages } from './stages.ts';
import { withoutStrays } from './stray-steps.ts';
import { pageDrafts } from './visible/several-recipes.ts';
import { findInPage, type PageRecipe } from './visible/visible-recipe.ts';

/**
 * Tells whether the time for reading is used up, or that share of it. Shares: copying the page
 * ends early, so that time is left to make lines of the copy and to look through them.
 */
export type Spent = (share?: number) => boolean;
const COPY_SHARE = 0.6;
const BLOCKS_SHARE = 0.9;

/** Every draft the page's markup gives, without what is no step of the method. */
function markedDrafts(document: Document, tree: Tree, spent: Spent, stages: Stages): Draft[] {
  const readers: (readonly [string, () => Draft[]])[] = [
    // A copy cut short may lack the scripts at the page's end; they are quick to ask for.
    [
      'JSON-LD',
      () =>
        readJsonLd(
          tree.late || tree.scripts.length === 0 ? jsonLdScripts(document).texts : tree.scripts,
          spent,
        ),
    ],
    ['microdata', () => readMicrodata(tree)],
    ['RDFa', () => readRdfa(tree)],
    ['h-recipe', () => readHRecipe(tree)],
  ];
  const drafts: Draft[] = [];
  for (const [markup, read] of readers) {
    if (drafts.length > 0 && spent()) break;
    drafts.push(...stages.run(markup, read, []));
  }
  return drafts.map((draft) => ({ ...draft, steps: withoutStrays(draft.steps, linesIn(draft)) }));
}

function isEmpty(draft: Draft): boolean {
  return draft.groups.length === 0 && draft.steps.length === 0;
}

/** The draft that bears the page's title before the others, which keep their order. */
function mainFirst(drafts: readonly Draft[], title: string | null): Draft[] {
  const main = drafts.find((draft) => titlesAgree(draft.title, title));
  return main ? [main, ...drafts.filter((draft) => draft !== main)] : [...drafts];
}

/** The notes that hold for the whole page: it is cut, or the time was up. */
function wholeNotes(tree: Tree, spent: Spent): Note[] {
  const notes: Note[] = [];
  if (tree.cut)
    notes.push(readNote('page-cut', 'The page is very large; only its first part was read.'));
  if (tree.late || spent(BLOCKS_SHARE))
    notes.push(readNote('time-up', 'Reading took too long and was ended; parts may be missing.'));
  return notes;
}

/** Finishes the drafts of a page's markup; the visible page settles what the first one lacks. */
function finishMarked(
  drafts: readonly Draft[],
  page: PageRecipe | null,
  blocks: readonly Block[],
  facts: PageFacts,
  stages: Stages,
): Recipe[] {
  return drafts.map((draft, i) => {
    const asItIs = { draft, notes: [] };
    const settled = stages.run(
      'comparing markup and page',
      () => (i === 0 ? settleWithPage(draft, page, blocks) : withGroups(draft, blocks)),
      asItIs,
    );
    const own = i === 0 ? facts : { ...facts, title: null };
    return recipeOf(settled.draft, own, [...stages.notes, ...settled.notes]);
  });
}

/**
 * Reads every recipe of a document, the main one first; empty when there is none. `url` is the
 * page's address if known; `spent` ends the work early when it answers true. An error nobody foresaw
 * ends the stage it happens in, and a note names that stage.
 */
export function readDocument(document: Document, url: string | null, spent: Spent): Recipe[] {
  const stages = new Stages();
  const tree = stages.run(
    'copying the page',
    () => copyTree(document, () => spent(COPY_SHARE)),
    emptyTree(),
  );
  const blocks = stages.run(
    'making lines of the page',
    () => blocksOf(tree.root, () => spent(BLOCKS_SHARE)),
    [],
  );
  const facts = stages.run('title and author', () => pageFactsOf(tree, blocks, url), noFacts(url));
  stages.notes.push(...wholeNotes(tree, spent));
  const drafts = mergeDrafts(markedDrafts(document, tree, spent, stages), facts.title);
  // What was found by then is short enough to be looked through, late or not.
  const page = stages.run('the visible page', () => findInPage(blocks), null);
  const unscoped = drafts.every(isEmpty)
    ? stages.run('markup', () => readLooseProperties(tree), null)
    : null;
  const [main, ...others] = drafts;
  const base = main && unscoped ? fillFrom(main, unscoped) : (main ?? unscoped);
  if (base) {
    const recipes = finishMarked([base, ...others], page, blocks, facts, stages);
    return recipes.filter((recipe) => recipe.groups.length > 0 || recipe.steps.length > 1);
  }
  const found = stages.run('the visible page', () => pageDrafts(blocks, page), []);
  return mainFirst(found, facts.title).map((draft) => recipeOf(draft, facts, stages.notes));
}
