/** Reads the command line into a job, or says what is wrong with it. */
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Allergen, DEFAULT_GOALS, type Goals, WAYS } from '../model.ts';
import { encodingOf } from './decode-page.ts';

export const VERBS = ['read', 'lines', 'tally', 'adapt'] as const;
export type Verb = (typeof VERBS)[number];

export interface Job {
  verb: Verb;
  files: string[];
  /** A file that lists files, or '-' for standard input. */
  filesFrom: string | null;
  json: boolean;
  url: string | null;
  /** The pages' encoding as their server named it. */
  charset: string | null;
  goals: Goals;
  /** Whether reworked recipes come with their curve of net carbs against closeness. */
  frontier: boolean;
  /** Pages worked at the same time. */
  threads: number;
  /** Seconds after which a page is given up. */
  limitSeconds: number;
  /** A file of package labels that take part in matching and planning. */
  ownFoods: string | null;
}

/** Own choice: a page takes some hundredths of a second. */
const LIMIT_SECONDS = 20;

export const USAGE = `usage: npm run engine -- VERB [FILE...] [options]

  read FILE...    the recipe a page holds
  lines           ingredient lines on standard input, understood and weighed
  tally FILE...   what a serving costs
  adapt FILE...   the recipe reworked to the budget

  --json              JSON lines instead of text
  --files-from LIST   file names, one a line ('-': standard input)
  --url ADDRESS       the page's address, when the page does not say it
  --charset NAME      the pages' encoding, when their server named one
  --jobs N            pages at a time (default: as many as the machine has cores)
  --limit SECONDS     how long one page may take (default ${LIMIT_SECONDS})
  --budget GRAMS      net carbs of one serving (adapt; default 15)
  --frontier          with the curve of net carbs against closeness (adapt --json)
  --servings N        servings to reckon with
  --net-carbs us|eu   how carbohydrate is stated (default us)
  --avoid LIST        allergens not to bring in: ${Allergen.options.join(', ')}
  --way ${WAYS.join('|')}
                      that way instead of the recommended one (adapt)
  --own-foods FILE    your packages: a JSON array of labels (tally, adapt)

exit status: 0 all done, 1 some failed, 2 wrong usage`;

/** Everyday words for allergens, beside the model's own. */
const ALLERGEN_WORDS: Record<string, Allergen[]> = {
  nuts: ['tree nuts'],
  nut: ['tree nuts'],
  'tree nut': ['tree nuts'],
  peanuts: ['peanut'],
  eggs: ['egg'],
  dairy: ['milk'],
  soya: ['soy'],
  shellfish: ['crustaceans', 'molluscs'],
};

/** Wrong usage; the message says which word and what would be right. */
export class UsageError extends Error {}

function positiveNumber(name: string, text: string | undefined, least: number): number | null {
  if (text === undefined) return null;
  const value = Number(text);
  if (text.trim() === '' || !Number.isFinite(value) || value < least) {
    throw new UsageError(`--${name} takes a number of at least ${least}, not '${text}'`);
  }
  return value;
}

function allergens(text: string | undefined): Allergen[] {
  const words = (text ?? '').split(',').map((word) => word.trim().toLowerCase());
  const found = words.filter(Boolean).flatMap((word) => {
    const known = Allergen.options.filter((option) => option === word);
    const read = known.length > 0 ? known : ALLERGEN_WORDS[word];
    if (!read) throw new UsageError(`--avoid does not know '${word}'`);
    return read;
  });
  return [...new Set(found)];
}

function region(text: string | undefined): 'us' | 'eu' {
  if (text === undefined || text === 'us') return 'us';
  if (text === 'eu') return 'eu';
  throw new UsageError(`--net-carbs takes us or eu, not '${text}'`);
}

function way(text: string | undefined): Goals['way'] {
  if (text === undefined) return 'recommended';
  const known = WAYS.find((one) => one === text);
  if (!known) throw new UsageError(`--way takes ${WAYS.join(', ')}, not '${text}'`);
  return known;
}

function split(argv: readonly string[]) {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        json: { type: 'boolean', default: false },
        frontier: { type: 'boolean', default: false },
        'files-from': { type: 'string' },
        url: { type: 'string' },
        charset: { type: 'string' },
        jobs: { type: 'string' },
        limit: { type: 'string' },
        budget: { type: 'string' },
        servings: { type: 'string' },
        'net-carbs': { type: 'string' },
        avoid: { type: 'string' },
        way: { type: 'string' },
        'own-foods': { type: 'string' },
      },
    });
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
}

/** @throws {UsageError} when the words make no job. */
export function readArguments(argv: readonly string[]): Job {
  const { values, positionals } = split(argv);
  const [word, ...files] = positionals;
  const verb = VERBS.find((known) => known === word);
  if (!verb) throw new UsageError(word ? `there is no verb '${word}'` : 'which verb?');
  const filesFrom = values['files-from'] ?? null;
  if (verb === 'lines' && (files.length > 0 || filesFrom !== null)) {
    throw new UsageError('lines reads standard input and takes no files');
  }
  if (verb !== 'lines' && files.length > 0 === (filesFrom !== null)) {
    throw new UsageError(`${verb} takes files, or --files-from LIST`);
  }
  const goals: Goals = {
    ...DEFAULT_GOALS,
    budgetG: positiveNumber('budget', values.budget, 0) ?? DEFAULT_GOALS.budgetG,
    servings: positiveNumber('servings', values.servings, 0.01),
    rule: { ...DEFAULT_GOALS.rule, region: region(values['net-carbs']) },
    avoid: allergens(values.avoid),
    way: way(values.way),
  };
  const charset = values.charset ?? null;
  if (charset !== null && encodingOf(charset) === null) {
    throw new UsageError(`--charset does not know '${charset}'`);
  }
  const ownFoods = values['own-foods'] ?? null;
  if (ownFoods !== null && verb !== 'tally' && verb !== 'adapt') {
    throw new UsageError(`--own-foods goes with tally and adapt, not with ${verb}`);
  }
  const threads = Math.floor(positiveNumber('jobs', values.jobs, 1) ?? availableParallelism());
  const limitSeconds = positiveNumber('limit', values.limit, 0.01) ?? LIMIT_SECONDS;
  const { json, frontier, url = null } = values;
  const pages = { files, filesFrom, url, charset, threads, limitSeconds };
  return { verb, json, frontier, ...pages, goals, ownFoods };
}
