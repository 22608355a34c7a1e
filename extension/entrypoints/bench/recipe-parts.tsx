import type { Adaptation, Food } from '../../../engine/model.ts';
import type { SaveAnswer } from '../../store/keeper.ts';
import type { Preferences } from '../../store/prefs.ts';
import { WeighSlice } from '../../ui/bakes/weigh-slice.tsx';
import { CarbStrip } from '../../ui/figures/carb-strip.tsx';
import { Cautions } from '../../ui/figures/cautions-list.tsx';
import { Closeness } from '../../ui/figures/closeness-mark.tsx';
import { Frontier } from '../../ui/figures/frontier-curve.tsx';
import { Headline } from '../../ui/figures/headline.tsx';
import { NutrientTable } from '../../ui/figures/nutrient-table.tsx';
import { StatedFigures } from '../../ui/figures/stated-figures-table.tsx';
import { DishKind } from '../../ui/goals/dish-kind.tsx';
import { GoalsBar } from '../../ui/goals/goals-bar.tsx';
import type { Names } from '../../ui/hooks/use-names.ts';
import type { Pantry } from '../../ui/hooks/use-pantry.ts';
import type { WorkState } from '../../ui/hooks/use-work.ts';
import { SaveButton } from '../../ui/kept/save-button.tsx';
import { Method } from '../../ui/recipe/method.tsx';
import { RecipeFiles } from '../../ui/recipe/recipe-files.tsx';
import { RecipeRows } from '../../ui/recipe/recipe-rows.tsx';
import type { AmountWish } from '../../ui/recipe/shown-amounts.ts';
import { SwapList } from '../../ui/recipe/swap-list.tsx';
import { UncertainLines } from '../../ui/recipe/uncertain-lines.tsx';
import { Wishes } from './wishes.tsx';

interface Props {
  work: WorkState;
  adaptation: Adaptation;
  /** How much of the recipe is made. */
  factor: number;
  preferences: Preferences;
  ownFoods: readonly Food[];
  names: Names;
  pantry: Pantry;
  /** The recipe has been saved before. */
  saved: boolean;
  save(): Promise<SaveAnswer>;
  onWish(wish: AmountWish): void;
  /** Grams of all that is made, from the scale; null when it is not weighed. */
  onDish(grams: number | null): void;
}

/** Figures, what is wanted, and where the carbs come from. */
function Top({ work, adaptation, preferences, pantry, saved, save }: Props) {
  const { table, changeGoals } = work;
  return (
    <div class="bench-top">
      <div>
        <Headline adaptation={adaptation} />
        <CarbStrip adaptation={adaptation} />
      </div>
      <div class="bench-goals no-print">
        <GoalsBar adaptation={adaptation} onGoals={changeGoals} />
        <DishKind goals={adaptation.goals} plan={adaptation.plan} onGoals={changeGoals} />
        <div class="actions">
          <SaveButton what={adaptation} again={saved} save={save} />
          <RecipeFiles adaptation={adaptation} />
        </div>
        <Wishes
          adaptation={adaptation}
          preferences={preferences}
          table={table}
          pantry={pantry}
          onGoals={changeGoals}
        />
      </div>
    </div>
  );
}

/** The changes with their reasons beside the figures and what they cost. */
function Reasons({ work, adaptation, preferences }: Props) {
  const { changeGoals } = work;
  const { excludedSwaps } = adaptation.goals;
  return (
    <div class="bench-pair">
      <SwapList
        adaptation={adaptation}
        depth={{
          options: work.options,
          onForbid: (id) => changeGoals({ excludedSwaps: [...excludedSwaps, id] }),
        }}
      />
      <div>
        <NutrientTable adaptation={adaptation} preferences={preferences} />
        <Frontier
          adaptation={adaptation}
          options={work.options}
          onBudget={(budgetG) => changeGoals({ budgetG })}
        />
        <Closeness adaptation={adaptation} />
      </div>
    </div>
  );
}

/** The recipe itself: figures, ingredients, method, reasons, and how sure they are. */
export function RecipeParts(props: Props) {
  const { work, adaptation, factor, preferences } = props;
  const { table, options, changeGoals } = work;
  const pin = (key: string, on: boolean) => {
    const others = adaptation.goals.pinned.filter((one) => one !== key);
    changeGoals({ pinned: on ? [...others, key] : others });
  };
  return (
    <>
      <Top {...props} />
      <RecipeRows
        adaptation={adaptation}
        wish={{ system: preferences.amounts, factor }}
        ownFoods={props.ownFoods}
        onWish={props.onWish}
        onPin={pin}
      />
      <Method adaptation={adaptation} factor={factor} />
      <Reasons {...props} />
      <WeighSlice
        adaptation={adaptation}
        factor={factor}
        dishGrams={options.reworkedGrams ? options.reworkedGrams * factor : null}
        onDish={props.onDish}
      />
      <StatedFigures adaptation={adaptation} />
      <UncertainLines
        adaptation={adaptation}
        table={table}
        options={options}
        names={props.names}
        onCorrect={work.correct}
      />
      <Cautions adaptation={adaptation} />
    </>
  );
}
