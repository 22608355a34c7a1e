/** A food that the plan brought in: what it does, what else there was, and the ways out. */
import type { Adaptation, Swap } from '../../../../engine/model.ts';
import { allergenWord } from '../../words/allergen-words.ts';
import { foodWord } from '../../words/food-words.ts';
import { say, sayCount, sayList, sayWith } from '../../words/say.ts';
import { ToldSentence } from '../../words/told-sentence.tsx';
import { WithoutDetails } from '../without-details.tsx';
import type { LineActions } from './line-actions.ts';

interface Props {
  swap: Swap;
  foodId: string | null;
  adaptation: Adaptation;
  actions: LineActions;
}

function Told({ swap }: { swap: Swap }) {
  const { effect, allergens, cautions, source } = swap;
  return (
    <>
      {effect !== '' && (
        <p>
          <ToldSentence text={effect} />
        </p>
      )}
      {allergens.length > 0 && <p>{say('contains', sayList(allergens.map(allergenWord)))}</p>}
      {cautions.map((caution) => (
        <p key={caution}>
          <ToldSentence text={caution} />
        </p>
      ))}
      {source !== '' && <p class="soft">{sayWith('sourceIs', <ToldSentence text={source} />)}</p>}
    </>
  );
}

export function ComeIn({ swap, foodId, adaptation, actions }: Props) {
  const { excludedSwaps, excludedFoods } = actions.goals;
  const food = swap.to.find((one) => one.foodId === foodId) ?? swap.to[0];
  const never = () => {
    if (!food) return;
    actions.onNever({ id: food.foodId, name: food.food });
    actions.onGoals({ excludedFoods: [...excludedFoods, food.foodId] });
  };
  return (
    <>
      <Told swap={swap} />
      <div class="acts">
        <button
          type="button"
          class="button"
          onClick={() => actions.onGoals({ excludedSwaps: [...excludedSwaps, swap.id] })}
        >
          {say('somethingElse')}
        </button>
        {food && (
          <button type="button" class="button bare" onClick={never}>
            {say('neverUse', foodWord(food.foodId, food.food))}
          </button>
        )}
      </div>
      {swap.considered.length > 0 && (
        <details class="plain-fold">
          <summary>{sayCount('alsoLookedAt', swap.considered.length)}</summary>
          <ul class="notes">
            {swap.considered.map((text) => (
              <li key={text}>
                <ToldSentence text={text} />
              </li>
            ))}
          </ul>
        </details>
      )}
      <WithoutDetails swap={swap} adaptation={adaptation} options={actions.options} />
    </>
  );
}
