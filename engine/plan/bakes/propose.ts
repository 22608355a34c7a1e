/** What to change after a bake. */
import { foodTable } from '../../foods/index.ts';
import type { Adaptation, Adjustment, Food, Goals, Lever, Role } from '../../model.ts';
import { type BakeMeasures, bakeFigures } from './bake-values.ts';
import {
  allHold,
  filled,
  type JudgedCause,
  judgedCauses,
  type Standing,
  type Words,
  wordsOf,
} from './causes.ts';
import { type Change, CONFLICTS, FAILURES, type Row, suitsFamily } from './failure-table.ts';
import { type BakeFigures, FIGURE_NAMES } from './value-names.ts';

/** What is known of the bake beside the plan. */
export interface BakeContext extends BakeMeasures {
  /** The user's own foods, as the plan was made with. */
  ownFoods?: readonly Food[];
}

interface Bake {
  adaptation: Adaptation;
  figures: BakeFigures;
  words: Words;
  /** The reworked method, for what it says already. */
  method: string;
}

/** One row's proposal with the standing of its cause, before rows are weighed against each other. */
interface Proposal {
  adjustment: Adjustment;
  standing: Standing;
  row: Row;
}

const PREFIX: Record<Standing, string> = {
  likely: 'Likely here',
  possible: 'Possible',
  unlikely: 'Less likely',
};

/** Rounds of the same change before it is held to be no answer: own choice. */
const MOST_ROUNDS = 3;
/** A change smaller than this is not worth asking for: own choice. */
const LEAST = { factor: 0.05, shiftPct: 0.1 };

const LEVER_WORDS: Record<Lever, string> = {
  water: 'water',
  binder: 'binder',
  gluten: 'gluten',
  egg: 'egg',
  'egg-white': 'egg white',
  fat: 'fat',
  salt: 'salt',
  yeast: 'yeast',
  'yeast-food': 'sugar for the yeast',
  leavening: 'leavening',
  acid: 'acid',
  sugar: 'sweetness',
  'insoluble-fibre': 'insoluble fibre',
  'resistant-starch': 'resistant starch',
  'erythritol-share': 'erythritol',
  'intense-share': 'strong sweetener',
  allulose: 'allulose',
  thickener: 'thickener',
  method: 'method',
};

/** Lines a lever acts on, to see whether the user has pinned all of them. */
const LEVER_ROLE: Partial<Record<Lever, Role>> = {
  water: 'liquid',
  egg: 'egg',
  fat: 'fat',
  salt: 'salt',
  yeast: 'yeast',
  leavening: 'leavening',
};

/** The food a lever would bring when there is none of it. */
const LEVER_FOOD: Partial<Record<Lever, string>> = {
  gluten: 'vital-wheat-gluten',
  'resistant-starch': 'resistant-wheat-starch',
  'egg-white': 'egg-white',
  allulose: 'allulose',
};

const readBake = (adaptation: Adaptation, context: BakeContext): Bake => {
  const foods = foodTable(context.ownFoods);
  const { figures, foods: served } = bakeFigures(adaptation, foods, context, FIGURE_NAMES);
  return {
    adaptation,
    figures,
    words: wordsOf(figures, { ...served }),
    method: adaptation.steps.map(({ after }) => after).join('\n'),
  };
};

function isPinned(lever: Lever, { plan, goals }: Adaptation): boolean {
  const role = LEVER_ROLE[lever];
  const items = plan.items.filter((item) => item.role === role && item.grams > 0);
  return items.length > 0 && items.every(({ key }) => goals.pinned.includes(key));
}

/** Whether the user's wishes let a lever's food in. */
function mayBring(lever: Lever, goals: Goals, { plan }: Adaptation): boolean {
  const id = LEVER_FOOD[lever];
  if (id === undefined || plan.items.some(({ foodId, grams }) => foodId === id && grams > 0))
    return true;
  return !goals.excludedFoods.includes(id) && (goals.pantry?.includes(id) ?? true);
}

/** Factor and shift of a change in this bake; null when it comes to nothing. */
function sizeOf(
  change: Change,
  figures: BakeFigures,
): { factor: number | null; shiftPct: number | null } | null {
  if (change.lever === 'method') return { factor: null, shiftPct: null };
  const { shiftBy, factorTo } = change;
  const by = shiftBy === undefined ? null : figures[shiftBy.figure];
  const shift =
    shiftBy === undefined || by === null
      ? (change.shift ?? null)
      : Math.max(-shiftBy.most, Math.min(shiftBy.most, by * shiftBy.times));
  const now = factorTo === undefined ? null : figures[factorTo.figure];
  const factor =
    factorTo === undefined || now === null || now <= 0
      ? (change.factor ?? null)
      : Math.min(1, factorTo.most / now);
  const size = {
    factor: factor === null ? null : Math.round(factor * 100) / 100,
    shiftPct: shift === null ? null : Math.round(shift * 10) / 10,
  };
  const works =
    (size.factor !== null && Math.abs(size.factor - 1) >= LEAST.factor) ||
    (size.shiftPct !== null && Math.abs(size.shiftPct) >= LEAST.shiftPct);
  return works ? size : null;
}

/** The id of the next round of a change, or null when it has been tried often enough. */
function roundId(id: string, lever: Lever, accepted: readonly Adjustment[]): string | null {
  const rounds = accepted.filter((one) => one.id === id || one.id.startsWith(`${id}.`)).length;
  if (rounds === 0) return id;
  // Words do not change by being said twice.
  return lever === 'method' || rounds >= MOST_ROUNDS ? null : `${id}.${rounds + 1}`;
}

function isOpen(change: Change, { adaptation, figures, method }: Bake): boolean {
  const { goals, plan } = adaptation;
  if (change.in !== undefined && !suitsFamily(change.in, plan.family.id)) return false;
  if (!allHold(change.if, figures)) return false;
  if (change.notAvoid !== undefined && goals.avoid.includes(change.notAvoid)) return false;
  if (change.unlessSaid !== undefined && new RegExp(change.unlessSaid, 'i').test(method))
    return false;
  return !isPinned(change.lever, adaptation) && mayBring(change.lever, goals, adaptation);
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** What a row proposes for this bake, likeliest cause first. */
function proposalsOf(row: Row, bake: Bake): Proposal[] {
  const causes = judgedCauses(row, bake.figures, bake.words);
  const found = row.adjust.flatMap((change, at): { proposal: Proposal; rank: number }[] => {
    const cause = causes.find(({ id }) => change.cause.includes(id));
    const size = sizeOf(change, bake.figures);
    const { goals } = bake.adaptation;
    const id = roundId(`${row.id}.${at + 1}`, change.lever, goals.adjustments);
    const text = filled(change.text, bake.words);
    if (!cause || !size || id === null || text === null || !isOpen(change, bake)) return [];
    const { lever } = change;
    const why = whyText(row, cause);
    const adjustment = { id, symptom: row.id, lever, ...size, text, why, source: row.source };
    return [
      { proposal: { adjustment, standing: cause.standing, row }, rank: causes.indexOf(cause) },
    ];
  });
  return found.sort((a, b) => a.rank - b.rank).map(({ proposal }) => proposal);
}

const whyText = (row: Row, { standing, text }: JudgedCause): string =>
  `${row.label}. ${PREFIX[standing]}: ${text}.`;

/** -1 for less of the lever, 1 for more, 0 for words only. */
function directionOf({ factor, shiftPct }: Adjustment): number {
  if (factor !== null && factor !== 1) return factor < 1 ? -1 : 1;
  return shiftPct === null ? 0 : Math.sign(shiftPct);
}

const strongerFirst = (a: Adjustment, b: Adjustment): number =>
  Math.abs(Math.log(b.factor ?? 1)) - Math.abs(Math.log(a.factor ?? 1)) ||
  Math.abs(b.shiftPct ?? 0) - Math.abs(a.shiftPct ?? 0);

/** Words in place of changes that pull one lever both ways. */
function contradiction(lever: Lever, proposals: readonly Proposal[]): Adjustment {
  const rows = FAILURES.filter((one) => proposals.some(({ row }) => row === one));
  const asking = (direction: number): string =>
    [
      ...new Set(
        proposals
          .filter(({ adjustment }) => directionOf(adjustment) === direction)
          .map(({ row }) => `“${row.label.toLowerCase()}”`),
      ),
    ].join(', ');
  const known = CONFLICTS.find(
    (one) => one.lever === lever && one.pair.every((id) => rows.some((row) => row.id === id)),
  );
  const word = LEVER_WORDS[lever];
  return {
    id: `${rows.map(({ id }) => id).join('+')}.${lever}`,
    symptom: rows.map(({ id }) => id).join('+'),
    lever: 'method',
    factor: null,
    shiftPct: null,
    text: known?.text ?? sentence(`leave the ${word} as it is, and change one thing at a time`),
    why:
      known?.why ??
      `Against “less ${word}” for ${asking(-1)} stands “more ${word}” for ${asking(1)}: one bake cannot tell which.`,
    source: 'own choice',
  };
}

/** One change a lever: the strongest where rows agree, words where they pull apart. */
function settled(proposals: readonly Proposal[]): Adjustment[] {
  const done = new Set<Lever>();
  return proposals.flatMap(({ adjustment }): Adjustment[] => {
    const { lever } = adjustment;
    if (lever === 'method') return [adjustment];
    if (done.has(lever)) return [];
    done.add(lever);
    const same = proposals.filter((one) => one.adjustment.lever === lever);
    const directions = new Set(same.map((one) => directionOf(one.adjustment)));
    if (directions.size > 1) return [contradiction(lever, same)];
    const [strongest = adjustment] = same.map((one) => one.adjustment).sort(strongerFirst);
    return [strongest];
  });
}

const ORDER: readonly Standing[] = ['likely', 'possible', 'unlikely'];

/**
 * Changes to propose after a bake went wrong. `symptomIds` come from {@link bakeSymptoms}; those that
 * are unknown or do not suit the dish are passed over. Likeliest first, by the plan's own figures;
 * `why` names the cause and the figure. Nothing is proposed that the dish has none of, that the user
 * avoids or has pinned, or that the method says already; where symptoms pull one lever both ways the
 * answer is in words. A change accepted before comes back under a new id, at most three times. Rows on
 * how the eater felt propose words only or less of what upsets, never a dose. Pure; never throws.
 */
export function proposeAdjustments(
  adaptation: Adaptation,
  symptomIds: readonly string[],
  context: BakeContext = {},
): Adjustment[] {
  const bake = readBake(adaptation, context);
  const family = adaptation.plan.family.id;
  const rows = FAILURES.filter(
    ({ id, in: words }) => symptomIds.includes(id) && suitsFamily(words, family),
  );
  const proposals = rows.flatMap((row) => proposalsOf(row, bake));
  const accepted = new Set(adaptation.goals.adjustments.map(({ id }) => id));
  return settled(
    proposals.sort((a, b) => ORDER.indexOf(a.standing) - ORDER.indexOf(b.standing)),
  ).filter(({ id }) => !accepted.has(id));
}

/**
 * What may have gone wrong, likeliest first, in plain words with the plan's figures: `likely` when
 * the figures point to it, else only possible. Empty for a symptom that does not suit the dish.
 */
export function likelyCauses(
  adaptation: Adaptation,
  symptomId: string,
  context: BakeContext = {},
): { text: string; likely: boolean }[] {
  const row = FAILURES.find(({ id }) => id === symptomId);
  if (row === undefined || !suitsFamily(row.in, adaptation.plan.family.id)) return [];
  const bake = readBake(adaptation, context);
  return judgedCauses(row, bake.figures, bake.words)
    .filter(({ standing }) => standing !== 'unlikely')
    .map(({ text, standing }) => ({ text: sentence(text), likely: standing === 'likely' }));
}
