/** A finished adaptation, in formats other tools and people read. */
export { CSV_COLUMNS, toCsv } from './csv.ts';
export { toJsonLd } from './json-ld.ts';
export { toMarkdown } from './markdown.ts';
export { toText } from './text.ts';
