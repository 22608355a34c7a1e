/** Cautions that go with the numbers, the gravest first. */
import type { Note } from '../../model.ts';
import { type CautionFacts, type CautionInput, cautionFacts } from './caution-facts.ts';
import { fallOf, TRIGGERS } from './caution-triggers.ts';
import { cautionText } from './caution-words.ts';

export type { CautionInput } from './caution-facts.ts';

/** Cautions shown beside the first one. */
const MOST_SHOWN = 3;
const MG_SODIUM_PER_G_SALT = 400;

/** Figures that the words name in braces. */
const figuresOf = (facts: CautionFacts): Record<string, string> => ({
  fall: String(Math.round(fallOf(facts))),
  salt: (facts.now('sodiumMg') / MG_SODIUM_PER_G_SALT).toFixed(1),
});

function note(code: string, facts: CautionFacts): Note {
  const bare: Note = { code, text: code, key: null, figures: figuresOf(facts) };
  return { ...bare, text: cautionText(bare, facts.language ?? null) };
}

const applying = (facts: CautionFacts): Note[] =>
  TRIGGERS.filter(([, applies]) => applies(facts)).map(([code]) => note(code, facts));

/** Every caution that applies, the gravest first, without the cut to the few that are shown. */
export const allCautions = (input: CautionInput): Note[] => applying(cautionFacts(input));

/**
 * The cautions to show, four at most: always 'Estimates. Not for working out insulin doses.', then
 * the three gravest. Words and the source of each: `data/cautions.json`; said in the
 * language handed in where `data/caution-words.json` has it.
 */
export function cautionsFor(input: CautionInput): Note[] {
  const facts = cautionFacts(input);
  return [note('ESTIMATES', facts), ...applying(facts).slice(0, MOST_SHOWN)];
}
