/** Rice and small pasta cooked in the pot's own liquid: what stands in would go to pulp there, and joins at the end. */
import { hasTag } from '../../foods/tags.ts';
import { DISHES, type PlannedItem } from '../../model.ts';
import type { MethodContext } from '../cues/cue-context.ts';
import {
  joinedWith,
  localFoodName,
  localHandling,
  type MethodWords,
} from '../languages/method-words.ts';
import type { Mention } from '../naming/mention.ts';
import { capital, listOf, shortName } from '../naming/method-names.ts';
import { boiledOf } from '../steps/boils-as.ts';
import { withoutForeignEnd } from './foreign-grains.ts';
import { namePattern } from './name-patterns.ts';

/** Stand-ins that are done before they join, and what goes in with them. */
const JOINS_LATE: ReadonlySet<string> = new Set([
  'cauliflower',
  'cauliflower-rice',
  'broccoli-rice',
  'konjac-rice',
  'hearts-of-palm-rice',
  'hemp-hearts',
  'chia-seed',
]);
/** Of these the swap's own handling tells that they are stirred in raw. */
const TOLD_RAW: ReadonlySet<string> = new Set(['hemp-hearts', 'chia-seed']);
const ALONG: ReadonlySet<string> = new Set(['cream-heavy', 'parmesan']);

const HANDLING = 'Stir in at the end and heat through for 2-3 minutes.';

const LIQUID =
  /\b(?:stock|broth|bouillon|water|milk|juice|liquid|soup|everything|wasser|brühe|eau|água|agua|acqua|caldo|brodo|vand|vatten|vann|buljong|fond)\b/i;
const DRAINED =
  /\b(?:drain\w*|colander|abgieß\w*|abtropf\w*|égoutt\w*|afgiet\w*|giet af|scol\w*|escurr\w*|escorr\w*)\b/i;
/** What holds together, or cooks in the oven, has its grains in from the start. */
const ENCLOSED =
  /\b(?:bake|oven|stuff\w*|fill\w*|rolled|roll (?:up|tight\w*|it|them|each)|casserole|four|horno|forno|backofen|ugn\w*|ovn\w*)\b/i;
const SIMMERS =
  /\b(?:simmer\w*|boil\w*|cook\w*|absorb\w*|cover\w*|release\w*|cuire|cuis\w*|kook\w*|pruttel\w*|koch\w*|köcheln|garen|program\w*|coz\w*|coc\w*|cuoc\w*|kok\w*|puttra|småkok\w*)\b/i;
const TIMED = /\d+\s?(?:-|–|to|à|bis|tot|a)?\s?\d*\s?(?:min|'|′)|\b(?:until|absorb)/i;
const SERVED = /^\W*(?:serve|spoon|ladle|divide|garnish|top |servi|serveer|sirv|servir)/i;
/** Steps between putting in the grains and the end of their cooking, at most. Own choice. */
const MOST_STEPS = 12;

/** Grains that are put in late, the step that ends their cooking, and how they are spoken of until then. */
export interface LateGrain {
  mention: Mention;
  at: number;
  early: Mention;
  late: PlannedItem[];
}

const isKept = ({ ingredient }: Mention, { foodId }: PlannedItem): boolean =>
  foodId === ingredient.match?.foodId;

function lateItems(mention: Mention): PlannedItem[] {
  const id = mention.ingredient.match?.foodId ?? '';
  // What the page's line has cooked already takes up nothing in a pot.
  const oats = hasTag(id, 'oats');
  const grain =
    (oats || hasTag(id, 'rice-or-grain') || hasTag(id, 'pasta')) && !id.endsWith('-cooked');
  const fresh = mention.items.filter((item) => !isKept(mention, item));
  const late = fresh.some(({ foodId }) => JOINS_LATE.has(foodId));
  const all = fresh.every(({ foodId }) => JOINS_LATE.has(foodId) || ALONG.has(foodId));
  return mention.changed &&
    grain &&
    late &&
    all &&
    (oats || boiledOf(mention)?.length === mention.items.length - fresh.length)
    ? fresh
    : [];
}

/** The step in which grains put in at `first` are done; -1 when they do not cook in the pot. */
function lastOfCooking(texts: readonly string[], page: readonly string[], first: number): number {
  const end = Math.min(texts.length, first + MOST_STEPS);
  const served = page.findIndex((text, at) => at > first && SERVED.test(text));
  const pot = texts.slice(first, served < 0 ? end : Math.min(end, served));
  const whole = pot.slice(0, 3).join(' ');
  if (!LIQUID.test(pot.join(' ')) || DRAINED.test(whole)) return -1;
  const last = pot.findLastIndex((text) => SIMMERS.test(text) && TIMED.test(text));
  return last < 0 ? -1 : first + last;
}

/**
 * The grains of a dish whose stand-in joins at the end. `texts`: the page's steps with English key words;
 * `page`: as they stand; `apart`: whether a step only boils an ingredient by itself.
 */
export function lateGrains(
  texts: readonly string[],
  page: readonly string[],
  { mentions, plan }: MethodContext,
  apart: (mention: Mention) => boolean,
): LateGrain[] {
  if (!(DISHES as readonly string[]).includes(plan.family.id)) return [];
  return mentions.flatMap((mention): LateGrain[] => {
    const late = lateItems(mention);
    if (late.length === 0 || apart(mention)) return [];
    const first = texts.findIndex((text) => namePattern(mention).test(text));
    const after = page.slice(first, first + MOST_STEPS).join(' ');
    const enclosed = ENCLOSED.test(after.replace(/dutch oven/gi, 'pot'));
    const at = first < 0 || enclosed ? -1 : lastOfCooking(texts, page, first);
    if (at < 0) return [];
    const items = mention.items.filter((item) => isKept(mention, item));
    return [{ mention, at, late, early: { ...mention, items, newName: null, goesInWith: [] } }];
  });
}

/** What the mentions are up to a step. */
export const mentionsAt = (
  mentions: readonly Mention[],
  grains: readonly LateGrain[],
  at: number,
): readonly Mention[] => {
  const early = grains.filter((grain) => at <= grain.at);
  if (early.length === 0) return mentions;
  return mentions.map((one) => early.find(({ mention }) => mention === one)?.early ?? one);
};

/** 'Simmer 18 minutes, or until the rice is tender and has absorbed the liquid' without the rice's end. */
export function withoutGrainsEnd(text: string, { early, mention }: LateGrain): string {
  if (early.items.length > 0) return text;
  const name = namePattern(mention).source;
  return text
    .replace(new RegExp(`,? (?:or |and )?until (?:the )?(?:${name})[^.;,]*(?=[.;,]|$)`, 'giu'), '')
    .replace(
      new RegExp(`,? to (?:keep|prevent|stop) (?:the )?(?:${name})[^.;,]*(?=[.;,]|$)`, 'giu'),
      '',
    )
    .replace(
      new RegExp(
        ` and (?:the )?(?:${name}) (?:is|are) (?:tender|cooked|done|soft|al dente)`,
        'giu',
      ),
      '',
    )
    .replace(
      new RegExp(
        `, ?(?:then |and )+(?:add|stir in|mix in) (?:the )?(?:${name})(?: and (?:stir|mix))?(?=[.;,])`,
        'giu',
      ),
      '',
    )
    .replace(
      /,? (?:or |and )?until (?:all |most )?(?:of )?(?:the )?(?:liquid|stock|broth|water) (?:is|has|have)[^.;,]*absorbed/giu,
      '',
    );
}

/** The same in other languages. */
export const withoutForeignGrainsEnd = (text: string, { early, mention }: LateGrain): string =>
  early.items.length > 0 ? text : withoutForeignEnd(text, mention);

/** The text without sentences that toast the grains in the fat: those boil nothing by itself. */
export const withoutToasting = (text: string): string =>
  text.replace(
    /(?<=^|[.!] )[^.!]*\b(?:toast\w*|(?:cook|stir|fry|saut[eé])\w*(?: [\w,]+){0,4} (?:for )?(?:about )?(?:[1-3]|an?|one|two)(?:\s?(?:-|–|to)\s?[2-4])? min)[^.!]*[.!]\s*/giu,
    '',
  );

/** A sentence that only puts in or toasts the grains. */
export function withoutPuttingIn(text: string, { early, mention }: LateGrain): string {
  if (early.items.length > 0) return text;
  const only = new RegExp(
    `(?<=^|[.!] )(?:then |now |next,? )?(?:add|stir in|mix in|pour in|tip in|toast|sprinkle in)(?: in)? (?:the |your )?(?:\\w+ )?(?:${namePattern(mention).source})(?: and (?:cook|stir|toast|fry|mix|saut[eé])[^.!]*|, (?:and |then )?(?:stir|toss|turn|coat|cook|mak|toast|fry)\\w*\\b[^.!]*|)[.!]\\s*`,
    'giu',
  );
  return text.replace(only, '');
}

/** 'Stir in the cauliflower at the end and heat it through for 2-3 minutes'; null where the swap tells it. */
export function joinsText({ late }: LateGrain, words: MethodWords | null): string | null {
  if (late.every(({ foodId }) => TOLD_RAW.has(foodId))) return null;
  const names = late.map(({ foodId, foodName }) =>
    words === null ? shortName(foodName) : (localFoodName(foodId, words) ?? shortName(foodName)),
  );
  if (words !== null) {
    const told = localHandling(HANDLING, words);
    const list = joinedWith([...new Set(names)], words.and);
    const { instead } = words.swaps;
    return told && capital(instead.replace('{list}', list).replace('{method}', told));
  }
  const it = names.length > 1 ? 'them' : 'it';
  return `Stir in the ${listOf([...new Set(names)])} at the end and heat ${it} through for 2-3 minutes.`;
}
