/** What lies folded under a recipe. */

import { photoOfRecipe } from '../../../store/kept/photos.ts';
import { WeighSlice } from '../../../ui/bakes/weigh-slice.tsx';
import { FailureLine } from '../../../ui/controls/failure-line.tsx';
import { Fold } from '../../../ui/controls/fold.tsx';
import { Cautions } from '../../../ui/figures/cautions-list.tsx';
import { Closeness } from '../../../ui/figures/closeness-mark.tsx';
import { about } from '../../../ui/figures/format.ts';
import { ServingGives } from '../../../ui/figures/gives/serving-gives.tsx';
import { graveMark } from '../../../ui/figures/grave.tsx';
import { LeastCertain } from '../../../ui/figures/least-certain.tsx';
import { NearerFurther } from '../../../ui/figures/nearer-further.tsx';
import { CarbSources } from '../../../ui/figures/sources/carb-sources.tsx';
import { StatedFigures } from '../../../ui/figures/stated-figures-table.tsx';
import { AmountFields } from '../../../ui/goals/amount-fields.tsx';
import { DishKind } from '../../../ui/goals/dish-kind.tsx';
import { Wishes } from '../../../ui/goals/further-wishes.tsx';
import { Tries } from '../../../ui/kept/tries.tsx';
import { PhotoPart } from '../../../ui/photo/photo-part.tsx';
import { RecipeFiles } from '../../../ui/recipe/recipe-files.tsx';
import { SharePart } from '../../../ui/share/share-part.tsx';
import { portionWord } from '../../../ui/words/portion.ts';
import { say, sayCount } from '../../../ui/words/say.ts';
import type { Kitchen, OpenRecipe } from '../kitchen.ts';

interface Props {
  kitchen: Kitchen;
  open: OpenRecipe;
  onLine(key: string): void;
}

/** What a serving gives, and where the figures come from. */
function FigureFolds({ kitchen, open, onLine }: Props) {
  const { adaptation } = open;
  const protein = adaptation.after.perServing.proteinG;
  const uncounted = adaptation.after.uncounted.length;
  return (
    <>
      <Fold
        name="gives"
        title={say('whatGives', portionWord(adaptation))}
        {...(protein ? { aside: say('proteinAside', about(protein.best)) } : {})}
      >
        {() => <ServingGives adaptation={adaptation} preferences={kitchen.preferences} />}
      </Fold>
      <Fold
        name="sources"
        title={say('whereFiguresCome')}
        aside={uncounted === 0 ? say('allCounted') : sayCount('linesNotCounted', uncounted)}
      >
        {() => (
          <>
            <CarbSources adaptation={adaptation} />
            <LeastCertain adaptation={adaptation} onLine={onLine} />
            <StatedFigures adaptation={adaptation} />
          </>
        )}
      </Fold>
    </>
  );
}

/** More or less of it, nearer to the original or further, and whatever else may be asked. */
function WishFolds({ kitchen, open }: Omit<Props, 'onLine'>) {
  const { work, adaptation, factor } = open;
  const { preferences, pantry } = kitchen;
  const wish = { system: preferences.amounts, factor };
  return (
    <>
      <Fold name="nearer" title={say('nearerOrFurther')}>
        {() => (
          <>
            <NearerFurther
              adaptation={adaptation}
              options={work.options}
              onBudget={(budgetG) => work.changeGoals({ budgetG })}
            />
            <Closeness adaptation={adaptation} />
          </>
        )}
      </Fold>
      <Fold name="amounts" title={say('amountsAndPans')}>
        {() => (
          <AmountFields
            wish={wish}
            servings={adaptation.after.servings}
            onWish={({ system, factor: next }) => {
              open.setFactor(next);
              if (system !== preferences.amounts) kitchen.prefer({ amounts: system });
            }}
          />
        )}
      </Fold>
      <Fold name="wishes" title={say('moreWishes')}>
        {() => (
          <>
            <DishKind
              goals={work.current.goals}
              plan={adaptation.plan}
              onGoals={work.changeGoals}
            />
            <Wishes
              adaptation={adaptation}
              goals={work.current.goals}
              preferences={preferences}
              table={open.table}
              pantry={pantry}
              onGoals={work.changeGoals}
            />
          </>
        )}
      </Fold>
    </>
  );
}

/** The scale, earlier tries, paper and files. */
function KeptFolds({ kitchen, open }: Omit<Props, 'onLine'>) {
  const { work, adaptation, history, factor } = open;
  const { reworkedGrams } = work.options;
  return (
    <>
      <Fold name="slice" title={say('weighSlice')}>
        {() => (
          <WeighSlice
            adaptation={adaptation}
            factor={factor}
            dishGrams={reworkedGrams ? reworkedGrams * factor : null}
            onDish={open.weigh}
          />
        )}
      </Fold>
      <Fold name="tries" title={say('otherTries')}>
        {() => (
          <Tries
            now={history.now}
            versions={history.versions}
            adaptation={adaptation}
            onSayNow={history.sayNow}
            onSay={history.say}
            onTake={({ recipe, goals, corrections }) =>
              work.replace({ recipe, goals, corrections, savedId: history.savedId })
            }
          />
        )}
      </Fold>
      {history.savedId !== null && (
        <Fold name="photo" title={say('photo')}>
          {() => (
            <PhotoPart
              store={kitchen.store}
              id={photoOfRecipe(history.savedId ?? '')}
              of={adaptation.recipe.title}
              onChanged={kitchen.noteSaved}
            />
          )}
        </Fold>
      )}
      <Fold name="files" title={say('printOrSave')}>
        {() => (
          <>
            <RecipeFiles
              adaptation={adaptation}
              wish={{ system: kitchen.preferences.amounts, factor }}
              ownFoods={kitchen.own.foods}
            />
            <SharePart adaptation={adaptation} factor={factor} note={history.now?.note ?? ''} />
          </>
        )}
      </Fold>
    </>
  );
}

export function RecipeFolds(props: Props) {
  const { open } = props;
  return (
    <>
      <section class="folds" id="folds" aria-label={say('allTheRest')}>
        <h2 class="folds-title">{say('foldsLook')}</h2>
        <FigureFolds {...props} />
        <Fold name="cautions" title={say('cautions')} grave={graveMark(open.adaptation)}>
          {() => <Cautions adaptation={open.adaptation} />}
        </Fold>
        <h2 class="folds-title">{say('foldsMine')}</h2>
        <WishFolds kitchen={props.kitchen} open={open} />
        <h2 class="folds-title">{say('foldsKeep')}</h2>
        <KeptFolds kitchen={props.kitchen} open={open} />
      </section>
      <p class="care soft">{say('careTeam')}</p>
      <FailureLine text={open.history.failure} />
    </>
  );
}
