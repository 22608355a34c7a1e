/** What a method calls the crumbs of biscuits, and the base pressed of them, when other crumbs stand in. */
import type { Mention } from './mention.ts';
import { isMade } from './method-names.ts';

/** Whether what stands in is crumbs that are made first. */
export const isCrumbs = ({ newName, changed }: Pick<Mention, 'newName' | 'changed'>): boolean =>
  changed && newName !== null && / crumbs$/.test(newName) && isMade(newName);

const KINDS = [
  'graham cracker',
  'graham',
  'cracker',
  'cookie',
  'biscuit',
  'digestive biscuit',
  'digestive',
  'oreo cookie',
  'oreo',
  'wafer',
  'gingersnap',
  'shortbread',
];
const CRUSHED = ['', 'crushed ', 'finely crushed ', 'ground '];
const MADE_OF_THEM = [' crumb mixture', ' mixture', ' crumbs', ' crumb', 's'];
const PRESSED = ['crust', 'base'];

/** Words for the crumbs besides the line's own, without those of other lines; longest first. */
export function crumbNames(own: readonly string[], elsewhere: ReadonlySet<string>): string[] {
  const kinds = KINDS.flatMap((kind) => MADE_OF_THEM.map((of) => `${kind}${of}`));
  const plain = [...own, ...kinds.filter((name) => !elsewhere.has(name))];
  const all = plain.flatMap((name) => CRUSHED.map((how) => `${how}${name}`));
  return [...new Set(all)].sort((a, b) => b.length - a.length);
}

/** 'the graham cracker crust' is a crust still: what is pressed of the new crumbs, one mention a word. */
export function pressedOf(mentions: readonly Mention[]): Mention[] {
  return mentions.filter(isCrumbs).flatMap((mention) =>
    PRESSED.map((word) => ({
      ...mention,
      names: KINDS.flatMap((kind) => [`${kind} crumb ${word}`, `${kind} ${word}`]),
      newName: word,
      sharedHead: null,
      goesInWith: [],
    })),
  );
}
