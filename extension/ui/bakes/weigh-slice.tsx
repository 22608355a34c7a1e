/** From the scale to net carbs: the whole dish once, then any slice of it. */
import { useState } from 'preact/hooks';
import type { Adaptation } from '../../../engine/model.ts';
import { NumberField } from '../controls/number-field.tsx';
import { amount, rangeText, short } from '../figures/format.ts';
import { gramsOnScale, gramsRange } from '../figures/sources/source-words.ts';
import { factorText } from '../recipe/shown-amounts.ts';
import { say, sayWith } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';
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

const likely = (range: string): string => (range === '' ? '' : ` (${say('likely', range)})`);

function DishField({ adaptation, factor, dishGrams, onDish }: Props) {
  const { after, plan } = adaptation;
  const { after: when } = cookWords(plan.family.id);
  const about = after.cookedGrams && gramsRange(times(after.cookedGrams, factor));
  return (
    <NumberField
      label={
        factor === 1 ? say('wholeDish', when) : say('wholeDishTimes', when, factorText(factor))
      }
      unit="g"
      value={dishGrams}
      min={1}
      max={100_000}
      hint={dishGrams === null && about ? say('notWeighed', about) : undefined}
      onValue={onDish}
      onClear={() => onDish(null)}
    />
  );
}

/** What 100 g and the whole dish hold, and how much of it the budget allows. */
function OfTheDish({ adaptation, factor, dishGrams }: Omit<Props, 'onDish'>) {
  const { after, goals, plan } = adaptation;
  const each = after.per100gCooked?.netCarbsG ?? null;
  if (!each) return <p>{say('weighFirst', cookWords(plan.family.id).after)}</p>;
  const most = gramsFor(after, goals.budgetG);
  const { cookedGrams: cooked } = after;
  const whole = after.whole.netCarbsG;
  return (
    <ul class="notes">
      {most && (
        <li>
          {say(
            'budgetInGrams',
            short(goals.budgetG),
            gramsOnScale(most.best),
            gramsOnScale(most.low),
          )}
        </li>
      )}
      <li>
        {say('per100Has', amount(each.best))}
        {likely(rangeText(each))}.
      </li>
      {whole && cooked && (
        <li>
          {say('wholeDishHas', amount(whole.best * factor), gramsRange(times(cooked, factor)))}
        </li>
      )}
      <li class="soft">
        {dishGrams === null
          ? sayWith('dishWeightFrom', <ToldSentence text={after.cookedSource} />)
          : say('dishWeightFrom', say('weighedByYou'))}
      </li>
    </ul>
  );
}

export function WeighSlice(props: Props) {
  const { adaptation } = props;
  const [sliceGrams, setSliceGrams] = useState<number | null>(null);
  const slice = sliceGrams === null ? null : sliceNetCarbs(adaptation.after, sliceGrams);
  return (
    <section class="weigh">
      <div class="amount-row">
        <DishField {...props} />
        <NumberField
          label={say('yourSlice')}
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
          <p class="slice-figure">
            {say('sliceHas', short(sliceGrams), amount(slice.best))}
            {likely(rangeText(slice))}.
          </p>
        )}
      </div>
      <OfTheDish {...props} />
    </section>
  );
}
