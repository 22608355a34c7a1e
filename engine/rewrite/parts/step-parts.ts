/** Which part of the dish each sentence of the method makes: crust or filling, cake or icing. */
import type { Plan, Recipe } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';
import { isNamedIn } from '../wording/name-patterns.ts';
import { partOfKey } from './part-of.ts';

/** Parts of one step: of the step as a whole, and of each of its sentences. Null when it cannot be told. */
export interface StepParts {
  whole: number | null;
  /** Whether its own heading says so. */
  headed: boolean;
  sentences: { end: number; part: number | null }[];
}

/** Words of headings that name no part. */
const EMPTY_WORDS = new Set(
  [
    'for the to make making prepare preparing and of your a an with in on homemade ingredients directions instructions method step',
    'für den die da dem der und pour le la l de du et voor het en van para el lo y per il i gli e a o do till til det och og zutaten ingrédient ingrediënten ingrediente ingredienti ingredienser',
  ].flatMap((words) => words.split(' ')),
);

const wordsOf = (text: string): string[] =>
  (text.toLowerCase().match(/\p{L}+/gu) ?? [])
    .map((word) => word.replace(/s$/, ''))
    .filter((word) => !EMPTY_WORDS.has(word) && !EMPTY_WORDS.has(`${word}s`));

/** Where sentences of a text end, the text's length last. */
function sentenceEnds(text: string): number[] {
  const ends = [...text.matchAll(/[.!;]\s+|\n+/g)].map((found) => found.index + found[0].length);
  return ends.at(-1) === text.length ? ends : [...ends, text.length];
}

interface PartWords {
  /** Words of the part's headings, by part. */
  headings: Set<string>[];
  /** Ingredients that only this part has, by part. */
  own: Mention[][];
}

/** What a method may call an ingredient, also for short: 'sugar' of icing sugar. */
const callsOf = ({ names, sharedHead }: Mention): string[] =>
  sharedHead === null ? names : [...names, sharedHead];

function partWords(plan: Plan, mentions: readonly Mention[]): PartWords {
  const partOf = (mention: Mention): number | null => partOfKey(plan, mention.ingredient.key);
  const headings = plan.parts.map(({ title }, at) => {
    const groups = mentions
      .filter((mention) => partOf(mention) === at)
      .flatMap(({ ingredient }) => ingredient.line.group ?? []);
    return new Set([title ?? '', ...groups].flatMap(wordsOf));
  });
  const shared = (word: string): boolean => headings.filter((one) => one.has(word)).length > 1;
  const unshared = headings.map((words) => new Set([...words].filter((word) => !shared(word))));
  const own = plan.parts.map((_, at) =>
    mentions.filter(
      (mention) =>
        partOf(mention) === at &&
        !mentions.some(
          (other) =>
            partOf(other) !== at && callsOf(other).some((name) => mention.names.includes(name)),
        ),
    ),
  );
  return { headings: unshared, own };
}

/** The one part whose heading shares a word with the text; null when none or several do. */
function byHeading(text: string, { headings }: PartWords): number | null {
  const words = wordsOf(text);
  const hits = headings.flatMap((heading, at) => (words.some((w) => heading.has(w)) ? [at] : []));
  return hits.length === 1 ? (hits[0] ?? null) : null;
}

/** 'To make the streusel, ...', 'For the icing: ...'. */
const OPENING =
  /^(?:\d+[.)]\s*)?(?:(?:meanwhile|next|then|now|first)[, ]+)?(?:to )?(?:make|prepare|start|begin|for)(?: with| by making)? (?:the |your )?([^,.:;]{3,40})/i;

/** 'Für die Streusel Mehl …', 'Pour la garniture : …', 'Para a calda …'. */
const OPENING_ABROAD =
  /^(?:\d+[.)]\s*)?(?:für|pour|voor|para|per|till|til)\s+(?:(?:die|den|das|le|la|les|l['’]|de|het|el|los|las|il|lo|i|gli|o|a|os|as)\s*)?(\p{L}[^,.:;]{2,40})/iu;
/** What is made, told at the end: 'mix the juice and sugar to make the drizzle'. */
const PURPOSE = /\bto (?:make|form) (?:the|your|a) ([^,.:;]{3,30})/i;

function byOpening(sentence: string, words: PartWords): number | null {
  const said = sentence.trim();
  const found = (OPENING.exec(said) ?? OPENING_ABROAD.exec(said) ?? PURPOSE.exec(said))?.[1];
  return found === undefined ? null : byHeading(found, words);
}

/** The part that most of the named ingredients belong to alone. */
function byIngredients(text: string, { own }: PartWords): number | null {
  const counts = own.map(
    (mentions) => mentions.filter((mention) => isNamedIn(text, mention)).length,
  );
  const best = Math.max(...counts);
  return best > 0 && counts.filter((count) => count === best).length === 1
    ? counts.indexOf(best)
    : null;
}

/** What goes into the oven belongs to the step before. */
const BAKES = /\bbake|\boven\b|\bcool\b/i;

/** Where parts come together or the dish is served. */
const ASSEMBLY = /\b(assembl\w*|serv(?:e|ing)|storage|store)\b/i;

/**
 * Parts of every step, in their order. A sentence that says nothing of its part goes with the one before
 * it, under the same heading.
 */
export function stepParts(
  steps: Recipe['steps'],
  plan: Plan,
  mentions: readonly Mention[],
): StepParts[] {
  if (plan.parts.length < 2)
    return steps.map(({ text }) => ({
      whole: null,
      headed: false,
      sentences: [{ end: text.length, part: null }],
    }));
  const words = partWords(plan, mentions);
  let part: number | null = null;
  let section: string | null = null;
  return steps.map((step) => {
    const heading = step.section === null ? null : byHeading(step.section, words);
    if (step.section !== section) {
      section = step.section;
      part = null;
    }
    const assembly = step.section !== null && ASSEMBLY.test(step.section);
    const ends = sentenceEnds(step.text);
    const texts = ends.map((end, at) => step.text.slice(ends[at - 1] ?? 0, end));
    const told = texts.map(
      (text) => heading ?? byOpening(text, words) ?? byIngredients(text, words),
    );
    // A step that begins with foods of either part makes what its next foods belong to.
    const isOpen = told[0] === null && mentions.some((one) => isNamedIn(texts[0] ?? '', one));
    const ahead = isOpen && !BAKES.test(texts[0] ?? '') ? told.find((one) => one !== null) : null;
    const sentences = ends.map((end, at) => {
      part = assembly ? null : (told[at] ?? (at === 0 ? ahead : null) ?? part);
      return { end, part };
    });
    return { whole: heading ?? wholePart(sentences), headed: heading !== null, sentences };
  });
}

/** The part of most sentences, the first of those with as many. */
function wholePart(sentences: StepParts['sentences']): number | null {
  const parts = sentences.map(({ part }) => part).filter((part) => part !== null);
  const count = (part: number): number => parts.filter((one) => one === part).length;
  return parts.toSorted((a, b) => count(b) - count(a))[0] ?? null;
}

/** The part of the sentence at a place in a step's text. */
export const partAt = ({ sentences }: StepParts, at: number): number | null =>
  sentences.find(({ end }) => at < end)?.part ?? sentences.at(-1)?.part ?? null;
