/** The shape of a file in `data/` that has the words of steps. Only the tests run it: the files are trusted in the browser. */
import * as z from 'zod';

/** A spoon's name: the same for one and many, or both. */
const Spoon = z.union([z.string(), z.tuple([z.string(), z.string()])]);

export const WordsFile = z.strictObject({
  and: z.string(),
  /** Before what stands for an ingredient now: 'Zucker (jetzt Allulose)'. */
  now: z.string(),
  leaveOut: z.string(),
  /** In brackets behind a word: what it is now, and what is not to be done with it. */
  brackets: z.strictObject({
    /** Starts of names (patterns) and what stands between grams and them; the first that fits counts. */
    of: z.array(z.tuple([z.string(), z.string()])),
    /** A thing made first of `{list}`. */
    made: z.string(),
    /** Stand-ins, `{list}`, that go in when the rest has boiled. */
    late: z.string(),
    unpeeled: z.string(),
    /** Pattern of words in front of a name that mean a part of it. */
    share: z.string(),
    /** Pattern of words for peeling. */
    peel: z.string(),
  }),
  units: z.strictObject({ tsp: Spoon, tbsp: Spoon, about: z.string() }),
  /** Patterns of titles of small bakes that are many, and of a bake that is one. */
  bakes: z.strictObject({ many: z.string(), one: z.string() }),
  /** Sentences and parts of them, with `{grams}` or `{list}`. */
  reserve: z.string(),
  someWater: z.string(),
  someLiquid: z.string(),
  mixWater: z.string(),
  times: z.string(),
  /** 'About', before the stated time. */
  asLong: z.string(),
  additions: z.strictObject({ dry: z.string(), moist: z.string(), dish: z.string() }),
  /** What became of an ingredient, in a reason: `{new}` and `{old}`. */
  changes: z.strictObject({
    instead: z.string(),
    partly: z.string(),
    less: z.string(),
    more: z.string(),
    none: z.string(),
  }),
  /** Handling of what a swap brings: `{list}`, `{old}` and `{method}`; the reason with `{old}`. */
  swaps: z.strictObject({ instead: z.string(), partly: z.string(), why: z.string() }),
  additionWhy: z.string(),
  /** A food that no step names: `{food}`, and `{old}` that it stands in for. */
  unnamed: z.strictObject({ alone: z.string(), instead: z.string() }),
  /** Told beside an oven that is lit before a dough has rested, and why. */
  lateOven: z.strictObject({ text: z.string(), why: z.string() }),
  /** Flavourings, `{list}`, of an icing made by half. */
  halfToo: z.string(),
  /** How much longer a bake takes in a cooler oven: `{minutes}`. */
  longerBake: z.string(),
  /** More pieces shaped, or more portions served, than the page makes: `{now}` and `{was}`. */
  recut: z.strictObject({
    /** Patterns of what stands before a number of pieces, and of how the words for them begin: 'in 12 Stücke'. */
    into: z.string(),
    nouns: z.string(),
    pieces: z.string(),
    portions: z.string(),
    /** How many of all pieces one serving is. */
    share: z.string(),
    /** What fills a plate that is served smaller. */
    beside: z.string(),
    /** The same of a plate with protein enough. */
    leaves: z.string(),
    lighter: z.string(),
    why: z.string(),
    /** Why it is told where the plates are as many. */
    less: z.string(),
  }),
  /** What stands on ingredient lines; eggs as one and many. */
  lines: z.strictObject({
    trimmed: z.string(),
    shelled: z.string(),
    egg: z.tuple([z.string(), z.string()]),
    white: z.tuple([z.string(), z.string()]),
    yolk: z.tuple([z.string(), z.string()]),
    /** Water that is held back, with `{grams}`. */
    held: z.string(),
    /** In brackets behind what may be left out. */
    optional: z.string(),
  }),
  /** Stems of the method's words and what they mean in English, so that steps find their places. */
  keys: z.array(z.tuple([z.string(), z.string()])),
  /** By id of a cue: step it is for, phrase that contradicts the new foods (patterns), and what to say. */
  amends: z.record(z.string(), z.array(z.tuple([z.string(), z.string(), z.string()]))).default({}),
  /** Texts of cues and warnings by their id. */
  steps: z.record(z.string(), z.string()),
});
export type WordsFile = z.infer<typeof WordsFile>;
/** As it stands in a file, where defaults may be left out. */
export type WrittenWords = z.input<typeof WordsFile>;
