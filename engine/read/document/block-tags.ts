/** Names of elements that start a line of their own. */

const BLOCKS = new Set(
  'address article aside blockquote body br center dd details div dl dt fieldset figcaption figure footer form h1 h2 h3 h4 h5 h6 header hr html li main menu nav ol p pre section summary table tbody td tfoot th thead tr ul'.split(
    ' ',
  ),
);

/** True for elements that start a line of their own by the HTML rendering rules. */
export function isBlock(tag: string): boolean {
  return BLOCKS.has(tag);
}
