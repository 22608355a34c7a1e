/** What one source of a page says about a recipe, before sources are joined. */
import type { IngredientGroup, Markup, Note, StatedYield, Step } from '../model.ts';

/** A yield statement and where it stands. */
export type YieldStatement = { text: string; from: StatedYield['from'] };

/** Texts that state a time, the most trusted first: 'PT20M', '1 hour 20 minutes'. */
export type Times = { prep: string[]; cook: string[]; total: string[] };

/** What one source of the page says about a recipe, before sources are merged. */
export type Draft = {
  markup: Markup;
  title: string | null;
  url: string | null;
  language: string | null;
  author: string | null;
  image: string | null;
  /** Yield statements as written, cleaned. */
  yields: YieldStatement[];
  /** What else the page says of the yield, less trusted. */
  otherYields: YieldStatement[];
  groups: IngredientGroup[];
  /** The ingredients are one run-together text or a mere summary: prefer any real list. */
  glued: boolean;
  steps: Step[];
  times: Times;
  nutrition: Record<string, string> | null;
  /** Of the visible page, under no heading that says so: its words must show that it is a recipe. */
  unsure: boolean;
};

/** Statements of a source's texts. */
export function statementsOf(
  texts: readonly string[],
  from: StatedYield['from'],
): YieldStatement[] {
  return texts.map((text) => ({ text, from }));
}

/** Times with nothing stated. */
export function noTimes(): Times {
  return { prep: [], cook: [], total: [] };
}

/** A draft with nothing in it. */
export function emptyDraft(markup: Markup): Draft {
  return {
    markup,
    title: null,
    url: null,
    language: null,
    author: null,
    image: null,
    yields: [],
    otherYields: [],
    groups: [],
    glued: false,
    steps: [],
    times: noTimes(),
    nutrition: null,
    unsure: false,
  };
}

/** All ingredient lines of a draft, groups flattened. */
export function linesIn(draft: { groups: readonly IngredientGroup[] }): string[] {
  return draft.groups.flatMap((group) => group.lines);
}

/** A note of the reader. */
export function readNote(code: string, text: string): Note {
  return { code, text, key: null };
}
