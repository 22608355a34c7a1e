/** What the page's own steps leave to do: nothing is cooked twice, nor left raw. */
import type { RewrittenStep } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { type Insertion, inserted, RANKS } from '../cues/insertion.ts';
import { capital, isMade, listOf, shortName } from '../naming/method-names.ts';
import { boiledOf } from '../steps/boils-as.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { leftToDo } from './done-by-page.ts';
import type { Handling } from './handling.ts';
import { BOILS } from './handling-place.ts';
import { stepOf } from './handling-step.ts';

/** Pasta or rice that the page's line had cooked already, and no step boils. */
export function cookedFirst(context: CueContext, texts: readonly string[]): [string, Insertion][] {
  if (context.words !== null) return [];
  return context.mentions.flatMap((mention): [string, Insertion][] => {
    const { ingredient, changed, newName } = mention;
    const [at] = context.course.named.get(ingredient.key) ?? [];
    // What stays of the page's own is cooked already.
    const boiled = (boiledOf(mention) ?? []).filter(
      ({ foodId }) => foodId !== ingredient.match?.foodId && !foodId.endsWith('-cooked'),
    );
    const said = `${ingredient.item.preparation ?? ''} ${ingredient.line.note ?? ''}`;
    if (!changed || newName === null || at === undefined || boiled.length === 0) return [];
    if (!/\bcooked\b/i.test(said) || texts.some((text) => BOILS.test(text))) return [];
    const list = listOf([...new Set(boiled.map(({ foodName }) => shortName(foodName)))]);
    const step = inserted(`Cook the ${list} as its packet says.`, 'It is bought dry.');
    return [[`cooked ${ingredient.key}`, { at, rank: RANKS.use, behind: -1, step }]];
  });
}

/** 'Drain, dry it in the pan' of what is in one pot: all of it, and what stays is there to be mashed already. */
const ofBoth = (method: string, { old }: Handling): string => {
  const [first = '', ...clauses] = method.split(/; (?=the )/);
  const own =
    shortName(old)
      .split(' ')
      .at(-1)
      ?.toLowerCase()
      .replace(/(?:es|s)$/, '') ?? '';
  const others = clauses.filter(
    (clause) => own === '' || !clause.toLowerCase().includes(`the ${own}`),
  );
  const text = [first.replace(/^drain, dry it\b/i, 'drain and dry all of it'), ...others].join(
    '; ',
  );
  return /[.!]$/.test(text) ? text : `${text}.`;
};

/** What a step of the page leaves to do, told behind its own sentences; null where it does nothing of it. */
export function besidePage(
  whole: Handling,
  context: CueContext,
  texts: readonly string[],
): Insertion | 'nothing' | null {
  if (context.words !== null) return null;
  const left = leftToDo(whole.method, whole.mention, texts);
  if (left === null) return null;
  if (left.method === '') return 'nothing';
  // What stays is in the same pot.
  const stays = whole.swap.keptGrams > 0;
  const method = stays ? ofBoth(left.method, whole) : left.method;
  // A mash is no thing of its own where the page boils and mashes it.
  const isMash = isMade(whole.mention?.newName ?? '');
  const dried = stays ? 'all of it' : isMash ? 'it' : undefined;
  const object = /^(?:drain and )?dry\b/i.test(method) ? dried : undefined;
  const { at, behind, ahead } = left;
  const spoken = { ...whole, spoken: capital(method), holds: [true], object };
  const step = stepOf(spoken, context, texts[at] ?? '');
  if (step === null) return 'nothing';
  const { after } = step;
  const told = ahead ? `Once drained, ${after.charAt(0).toLowerCase()}${after.slice(1)}` : after;
  return { at, behind, rank: RANKS.after, step: { ...step, after: told } };
}

const ONCE = /; (?=once the water boils\b)/i;

/** What is made ahead and cooked in the page's own pot: the making where it stands, the cooking in the step that cooks. */
export function cookedLater(
  put: Insertion,
  { mention, method }: Handling,
  { course }: CueContext,
  texts: readonly string[],
): { first: Insertion; last: Insertion } | null {
  const at = (course.named.get(mention?.ingredient.key ?? '') ?? []).find((one) => one >= put.at);
  const [making, cooking, ...more] = put.step.after.split(/;\s+/);
  if (at === undefined || making === undefined || cooking === undefined) return null;
  if (!ONCE.test(method) || more.length > 0) return null;
  const names = mention?.names ?? [];
  const behind = sentencesOf(texts[at] ?? '').findIndex((sentence) =>
    [...names, mention?.newName ?? ''].some(
      (name) => name !== '' && sentence.toLowerCase().includes(name.toLowerCase()),
    ),
  );
  const told = (after: string): RewrittenStep => ({ ...put.step, after });
  return {
    first: { ...put, step: told(`${making}.`) },
    last: { at, behind: Math.max(0, behind), rank: RANKS.after, step: told(capital(cooking)) },
  };
}
