/** Steps that boil pasta or rice, or warm tortillas, when what stands in is neither boiled nor warmed. */
import { keptFor } from '../../kept-results.ts';
import type { Mention } from '../naming/mention.ts';
import { listOf } from '../naming/method-names.ts';
import { isNamedIn, namePattern } from '../wording/name-patterns.ts';
import { boiledOf } from './boils-as.ts';

const COOKS = /\b(boil|cook|simmer|rinse|soak|parboil)\b/i;
const WARMS = /\b(?:heat|warm|toast|char|grill|microwave)\b/i;
/** Leaves that hold a filling and wilt when they are warmed. */
const LEAVES: ReadonlySet<string> = new Set([
  'lettuce-wraps',
  'lettuce-romaine',
  'lettuce-butterhead',
]);
/** Sentences that only finish what was boiled. */
const FINISHES =
  /^(?:drain|rest|rinse|fluff|refresh|keep|reserve|save|set aside|cover|stand|leave)\b/i;
/** What goes into the pot with it. */
const POT = /^(?:water|salt|oil|olive oil|vegetable oil|butter)$/;
const SERVES =
  /,?\s+(?:and|then)\s+(?:then\s+)?(serve|toss|mix|combine|top|stir|return|add(?= (?:it |them )?(?:in)?to (?:\w+ )?(?:bowls|plates)\b))\b(.*)$/i;
const POT_WATER =
  /\b(of )?(?:the |some )?(?:reserved |starchy )*(?:pasta|noodle|rice|cooking)(?: cooking)? water\b/gi;

/** 'While the tofu bakes, ': what else goes on. */
const MEANWHILE = /\b(?:while|as) [^,.;]*,/i;

/** Meat, fish and eggs, which are safe only once they are done. */
const ANIMAL =
  /\b(?:(?:meat|fish)?balls?|meats?|mince|beef|pork|veal|lamb|mutton|chicken|turkey|duck|poultry|sausages?|bacon|ham|chorizo|fish|salmon|cod|tuna|shrimps?|prawns?|scallops?|mussels?|clams?|crab|seafood|eggs?|thighs?|breasts?|drumsticks?|wings|patties)\b/i;
/** Something gets done, whatever it is called. */
const GETS_DONE =
  /\b(?:cooked through|cooks? through|no longer pink|(?:not|no) pink|(?<!water )runs? clear|internal temperature|thermometer|opaque|fork[- ]tender|\d+ ?°)/i;
/** A pot of several foods. */
const MIXED_POT =
  /(?<!\b(?:for|with|to|into) )\bthe (?:\w+ )?(?:soup|stew|broth|stock|chill?i|curry|casserole|sauce|gumbo|chowder|mixture|vegetables|beans|lentils)\b|\beverything\b/i;
/** What joins a pot that is cooking already stays in it. */
const JOINS =
  /\b(?:add|stir in)\b[^.;]*\bcontinue (?:to (?:cook|simmer|boil)|cooking|simmering|boiling)\b/i;
const ALONGSIDE = /\bwhile [^,.;]*/i;
const IS_DONE = '(?: is| are)? (?:just )?(?:al dente|tender|cooked|done|soft)';

const sentencesOf = (text: string): string[] => text.split(/(?<=[.!;])\s+/);

/** 'until the rice' */
const looked = keptFor(({ source }: RegExp) => new RegExp(`\\buntil (?:the )?${source}`, 'iu'));
const everywhere = keptFor(({ source }: RegExp) => new RegExp(source, 'giu'));

/** Whether a sentence cooks an ingredient: 'simmer until the rice is tender' cooks what else is in the pot. */
export const isCooked = (sentence: string, mention: Mention): boolean => {
  if (!isNamedIn(sentence, mention)) return false;
  return isNamedIn(sentence.replace(looked(namePattern(mention)), ''), mention);
};

/** Whether more gets cooked in a sentence than an ingredient: without it, other food may stay raw. */
export function cooksMore(sentence: string, own: Mention): boolean {
  const others = sentence.replace(everywhere(namePattern(own)), '');
  if (GETS_DONE.test(others) || JOINS.test(others)) return true;
  if (isLeaf(own)) return false;
  const inThePot = others.replace(SERVES, '').replace(MEANWHILE, '').replace(ALONGSIDE, '');
  return ANIMAL.test(inThePot) || MIXED_POT.test(inThePot);
}

/** 'until the meat is cooked through and the pasta is al dente' -> 'until the meat is cooked through'. */
function untilOthersAreDone(sentence: string, unboiled: readonly Mention[]): string {
  return unboiled.reduce((text, mention) => {
    if (!isNamedIn(text, mention)) return text;
    const done = `(?:the )?${namePattern(mention).source}${IS_DONE}`;
    return text
      .replace(new RegExp(`,? and ${done}\\b`, 'iu'), '')
      .replace(new RegExp(`\\b(until )${done},? and `, 'iu'), '$1');
  }, sentence);
}

const isLeaf = ({ items }: Mention): boolean =>
  items.length > 0 && items.every(({ foodId }) => LEAVES.has(foodId));

/** 'Warm the tortillas and fill them' -> 'Fill them'. */
function withoutWarming(sentence: string, mentions: readonly Mention[]): string {
  const [lead = ''] =
    /^(?:heat|warm|toast|char)\b[^,.;]*?(?:,|\band\b)\s*(?:then\s+)?/i.exec(sentence) ?? [];
  const leaf = mentions.some((mention) => isLeaf(mention) && isNamedIn(lead, mention));
  const rest = sentence.slice(lead.length);
  return leaf && rest !== '' ? `${rest.charAt(0).toUpperCase()}${rest.slice(1)}` : sentence;
}

/** Whether what came in for an ingredient is neither boiled nor warmed. */
export const isUnboiled = (mention: Mention): boolean =>
  mention.changed &&
  mention.items.length > 0 &&
  (isLeaf(mention) || boiledOf(mention)?.length === 0);

/** Whether a text names another food than this one and what goes into the pot with it. */
export const namesOther = (text: string, own: Mention, mentions: readonly Mention[]): boolean =>
  mentions.some(
    (other) =>
      other.ingredient.key !== own.ingredient.key &&
      !other.names.some((name) => POT.test(name)) &&
      isNamedIn(text, other),
  );

/** 'boil the pasta and serve with the sauce' -> 'Serve the pasta with the sauce.' */
function servedPart(sentence: string, own: Mention): string | null {
  const found = SERVES.exec(sentence);
  const [, verb, rest] = found ?? [];
  if (verb === undefined || rest === undefined) return null;
  const object = rest.replace(/^\s+(?:it|them|the pasta|the rice)\b/i, '');
  const name = namePattern(own).exec(sentence)?.[0] ?? own.ingredient.item.name;
  return `${verb.charAt(0).toUpperCase()}${verb.slice(1)} the ${name}${object}`;
}

/** 'During the last minute of cooking, add the greens': their own minute in the water. */
const AT_LAST =
  /^(?:during|in|for) the (?:last|final) (?<time>(?:\d+ )?minutes?|few minutes)(?: of (?:the )?(?:cooking|boiling)(?: time)?)?,? add (?<what>[^.;]*?)(?: to the (?:pot|pan|water|\w+ water))?[.;]?$/i;

function boiledAlone(sentence: string): string | null {
  const { time, what } = AT_LAST.exec(sentence)?.groups ?? {};
  if (time === undefined || what === undefined) return null;
  const long = time === 'minute' ? '1 minute' : time === 'few minutes' ? 'a few minutes' : time;
  return `Boil ${what} for ${long}.`;
}

export interface Unboiled {
  text: string;
  /** Ingredients whose boiling fell away here. */
  dropped: Mention[];
}

/** The step without the sentences that boil what is no longer there; 'pasta water' becomes water. */
export function withoutBoiling(text: string, mentions: readonly Mention[]): Unboiled {
  const unboiled = mentions.filter(isUnboiled);
  if (unboiled.length === 0) return { text, dropped: [] };
  const kept: string[] = [];
  const dropped = new Set<Mention>();
  let after = false;
  let boiled: Mention | undefined;
  for (const sentence of sentencesOf(text)) {
    const own = unboiled.find(
      (mention) =>
        (isLeaf(mention) ? WARMS : COOKS).test(sentence) &&
        isCooked(sentence, mention) &&
        !cooksMore(sentence, mention) &&
        !namesOther(sentence.replace(SERVES, '').replace(MEANWHILE, ''), mention, mentions),
    );
    const alone = after ? boiledAlone(sentence) : null;
    if (alone !== null) {
      kept.push(alone);
      after = false;
      continue;
    }
    const finishing: boolean =
      after && FINISHES.test(sentence) && !unboiled.some((mention) => cooksMore(sentence, mention));
    after = own !== undefined || finishing;
    boiled = own ?? (finishing ? boiled : undefined);
    if (boiled !== undefined) {
      dropped.add(boiled);
      const served = servedPart(sentence, boiled);
      if (served !== null) kept.push(served);
    } else kept.push(untilOthersAreDone(withoutWarming(sentence, unboiled), unboiled));
  }
  const water = kept.join(' ').replace(POT_WATER, '$1water');
  if (water !== '') return { text: water, dropped: [...dropped] };
  const names = listOf([...dropped].flatMap(({ newName }) => newName ?? []));
  return {
    text: `Skip this step: the ${names} ${/s$| and /.test(names) ? 'need' : 'needs'} no ${[...dropped].every(isLeaf) ? 'warming' : 'boiling'}.`,
    dropped: [...dropped],
  };
}
