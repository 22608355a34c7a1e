/** Pages that are never reworked, such as food for babies or jars for the shelf: only their figures are shown. */
import rows from '../data/left-alone.json' with { type: 'json' };
import { mentionsAny } from './word-search.ts';

interface LeftAloneRow {
  kind: string;
  title?: readonly string[];
  /** The same in other languages, by tag. */
  titleIn?: Readonly<Record<string, readonly string[]>>;
  method?: readonly string[];
  both?: boolean;
  why: string;
}

/** Pages do not always say their language, so the words of all are looked for. */
const ROWS: readonly LeftAloneRow[] = (rows as readonly LeftAloneRow[]).map((row) =>
  row.titleIn === undefined
    ? row
    : { ...row, title: [...(row.title ?? []), ...Object.values(row.titleIn).flat()] },
);

/** Scripts that the rewriting has no words for: an English line among them would help nobody. */
const UNWRITTEN = /[\u3040-\u30ff\u4e00-\u9fff]/gu;
/** Share of a method's letters from which it is written in one. Own choice. */
const UNWRITTEN_SHARE = 0.3;
const WHY_UNWRITTEN =
  'Chinese and Japanese recipes are not reworked: there are no words yet to write the changes in. Their figures are counted.';

function isUnwritten(text: string): boolean {
  const letters = text.match(/\p{L}/gu)?.length ?? 0;
  return (text.match(UNWRITTEN)?.length ?? 0) > letters * UNWRITTEN_SHARE;
}

/** Why a page of this title and method is not reworked, in a sentence, or null when it may be. */
export function whyLeftAlone(title: string, steps: readonly string[]): string | null {
  const method = steps.join('\n');
  if (isUnwritten(`${title}\n${method}`)) return WHY_UNWRITTEN;
  const row = ROWS.find((one) => {
    const titled = mentionsAny(one.title, title);
    const done = mentionsAny(one.method, method);
    return one.both === true ? titled && done : titled || done;
  });
  return row?.why ?? null;
}
