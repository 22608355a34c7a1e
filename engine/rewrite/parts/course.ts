/** The course of one part of the dish through the method: which steps are its own, and when its dough is mixed. */
import type { Mention } from '../naming/mention.ts';
import { isNamedIn } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';

export interface Course {
  /** Index of its first step, 0 when it has none of its own. */
  firstStep: number;
  /** Index of its last step. */
  lastStep: number;
  /** Index of the step by which its dough or batter is mixed, and of the sentence there. */
  mixedAt: number;
  mixedBy: number;
  /** Steps that name each ingredient, by its key. */
  named: ReadonlyMap<string, readonly number[]>;
}

const MIXES =
  /\b(mix|stir|combine|whisk|fold|beat|rub|pulse|blend|process|cut in|work|add|sift|pour|make|bring|form)\b/i;
/** What puts more in, as methods of nine languages have it. */
const ADDS =
  /(?<!\p{L})(?:zugeben|beigeben|dazugeben|dazugie(?:ß|ss)en|zugie(?:ß|ss)en|zufügen|hinzufügen|hinzugeben|dazugeben|ajout\p{L}*|incorpor\p{L}*|añad\p{L}*|agreg\p{L}*|aggiung\p{L}*|unite|unire|adicion\p{L}*|junt\p{L}*|toevoeg\p{L}*|voeg|tillsätt\p{L}*|tilsæt\p{L}*|tilsett\p{L}*)(?!\p{L})/iu;
const mixes = (text: string): boolean => MIXES.test(text) || ADDS.test(text);
const MIX_OF_ALL =
  /\b(?:dry ingredients|flours?(?: mixture| mix)?|dry mix(?:ture)?)\b|\b(?:form|forms|make|makes|becomes?|into|to) (?:a |an |the )?(?:\w+ ){0,3}(?:dough|batter)\b|all (?:the )?(?:other |remaining )?ingredients/i;
/** From here on the dough is used. */
const USES =
  /\b(?:bake|fry|roll|shape|scoop|drop|divide|portion|knead|pour the batter|spread|press|ladle|prove|rise|roll out)\b/i;

/** A sentence that kneads and goes no further. */
const KNEADS_ONLY = new RegExp(`^(?!.*${USES.source.replace('knead|', '')}).*\\bknead\\b`, 'is');

const KNEADS = /\bknead\b/i;
const TAKES_FLOUR = /\bflours?\b(?! the\b)/i;
/** Flour by the spoon, for a dough that is mixed already. */
const MORE_FLOUR =
  /\b(?:if (?:necessary|needed|the dough|it|too)|as (?:needed|necessary)|at a time|very small amounts|up to)\b|\bfloured\b/i;
/** What moistens a dough under a name of its own: 'Hefewasser', 'l'eau et la levure'. */
const MOIST =
  /wasser|milch|(?<!\p{L})(?:eau|lait|acqua|latte|agua|água|leche|leite|vatten|vand|vann|water|milk|yeast)(?!\p{L})|mjölk|mælk|melk/iu;
const addsMoist = (one: string): boolean => ADDS.test(one) && MOIST.test(one);
/** What is said to those who lack a tool. */
const OTHERWISE = /^\W*if you (?:do not|don['’]t) (?:own|have)\b/i;
/** A dough that is all of one piece. */
const HAS_DOUGH =
  /^\W*(?:(?:turn|tip|transfer|scrape|move|place|put|remove|keep|leave)\b[^.;]*\bdough\b|(?:beat|knead) (?:the )?dough\b)/i;

function mixing(
  texts: readonly string[],
  flours: readonly Mention[],
  moist: readonly Mention[],
  named: Course['named'],
): { at: number; by: number } | null {
  const floured = new Set(flours.flatMap(({ ingredient }) => named.get(ingredient.key) ?? []));
  const wet = new Set(moist.flatMap(({ ingredient }) => named.get(ingredient.key) ?? []));
  const mixed = texts.findIndex((text, at) => floured.has(at) && mixes(text));
  const first =
    mixed < 0 ? texts.findIndex((text, at) => floured.has(at) && KNEADS.test(text)) : mixed;
  if (first < 0) return null;
  let last = first;
  for (let at = first + 1; at < texts.length; at += 1) {
    const text = texts[at] ?? '';
    if (HAS_DOUGH.test(text) && !wet.has(at)) break;
    const moistens = wet.has(at) || sentencesOf(text).some(addsMoist);
    if (mixes(text) && (MIX_OF_ALL.test(text) || floured.has(at) || moistens)) last = at;
    if (USES.test(text)) break;
    if (USES.test(texts[last] ?? '')) break;
  }
  const sentences = sentencesOf(texts[last] ?? '');
  // 'Add the milk and knead for 5 minutes': no dough before it, nor before its flour.
  const joins = (one: string): boolean =>
    KNEADS_ONLY.test(one) &&
    ((TAKES_FLOUR.test(one) && !MORE_FLOUR.test(one)) ||
      addsMoist(one) ||
      moist.some((mention) => isNamedIn(one, mention)));
  const by = sentences.findLastIndex(
    (one) =>
      (mixes(one) || joins(one)) &&
      !OTHERWISE.test(one) &&
      (MIX_OF_ALL.test(one) || floured.has(last) || wet.has(last) || addsMoist(one)) &&
      (!USES.test(one) || joins(one)),
  );
  return { at: last, by: Math.max(0, by) };
}

/** `texts`: the steps of the part with English key words, those of other parts empty. */
export function courseOf(
  texts: readonly string[],
  own: readonly number[],
  mentions: readonly Mention[],
  named: Course['named'],
): Course {
  const firstStep = own[0] ?? 0;
  const flours = mentions.filter(({ role }) => role === 'structure');
  const moist = mentions.filter(({ role }) => role === 'liquid');
  const mixed = mixing(texts, flours, moist, named);
  return {
    firstStep,
    lastStep: own.at(-1) ?? Math.max(0, texts.length - 1),
    mixedAt: mixed?.at ?? firstStep,
    mixedBy: mixed?.by ?? 0,
    named,
  };
}
