/** A finished adaptation, in formats other tools and people read. */

export { toMarkdown } from './markdown.ts';
export { toText } from './plain-text.ts';
export { CSV_COLUMNS, toCsv } from './table.ts';
export { toJsonLd } from './web-recipe.ts';
