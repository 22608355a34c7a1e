/** Reads recipes marked by class names: h-recipe and the older hRecipe. */
import { textOf } from '../document/element-text.ts';
import { attribute, classes, elements, type Leaf, type Tree } from '../document/tree.ts';
import { type Draft, emptyDraft, statementsOf } from '../draft.ts';
import { groupLines } from './ingredient-values.ts';
import { stepsOf } from './instruction-values.ts';
import { methodTexts, outermost, timeTexts } from './microdata.ts';

function withClass(below: readonly Leaf[], ...names: string[]): Leaf[] {
  for (const name of names) {
    const found = below.filter((node) => classes(node).includes(` ${name} `));
    if (found.length > 0) return found;
  }
  return [];
}

function draftOf(root: Leaf): Draft {
  const draft = emptyDraft('h-recipe');
  const below = [...elements(root)];
  const text = (node: Leaf | undefined): string | null => (node ? textOf(node) || null : null);
  draft.title = text(withClass(below, 'p-name', 'fn')[0]);
  draft.groups = groupLines(withClass(below, 'p-ingredient', 'ingredient').map(textOf));
  draft.steps = stepsOf(
    outermost(withClass(below, 'e-instructions', 'instructions')).flatMap(methodTexts),
  );
  draft.yields = statementsOf(withClass(below, 'p-yield', 'yield').map(textOf), 'markup');
  draft.author = text(withClass(below, 'p-author', 'author')[0]);
  const photo = withClass(below, 'u-photo', 'photo')[0];
  draft.image = photo ? attribute(photo, 'src') || null : null;
  draft.times.total = timeTexts(withClass(below, 'dt-duration', 'duration')[0]);
  return draft;
}

/** Recipes marked as h-recipe or the older hRecipe, page order. Source: microformats.org h-recipe. */
export function readHRecipe(tree: Tree): Draft[] {
  return tree.marked
    .filter((node) => / (?:h-recipe|hrecipe) /.test(classes(node)))
    .slice(0, 30)
    .map(draftOf);
}
