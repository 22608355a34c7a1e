import type { Draft } from './draft.ts';
import { isRecipeType } from './jsonld.ts';
import { draftOfItem, RDFA } from './microdata.ts';
import { attribute, type Tree } from './tree.ts';

/** Recipe items of the page in RDFa Lite (`typeof`, `property`), page order. */
export function readRdfa(tree: Tree): Draft[] {
  return tree.marked
    .filter((node) => isRecipeType(attribute(node, 'typeof').split(/\s+/)))
    .slice(0, 30)
    .map((item) => draftOfItem(item, tree, RDFA));
}
