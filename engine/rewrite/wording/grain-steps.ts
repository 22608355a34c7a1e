/** A step that does nothing but cook rice that is gone: the one plain instruction for what stands in. */
import { hasTag } from '../../foods/tags.ts';
import type { Mention } from '../naming/mention.ts';
import { listOf } from '../naming/method-names.ts';
import { cooksMore } from '../steps/boiling.ts';
import { isNamedIn } from './name-patterns.ts';
import { sentencesOf } from './sentences.ts';

/** Stand-ins that are dried or fried by their own step and need no pot of water. */
const RICED: ReadonlySet<string> = new Set([
  'konjac-rice',
  'cauliflower-rice',
  'broccoli-rice',
  'hearts-of-palm-rice',
]);

const COOKS = /\b(?:simmer\w*|boil\w*|cook\w*|absorb\w*)\b/i;
const RICE_WORD = /\b(?:rice|basmati|jasmine|grains?)\b/i;
/** Other work than the rice's. */
const OTHER_WORK =
  /\b(?:brown|chop|slice|dice|bake|grill|marinat\w*|serve|divide|spoon|top|oven)\b/i;
/** 'until the water runs clear', 'until the rice is tender'. */
const LOOKED_AT = /\b(?:or )?until [^.;,]*/gi;
const RUNS_CLEAR = /\buntil the water (?:runs|is) clear\b/gi;
const RINSES = /\b(?:rinse|soak|wash)\b/i;
const LEAD =
  /^(?:meanwhile|in the meantime|for the (?:\w+ )?rice|to (?:make|cook) the (?:\w+ )?rice)\b/i;
const SALT = /salt/;
const WATER = /water/;
const LIQUID = /stock|broth|bouillon/;
/** Herbs, spices and a little fat, in grams: what a pot of rice is seasoned with. Own choice. */
const LITTLE = 30;

const isGone = ({ changed, items, ingredient }: Mention): boolean =>
  changed &&
  items.length > 0 &&
  hasTag(ingredient.match?.foodId ?? '', 'rice-or-grain') &&
  items.every(({ foodId }) => RICED.has(foodId));

/** Whether what else a step names is the rice's own seasoning and liquid: listed with it, or no more than a pot takes and in no other step. */
function goesWith(rice: Mention, other: Mention, elsewhere: readonly string[]): boolean {
  const { group } = rice.ingredient.line;
  const { match, weight, line } = other.ingredient;
  if (WATER.test(match?.foodId ?? '') || (group !== null && line.group === group)) return true;
  if (elsewhere.some((text) => isNamedIn(text, other))) return false;
  return LIQUID.test(match?.foodId ?? '') || (weight?.grams.best ?? LITTLE) < LITTLE;
}

/** 'the cardamom' of a line with 'cardamom pods', of the rice's own list. */
const isCalled = (text: string, rice: Mention, { ingredient }: Mention): boolean => {
  const [word = ''] = ingredient.item.name.toLowerCase().split(' ');
  const { group } = ingredient.line;
  const isOwn = group !== null && group === rice.ingredient.line.group;
  return isOwn && word.length > 4 && text.toLowerCase().includes(word);
};

export interface GrainStep {
  text: string;
  rice: Mention;
  /** What is warmed with it. */
  others: Mention[];
}

/** The step as one instruction; null where it does more than cook the rice, or the rice stays. `texts`: all steps of the page. */
export function grainStep(
  text: string,
  mentions: readonly Mention[],
  texts: readonly string[],
): GrainStep | null {
  const rice = mentions.find((one) => isGone(one) && isNamedIn(text, one));
  const sentences = sentencesOf(text);
  if (rice === undefined || !COOKS.test(text) || !RICE_WORD.test(text)) return null;
  const doing = text.replace(LOOKED_AT, '');
  const earlier = texts.slice(0, Math.max(0, texts.indexOf(text)));
  const isIn = earlier.some((one) => isNamedIn(one, rice) && !RINSES.test(one));
  if (isIn || !isNamedIn(doing, rice)) return null;
  if (OTHER_WORK.test(text) || cooksMore(text.replace(RUNS_CLEAR, ''), rice)) return null;
  const named = mentions.filter(
    (one) =>
      one.sharedHead === null &&
      one.ingredient.key !== rice.ingredient.key &&
      (isNamedIn(text, one) || isCalled(text, rice, one)),
  );
  const elsewhere = texts.filter((one) => one !== text);
  if (!named.every((other) => goesWith(rice, other, elsewhere))) return null;
  const names = new Set(rice.items.map(({ foodName }) => foodName.split(',')[0] ?? foodName));
  const list = listOf([...names]);
  const others = named.filter(({ ingredient }) => !SALT.test(ingredient.match?.foodId ?? ''));
  if (others.length === 0)
    return { text: `Skip this step: the ${list} needs no boiling.`, rice, others: named };
  const lead = LEAD.exec(sentences[0] ?? '')?.[0];
  const opening = lead === undefined ? 'Put' : `${lead}, put`;
  const along = listOf(others.map(({ ingredient }) => ingredient.item.name.toLowerCase()));
  return {
    text: `${opening} the ${list} in a pan with the ${along} and heat for 3-5 minutes, until hardly any liquid is left.`,
    rice,
    others: named,
  };
}
