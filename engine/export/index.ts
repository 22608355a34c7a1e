/** A finished adaptation, in formats other tools and people read. */

export { FIGURES_COLUMNS, toFiguresTable } from './figures-table.ts';
export { toPublishing } from './for-publishing.ts';
export { toMarkdown } from './markdown.ts';
export { toText } from './plain-text.ts';
export { CSV_COLUMNS, toCsv } from './table.ts';
export { toJsonLd } from './web-recipe.ts';
