/** Puts steps and sentences into a method where they belong. */
import type { RewrittenStep } from '../../model.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import { capital } from '../naming/method-names.ts';
import { kneadApart } from '../parts/knead-apart.ts';
import { literal } from '../wording/name-patterns.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';

/** Each text once, where it stands first; what belongs to one sentence stands beside each of them. */
function saidOnce(insertions: readonly Insertion[]): Insertion[] {
  const said = new Set<string>();
  return insertions
    .toSorted((a, b) => a.at - b.at)
    .filter(({ step, each = false }) => each || (!said.has(step.after) && said.add(step.after)));
}

const joinedWhy = (a: string | null, b: string | null): string | null =>
  a === null || b === null || a.includes(b) ? (a ?? (b === '' ? null : b)) : `${a} ${b}`;

/** The text with words in brackets behind the first of some names, or in the bracket where the name stands; null where none of them is said. */
function withBracket(text: string, names: readonly string[], words: string): string | null {
  if (names.length === 0) return null;
  const found = new RegExp(names.map(literal).join('|'), 'i').exec(text);
  if (found === null) return null;
  const end = found.index + found[0].length;
  const before = text.slice(0, end);
  const isWithin = before.lastIndexOf('(') > before.lastIndexOf(')');
  return `${before}${isWithin ? `, ${words}` : ` (${words})`}${text.slice(end)}`;
}

/** What was meant for a bracket, where its name is not said: a sentence of its own. */
const asSentence = (text: string, [name]: readonly string[]): string =>
  name === undefined ? text : `${capital(name)}: ${text}.`;

/** 'Bake for 8 minutes; cool', 'bake 12 minutes, then let it cool': where it comes out. */
const COMES_OUT =
  /^(?<bakes>.*\bbake\b[^.]*?\d[^.]*?)(?:;|,? and(?: then)?|,? then)\s(?<out>(?:(?:let|allow)\b[^.]{0,40}\bcool|cool|remove|transfer)\b.*)$/is;
const IN_OVEN = /\b(?:look after|browns fast|is done|are done|cover the top|cooler oven)\b/i;

/** The text with what follows a bake as a sentence of its own, where something is told of the bake. */
function withBakeApart(text: string, behind: number, told: string): string {
  const sentence = sentencesOf(text)[behind] ?? '';
  const { bakes, out } = COMES_OUT.exec(sentence)?.groups ?? {};
  if (bakes === undefined || out === undefined || !IN_OVEN.test(told)) return text;
  return text.replace(sentence, () => `${bakes}. ${capital(out)}`);
}

/** What is told between mixing and kneading. */
const RESTS = /\bdough comes together\b/i;

/** The text with the kneading as a sentence of its own, where a rest is told before it; null where that is not so. */
function withKneadApart(
  text: string,
  behind: number,
  told: string,
): { page: string; behind: number } | null {
  const sentences = sentencesOf(text);
  const at = [behind, behind + 1].find((one) => kneadApart(sentences[one] ?? '') !== null);
  const sentence = sentences[at ?? -1] ?? '';
  const apart = kneadApart(sentence);
  if (at === undefined || apart === null || !RESTS.test(told)) return null;
  return { page: text.replace(sentence, () => apart), behind: at };
}

/** A step with sentences put in, the last of them first so that the places of the others stay right. */
function withSentences(step: RewrittenStep, sentences: readonly Insertion[]): RewrittenStep {
  let now = step;
  for (const { behind, step: added, inBracketsOf = [] } of sentences
    .toReversed()
    .toSorted((a, b) => (b.behind ?? 0) - (a.behind ?? 0))) {
    const kneaded = withKneadApart(now.after, behind ?? 0, added.after);
    const place = kneaded?.behind ?? behind ?? 0;
    const page = kneaded?.page ?? withBakeApart(now.after, place, added.after);
    const after =
      withBracket(page, inBracketsOf, added.after) ??
      withSentence(page, place, asSentence(added.after, inBracketsOf));
    now = { ...now, after, change: 'changed', why: joinedWhy(now.why, added.why) };
  }
  return now;
}

/** A step of which nothing is left to do, in English or with a language's word for what is left out. */
const isEmptied = (text: string, leaveOut: string | null): boolean =>
  /^Skip this step:/.test(text) ||
  (leaveOut !== null && new RegExp(`^[^.:]+: ${literal(leaveOut)}\\.$`, 'u').test(text));

/** 'Meanwhile', where the page's step begins so and what is left of it does not. */
function lostLead(own: RewrittenStep | undefined): string | null {
  const [lead = null] = /^(?:meanwhile|in the meantime)\b/i.exec(own?.before ?? '') ?? [];
  return lead === null || own?.after.startsWith(lead) === true ? null : lead;
}

const afterLead = (lead: string, text: string): string =>
  `${lead}, ${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** A step by which a food went into the dish, in English. */
const PUTS_IN =
  /^(?:(?:then|now|next|finally),? )?(?:add|stir in|drop in|toss in|tip in|mix in)\b/i;
/** Handling that says itself when the food goes in. */
const GOES_IN = /\b(?:add|stir|toss|mix|fold|pour|serve|top|put)\b(?! (?:the )?(?:salt|oil))/i;

/** Handling in place of a step that put the food in: it still has to go in. */
const withEntry = (own: RewrittenStep, told: string): string =>
  PUTS_IN.test(own.before ?? '') && !GOES_IN.test(told)
    ? `${told} Then add to the rest and heat through.`
    : told;

/** A step of the page that tells another handling now. */
const takingOver = (own: RewrittenStep, instead: RewrittenStep): RewrittenStep => ({
  ...own,
  after: withEntry(own, instead.after),
  change: 'changed',
  why: joinedWhy(instead.why, own.why),
});

/** An emptied step with the handling that was to stand among its sentences. */
function handlingIn(own: RewrittenStep, here: readonly Insertion[]): RewrittenStep {
  const [first, ...more] = here
    .filter(({ behind, rank }) => behind !== null && rank === RANKS.use)
    .map(({ step }) => step);
  if (first === undefined) return own;
  const after = [first, ...more].map((step) => step.after).join(' ');
  return takingOver(own, { ...first, after });
}

/** The steps with what is put in before each, or within; a heading stays with its first own step. */
export function withInsertions(
  steps: readonly RewrittenStep[],
  insertions: readonly Insertion[],
  leaveOut: string | null = null,
): RewrittenStep[] {
  const once = saidOnce(insertions);
  const result: RewrittenStep[] = [];
  for (let at = 0; at <= steps.length; at += 1) {
    const own = steps[at];
    const here = once.filter((one) => one.at === at).sort((a, b) => a.rank - b.rank);
    const lead = lostLead(own);
    const alone = here.filter(({ behind }) => behind === null);
    for (const [index, one] of alone.entries()) {
      const { rank, inBracketsOf = [] } = one;
      const said = asSentence(one.step.after, inBracketsOf);
      const leads = lead !== null && index === 0 && rank === RANKS.use;
      const step = { ...one.step, after: leads ? afterLead(lead, said) : said };
      // What follows a step stays under its heading.
      const section = (rank === 0 ? steps[at - 1] : (own ?? steps[at - 1]))?.section ?? null;
      result.push({ ...step, section });
    }
    if (own === undefined) continue;
    const instead = isEmptied(own.after, leaveOut) ? result.at(-1) : undefined;
    if (instead?.before === null && alone.length > 0) {
      result[result.length - 1] = takingOver(own, instead);
      continue;
    }
    if (isEmptied(own.after, leaveOut)) {
      result.push(handlingIn(own, here));
      continue;
    }
    result.push(
      withSentences(
        own,
        here.filter(({ behind }) => behind !== null),
      ),
    );
  }
  return result;
}
