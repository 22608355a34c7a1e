import { useState } from 'preact/hooks';
import type { Adaptation } from '../../../engine/model.ts';
import { NumberField } from '../controls/number-field.tsx';
import { amount, rangeText, short } from '../figures/format.ts';
import { gramsOnScale, gramsRange } from '../figures/sources/source-words.ts';
import { factorText } from '../recipe/shown-amounts.ts';
import { cookWords } from './dish-words.ts';
import { gramsFor, sliceNetCarbs, times } from './slice.ts';

interface Props {
  adaptation: Adaptation;
  /** How much of the recipe is made; the dish on the scale is all of it. */
  factor: number;
  /** Grams of all that is made, typed or logged for exactly this recipe, or null. */
  dishGrams: number | null;
  onDish(grams: number | null): void;
}

/** From the scale to net carbs: the whole dish once, then any slice of it. */
export function WeighSlice({ adaptation, factor, dishGrams, onDish }: Props) {
  const [sliceGrams, setSliceGrams] = useState<number | null>(null);
  const { after, goals, plan } = adaptation;
  const words = cookWords(plan.family.id);
  const each = after.per100gCooked?.netCarbsG ?? null;
  const { cookedGrams: cooked } = after;
  const whole = after.whole.netCarbsG;
  const slice = sliceGrams === null ? null : sliceNetCarbs(after, sliceGrams);
  const most = gramsFor(after, goals.budgetG);
  return (
    <section class="weigh">
      <div class="goals">
        <NumberField
          label={
            factor === 1
              ? `Whole dish ${words.after}`
              : `Whole dish ${words.after}, all of ${factorText(factor)}`
          }
          unit="g"
          value={dishGrams}
          min={1}
          max={100_000}
          hint={
            dishGrams === null && after.cookedGrams
              ? `not weighed yet, about ${gramsRange(times(after.cookedGrams, factor))}`
              : undefined
          }
          onValue={onDish}
          onClear={() => onDish(null)}
        />
        <NumberField
          label="Your slice"
          unit="g"
          value={sliceGrams}
          min={0}
          max={100_000}
          onValue={setSliceGrams}
          onClear={() => setSliceGrams(null)}
        />
      </div>
      <div role="status">
        {slice && sliceGrams !== null && (
          <p class="slice">
            A slice of {short(sliceGrams)} g has{' '}
            <strong class="slice-figure">{amount(slice.best)} g</strong> net carbs
            {rangeText(slice) !== '' && <> (likely {rangeText(slice)})</>}.
          </p>
        )}
      </div>
      {each ? (
        <p class="quiet">
          100 g of the finished dish: {amount(each.best)} g net carbs
          {rangeText(each) !== '' && <> (likely {rangeText(each)})</>}.{' '}
          {most && (
            <>
              {short(goals.budgetG)} g net carbs are in about {gramsOnScale(most.best)} g of it, and
              may be in as little as {gramsOnScale(most.low)} g.{' '}
            </>
          )}
          {whole && cooked && (
            <>
              The whole dish: {amount(whole.best * factor)} g net carbs in{' '}
              {gramsRange(times(cooked, factor))}.{' '}
            </>
          )}
          Weight of the dish: {dishGrams === null ? after.cookedSource : 'weighed by you'}.
        </p>
      ) : (
        <p>Weigh the whole dish {words.after}: without its weight a slice cannot be worked out.</p>
      )}
    </section>
  );
}
