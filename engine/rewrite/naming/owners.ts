/** Which ingredient a word of the method means, when several have that name. */

import { isNamedIn } from '../wording/name-patterns.ts';
import type { Mention } from './mention.ts';
import { singular } from './method-names.ts';

export interface Owners {
  /** Ingredients by name: a changed one before an unchanged one, else the first line of the name. */
  named: Map<string, Mention[]>;
  /** Ingredients by a last word that several of them share. */
  byHead: Map<string, Mention[]>;
}

function grouped(
  mentions: readonly Mention[],
  namesOf: (mention: Mention) => readonly string[],
): Map<string, Mention[]> {
  const owners = new Map<string, Mention[]>();
  for (const mention of mentions)
    for (const name of namesOf(mention)) owners.set(name, [...(owners.get(name) ?? []), mention]);
  for (const [name, own] of owners)
    owners.set(
      name,
      own.toSorted((a, b) => Number(b.changed) - Number(a.changed)),
    );
  return owners;
}

/** The recipe's ingredients by what a method may call them. */
export function ownersOf(mentions: readonly Mention[]): Owners {
  return {
    // 'both sugars' and 'sugars' stay plurals; the rest is looked up in the singular.
    named: grouped(mentions, ({ names, sharedHead, ingredient }) =>
      names.map((name) =>
        sharedHead === null && !ingredient.item.name.toLowerCase().includes(name)
          ? name
          : singular(name),
      ),
    ),
    byHead: grouped(mentions, ({ sharedHead }) => (sharedHead === null ? [] : [sharedHead])),
  };
}

/** Where a flour thickens, coats or dusts instead of making the dough. */
export const SAUCE =
  /\b(sauce|gravy|roux|thicken\w*|simmer|stock|broth|whisk in the (?:milk|stock|cream))\b/i;
const COATING = /\b(dip|dredge|coat|toss the|dust the)\b/i;

const norm = (title: string | null): string => (title ?? '').toLowerCase().replace(/^for the /, '');

/** An amount in the method's words. */
export interface Stated {
  quantity: number;
  unit: string | null;
}

/** Where a name stands: the sentence and step around it, the heading above, and every ingredient of the recipe. */
export interface Place {
  sentence: string;
  text: string;
  section: string | null;
  /** The place of the part that is made here among the plan's; null when it cannot be told. */
  part: number | null;
  /** The amount in front of the name; null when there is none. */
  amount: Stated | null;
  mentions: readonly Mention[];
  /** Whether an earlier step named an ingredient. */
  isNamedBefore: (mention: Mention) => boolean;
  /** Share of an ingredient that earlier steps have left of a part; null when it cannot be told. */
  left: (mention: Mention) => number | null;
}

function bySection(own: readonly Mention[], { section }: Place): Mention | undefined {
  const heading = norm(section);
  return own.find(({ ingredient }) => heading !== '' && norm(ingredient.line.group) === heading);
}

/** By the other ingredients in the sentence: the one whose group most of them are of. */
export function byCompany(
  own: readonly Mention[],
  sentence: string,
  { mentions }: Pick<Place, 'mentions'>,
): Mention | undefined {
  const groups = new Set(own.map(({ ingredient }) => ingredient.line.group));
  if (groups.size < 2) return undefined;
  const counts = new Map<string | null, number>();
  for (const other of mentions) {
    const { group } = other.ingredient.line;
    const alone =
      other.sharedHead === null &&
      !own.some(({ ingredient }) => ingredient.key === other.ingredient.key);
    const only = mentions.every(
      (one) =>
        one.ingredient.line.group === group || !one.names.some((n) => other.names.includes(n)),
    );
    if (alone && only && isNamedIn(sentence, other))
      counts.set(group, (counts.get(group) ?? 0) + 1);
  }
  const ranked = [...counts].sort((a, b) => b[1] - a[1]);
  const [best, second] = ranked;
  if (best === undefined || best[1] === second?.[1]) return undefined;
  return own.find(({ ingredient }) => ingredient.line.group === best[0]);
}

function byRole(own: readonly Mention[], sentence: string): Mention | undefined {
  const role = SAUCE.test(sentence) ? 'thickener' : COATING.test(sentence) ? 'coating' : null;
  return role === null ? undefined : own.find((mention) => mention.role === role);
}

/** Those of the part that is made here; all of them when it has none of them. */
export function inPart(own: readonly Mention[], { part }: Pick<Place, 'part'>): readonly Mention[] {
  const here = part === null ? [] : own.filter((mention) => mention.part === part);
  return here.length > 0 ? here : own;
}

/** Whether the ingredient's line states just this amount. */
export const statesAmount = ({ ingredient }: Mention, stated: Stated): boolean =>
  ingredient.item.amounts.some(
    ({ quantity, unit }) => unit === stated.unit && Math.abs(quantity - stated.quantity) < 0.01,
  );

/** The one whose line states the amount in front of the name. */
function byAmount(own: readonly Mention[], { amount }: Place): Mention | undefined {
  if (amount === null) return undefined;
  const same = own.filter((mention) => statesAmount(mention, amount));
  return same.length === 1 ? same[0] : undefined;
}

/** The place of an ingredient's line on the list. */
const lineOf = ({ ingredient }: Mention): number => Number.parseInt(ingredient.key, 10);

/** 'until the cream is thick': what is looked at. */
const LOOKED_AT = /\b(?:until|once|when)\b[^,;]*/gi;

/** Lines further off than this are no company. Own choice. */
const NEAR = 4;

/**
 * On a list without headings, the line that stands nearest to the other ingredients of the sentence, or of
 * its step; of those that go in only one that no step has named, where there is one.
 */
function byNearness(
  own: readonly Mention[],
  { sentence, text, mentions, isNamedBefore }: Place,
): Mention | undefined {
  if (own.length < 2 || mentions.some(({ ingredient }) => ingredient.line.group !== null))
    return undefined;
  const fresh = PUTS_IN.test(sentence.replace(LOOKED_AT, ''))
    ? own.filter((mention) => !isNamedBefore(mention))
    : [];
  if (fresh.length === 1) return fresh[0];
  const open = fresh.length > 0 ? fresh : own;
  const others = mentions.filter(
    (other) =>
      other.sharedHead === null &&
      !own.some(({ ingredient }) => ingredient.key === other.ingredient.key) &&
      mentions.every(
        (one) =>
          one.ingredient.key === other.ingredient.key ||
          !one.names.some((name) => other.names.includes(name)),
      ),
  );
  for (const said of [sentence, text]) {
    const company = others.filter((other) => isNamedIn(said, other)).map(lineOf);
    if (company.length === 0) continue;
    const far = (mention: Mention): number =>
      company.reduce((sum, at) => sum + Math.abs(at - lineOf(mention)), 0) / company.length;
    const [best, second] = open.toSorted((a, b) => far(a) - far(b));
    if (best === undefined || far(best) > NEAR) return undefined;
    return second === undefined || far(second) > far(best) ? best : undefined;
  }
  return undefined;
}

/** Words that a cook leaves away: 'the sugar' is granulated sugar, not icing sugar. */
const LEFT_AWAY =
  /^(?:granulated|caster|superfine|white|plain|all-purpose|all purpose|unsalted|salted|whole|large|fine|fresh|regular|yellow|golden|organic|dry|dried|long-grain|golden caster)$/;

/** The one line that is called so for short; null when none or several are. */
function plainest(own: readonly Mention[]): Mention | undefined {
  const plain = own.filter(({ ingredient }) => {
    const words = ingredient.item.name.toLowerCase().trim().split(/\s+/).slice(0, -1);
    return words.every((word) => LEFT_AWAY.test(word));
  });
  return plain.length === 1 ? plain[0] : undefined;
}

const IS_SHARED =
  /\b(?:divided|separated|plus (?:more|extra)|for (?:dusting|sprinkling|rolling))\b/i;

/** What is put in now, not looked at: 'until the sugar has dissolved'. */
const PUTS_IN =
  /^(?!.*\b(?:until|once|when)\b).*\b(?:sprinkl\w*|add|spread|scatter|strew|combine|mix|stir|whisk|toss|beat|cream)\b/i;

/** Whether the part made here has a line of the name that no step has named. */
const isOfPart = (here: readonly Mention[], { part, isNamedBefore }: Place): boolean =>
  part !== null && here.some((mention) => mention.part === part && !isNamedBefore(mention));

/** 'the sugar' of a later step, where all of the line called just so is in already: the one plain line that no step has named. */
function nextPlain(
  any: readonly Mention[],
  exact: readonly Mention[],
  { isNamedBefore, left, sentence }: Place,
): Mention | undefined {
  if (!PUTS_IN.test(sentence)) return undefined;
  const isIn = (mention: Mention): boolean =>
    isNamedBefore(mention) &&
    left(mention) === null &&
    !IS_SHARED.test(mention.ingredient.line.text);
  if (exact.length === 0 || !exact.every(isIn)) return undefined;
  const fresh = any.filter((mention) => !exact.includes(mention) && !isNamedBefore(mention));
  return plainest(fresh);
}

/** Of lines with the very same name the first that no earlier step named, else the last. */
function inTurn(own: readonly Mention[], { isNamedBefore }: Place): Mention | undefined {
  const name = own[0]?.ingredient.item.name.toLowerCase();
  if (own.some(({ ingredient }) => ingredient.item.name.toLowerCase() !== name)) return undefined;
  const lines = own.toSorted((a, b) => Number(a.ingredient.key) - Number(b.ingredient.key));
  return lines.find((mention) => !isNamedBefore(mention)) ?? lines.at(-1);
}

/** The one that thickens a sauce, where the others are in already. */
function thickens(all: readonly Mention[], { text, isNamedBefore }: Place): Mention | undefined {
  const fresh = all.filter((mention) => !isNamedBefore(mention));
  const [only] = fresh;
  if (fresh.length !== 1 || all.length < 2 || !SAUCE.test(text)) return undefined;
  return only?.role === 'thickener' ? only : undefined;
}

/** 'the sugar, brown sugar and cinnamon': the one line of the word that the sentence does not call by its whole name. */
function notByName(any: readonly Mention[], { sentence }: Place): Mention | undefined {
  const called = ({ ingredient, names }: Mention): boolean =>
    [ingredient.item.name.toLowerCase(), ...names].some(
      (name) => name.includes(' ') && sentence.toLowerCase().includes(name),
    );
  const rest = any.filter((mention) => !called(mention));
  return rest.length === 1 && any.length > 1 ? rest[0] : undefined;
}

/** Of several ingredients a word may mean, the one the words around it speak of. */
function meantBy(all: readonly Mention[], place: Place): Mention | null {
  const { sentence, text } = place;
  const sauce = thickens(all, place);
  if (sauce !== undefined) return sauce;
  const own = inPart(all, place);
  const [first] = own;
  if (first === undefined || own.length === 1) return first ?? null;
  return (
    byAmount(all, place) ??
    bySection(own, place) ??
    byRole(own, sentence) ??
    byCompany(own, sentence, place) ??
    byCompany(own, text, place) ??
    byRole(own, text) ??
    byNearness(own, place) ??
    inTurn(own, place) ??
    first
  );
}

/** The ingredient that a word in a method means, or null when it means none. */
export function ownerOf({ named, byHead }: Owners, name: string, place: Place): Mention | null {
  const low = name.toLowerCase();
  const exact = named.get(low) ?? named.get(singular(low)) ?? named.get(low.replace(/es$/, ''));
  const any = byHead.get(singular(low));
  if (any !== undefined && low === singular(low)) {
    const here = inPart(any, place);
    const one =
      byAmount(any, place) ??
      notByName(here, place) ??
      (any.some(({ changed }) => changed)
        ? byNearness(inPart([...new Set([...any, ...(exact ?? [])])], place), place)
        : undefined) ??
      nextPlain(isOfPart(here, place) ? here : any, exact ?? [], place) ??
      (here.length === 1 ? here[0] : undefined) ??
      bySection(any, place) ??
      byCompany(any, place.sentence, place) ??
      (exact === undefined ? plainest(here) : undefined);
    if (one !== undefined) return one;
  }
  return exact === undefined ? null : meantBy(exact, place);
}

/** The sentence around a place in a text. */
export const sentenceAt = (text: string, at: number): string => {
  const start = Math.max(...['. ', '; ', '! '].map((end) => text.lastIndexOf(end, at) + 1));
  const ends = ['. ', '; ', '! '].map((end) => text.indexOf(end, at)).filter((found) => found >= 0);
  return text.slice(start, ends.length === 0 ? text.length : Math.min(...ends));
};
