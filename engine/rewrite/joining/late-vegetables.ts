/** A vegetable that stands in for some of the potatoes of a pot and is soft sooner: it joins for the last minutes. */
import { hasTag } from '../../foods/tags.ts';
import { DISHES, type PlannedItem } from '../../model.ts';
import type { MethodContext } from '../cues/cue-context.ts';
import { statedTime } from '../cues/stated-time.ts';
import data from '../data/late-vegetables.json' with { type: 'json' };
import { joinedWith, keyed, type MethodWords } from '../languages/method-words.ts';
import { isSaidIn } from '../naming/foreign-forms.ts';
import type { Mention } from '../naming/mention.ts';
import { listOf, shortName } from '../naming/method-names.ts';
import { weighed } from '../naming/remarks.ts';
import { sentencesOf } from '../wording/sentences.ts';
import type { LateVegetable } from './joins-late.ts';

const SOONER: ReadonlySet<string> = new Set(data.sooner);
const BOILS = new RegExp(data.boils, 'iu');
const NOT = new RegExp(data.not, 'i');
const SMALL = new RegExp(data.small.pieces, 'i');
const SENTENCES: Readonly<Record<string, readonly string[]>> = data.sentences;
const WHY: Readonly<Record<string, string>> = data.why;

/** Why it joins late, in the recipe's language. */
export const whyLate = ({ words }: MethodContext): string => WHY[words?.tag ?? 'en'] ?? '';

const COOKS = /\b(?:boil|cook|simmer|stew|tender|soft|done)/i;
const TIMED =
  /\d+\s?(?:(?:-|–|to|à|bis|tot|a|til|till)\s?\d+\s?)?(?:min|')|\buntil\b|(?<!\p{L})(?:bis|jusqu|hasta|finché|fino|até|totdat|tot|tills|til|till)(?!\p{L})/iu;
/** Sentences that only look at what is boiling. */
const LOOKS = /^\W*(?:meanwhile|in the meantime|while)\b[^,;]*/i;
/** What has boiled by then. */
const LOOKS_BACK =
  /^\W*(?:after|once|when|nachdem|wenn|sobald|nach|après|quand|lorsque|une fois|después|cuando|una vez|dopo|quando|una volta|depois|assim que|nadat|wanneer|als|zodra|efter|när|når|etter)(?!\p{L})/iu;
const DRAINED =
  /(?<!\p{L})(?:drain\w*|colander|abgieß\w*|abgegossen|égoutt\w*|afgiet\w*|giet af|scol\w*|escurr\w*|escorr\w*|häll av|hæld fra|hell av)(?!\p{L})/iu;
const DRIES =
  /(?<!\p{L})(?:asciuga|asciugh|séch|seca|sécale|séquelas|droog|torka|tørk|tør)\p{L}*/iu;
const SERVED =
  /^\W*(?:serve|spoon|ladle|divide|garnish|transfer|top |anrichten|servi|serveer|sirv|verdeel|verteil)/i;
/** Steps between putting in the potatoes and the end of their boiling, at most. Own choice. */
const MOST_STEPS = 6;

interface Sentence {
  at: number;
  index: number;
  /** With English key words, and as the page has it. */
  keyed: string;
  page: string;
}

const sentencesFrom = (first: number, page: readonly string[], searched: readonly string[]) =>
  page.slice(first, first + MOST_STEPS).flatMap((text, step): Sentence[] => {
    const own = sentencesOf(searched[first + step] ?? '');
    return sentencesOf(text).map((sentence, index) => ({
      at: first + step,
      index,
      keyed: own[index] ?? sentence,
      page: sentence,
    }));
  });

/** Cooked dry, whatever else is boiled after. */
const ROASTED =
  /(?<!\p{L})(?:roast\w*|bake|baking (?:sheet|tray)|sheet pan|air[- ]fr\w+|asa[rd]\p{L}*|horn\p{L}*|rôti\p{L}*|four|(?:back)?ofen|forn\p{L}*|ugn\p{L}*|ovn\p{L}*|oven\p{L}*|röst\p{L}*|rooster\p{L}*)(?!\p{L})/iu;
const isRoasted = (one: Sentence | undefined): boolean =>
  one !== undefined && ROASTED.test(one.page) && !boils(one);

const boils = ({ keyed: text, page }: Sentence): boolean => BOILS.test(text) || BOILS.test(page);

/** The sentence that ends the boiling of an ingredient; null where none boils it. */
function endOfBoiling(
  all: readonly Sentence[],
  mention: Mention,
  words: MethodWords | null,
): Sentence | null {
  const isBoiling = (one: Sentence): boolean => boils(one) || COOKS.test(one.keyed);
  const names = (one: Sentence): boolean => isSaidIn(one.page, mention, words);
  const boiling = all.findIndex((one) => names(one) && boils(one));
  const own = boiling >= 0 ? boiling : all.findIndex(names);
  const ends = all.findIndex(({ page }, at) => at > own && SERVED.test(page));
  const pot = all.slice(own, ends < 0 ? undefined : ends);
  if (!pot.some(boils) || isRoasted(all[own])) return null;
  const drained = pot.findIndex(({ page }) => DRAINED.test(page));
  const before = drained < 0 ? pot : pot.slice(0, drained + 1);
  const timed = before.filter((one) => isBoiling(one) && TIMED.test(one.keyed));
  const looking = (one: Sentence): string => one.page.replace(LOOKS, '');
  return (
    timed.findLast((one) => isSaidIn(looking(one), mention, words)) ??
    timed.at(-1) ??
    before.findLast(isBoiling) ??
    null
  );
}

/** 'For the last 6-8 minutes add the cauliflower.' */
function toldText(mention: Mention, late: readonly PlannedItem[], context: MethodContext): string {
  const { words, foods } = context;
  const [small = '', large = ''] = SENTENCES[words?.tag ?? 'en'] ?? [];
  const isSmall = SMALL.test(context.method);
  const list =
    words === null
      ? listOf(late.map(({ foodName }) => shortName(foodName)))
      : joinedWith(
          late.map((item) =>
            weighed(
              item,
              mention,
              { word: '', share: 1 },
              { words, foods, boils: false, peels: false },
            ),
          ),
          words.and,
        );
  return (isSmall ? small : large)
    .replace('{minutes}', isSmall ? data.small.minutes : data.large.minutes)
    .replace('{list}', list);
}

/** Minutes that a pot boils longer than the vegetable, from which on it is worth keeping back. Own choice. */
const WORTH = 3;

/** Whether the pot boils hardly longer than the vegetable: then all goes in together. */
function isShort({ page }: Sentence, { method }: MethodContext): boolean {
  const minutes = statedTime(page)?.high;
  const { small, large } = data;
  const own = Number.parseInt(SMALL.test(method) ? small.minutes : large.minutes, 10);
  return minutes !== undefined && minutes < own + WORTH;
}

/** The sentence that ends the boiling of an ingredient; null where none boils it. */
function endOf(
  mention: Mention,
  page: readonly string[],
  { words }: MethodContext,
): Sentence | null {
  const first = page.findIndex((text) => isSaidIn(text, mention, words));
  if (first < 0) return null;
  const searched = words === null ? page : page.map((text) => keyed(text, words));
  return endOfBoiling(sentencesFrom(first, page, searched), mention, words);
}

/** Whether what is soft sooner goes in with the potatoes all the same: their pot boils hardly longer. */
export const goesInTogether = (page: readonly string[], context: MethodContext): boolean =>
  context.mentions.some((mention) => {
    const isPotato = hasTag(mention.ingredient.match?.foodId ?? '', 'potato');
    if (!isPotato || !mention.items.some(({ foodId }) => SOONER.has(foodId))) return false;
    const end = endOf(mention, page, context);
    return end !== null && isShort(end, context);
  });

function lateOf(
  mention: Mention,
  page: readonly string[],
  context: MethodContext,
): LateVegetable[] {
  const id = mention.ingredient.match?.foodId ?? '';
  if (!mention.changed || !hasTag(id, 'potato')) return [];
  const kept = mention.items.filter(({ foodId }) => foodId === id);
  const late = mention.items.filter(({ foodId }) => SOONER.has(foodId));
  if (kept.length === 0 || late.length === 0) return [];
  const end = endOf(mention, page, context);
  if (end === null || isShort(end, context)) return [];
  const drains = DRAINED.test(end.page) || DRIES.test(end.page);
  const early = {
    ...mention,
    items: [
      ...kept,
      ...mention.items.filter((item) => !kept.includes(item) && !late.includes(item)),
    ],
    newName: null,
    goesInWith: [],
  };
  const told = toldText(mention, late, context);
  return [
    {
      mention,
      early,
      at: end.at,
      sentence: end.index,
      joins: LOOKS_BACK.test(end.page) ? 'before' : drains ? 'within' : 'behind',
      told,
    },
  ];
}

/** The vegetables of a dish that join its potatoes late. `page`: the page's steps. */
export function lateVegetables(page: readonly string[], context: MethodContext): LateVegetable[] {
  const { plan, mentions, method } = context;
  if (!(DISHES as readonly string[]).includes(plan.family.id)) return [];
  if (![method, ...page].some((text) => BOILS.test(text)) || NOT.test(method)) return [];
  return mentions.flatMap((mention) => lateOf(mention, page, context));
}
