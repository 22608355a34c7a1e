/** Finishes a name: lifts out preparation, sizes and units that stand inside it. */
import type { Amount } from '../../model.ts';
import { readSizes } from '../amounts/measure.ts';
import type { Parts } from '../line-parts.ts';
import { hasPair, isPairAt, type Lexicon } from '../words/lexicon.ts';
import { isAt, isMark, lowAt, someOf, type Token, textOf } from '../words/tokens.ts';
import { liftPrep } from './find-name.ts';
import { classify, onlyDescribes } from './segments.ts';

const QUOTES = new Set(`'’‘"“”%`);

/** Plurals that no rule of spelling undoes ('leaves' -> 'leaf'), so that matching meets one form. */
function singular(t: Token, lex: Lexicon): Token {
  const one = lex.singulars.get(t.low);
  return one ? { ...t, text: one, low: one } : t;
}

/** Whether a lead counts things, so that a size word within the name sizes them. */
const counts = (lead: Amount, lex: Lexicon): boolean => {
  const kind = lead.unit === null ? 'piece' : lex.byName.get(lead.unit)?.kind;
  return kind !== 'mass' && kind !== 'volume';
};

/** Takes size words out of a name ('small to medium' goes as one); at its head only unless `anywhere`. */
function liftSize(name: Token[], parts: Parts, anywhere: boolean, lex: Lexicon): Token[] {
  if (parts.size.length > 0) return name;
  const end = anywhere ? name.length : 1;
  for (let i = 0; i < end; i++) {
    if (isAt(lex.or, name, i)) break;
    if (isPairAt(lex.notSizes, name, i, lex)) continue;
    const { value, next } = readSizes(name, i, lex, false);
    if (value.size.length === 0 || next - i >= name.length) continue;
    if (isAt(lex.joints, name, next) || (i > 0 && lowAt(name, next) === ',')) continue;
    parts.size = value.size;
    // '1 lata pequeña de maíz'
    const rest = i === 0 && isAt(lex.of, name, next) ? next + 1 : next;
    return [...name.slice(0, i), ...name.slice(rest)];
  }
  return name;
}

/** The word without its end where that is a unit ('2 Knoblauchzehen' are two cloves); null when it has none. */
function liftSuffix(word: Token, lead: Amount, lex: Lexicon): Token | null {
  const [end, unit] =
    lex.suffixUnits.find(([e]) => word.low.endsWith(e) && word.low.length > e.length + 2) ?? [];
  if (!end || !unit) return null;
  lead.unit = unit;
  return { ...word, text: word.text.slice(0, -end.length), low: word.low.slice(0, -end.length) };
}

const isPlain = (t: Token, lex: Lexicon): boolean =>
  !lex.joints.has(t.low) && !lex.glossNot.has(t.low) && !/\d/.test(t.low);

/** A short second name in brackets, read as part of the name: 'plain (all-purpose) flour'. */
export function isGloss(tokens: readonly Token[], lex: Lexicon): boolean {
  if (classify(tokens, lex) !== 'name') return false;
  if (isAt(lex.or, tokens, 0)) return tokens.length <= 6 && !someOf(tokens, lex.glossNot);
  return tokens.length <= 3 && tokens.every((t) => isPlain(t, lex));
}

/** Gives a bare count the unit that its name ends or, after preparation words, begins with. */
function liftUnit(name: Token[], parts: Parts, lead: Amount, lex: Lexicon): Token[] {
  const last = name.at(-1);
  if (!last || name.length === 0) return name;
  const rest = name.slice(0, -1);
  const before = lowAt(rest, rest.length - 1);
  const unit = lex.units.get(last.low);
  const trails = unit?.kind === 'trail' || hasPair(lex.trailPairs, before, last.low, lex);
  const stands = rest.length > 0 && !onlyDescribes(rest, lex);
  if (unit && trails && stands && !lex.joints.has(before) && !lex.prepTails.has(before)) {
    lead.unit = unit.name;
    parts.known.push([last]);
    return rest;
  }
  const short = liftSuffix(last, lead, lex);
  if (short) return [...rest, short];
  const start = lex.units.get(lowAt(name, 0));
  if (start && rest.length > 0 && parts.lifted.length > 0 && start.kind !== 'noun') {
    lead.unit = start.name;
    parts.known.push(name.slice(0, 1));
    return name.slice(isAt(lex.of, name, 1) ? 2 : 1);
  }
  return name;
}

/** Without marks at its edges and marks that lost the word between them. */
function withoutStrayMarks(name: readonly Token[], lex: Lexicon): Token[] {
  return name.filter((t, i) => {
    if (!isMark(t) || lex.and.has(t.low) || QUOTES.has(t.text)) return true;
    const after = name[i + 1];
    if (i === 0 || after === undefined) return false;
    // the word between a comma and what follows was lifted out
    return t.text !== ',' || (!isMark(after) && after.index === t.index + 1);
  });
}

/**
 * Sets the name of `parts` from its tokens: size and unit words inside it ('ripe large tomato',
 * 'garlic cloves') go to the size and the leading amount, preparation to what was lifted out.
 */
export function finishName(tokens: readonly Token[], parts: Parts, lex: Lexicon): void {
  const lead = parts.amounts[0];
  const inContainer = lead?.unit != null && lex.byName.get(lead.unit)?.kind === 'container';
  const { name: kept, prep } = liftPrep(tokens, lex, inContainer);
  let name = kept;
  parts.lifted = prep;
  while (name.length > 1 && isAt(lex.joints, name, 0)) name = name.slice(1);
  // 'flour and a (little more)'
  while (name.length > 1 && isAt(lex.silent, name, name.length - 1)) name = name.slice(0, -1);
  if (lead) name = liftSize(name, parts, counts(lead, lex), lex);
  if (lead?.unit === null) {
    name = liftUnit(name, parts, lead, lex);
    // '3 fat garlic cloves': the word is about the unit
    if (lead.unit && name.length > 1 && isAt(lex.fill, name, 0))
      parts.lifted.unshift(name.splice(0, 1));
  }
  parts.name = withoutStrayMarks(name, lex).map((t) => singular(t, lex));
}

/** The whole name as text, second names in brackets behind it. */
export function nameText(parts: Parts): string {
  let text = textOf(parts.name);
  for (const gloss of parts.glosses) text = `${text} (${textOf(gloss)})`;
  return text;
}
