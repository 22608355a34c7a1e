/** Whether the dish has what the warning is about: a cream without egg white makes no meringue. */
const hasNeeded = ({ needs }: Warning, { ingredients }: CueContext): boolean =>
  needs === undefined ||
  ingredients.some(({ match }) => match !== null && isListed(match.foodId, needs));

/** Whether a step, or the one before it, takes what a warning says is cut; true when no step names it. */
function isTakenNear({ cut }: Warning, { mentions, course }: CueContext, at: number): boolean {
  const steps = mentions
    .filter(({ ingredient, changed }) => changed && isListed(ingredient.match?.foodId ?? '', cut))
    .flatMap(({ ingredient }) => course.named.get(ingredient.key) ?? []);
  return steps.length === 0 || steps.some((step) => step === at || step === at - 1);
}

/** Warnings before steps that cannot work as written. */
import warnings from '../data/warnings.json' with { type: 'json' };
import { capital } from '../naming/method-names.ts';
import type { PartMethod } from '../parts/part-contexts.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { isFor } from './cue.ts';
import { type CueContext, keptShare } from './cue-context.ts';
import { fill, listIn, nameIn, reasonOf, textOf } from './cue-text.ts';
import { type Insertion, inserted, RANKS } from './insertion.ts';
import { isListed } from './listed-foods.ts';

interface Warning {
  id: string;
  /** Only in these dishes; in all when absent. */
  families?: string[];
  /** Tags and ids of foods of the original, one of which is cut to less than `kept` (0..1). */
  cut: string[];
  /** Tags and ids of foods, one of which stands in; any when absent. */
  by?: string[];
  kept: number;
  /** Ids of foods that make it work where they all stand in. */
  unlessBy?: string[];
  /** Tags and ids of foods, one of which the part must have had. */
  needs?: string[];
  words: string;
  /** The same of a dough or batter, where beaten whites only lighten it. */
  inDough?: string;
  /** The step, or the one before it, must take what is cut. */
  here?: boolean;
  /** Within the step, behind the sentence that fits. */
  inside?: boolean;
  /** Not where that step or a later one says this. */
  notThen?: string;
  /** What the title says instead, when no step does. */
  titled?: string;
  text: string;
  why: string;
  source: string;
}

/** Index of the sentence that fits; of a pattern that spans several, the last. */
function sentenceFitting(text: string, words: RegExp): number {
  const sentences = sentencesOf(text);
  const at = sentences.findIndex((sentence) => words.test(sentence));
  return at < 0 ? sentences.length - 1 : at;
}

/** Whether all that makes it work stands in already. */
const isMadeGood = ({ unlessBy }: Warning, others: readonly { foodId: string }[]): boolean =>
  unlessBy?.every((id) => others.some(({ foodId }) => foodId === id)) ?? false;

const wordsFor = ({ words, inDough }: Warning, { plan }: CueContext): RegExp =>
  new RegExp(inDough !== undefined && isFor(['doughs'], plan.family.id) ? inDough : words, 'i');

const saysLater = ({ notThen }: Warning, texts: readonly string[]): boolean =>
  notThen !== undefined && new RegExp(notThen, 'i').test(texts.join('\n'));

/** Warnings before steps that cannot work as written, because what they rest on is gone. */
export function warningsFor({ context, texts }: PartMethod): Insertion[] {
  const found: Insertion[] = [];
  for (const warning of warnings as Warning[]) {
    if (warning.families && !isFor(warning.families, context.plan.family.id)) continue;
    if (!hasNeeded(warning, context)) continue;
    const words = wordsFor(warning, context);
    const near = (at: number): boolean =>
      warning.here !== true || isTakenNear(warning, context, at);
    const step = texts.findIndex((text, at) => words.test(text) && near(at));
    const titled =
      warning.titled !== undefined && new RegExp(warning.titled, 'i').test(context.title);
    const at = step < 0 && titled ? 0 : step;
    if (at < 0 || saysLater(warning, texts.slice(at))) continue;
    const lost = context.mentions.find(
      (mention) =>
        mention.changed &&
        mention.role !== 'coating' &&
        (mention.role !== 'thickener' || warning.id === 'roux') &&
        isListed(mention.ingredient.match?.foodId ?? '', warning.cut) &&
        keptShare(mention) < warning.kept,
    );
    const { by: list } = warning;
    if (lost === undefined) continue;
    const own = lost.ingredient.match?.foodId;
    const others = lost.items
      .filter(({ foodId }) => foodId !== own)
      .toSorted((a, b) => b.grams - a.grams);
    // Where several stand in, the one there is most of decides what happens.
    const [main] = others;
    if (isMadeGood(warning, others)) continue;
    if (list !== undefined && (main === undefined || !isListed(main.foodId, list))) continue;
    const stands = (list === undefined ? others : others.slice(0, 1)).map((item) =>
      nameIn(item, context),
    );
    const stand = stands.length === 0 ? 'what is left' : listIn([...new Set(stands)], context);
    const text = fill(textOf(warning, context).replace('{stand}', stand), context);
    // What is said of a sentence follows it before anything that is told ahead of the next.
    const inside = warning.inside === true;
    found.push({
      at,
      rank: inside ? RANKS.after : RANKS.warning,
      behind: inside ? sentenceFitting(texts[at] ?? '', words) : null,
      step: inserted(capital(text), reasonOf(warning, context)),
    });
  }
  return found;
}
