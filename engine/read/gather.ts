/**
 * Gathers what a page says of its recipes, in its markup and in its visible lines, as plain data. Runs in
 * the page, so it has to stay small; what is chosen of it, and the words of all languages, come in
 * `finish.ts`.
 */
import { blocksOf } from './document/blocks.ts';
import { copyTree } from './document/copy-tree.ts';
import { noFacts, type PageFacts, pageFactsOf } from './document/page-facts.ts';
import { jsonLdScripts } from './document/recipe-signs.ts';
import { emptyTree, type Tree } from './document/tree.ts';
import type { Draft } from './draft.ts';
import { readHRecipe } from './markup/h-recipe.ts';
import { readJsonLd } from './markup/json-ld-recipes.ts';
import { readLooseProperties, readMicrodata } from './markup/microdata.ts';
import { readRdfa } from './markup/rdfa.ts';
import { isBare } from './merge-drafts.ts';
import { Stages } from './stages.ts';
import { listedTools } from './visible/equipment.ts';
import { withGroups } from './visible/groups-on-page.ts';
import { pageDrafts } from './visible/several-recipes.ts';
import { findInPage, type PageRecipe } from './visible/visible-recipe.ts';

/** What a page says, nothing chosen yet. */
export type Gathered = {
  ok: true;
  facts: PageFacts;
  /** What the markup says, one draft for each recipe of each markup; without markup the visible recipes. */
  recipes: Draft[];
  /** What properties outside any recipe say, where no draft of the markup holds lines or steps. */
  loose: Draft | null;
  /** Keys of the tools that the page lists as its equipment. */
  tools: string[];
  /** The visible recipe, to be compared with the first one; null when there is none. */
  page: PageRecipe | null;
  /** The page is very large and not read to its end; the time was up before it was. */
  cut: boolean;
  late: boolean;
  /** Parts of reading that ended in an error. */
  failed: string[];
};

/** Nothing was found; `why` says what went wrong, '' when nothing did. */
export type NothingFound = { ok: false; why: string };

const NOT_FOUND: NothingFound = { ok: false, why: '' };

/** Milliseconds after which reading stops and returns what it has, when a clock is given. */
const TIME_BOX = 400;

/**
 * Tells whether the time for reading is used up, or that share of it. Shares: copying the page
 * ends early, so that time is left to make lines of the copy and to look through them.
 */
type Spent = (share?: number) => boolean;
const COPY_SHARE = 0.6;
const BLOCKS_SHARE = 0.9;

/** Every draft the page's markup gives. */
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
  return drafts;
}

function gather(document: Document, url: string | null, spent: Spent): Gathered {
  const stages = new Stages();
  const copy = () => copyTree(document, () => spent(COPY_SHARE));
  const tree = stages.run('copying the page', copy, emptyTree());
  const lines = () => blocksOf(tree.root, () => spent(BLOCKS_SHARE));
  const blocks = stages.run('making lines of the page', lines, []);
  const about = () => pageFactsOf(tree, blocks, url);
  const facts = stages.run('title and author', about, noFacts(url));
  const late = tree.late || spent(BLOCKS_SHARE);
  const marked = markedDrafts(document, tree, spent, stages);
  const loose = marked.every(isBare)
    ? stages.run('markup', () => readLooseProperties(tree), null)
    : null;
  // What was found by then is short enough to be looked through, late or not.
  const page = stages.run('the visible page', () => findInPage(blocks), null);
  const isMarked = marked.length > 0 || loose !== null;
  const found = isMarked
    ? marked
    : stages.run('the visible page', () => pageDrafts(blocks, page), []);
  const grouped = (draft: Draft) => stages.run('groups', () => withGroups(draft, blocks), draft);
  return {
    ok: true,
    facts,
    recipes: found.map(grouped),
    loose: loose && grouped(loose),
    page,
    tools: [...listedTools(blocks)],
    cut: tree.cut,
    late,
    failed: stages.failed,
  };
}

/**
 * Gathers all that a page says of its recipes. Never throws: an error nobody foresaw ends the stage it
 * happens in, and a note names that stage.
 * @param document the page; only read, never changed
 * @param options.url address of the page, used when it names no canonical one
 * @param options.elapsedMs milliseconds since reading began; when given, reading ends after 400
 */
export function gatherPage(
  document: Document,
  options: { url?: string; elapsedMs?: () => number } = {},
): Gathered | NothingFound {
  const { elapsedMs } = options;
  const spent = elapsedMs ? (share = 1) => elapsedMs() > TIME_BOX * share : () => false;
  try {
    const gathered = gather(document, options.url ?? null, spent);
    return gathered.recipes.length > 0 || gathered.loose ? gathered : NOT_FOUND;
  } catch {
    return NOT_FOUND;
  }
}
