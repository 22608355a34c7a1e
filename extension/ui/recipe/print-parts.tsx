/** What stands on paper only: figures of a serving and of 100 g, and how much is made. */
import type { Adaptation } from '../../../engine/model.ts';
import { amount } from '../figures/format.ts';
import { portionStart } from '../words/portion.ts';
import { say } from '../words/say.ts';
import { factorText } from './shown-amounts.ts';

export function PrintHead({ adaptation, factor }: { adaptation: Adaptation; factor: number }) {
  const { after } = adaptation;
  const net = after.per100gCooked?.netCarbsG ?? null;
  return (
    <div class="print-only">
      <p>
        {say('printServings', portionStart(adaptation), amount(after.servings * factor))}
        {factor !== 1 && ` (${factorText(factor)})`}
        {net && ` ${say('printPer100', amount(net.best))}`}
      </p>
    </div>
  );
}
