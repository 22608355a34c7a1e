/** 'Add the rest': what is left of the one ingredient that it can mean. */

import type { UsedSoFar } from '../steps/used-so-far.ts';
import { type RenameContext, shareAmount } from './amounts-in-steps.ts';
import type { Mention } from './mention.ts';

/** 'the rest' without a name: followed by no noun. */
export const BARE_REST =
  /\bthe (?:rest|remainder|other half)(?=[.,;!]|$|\s+(?:and|then|in|into|to|on|over|with|at|for|while|when|until|a little|gradually|slowly)\b)/i;

/** The one changed ingredient of which earlier words used a known part; null when none or several did. */
function partlyUsed(mentions: readonly Mention[], used: UsedSoFar): Mention | null {
  const open = new Map(
    mentions
      .filter((mention) => used.left(mention) !== null)
      .map((mention) => [mention.ingredient.key, mention]),
  );
  const [only] = open.values();
  return open.size === 1 && only?.changed && only.items.length > 0 ? only : null;
}

/** 'add the rest' with what is left of the one ingredient that it can mean. */
export function bareRest(
  whole: string,
  mentions: readonly Mention[],
  context: RenameContext,
): string {
  const mention = partlyUsed(mentions, context.used);
  const left = mention === null ? null : context.used.left(mention);
  // The rest of a glaze is more than its honey.
  if (mention === null || left === null || context.used.isIn(mention)) return whole;
  context.used.use(mention, left);
  const called = mention.newName === 'flours' ? ' flours' : '';
  return `${whole} (${shareAmount(mention, left, context)}${called})`;
}
