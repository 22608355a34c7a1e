/** A first rough weight of the dish from its lines alone, for shares that depend on it. */
import type { Item, Line } from '../../model.ts';
import { gramsOf, millilitresOf, type Region } from '../../units.ts';
import { plain } from '../line-words.ts';
import { readingsOf, spanOf } from '../readings.ts';

/** Grams of a millilitre and of a counted piece, of foods at large. Common practice, no source. */
const ROUGH_DENSITY = 0.8;
const ROUGH_PIECE = 60;
const SMALL_UNIT = /pinch|dash|drop|clove|sprig|leaf|grind|sprinkle/;

/** How long one is, not how heavy: '12 (6-inch) tortillas'. */
const LENGTH = /^(?:inch|cm|mm|ft)$/;

function roughUnit(unit: string | null, region: Region): number {
  const grams = gramsOf(unit);
  if (grams !== null) return grams;
  const ml = millilitresOf(unit, region);
  if (ml !== null) return ml * ROUGH_DENSITY;
  if (unit !== null && SMALL_UNIT.test(unit)) return 2;
  return unit === null ? ROUGH_PIECE : 150;
}

/** Rough grams of an item by its first mass reading, else its first reading; 0 without an amount. */
function roughGrams(item: Item, region: Region): number {
  const readings = readingsOf(item);
  const reading =
    readings.find((parts) => parts.every((part) => gramsOf(part.amount.unit) !== null)) ??
    readings[0];
  return (reading ?? []).reduce((sum, { amount, size: said }) => {
    const size = said && LENGTH.test(said.unit ?? '') ? null : said;
    const one = roughUnit(size ? size.unit : amount.unit, region);
    return sum + spanOf(amount).best * one * (size ? spanOf(size).best : 1);
  }, 0);
}

const NOT_EATEN = /\bwater\b|\boil\b.*fry|fry.*\boil\b/;

/** Rough grams of all lines together, cooking water and frying oil left out. */
export function roughDish(lines: readonly Line[], region: Region): number {
  return lines.reduce((sum, line) => {
    if (NOT_EATEN.test(plain(line.text)) && /fry|boil|cook/.test(plain(line.purpose ?? '')))
      return sum;
    return sum + line.items.reduce((total, item) => total + roughGrams(item, region), 0);
  }, 0);
}

const PASTA =
  /pasta|spaghetti|macaroni|penne|linguin|fettuccin|tagliatell|rigatoni|noodle|fusilli|orecchiette|lasagn|farfalle|ziti|bucatini/;

/** Rough grams of dry pasta on the lines. */
export function roughPasta(lines: readonly Line[], region: Region): number {
  return lines.reduce(
    (sum, line) =>
      sum +
      line.items.reduce(
        (total, item) => total + (PASTA.test(plain(item.name)) ? roughGrams(item, region) : 0),
        0,
      ),
    0,
  );
}
