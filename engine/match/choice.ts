/** What the first of two named foods is, when the line says their common word only once. */
import type { Item } from '../model.ts';
import { keyOf, type Lookup } from './lookup.ts';
import { tokensOf } from './normalise.ts';
import { headAt, worth } from './words.ts';

const isNamed = (tokens: readonly string[], lookup: Lookup): boolean =>
  lookup.exact.has(keyOf(tokens));

/** 'canned' of 'canned or fresh coconut milk': every word but the head only tells a kind. */
const isKindOnly = (tokens: readonly string[], head: string): boolean =>
  tokens.every((token) => token === head || worth(token) < 1);

/** 'duck' of 'duck or chicken stock' with the end of the other name: 'duck stock', if there is one. */
function lentName(own: readonly string[], other: readonly string[], lookup: Lookup): string | null {
  const [, ...end] = other;
  const head = other[headAt(other)] ?? '';
  // 'Sugar or corn syrup' offers sugar, not sugar syrup.
  if (end.length === 0 || head === 'syrup' || own.includes(head)) return null;
  const nouns = own.filter((token) => worth(token) === 1);
  for (const start of [own, nouns]) {
    if (start.length > 0 && isNamed([...start, ...end], lookup))
      return [...start, ...end].join(' ');
  }
  return null;
}

/** '18 corn or 12 flour tortillas': both count the same kind of piece. */
const bareCounts = (amounts: Item['amounts']): boolean =>
  amounts.length > 0 && amounts.every(({ unit }) => unit === null);

/**
 * The name of an item as meant: its own, unless the food offered instead carries the word that both
 * share and is measured alike.
 */
export function meantName(item: Item, lookup: Lookup): string {
  const [other] = item.alternatives;
  if (!other) return item.name;
  if (other.amounts.length > 0 && !(bareCounts(item.amounts) && bareCounts(other.amounts)))
    return item.name;
  const own = tokensOf(item.name);
  const full = tokensOf(other.name);
  if (own.length === 0 || full.length < 2) return item.name;
  const head = full[headAt(full)] ?? '';
  const wider = full.length > own.length || !isKindOnly(full, head);
  if (wider && isKindOnly(own, head) && !isNamed(own, lookup)) return other.name;
  return lentName(own, full, lookup) ?? item.name;
}
