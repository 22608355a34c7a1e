/** Turns a line's parts into items: several foods, alternatives. */
import type { Amount, Item } from '../model.ts';
import type { Lexicon } from './lexicon.ts';
import { readAmounts } from './measures.ts';
import { findCut, liftPrep } from './name.ts';
import type { Parts } from './parts.ts';
import { split } from './segments.ts';
import { lowAt, type Token, textOf } from './tokens.ts';

type Alternative = { amounts: Amount[]; name: string };

/** Parts of a token list between the words of `by`; commas before them belong to them. */
function splitAt(tokens: readonly Token[], by: ReadonlySet<string>): Token[][] {
  let run: Token[] = [];
  const out: Token[][] = [run];
  for (const t of tokens) {
    if (by.has(t.low) && run.length > 0) {
      run = [];
      out.push(run);
    } else run.push(t);
  }
  return out
    .map((run) => (run.at(-1)?.text === ',' ? run.slice(0, -1) : run))
    .filter((run) => run.length > 0);
}

/**
 * 'chicken or vegetable stock', 'avocado, peanut or canola oil': a first name lacks its head, which
 * the last one carries. A food that stands alone ('butter or olive oil') lacks none.
 */
function shareHead(names: Token[][], lex: Lexicon): string[] {
  const longest = names.at(-1) ?? [];
  const head = longest.at(-1);
  return names.map((name, i) => {
    const last = name.at(-1);
    if (!head || !last || i === names.length - 1 || longest.length < 2) return textOf(name);
    const open = lex.openHeads.has(head.low) && name.length === 1 && !lex.standAlone.has(last.low);
    const lacks = open || (lex.heads.has(head.low) && lex.needHead.has(last.low));
    return lacks ? `${textOf(name)} ${head.text}` : textOf(name);
  });
}

/** 'beurre ou de margarine': the word 'of' before a name is not part of it. */
const dropOf = (run: Token[], lex: Lexicon): Token[] =>
  run.length > 1 && lex.of.has(lowAt(run, 0)) ? run.slice(1) : run;

/** Names joined by 'or', the first being the food itself. */
function alternativesIn(tokens: readonly Token[], lex: Lexicon): string[] {
  if (!tokens.some((t) => lex.or.has(t.low))) return [textOf(tokens)];
  const runs = splitAt(tokens, lex.or).flatMap((run, i, all) =>
    all.length > 1 && i === 0 ? split(run).map((s) => s.tokens) : [run],
  );
  return shareHead(
    runs.map((run) => dropOf(run, lex)),
    lex,
  );
}

function substituteOf(
  tokens: readonly Token[],
  lex: Lexicon,
): (Alternative & { rest: string }) | null {
  const head = readAmounts(tokens, 0, lex);
  const rest = tokens.slice(head?.next ?? 0);
  const first = split(rest)[0]?.tokens ?? [];
  const cut = findCut(first, lex);
  const name = liftPrep(first.slice(0, cut), lex, false).name;
  if (name.length === 0) return null;
  return { amounts: head?.value.amounts ?? [], name: textOf(name), rest: textOf(first.slice(cut)) };
}

/** A further food with its own amount, as an item of its own. */
function extraItem(tokens: readonly Token[], lex: Lexicon): Item[] {
  const food = substituteOf(tokens, lex);
  if (!food) return [];
  const { amounts, name, rest } = food;
  return [{ amounts, size: null, name, preparation: rest || null, alternatives: [] }];
}

/** Name tokens of each food: 'salt and pepper' has two, '2 cups macaroni and cheese' one. */
function foodsOf(parts: Parts, lex: Lexicon): Token[][] {
  if (parts.list)
    return splitAt(parts.nameTokens, lex.and).flatMap((run) => split(run).map((s) => s.tokens));
  return parts.amounts.length === 0 ? splitAt(parts.nameTokens, lex.and) : [parts.nameTokens];
}

/** The items of a line; at least one, whose name is the whole name when nothing splits it. */
export function itemsOf(parts: Parts, lex: Lexicon): Item[] {
  const preparation = parts.preps.join(', ') || null;
  const foods = foodsOf(parts, lex);
  const substitutes = parts.substitutes
    .map((tokens) => substituteOf(tokens, lex))
    .flatMap((s): Alternative[] => (s ? [{ amounts: s.amounts, name: s.name }] : []));
  if (foods.length === 0) foods.push([]);
  const items = foods.map((tokens, i): Item => {
    const [name = '', ...others] = alternativesIn(tokens, lex);
    const alternatives: Alternative[] = others.map((other) => ({ amounts: [], name: other }));
    if (i === foods.length - 1) alternatives.push(...substitutes);
    return {
      amounts: i === 0 || parts.each ? parts.amounts : [],
      size: parts.size,
      name: name || parts.name,
      preparation: foods.length > 1 && i < foods.length - 1 ? null : preparation,
      alternatives,
    };
  });
  return [...items, ...parts.extras.flatMap((tokens) => extraItem(tokens, lex))];
}
