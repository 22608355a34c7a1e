/** Turns a line's parts into items: several foods, alternatives. */
import type { Amount, Item } from '../model.ts';
import { readAmounts } from './amounts/amount-run.ts';
import type { Parts } from './line-parts.ts';
import { findCut, liftPrep } from './name/find-name.ts';
import { nameText } from './name/finish-name.ts';
import { allDescribe, describes, split } from './name/segments.ts';
import type { Lexicon } from './words/lexicon.ts';
import { isAt, isWord, someOf, type Token, textOf } from './words/tokens.ts';

type Alternative = Item['alternatives'][number];

/** Tokens that name one food, with the amounts that stand before them. */
interface Named {
  amounts: Amount[];
  tokens: Token[];
}

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

/** What the last name has and a first one lacks: the head noun, or all but its describing words. */
function sharedEnd(name: readonly Token[], last: readonly Token[], lex: Lexicon): Token[] {
  const own = name.at(-1);
  const head = last.at(-1);
  if (!own || !head || name === last) return [];
  if (name.every((t) => describes(t, lex) && !lex.standAlone.has(t.low))) {
    const from = last.findIndex((t) => isWord(t) && !describes(t, lex));
    return from > 0 ? last.slice(from) : [head];
  }
  if (last.length < 2 || name.some((t) => t.low === head.low)) return [];
  const open = lex.openHeads.has(head.low) && name.length === 1 && !lex.standAlone.has(own.low);
  const alone = lex.standAlone.has(own.low) && !lex.openHeads.has(head.low);
  const kind = lex.varieties.has(head.low) && isVariety(own, head);
  const lacks = (lex.needHead.has(own.low) && !alone) || kind;
  return open || (lex.heads.has(head.low) && lacks) ? [head] : [];
}

/** 'Fuji' before 'Gala apples': a name with a capital within a line is a kind of what follows. */
const isVariety = (own: Token, head: Token): boolean =>
  own.index > 0 && own.text !== own.low && head.text === head.low;

/** A name completed from another: 'chicken' before 'vegetable stock' is 'chicken stock'. */
function complete(name: readonly Token[], other: readonly Token[], lex: Lexicon): string {
  const shared = textOf(sharedEnd(name, other, lex));
  return shared ? `${textOf(name)} ${shared}` : textOf(name);
}

/** 'beurre ou de margarine', 'plenty of pepper': the words before a name that are not part of it. */
function dropOf(run: Token[], lex: Lexicon): Token[] {
  const of = isAt(lex.vague, run, 0) ? 1 : 0;
  return run.length > of + 1 && isAt(lex.of, run, of) ? run.slice(of + 1) : run;
}

/**
 * Names joined by 'or', the first being the food itself. A first name that lacks its head takes it
 * from the last ('avocado, peanut or canola oil'); one that stands alone ('butter or oil') does not.
 */
function alternativesIn(tokens: readonly Token[], lex: Lexicon): Token[][] {
  if (!someOf(tokens, lex.or)) return [dropOf([...tokens], lex)];
  return splitAt(tokens, lex.or)
    .flatMap((run, i, all) =>
      all.length > 1 && i < all.length - 1 ? alternativesOf(run, lex) : [run],
    )
    .map((run) => dropOf(run, lex))
    .filter((run, i) => i === 0 || !someOf(run, lex.onlyNote));
}

/** Names in a comma list, describing words left with the name they stand before: 'crisp, dry wine'. */
function alternativesOf(run: readonly Token[], lex: Lexicon): Token[][] {
  const out: Token[][] = [];
  let open: Token[] = [];
  for (const { tokens } of split(run)) {
    const words = [...open, ...tokens];
    const describesOnly = allDescribe(words, lex);
    open = describesOnly && run.at(-1) !== tokens.at(-1) && out.length > 0 ? words : [];
    if (open.length === 0) out.push(words);
  }
  return out;
}

/** A food after 'or', with its own amount when it has one; null when no name is left. */
function substituteOf(tokens: readonly Token[], lex: Lexicon): Named | null {
  const head = readAmounts(tokens, 0, lex);
  const rest = tokens.slice(head?.next ?? 0);
  const first = split(rest)[0]?.tokens ?? [];
  const { name } = liftPrep(first.slice(0, findCut(first, lex)), lex, false);
  return name.length > 0 ? { amounts: head?.value.amounts ?? [], tokens: name } : null;
}

/** No ingredient line names more; a longer text is prose, and one name that no food answers to. */
const MOST_FOODS = 40;

/** Name tokens of each food: 'salt and pepper' has two, '2 cups macaroni and cheese' one. */
function foodsOf(parts: Parts, lex: Lexicon): Token[][] {
  const foods = splitFoods(parts, lex);
  return foods.length > MOST_FOODS ? [parts.name] : foods;
}

function splitFoods(parts: Parts, lex: Lexicon): Token[][] {
  if (parts.list)
    return splitAt(parts.name, lex.and).flatMap((run) => split(run).map((s) => s.tokens));
  return parts.amounts.length === 0 ? splitAt(parts.name, lex.and) : [parts.name];
}

const lastIndex = (run: readonly Token[] | undefined): number => run?.at(-1)?.index ?? -1;

/** The preparation of one food among several: what stands before it, and after the last all the rest. */
function preparationOf(parts: Parts, foods: readonly Token[][], i: number): string | null {
  const isLast = i === foods.length - 1;
  const from = i === 0 ? -1 : lastIndex(foods[i - 1]);
  const to = lastIndex(foods[i]);
  const own = parts.lifted.filter(([t]) => t && t.index > from && (isLast || t.index <= to));
  const all = isLast ? [...own, ...parts.preps] : own;
  return all.map(textOf).filter(Boolean).join(', ') || null;
}

/**
 * The name that completes the one at `i`: the next beside it that has a noun of its own, or for a
 * describing word a further food's ('1 red and 1 green pepper').
 */
function modelOf(names: readonly Named[], i: number, parts: Parts, lex: Lexicon): Token[] {
  const own = names[i]?.tokens ?? [];
  const beside = names
    .slice(i + 1)
    .filter((other) => other.amounts.every((a) => a.unit === null))
    .map((other) => other.tokens);
  const model = beside.find((name) => name.length > 1 && !allDescribe(name, lex));
  if (model ?? beside[0]) return model ?? beside.at(-1) ?? own;
  const [food] = names;
  if (i > 0 && names[i]?.amounts.length) return food?.tokens ?? own;
  const open = allDescribe(own, lex);
  return (open && i === 0 ? parts.extras[0]?.name : undefined) ?? own;
}

/** The items of a line; at least one, whose name is the whole name when nothing splits it. */
export function itemsOf(parts: Parts, lex: Lexicon): Item[] {
  const foods = foodsOf(parts, lex);
  if (foods.length === 0) foods.push([]);
  const items = foods.map((tokens, i): Item => {
    const names = alternativesIn(tokens, lex).map((name): Named => ({ amounts: [], tokens: name }));
    if (i === foods.length - 1)
      names.push(...parts.substitutes.flatMap((run) => substituteOf(run, lex) ?? []));
    const [food = '', ...others] = names.map(({ tokens: name }, at) =>
      complete(name, modelOf(names, at, parts, lex), lex),
    );
    return {
      amounts: i === 0 || parts.each ? parts.amounts : [],
      size: textOf(parts.size).toLowerCase() || null,
      name: food || nameText(parts),
      preparation: preparationOf(parts, foods, i),
      alternatives: others.map(
        (name, at): Alternative => ({ amounts: names[at + 1]?.amounts ?? [], name }),
      ),
    };
  });
  return [...items, ...parts.extras.flatMap((extra) => itemsOf(extra, lex))];
}
