/** The parts of a line while it is read: amounts, and tokens under the heading each belongs to. */
import type { Amount } from '../model.ts';
import { unheld } from './unused-words.ts';
import type { Lexicon } from './words/lexicon.ts';
import type { Token } from './words/tokens.ts';

export interface Parts {
  amounts: Amount[];
  size: Token[];
  name: Token[];
  /** Second names in brackets: 'plain (all-purpose) flour'. */
  glosses: Token[][];
  /** Preparation words lifted out of the name, before the food they belong to. */
  lifted: Token[][];
  preps: Token[][];
  notes: Token[][];
  purposes: Token[][];
  /** Runs after an 'or': what may stand in, perhaps with an amount of its own. */
  substitutes: Token[][];
  /** Runs that name further foods with their own amounts ('1 egg yolk' after 'plus'), and their parts. */
  further: Token[][];
  extras: Parts[];
  /** Tokens whose meaning is in the amounts or flags and needs no words. */
  known: Token[][];
  /** The amounts hold for every food of the line: '1 tsp each salt and pepper'. */
  each: boolean;
  /** The word that says so; kept among the words once there are several foods. */
  eachWord: Token[];
  /** The name is a list of foods with commas: 'salt, pepper'. */
  list: boolean;
  optional: boolean;
  reference: boolean;
}

export const noParts = (): Parts => ({
  amounts: [],
  size: [],
  name: [],
  glosses: [],
  lifted: [],
  preps: [],
  notes: [],
  purposes: [],
  substitutes: [],
  further: [],
  extras: [],
  known: [],
  each: false,
  eachWord: [],
  list: false,
  optional: false,
  reference: false,
});

/** Every token run that the parts hold, those of further foods included. */
function heldBy(parts: Parts): Token[][] {
  const held: Token[][] = [];
  const open: Parts[] = [parts];
  for (let now = open.pop(); now !== undefined; now = open.pop()) {
    held.push(now.size, now.name, ...now.glosses, ...now.lifted, ...now.preps, ...now.notes);
    held.push(...now.purposes, ...now.known);
    open.push(...now.extras);
  }
  return held;
}

/** Puts what no part holds into the notes. */
export function keepRest(line: readonly Token[], parts: Parts, lex: Lexicon): void {
  parts.notes.push(...unheld(line, heldBy(parts), lex));
}
