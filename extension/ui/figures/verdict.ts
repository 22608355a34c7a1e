/** What the verdict says, as the screens need it. */
import { verdictWord } from '../../../engine/index.ts';
import type { Adaptation, Interval, VerdictWord } from '../../../engine/model.ts';

export interface ShownVerdict {
  state: VerdictWord;
  /** Net carbs of a serving of the reworked and of the original recipe, g. */
  after: Interval;
  before: Interval | null;
}

/** Null when no line could be counted: then there is nothing to show but that. */
export function shownVerdict({ verdict, before }: Adaptation): ShownVerdict | null {
  const { netCarbsG } = verdict;
  return (
    netCarbsG && {
      state: verdictWord(verdict),
      after: netCarbsG,
      before: before.perServing.netCarbsG,
    }
  );
}
