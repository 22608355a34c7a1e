/** What the first of two named foods is, when the line says their common word only once. */
import type { Item } from '../../model.ts';
import type { Lookup } from '../lookup.ts';
import { keyOf } from '../name-keys.ts';
import { headAt, worth } from '../name-words.ts';
import { tokensOf } from '../normalise.ts';

const isNamed = (tokens: readonly string[], lookup: Lookup): boolean =>
  lookup.isName(keyOf(tokens));

/** 'whole-wheat' and 'lemon-flavored' tell a kind, though a noun stands in them. */
const KIND_NAME =
  /^(?:(?:stone-?ground|organic|plain|fresh) )?(?:whole[- ]?(?:wheat|grain|meal)|multi-?grain|gluten-free|[a-z]+-(?:flavou?red|style|free))$/i;

/** 'Canned in juice', 'tuna in oil': what it lies in names no food of its own. */
const IN_SOMETHING = /\s(?:packed |preserved |marinated )?(?:in|with)\s.*$/i;

/** '8-serving crusts', '6-slice loaf': how many one is for tells no kind. */
const FOR_SO_MANY = /^\d+[- ](?:serving|person|people|slice|count)s?\s+(?=[a-z])/i;

/** 'canned' of 'canned or fresh coconut milk': every word but the head only tells a kind. */
const isKindOnly = (name: string, tokens: readonly string[], head: string): boolean =>
  KIND_NAME.test(name.trim()) || tokens.every((token) => token === head || worth(token) < 1);

/** Foods that stand alone before the name of another: 'butter or olive oil', 'sugar or corn syrup'. */
const STANDS_ALONE = /\b(?:butter|sugar|honey|water|ghee|lard|margarine|oil)$/i;
const DRINK = /^(?:wine|beer|cider|sherry|vermouth|port|water|milk|cream)$/;
const POURED = /^(?:oil|syrup|fat|spray)$/;

/** 'Walnuts or almond butter': a plural names the pieces themselves. */
const isPlural = (name: string): boolean => /[a-z]s$/i.test(name.trim()) && !/ss$/i.test(name);

/** 'duck' of 'duck or chicken stock' with the end of the other name: 'duck stock', if there is one. */
function lentName(name: string, own: readonly string[], other: readonly string[], lookup: Lookup) {
  const head = other[headAt(other)] ?? '';
  const repeats = own.some((token) => worth(token) === 1 && other.includes(token));
  if (repeats || own.includes(head) || (isPlural(name) && isNamed(own, lookup))) return null;
  if (STANDS_ALONE.test(name.trim()) && POURED.test(head)) return null;
  const nouns = own.filter((token) => worth(token) === 1);
  for (let from = 1; from < other.length; from += 1) {
    const end = other.slice(from);
    for (const start of [own, nouns]) {
      if (start.length > 0 && isNamed([...start, ...end], lookup))
        return [...start, ...end].join(' ');
    }
  }
  return null;
}

/** '18 corn or 12 flour tortillas': both count the same kind of piece. */
const bareCounts = (amounts: Item['amounts']): boolean =>
  amounts.length > 0 && amounts.every(({ unit }) => unit === null);

const sharesAmount = (item: Item, other: Item['alternatives'][number]): boolean =>
  other.amounts.length === 0 || (bareCounts(item.amounts) && bareCounts(other.amounts));

/** 'White wine broth' of 'white wine or broth': the reader lent the end to a drink that needs none. */
function pouredAlone(own: readonly string[], item: Item, lookup: Lookup): string | null {
  const shorter = own.slice(0, -1);
  const lent = item.alternatives.some(({ name }) => tokensOf(name).at(-1) === own.at(-1));
  if (!lent || !DRINK.test(shorter.at(-1) ?? '') || isNamed(own, lookup)) return null;
  return isNamed(shorter, lookup) ? shorter.join(' ') : null;
}

/**
 * The name of an item as meant: its own, unless a food offered instead carries the word that both
 * share and is measured alike.
 */
export function meantName(item: Item, lookup: Lookup): string {
  const name = item.name.replace(FOR_SO_MANY, '');
  const own = tokensOf(name);
  if (own.length === 0) return item.name;
  const poured = pouredAlone(own, item, lookup);
  if (poured !== null) return poured;
  for (const [at, other] of item.alternatives.entries()) {
    const full = tokensOf(other.name.replace(IN_SOMETHING, ''));
    if (full.length < 2 || !sharesAmount(item, other)) continue;
    const lent = lentName(name, own, full, lookup);
    if (lent !== null) return lent;
    const head = full[headAt(full)] ?? '';
    // Only the nearest offer shares a head the name has itself: 'canned milk or fresh coconut milk'.
    const sharesHead = at === 0 || !own.includes(head);
    // 'ground or shredded coconut': a word of what was done is no food by itself
    const nothing = headAt(own) < 0 || !isNamed(own, lookup);
    const kind = sharesHead && isKindOnly(name, own, head) && nothing;
    const wider = full.length > own.length || !isKindOnly(other.name, full, head);
    if (kind && wider) return other.name;
  }
  return name;
}

/** 'Red' of '1 each red and green pepper': the noun of the next food on the line completes it. */
export function withNextNoun(name: string, item: Item, items: readonly Item[]): string {
  const tokens = tokensOf(name);
  if (tokens.length === 0 || headAt(tokens) >= 0) return name;
  const later = items.slice(items.indexOf(item) + 1).map((next) => tokensOf(next.name));
  const other = later.find((words) => headAt(words) > 0);
  return other ? `${name} ${other[headAt(other)]}` : name;
}
