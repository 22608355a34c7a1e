/** Cautions that go with the numbers, the gravest first. */
import type { Note } from '../../model.ts';
import data from '../data/cautions.json' with { type: 'json' };
import { type CautionFacts, type CautionInput, cautionFacts } from './caution-facts.ts';
import { fallOf, TRIGGERS } from './caution-triggers.ts';

export type { CautionInput } from './caution-facts.ts';

/** Cautions shown beside the first one. */
const MOST_SHOWN = 3;
const MG_SODIUM_PER_G_SALT = 400;

const WORDS = new Map(data.map(({ code, words }) => [code, words]));

/** Figures that the words name in braces. */
function figuresOf(facts: CautionFacts): Readonly<Record<string, string>> {
  return {
    '{fall}': String(Math.round(fallOf(facts))),
    '{salt}': (facts.now('sodiumMg') / MG_SODIUM_PER_G_SALT).toFixed(1),
  };
}

function note(code: string, facts: CautionFacts): Note {
  const figures = Object.entries(figuresOf(facts));
  const words = WORDS.get(code) ?? code;
  const text = figures.reduce((filled, [name, figure]) => filled.replace(name, figure), words);
  return { code, text, key: null };
}

const applying = (facts: CautionFacts): Note[] =>
  TRIGGERS.filter(([, applies]) => applies(facts)).map(([code]) => note(code, facts));

/** Every caution that applies, the gravest first, without the cut to the few that are shown. */
export const allCautions = (input: CautionInput): Note[] => applying(cautionFacts(input));

/**
 * The cautions to show, four at most: always 'Estimates. Not for working out insulin doses.', then
 * the three gravest. Words and the source of each: `data/cautions.json`.
 */
export function cautionsFor(input: CautionInput): Note[] {
  const facts = cautionFacts(input);
  return [note('ESTIMATES', facts), ...applying(facts).slice(0, MOST_SHOWN)];
}
