/** The cues that are called for in one recipe, and what they say of the method as a whole. */
import { keptFor } from '../../kept-results.ts';
import type { Swap } from '../../model.ts';
import cues from '../data/cues.json' with { type: 'json' };
import { brownsMore } from '../oven/browning.ts';
import type { PartMethod } from '../parts/part-contexts.ts';
import type { Cue } from './cue.ts';
import { applies, concerns } from './cue-applies.ts';
import type { CueContext } from './cue-context.ts';
import { reasonOf } from './cue-text.ts';
import { isBaked } from './insertion.ts';

/** Every cue that is called for, in the order of the data; of a group the first. */
export const fittingCues = keptFor((context: CueContext): Cue[] => {
  const fitting = (cues as Cue[]).filter((cue) => applies(cue, context));
  return fitting.filter(
    ({ group }, at) =>
      group === undefined || fitting.findIndex((other) => other.group === group) === at,
  );
});

/** Whether a cue tells the handling of a swap's main food already, or what its words say. */
export const isPrepared = (swap: Swap, context: CueContext): boolean =>
  fittingCues(context).some(
    (cue) =>
      ((cue.handles === true || cue.makes === true) && concerns(cue, swap)) ||
      (cue.covers !== undefined && new RegExp(cue.covers, 'i').test(swap.method ?? '')),
  );

/** Why the oven is to be cooler for a part, or null when it is not. */
export function coolerOven({ context, texts }: PartMethod): string | null {
  const found = fittingCues(context).find(
    (cue) => cue.oven === true && isBaked(cue, texts, context) && brownsMore(cue, context),
  );
  return found === undefined ? null : reasonOf(found, context);
}

/** Whether flour and water are to stand before the other ingredients go in. */
export const restsFirst = (context: CueContext): boolean =>
  fittingCues(context).some(({ autolyse }) => autolyse === true);
