/** Damage done to text at random places, the way pages, typists and broken tools do it. */
import fc from 'fast-check';
import { ATOMS } from '../faults/atoms.ts';

interface Damage {
  kind: 'cut' | 'drop' | 'double' | 'put' | 'swap';
  /** Where, and how much of the rest, as shares of the text. */
  at: number;
  span: number;
  atom: string;
  times: number;
}

const share = fc.double({ min: 0, max: 1, noNaN: true });

const ODD = [
  '\ud800',
  '\u202e',
  '\u0000',
  '__proto__',
  '9'.repeat(40),
  '-1',
  '1e309',
  '½½',
  '</script>',
  '',
];

const damage: fc.Arbitrary<Damage> = fc.record({
  kind: fc.constantFrom('cut', 'drop', 'double', 'put', 'swap'),
  at: share,
  span: fc.double({ min: 0, max: 0.2, noNaN: true }),
  atom: fc.constantFrom(...ATOMS, ...ODD),
  times: fc.integer({ min: 1, max: 30 }),
});

function damaged(text: string, { kind, at, span, atom, times }: Damage): string {
  const from = Math.floor(at * text.length);
  const to = Math.min(text.length, from + Math.ceil(span * text.length));
  const piece = text.slice(from, to);
  if (kind === 'cut') return text.slice(0, from);
  if (kind === 'drop') return text.slice(0, from) + text.slice(to);
  if (kind === 'double') return text.slice(0, to) + piece + text.slice(to);
  if (kind === 'put') return text.slice(0, from) + atom.repeat(times) + text.slice(from);
  return piece + text.slice(0, from) + text.slice(to);
}

/** One of the texts with some damage; now and then none. */
export const damagedText = (texts: readonly string[], most = 4): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...texts), fc.array(damage, { maxLength: most }))
    .map(([text, all]) => all.reduce(damaged, text));
