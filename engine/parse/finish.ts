/** Finishes a name: lifts out preparation, sizes and units that stand inside it. */
import type { Amount } from '../model.ts';
import { readSizes } from './amounts.ts';
import { hasPair, type Lexicon } from './lexicon.ts';
import { liftPrep } from './name.ts';
import type { Parts } from './parts.ts';
import { classify, onlyDescribes } from './segments.ts';
import { lowAt, type Token, textOf } from './tokens.ts';

/** Plurals that no rule of spelling undoes ('leaves' -> 'leaf'), so that matching meets one form. */
function singular(t: Token, lex: Lexicon): Token {
  const one = lex.singulars.get(t.low);
  return one === undefined ? t : { ...t, text: one, low: one };
}

/** Takes size words out of a name; 'small to medium' goes as one. */
function liftSize(name: Token[], parts: Parts, lex: Lexicon): Token[] {
  for (let i = 0; i < name.length; i++) {
    const run = readSizes(name, i, lex, false);
    if (!run.value.size || run.next - i >= name.length || isLink(lowAt(name, run.next), lex))
      continue;
    parts.size ??= run.value.size;
    return [...name.slice(0, i), ...name.slice(run.next)];
  }
  return name;
}

/** The compound's end as the unit ('2 Knoblauchzehen' are two cloves); false when it has none. */
function liftSuffix(word: Token, lead: Amount, lex: Lexicon): boolean {
  const suffix = lex.suffixUnits.find(
    ([end]) => word.low.endsWith(end) && word.low.length > end.length + 2,
  );
  if (suffix) lead.unit = suffix[1];
  return suffix !== undefined;
}

function shorten(word: Token, lex: Lexicon): Token {
  const end = lex.suffixUnits.find(([e]) => word.low.endsWith(e))?.[0].length ?? 0;
  return { ...word, text: word.text.slice(0, -end), low: word.low.slice(0, -end) };
}

/** A short second name in brackets, read as part of the name: 'plain (all-purpose) flour'. */
export function isGloss(tokens: readonly Token[], lex: Lexicon): boolean {
  if (classify(tokens, lex) !== 'name') return false;
  if (lex.or.has(lowAt(tokens, 0)))
    return tokens.length <= 6 && !tokens.some((t) => lex.glossNot.has(t.low));
  const plain = (t: Token): boolean =>
    !isLink(t.low, lex) && !lex.glossNot.has(t.low) && t.kind !== 'n';
  return tokens.length <= 3 && tokens.every(plain);
}

/**
 * Sets the name of `parts` from its tokens: size and unit words inside it ('ripe large tomato',
 * 'garlic cloves') go to the size and the leading amount, preparation to the preparations.
 */
export function finishName(
  tokens: readonly Token[],
  glosses: readonly (readonly Token[])[],
  parts: Parts,
  lex: Lexicon,
): void {
  const lead = parts.amounts[0];
  const keep = lead?.unit != null && lex.byName.get(lead.unit)?.kind === 'container';
  const lifted = liftPrep(tokens, lex, keep);
  let name = lifted.name;
  if (lifted.prep.length > 0) parts.preps.unshift(textOf(lifted.prep));
  while (name.length > 1 && isLink(lowAt(name, 0), lex)) name = name.slice(1);
  if (lead) name = liftSize(name, parts, lex);
  else name = dropUnit(name, parts, lex);
  if (lead?.unit === null) {
    if (name.length > 1 && lex.fill.has(lowAt(name, 0))) name = name.slice(1);
    name = liftUnit(name, lead, lifted.prep.length > 0, lex);
  }
  parts.nameTokens = name
    .filter((t, i) => t.kind !== 'p' || lex.and.has(t.low) || (i > 0 && i < name.length - 1))
    .map((t) => singular(t, lex));
  let text = textOf(parts.nameTokens);
  for (const gloss of glosses) text = `${text} (${textOf(gloss)})`;
  parts.name = text;
}

/** 'Parsley sprigs' without a count: the measure word is not part of the food. */
function dropUnit(name: Token[], parts: Parts, lex: Lexicon): Token[] {
  const last = name.at(-1);
  if (!last || name.length < 2 || lex.units.get(last.low)?.name !== 'sprig') return name;
  parts.preps.push(last.text);
  return name.slice(0, -1);
}

const isLink = (low: string, lex: Lexicon): boolean => lex.or.has(low) || lex.and.has(low);

/** Gives a bare count the unit that its name ends or, after preparation words, begins with. */
function liftUnit(name: Token[], lead: Amount, prepared: boolean, lex: Lexicon): Token[] {
  const last = name.at(-1);
  if (!last || name.length === 0) return name;
  const rest = name.slice(0, -1);
  const before = lowAt(rest, rest.length - 1);
  const unit = lex.units.get(last.low);
  const trails = unit?.kind === 'trail' || hasPair(lex.trailPairs, before, last.low, lex);
  const stands = rest.length > 0 && !onlyDescribes(rest, lex);
  if (unit && trails && stands && !isLink(before, lex) && !lex.prepTails.has(before)) {
    lead.unit = unit.name;
    return rest;
  }
  if (liftSuffix(last, lead, lex)) return [...rest, shorten(last, lex)];
  const start = lex.units.get(lowAt(name, 0));
  if (start && rest.length > 0 && prepared && start.kind !== 'noun') {
    lead.unit = start.name;
    return name.slice(lex.of.has(lowAt(name, 1)) ? 2 : 1);
  }
  return name;
}
