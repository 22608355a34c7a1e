/** How many eat of a dish whose page states no yield: by the plates its method fills, by the fillets on its lines. */
import { withoutAccents } from '../../accents.ts';
import type { Ingredient } from '../../model.ts';
import { numberValue } from '../../numerals.ts';
import data from '../data/plates.json' with { type: 'json' };

const NUMBERS = new Map<string, number>(Object.entries(data.numbers));
const FILLS = new RegExp(
  `\\b(?:${data.verbs})[a-z]*\\b[^.;]{0,80}?\\b(?:${data.links})\\s+(?:the |die |les |los |i )?(\\d{1,2}|${[...NUMBERS.keys()].join('|')})\\s+(?:[a-z-]+\\s+){0,2}?(?:${data.plates})\\b`,
);
/** The verb stands behind in some languages: 'in 6 Portionen teilen'. */
const FILLED = new RegExp(
  `\\b(?:${data.links})\\s+(\\d{1,2}|${[...NUMBERS.keys()].join('|')})\\s+(?:[a-z-]+\\s+){0,2}?(?:${data.plates})\\s+(?:${data.verbs})`,
);
/** 'Makes 6 servings': the page has put its yield into the last step. */
const SAID = new RegExp(
  `\\b(?:${data.makes})\\s+(?:about |around |approximately |etwa |ca\\.? )?(\\d{1,2}|${[...NUMBERS.keys()].join('|')})\\s+(?:[a-z-]+\\s+){0,2}?(?:${data.plates})\\b`,
);
/** 'Serves 8.', 'Für 4 Personen': a sentence of nothing else. */
const SERVES = new RegExp(
  `(?:^|[.!;\\n(]\\s*)(?:this |the )?(?:recipe |dish |soup |stew )?(?:${data.serves})\\s+(?:about |around |approximately |etwa |ca\\.? )?(\\d{1,2}|${[...NUMBERS.keys()].join('|')})(?:\\s+(?:hungry |generously )?(?:people|persons?|personen|adults?|guests|personnes|personas|persone|pessoas|personer))?\\s*(?:[.!)]|$)`,
);
const PIECE = new RegExp(`\\b(?:${data.pieces})$`);
const MEAT = /^(?:meat|fish)/;
const FEWEST = 2;
const MOST = 12;

const plain = (text: string): string => withoutAccents(text.slice(0, 2000)).toLowerCase();

const counted = (count: number | null): count is number =>
  count !== null && Number.isInteger(count) && count >= FEWEST && count <= MOST;

/** 'Divide between 4 bowls': the plates that the method fills last; null where it tells of none. */
export function platesOfMethod(steps: readonly string[]): number | null {
  for (const step of [...steps].reverse()) {
    const words = plain(step);
    const found =
      (FILLS.exec(words) ?? FILLED.exec(words) ?? SAID.exec(words) ?? SERVES.exec(words))?.[1] ??
      '';
    const count = NUMBERS.get(found) ?? numberValue(found);
    if (counted(count)) return count;
  }
  return null;
}

/** A jar that is filled to be eaten from, not to keep: 'Divide between two jars'. */
const FILLS_JARS =
  /\b(?:divid|spoon|pour|ladl|split|portion|shar)\w*\b[^.;]{0,60}?\b(\d{1,2}|one|two|three|four|five|six|eight)\s+(?:[\w-]+\s+){0,3}?jars?\b/;
const PRESERVES = /\b(?:sterili[sz]\w*|canning|canner|headspace|seal(?:ed)? jars?|water bath)\b/;

/** The jars that a method divides a dish among; null where it fills none, or to preserve. */
export function jarsOfMethod(steps: readonly string[]): number | null {
  const words = steps.map(plain);
  if (words.some((step) => PRESERVES.test(step))) return null;
  const found = words.flatMap((step) => FILLS_JARS.exec(step)?.[1] ?? [])[0] ?? '';
  const count = NUMBERS.get(found) ?? numberValue(found);
  return counted(count) ? count : null;
}

/** '4 salmon fillets': the pieces of the heaviest line of meat or fish in pieces of a portion each; null without one. */
export function centrePieces(
  ingredients: readonly Ingredient[],
  groupOf: (foodId: string) => string | null,
): number | null {
  const [least = 0, most = 0] = data.pieceGrams;
  let best: { grams: number; count: number } | null = null;
  for (const { item, line, match, weight } of ingredients) {
    const [amount] = item.amounts;
    const count = amount?.max === null ? amount.quantity : null;
    const inPieces =
      amount?.unit === null || /^(?:piece|fillet|portion|link)$/.test(amount?.unit ?? '');
    if (!inPieces || !counted(count) || line.optional || weight === null) continue;
    const isPiece = PIECE.test(plain(item.name).trim()) || amount?.unit === 'fillet';
    if (!isPiece || !MEAT.test(groupOf(match?.foodId ?? '') ?? '')) continue;
    const grams = weight.grams.best;
    if (grams / count < least || grams / count > most) continue;
    if (best === null || grams > best.grams) best = { grams, count };
  }
  return best?.count ?? null;
}

/** Whether so many servings of a dish are plates that people eat of. */
export function arePlates(
  servings: number,
  cookedGrams: number,
  plateGrams: number,
  energyKcal: number | null,
): boolean {
  const [least = 0, most = 0] = data.ofAPlate;
  const share = cookedGrams / servings / plateGrams;
  return share >= least && share <= most && (energyKcal ?? 0) / servings <= data.mostKcal;
}
