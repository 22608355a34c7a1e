/** Stands above the verdict while the reworked recipe holds what the user avoids. */
import type { FoodTable } from '../../../../engine/index.ts';
import type { Adaptation, Goals } from '../../../../engine/model.ts';
import { Icon } from '../../controls/icon.tsx';
import { allergenWord } from '../../words/allergen-words.ts';
import { foodWord } from '../../words/food-words.ts';
import { say, sayList } from '../../words/say.ts';
import { type Bringer, stillContained } from './bringers.ts';
import { mayBeLeftOut } from './may-be-left-out.ts';

interface Props {
  adaptation: Adaptation;
  table: FoodTable;
  onGoals(goals: Partial<Goals>): void;
  /** Opens the line of an original ingredient, where another food can be chosen. */
  onLine?: ((key: string) => void) | undefined;
}

const distinct = (bringers: readonly Bringer[]): Bringer[] => [
  ...new Map(bringers.map((one) => [one.foodId ?? one.key, one])).values(),
];

interface OwnLineProps {
  food: string;
  onLook: (() => void) | undefined;
  /** Left out where the dish would not be one without it. */
  onLeaveOut: (() => void) | undefined;
}

/** The ways for one line of the page. */
function OwnLine({ food, onLook, onLeaveOut }: OwnLineProps) {
  return (
    <div class="acts">
      {onLook && (
        <button type="button" class="button" onClick={onLook}>
          {say('chooseInstead', food)}
        </button>
      )}
      {onLeaveOut && (
        <button type="button" class="button" onClick={onLeaveOut}>
          {say('leaveOut', food)}
        </button>
      )}
    </div>
  );
}

export function AllergenAlert({ adaptation, table, onGoals, onLine }: Props) {
  const found = stillContained(adaptation, (id) => table.byId(id)?.allergens ?? []);
  if (found.length === 0) return null;
  const bringers = distinct(found.flatMap(({ by }) => by));
  const added = bringers.flatMap(({ original, foodId, food }) =>
    original || foodId === null ? [] : [{ foodId, food }],
  );
  const own = new Map(
    found.flatMap(({ by }) => by.filter(({ original }) => original)).map((one) => [one.key, one]),
  );
  const { excludedFoods, leftOut } = adaptation.goals;
  return (
    <section class="alert" role="alert">
      <Icon name="warning" />
      <div>
        <b class="alert-title">
          {say(
            found.every(({ likely }) => likely) ? 'mayStillContain' : 'stillContains',
            sayList(found.map(({ allergen }) => allergenWord(allergen))),
          )}
        </b>
        <p>
          {say(
            'broughtBy',
            sayList(bringers.map(({ foodId, food }) => (foodId ? foodWord(foodId, food) : food))),
          )}
        </p>
        {added.length > 0 && (
          <button
            type="button"
            class="button first"
            onClick={() =>
              onGoals({ excludedFoods: [...excludedFoods, ...added.map(({ foodId }) => foodId)] })
            }
          >
            {say('reworkWithout', sayList(added.map(({ foodId, food }) => foodWord(foodId, food))))}
          </button>
        )}
        {[...own.values()].map(({ key, foodId, food }) => (
          <OwnLine
            key={key}
            food={foodId ? foodWord(foodId, food) : food}
            onLook={onLine && (() => onLine(key))}
            onLeaveOut={
              mayBeLeftOut(adaptation, key)
                ? () => onGoals({ leftOut: [...leftOut, key] })
                : undefined
            }
          />
        ))}
      </div>
    </section>
  );
}
