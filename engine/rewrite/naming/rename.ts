/** Finds ingredients in the method's words and puts their new names and amounts there. */
import { keptFor } from '../../kept-results.ts';
import { numberValue } from '../../numerals.ts';
import { namesOther } from '../steps/boiling.ts';
import { boiledOf } from '../steps/boils-as.ts';
import { withArticles } from '../wording/agreement.ts';
import { asList, joined } from '../wording/joined-lists.ts';
import { END, literal, namePattern, START } from '../wording/name-patterns.ts';
import { withOneAmount } from '../wording/one-amount.ts';
import { isNamedAlready, isOtherUse, isRemark, withoutChoices } from '../wording/other-uses.ts';
import { REST, SHARE, unitOf } from '../wording/shares.ts';
import { isLead, isPassing } from '../wording/short-names.ts';
import { AMOUNT, type RenameContext, withGrams } from './amounts-in-steps.ts';
import { BARE_REST, bareRest } from './bare-rest.ts';
import type { Mention } from './mention.ts';
import { isSweetener, listOf, newNameOf, shortName, singular } from './method-names.ts';
import { ownerOf, ownersOf, type Place, sentenceAt } from './owners.ts';
import { type Found, keptText, replacement } from './replacement.ts';
import { linesTogether } from './shared-names.ts';

/** Whether a sentence boils an ingredient: 'cook the pasta', not 'add the cooked pasta and simmer'. */
const boilsIn = (sentence: string, mention: Mention): boolean =>
  boiling(namePattern(mention)).test(sentence);
const boiling = keptFor(
  ({ source }: RegExp) =>
    new RegExp(`\\b(?:boil|cook|simmer|parboil)\\b[^.;]{0,40}${source}`, 'iu'),
);

/**
 * In a step that boils pasta, rice or potatoes, only the part of the stand-ins that is boiled is meant;
 * all of them where none is: what is boiled for its own sake is taken out before.
 */
function inBoilingStep(mention: Mention, text: string, mentions: readonly Mention[]): Mention {
  const items = boiledOf(mention);
  const called = namePattern(mention);
  const sentence = text.split(/(?<=[.;!])\s+/).find((part) => called.test(part)) ?? text;
  if (items === null || !boilsIn(sentence, mention)) return mention;
  if (items.length === 0 || items.length === mention.items.length) return mention;
  // In a dish of one pot all of them go in together.
  if (namesOther(sentence, mention, mentions)) return mention;
  return { ...mention, items, newName: newNameOf(mention.ingredient, items) };
}

/** A mash that is still to be made. */
const MASH = / mash$/;
const STILL_WHOLE = /\b(?:water|boil|simmer|steam|peel|cook)\w*\b/i;
const MASHES = /\bmash/i;

/** In a sentence that boils what a mash is made of, only the vegetable is meant. */
function beforeMash(mention: Mention, sentence: string): Mention {
  const isBefore = STILL_WHOLE.test(sentence) && !MASHES.test(sentence);
  if (mention.newName === null || !MASH.test(mention.newName) || !isBefore) return mention;
  const [vegetable] = mention.items.toSorted((a, b) => b.grams - a.grams);
  if (vegetable === undefined) return mention;
  return { ...mention, items: [vegetable], newName: newNameOf(mention.ingredient, [vegetable]) };
}

/** Words before a name that no longer hold when another food stands there: 'granulated white sugar'. */
const ADJECTIVES =
  "(?<kind>(?:(?:freshly[ -](?:cooked|squeezed)|non-concentrated|good[ -]quality|(?:cooked|cooled|cold)(?: and|,) (?:cooked|cooled|cold)|cooled|cold|day-old|leftover|granulated|caster|white|superfine|boiled|confectioners['’]?|icing|powdered|packed|firmly|raw|all-purpose|plain|strong|self-raising|self-rising|cooked|uncooked|dry|dried|steel[ -]cut|old[ -]fashioned|rolled|quick|mini)[ -])+)??";

const MIXTURE = /^[\s-]+(?:mixture|mix|blend)\b/i;

/** 'flour mixture' stays what it is called; 'sugar mixture' is one of sweeteners. */
function mixtureName(mention: Mention, name: string): string {
  if (mention.newName === 'flours') return name;
  if (mention.newName === null) return name;
  if (isSugar(name) && mention.items.every(({ foodId }) => isSweetener(foodId))) return 'sweetener';
  return mention.newName === 'sweeteners' || / and |, /.test(mention.newName)
    ? isSugar(name)
      ? 'sweetener'
      : name
    : mention.newName;
}
/** Flour beside the mix: a spoonful more for the bench, and what shows in a batter. */
const isOwnFlour = (text: string, at: number, end: number): boolean =>
  /\b(?:additional|extra|more|a (?:little|bit of|dusting of)) $/i.test(text.slice(0, at)) ||
  /^(?: or batter)? (?:lumps|streaks|pockets|clumps)\b/i.test(text.slice(end));

const isSugar = (name: string): boolean => /sugar/i.test(name);

const capitalised = (text: string, like: string): string =>
  /^\p{Lu}/u.test(like) ? text.replace(/\p{L}|\d/u, (first) => first.toUpperCase()) : text;

/** What went in with an ingredient, behind its name; 'sweeteners' covers sweet additions. */
function withAlong(text: string, mention: Mention, context: RenameContext): string {
  const covered = mention.newName === 'sweeteners';
  const fresh = context.used
    .takeAdditions(mention)
    .filter(({ foodId }) => !(covered && isSweetener(foodId)));
  if (fresh.length === 0) return text;
  const added = fresh.map((item) => withGrams(item, shortName(item.foodName), 1, context));
  // A part with its amount in brackets is no list that an addition could join.
  if (text.endsWith(')')) return `${text} and ${listOf(added)}`;
  const own = mention.items.length > 1 ? text.replace(/ and (?=[^,]*$)/, ', ') : text;
  return listOf([own, ...added]);
}

/** The words in front of a name, without those that the new name contradicts; the name's own words stay. */
function withoutKind(
  whole: string,
  { kind, name }: { kind?: string; name: string },
  { changed, newName, items, ingredient }: Mention,
): Pick<Found, 'whole' | 'name'> {
  if (kind === undefined) return { whole, name };
  const stays = items.some(({ foodId }) => foodId === ingredient.match?.foodId);
  const lead = whole.slice(0, whole.length - kind.length - name.length);
  if (!changed || newName === null || stays) return { whole, name: `${kind}${name}` };
  return { whole: `${lead}${name}`, name };
}

/** The amount in front of a name, with the unit's short form. */
function amountOf({ quantity, unit }: { quantity?: string; unit?: string }): Place['amount'] {
  const value = quantity === undefined ? null : numberValue(quantity.replace('-', ' '));
  return value === null ? null : { quantity: value, unit: unitOf(unit) };
}

/** What pieces of a food are called, behind its name. */
const CUT = String.raw`\s(?:chunks|cubes|wedges|halves|strips|rings|pieces)\b`;

/** 'pineapple chunks, strawberries and lime juice': what else there is stands behind the pieces. */
function withCut(put: string, cut: string, { items, ingredient }: Mention, found: string): string {
  const own = items.find(({ foodId }) => foodId === ingredient.match?.foodId);
  const [first, ...others] = put.split(/, | and /);
  if (own === undefined || others.length === 0 || first === undefined || !first.endsWith(found))
    return `${put}${cut}`;
  return listOf([`${first}${cut}`, ...others]);
}

/** Where a text stands in the method. */
export interface Where {
  section: string | null;
  /** The part of the dish that is made at a place in the text. */
  partAt: (at: number) => number | null;
}

const NOWHERE: Where = { section: null, partAt: () => null };

/** Who goes by what name, and the pattern that finds all names with what stands before them; null without names. */
const namesIn = keptFor((mentions: readonly Mention[]) => {
  const owners = ownersOf(mentions);
  const stems = [...new Set([...owners.named.keys(), ...owners.byHead.keys()])].sort(
    (a, b) => b.length - a.length,
  );
  const names = stems.map(literal).join('|');
  const pattern =
    stems.length === 0
      ? null
      : new RegExp(
          `(?<bare>${BARE_REST.source})|${START}(?:${SHARE}|${REST}|${AMOUNT})?${ADJECTIVES}${START}(?<name>(?:${names})(?:e?s)?)${END}(?<cut>${CUT})?`,
          'giu',
        );
  return { owners, pattern };
});

/**
 * A step's text with changed ingredients under their new names and amounts, and which of them it
 * names. Names of unchanged ingredients are never touched, also not inside longer ones.
 */
export function renameIn(
  text: string,
  mentions: readonly Mention[],
  context: RenameContext,
  { section, partAt }: Where = NOWHERE,
): { text: string; named: Mention[] } {
  const { owners, pattern } = namesIn(mentions);
  if (pattern === null) return { text, named: [] };
  const named = new Set<Mention>();
  const renamed = withoutChoices(text, mentions).replace(pattern, (...found) => {
    const groups = found.at(-1) as Record<
      'name' | 'quantity' | 'unit' | 'share' | 'rest' | 'bare' | 'kind',
      string
    > & { cut?: string };
    const { cut = '' } = groups;
    const all = found[0] as string;
    const whole = all.slice(0, all.length - cut.length);
    if (groups.bare !== undefined) return bareRest(whole, mentions, context);
    const at = found.at(-3) as number;
    const sentence = sentenceAt(text, at);
    const place = {
      sentence,
      text,
      section,
      part: partAt(at),
      amount: amountOf(groups),
      mentions,
      isNamedBefore: context.used.isNamedBefore,
      left: (one: Mention) => context.used.left(one),
    };
    // Of '1-2 tablespoons cream' no single amount can be told.
    if (groups.quantity !== undefined && /\d\s?(?:-|–|to)\s?$/.test(text.slice(0, at))) return all;
    const mention = ownerOf(owners, groups.name, place);
    const end = at + whole.length;
    if (mention === null || isOtherUse(text, end - groups.name.length, end, mention)) return all;
    if (mention.newName === 'flours' && isOwnFlour(text, end - groups.name.length, end)) return all;
    if (isNamedAlready(mention, text, end, groups.name) || isRemark(mention, sentence, text))
      return all;
    named.add(mention);
    for (const one of [mention, ...linesTogether(groups.name, mentions, context.used)])
      context.used.name(one);
    const meant = mention.changed
      ? beforeMash(inBoilingStep(mention, text, mentions), sentence)
      : mention;
    const before = text.slice(0, end - groups.name.length);
    const passing = isPassing(before, text.slice(end)) || isLead(before, text.slice(end));
    const parts: Found = { ...groups, cut, before, passing, ...withoutKind(whole, groups, meant) };
    if (MIXTURE.test(text.slice(end)))
      return meant.changed ? all.replace(groups.name, mixtureName(meant, groups.name)) : all;
    const put = meant.changed
      ? replacement(meant, parts, context, mentions)
      : keptText(meant, parts, context);
    const full = withAlong(
      cut === '' ? put : withCut(put, cut, meant, groups.name),
      meant,
      context,
    );
    if (full === all) return all;
    // A part in brackets is no list to be joined with its neighbours.
    const marked = full.endsWith(')') ? full : asList(full);
    return /(?:^|[.!?:\n(–—]\s*|^\d+[.)]\s*)$/.test(text.slice(0, at))
      ? capitalised(marked, whole)
      : marked;
  });
  const once = withoutDoubles(joined(withArticles(renamed, '\u2060')), named);
  const added = withOneAmount(agreeingVerbs(once, named), newFoods(named));
  return { text: tidied(added), named: [...named] };
}

/** What stands in for several of the ingredients, by its name. */
const newFoods = (named: ReadonlySet<Mention>): string[] => [
  ...new Set(
    [...named].flatMap(({ items, alsoElsewhere }) =>
      items.flatMap(({ foodId, foodName }) =>
        alsoElsewhere.has(foodId) ? [shortName(foodName)] : [],
      ),
    ),
  ),
];

/** Of one thing now: 'while the cauliflower cooks', 'once the kohlrabi is done'; and 'the drained, cooked pasta' is 'the drained cauliflower'. */
function agreeingVerbs(text: string, named: ReadonlySet<Mention>): string {
  return [...named].reduce((now, { changed, newName, ingredient }) => {
    if (!changed || newName === null || / and |, |s$/.test(newName)) return now;
    const one = literal(newName);
    const wasMany = singular(ingredient.item.name) !== ingredient.item.name;
    const ofOne = now.replace(
      new RegExp(`\\b(drained|rinsed|cooked|cooled|hot|warm), (?=${one}\\b)`, 'gi'),
      '$1 ',
    );
    if (!wasMany && !NAMED_MANY.test(ingredient.item.name)) return ofOne;
    return ofOne
      .replace(
        new RegExp(`(?<!\\band (?:the )?)(\\b${one}) (are|were|have)\\b`, 'gi'),
        (_, name, verb) => `${name} ${VERBS_OF_ONE[String(verb).toLowerCase()] ?? verb}`,
      )
      .replace(
        new RegExp(
          `\\b((?:while|as|once|when) (?:the )?${one}) (cook|boil|simmer|steam|bake|roast|fry|soften)\\b`,
          'gi',
        ),
        (_, name, verb) => `${name} ${verb === 'fry' ? 'fries' : `${verb}s`}`,
      );
  }, text);
}

/** Pasta by names that are plural in English. */
const NAMED_MANY = /(?:noodles|macaroni|spaghetti|penne|linguine|fettuccine|pasta)$/i;
const VERBS_OF_ONE: Readonly<Record<string, string>> = { are: 'is', were: 'was', have: 'has' };

/** Names of many that a page's 'is' does not agree with. */
const IS_MANY =
  /\b(flours|sweeteners|noodles|strands|sheets|wraps|buns|nuts|hearts of palm|\w+(?:ooms|nips|shes|beans|rries|rrots|lentils)) is\b/gi;

/** 'egg crepe egg crepe' of 'manicotti tube' -> 'egg crepe'. */
const withoutDoubles = (text: string, named: ReadonlySet<Mention>): string =>
  [...named].reduce((now, { changed, newName }) => {
    if (!changed || newName === null || / (?:and|,) /.test(newName)) return now;
    const one = literal(singular(newName));
    return now.replace(new RegExp(`${START}(?:${one}s?) (${one}s?)${END}`, 'giu'), '$1');
  }, text);

/** 'the flours and the flours' -> 'the flours'. */
const tidied = (text: string): string =>
  text
    .replace(/\b(flours|sweeteners)((?:,| and|, and) (?:the )?\1)+\b/gi, '$1')
    .replace(/\b(\w+ crumbs)(?:\/| or )\1\b/gi, '$1')
    .replace(/\b(sheets|noodles|crumbs|rice|chips|fluffy|cold|fresh|cooked) \1\b/gi, '$1')
    .replace(/\b(wraps|buns|sheets|breads|muffins|bagels) slices?\b/gi, '$1')
    .replace(/\b(egg crepes?) egg crepes?\b/gi, '$1')
    .replace(/\bflours?(?:,| and|, and) flours\b/gi, 'flours')
    .replace(IS_MANY, '$1 are')
    .replace(/\b(flours|sweeteners) has\b/gi, '$1 have');
