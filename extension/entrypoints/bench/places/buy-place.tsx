/** What is new in the recipe and has to be bought. */
import { gramsOnScale } from '../../../ui/figures/sources/source-words.ts';
import { changesOf } from '../../../ui/recipe/changes.ts';
import { say } from '../../../ui/words/say.ts';
import type { OpenRecipe, PlaceProps } from '../kitchen.ts';

interface ToBuy {
  foodId: string;
  food: string;
  grams: number;
}

/** Foods that come in, once each, for as much as is made; water comes from the tap. */
function toBuy({ adaptation, factor }: OpenRecipe): ToBuy[] {
  const foods = new Map<string, ToBuy>();
  for (const one of changesOf(adaptation).flatMap(({ to }) => to)) {
    if (one.foodId === 'water') continue;
    const grams = (foods.get(one.foodId)?.grams ?? 0) + one.grams * factor;
    foods.set(one.foodId, { ...one, grams });
  }
  return [...foods.values()];
}

export function BuyPlace({ kitchen, open }: PlaceProps) {
  const atHome = new Set(kitchen.pantry.foods.map(({ foodId }) => foodId));
  const missing = open ? toBuy(open).filter(({ foodId }) => !atHome.has(foodId)) : [];
  return (
    <section class="place">
      <h1>{say('placeBuy')}</h1>
      {!open && <p>{say('noRecipeOpenHow')}</p>}
      {open && missing.length === 0 && <p>{say('nothingToBuy')}</p>}
      <ul class="to-buy">
        {missing.map(({ foodId, food, grams }) => (
          <li key={foodId}>
            <label class="tick">
              <input
                type="checkbox"
                checked={false}
                onChange={() => kitchen.pantry.add({ foodId, foodName: food })}
              />
              <span>
                <b>{food}</b>, {gramsOnScale(grams)} g
              </span>
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}
