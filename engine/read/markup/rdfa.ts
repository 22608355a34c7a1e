/** Reads recipes marked up in RDFa Lite. */
import { attribute, type Tree } from '../document/tree.ts';
import type { Draft } from '../draft.ts';
import { isRecipeType } from './json-ld-recipes.ts';
import { draftOfItem, RDFA } from './microdata.ts';

/** Recipe items of the page in RDFa Lite (`typeof`, `property`), page order. */
export function readRdfa(tree: Tree): Draft[] {
  return tree.marked
    .filter((node) => isRecipeType(attribute(node, 'typeof').split(/\s+/)))
    .slice(0, 30)
    .map((item) => draftOfItem(item, tree, RDFA));
}
