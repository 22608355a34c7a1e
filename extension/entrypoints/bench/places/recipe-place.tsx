/** The recipe on the bench: verdict, ingredients, method, and the rest folded. */

import type { Recipe } from '../../../../engine/model.ts';
import { Jumps } from '../../../ui/controls/jumps.tsx';
import { AllergenAlert } from '../../../ui/figures/allergens/allergen-alert.tsx';
import { Concerns, NotCounted, Questions } from '../../../ui/figures/concerns.tsx';
import { webAddress } from '../../../ui/figures/format.ts';
import { GraveLine } from '../../../ui/figures/grave.tsx';
import { VerdictCard } from '../../../ui/figures/verdict-card.tsx';
import { IngredientList, useOpenLine } from '../../../ui/recipe/lines/ingredient-list.tsx';
import { lineActions } from '../../../ui/recipe/lines/line-actions.ts';
import { Method } from '../../../ui/recipe/method.tsx';
import { paperSize } from '../../../ui/recipe/paper-size.ts';
import { PrintCautions, PrintFigures } from '../../../ui/recipe/print-parts.tsx';
import { PrintTold } from '../../../ui/recipe/print-told.tsx';
import { wayDown } from '../../../ui/ways/way-down.ts';
import { WaysOut } from '../../../ui/ways/way-switch.tsx';
import { say, sayWith } from '../../../ui/words/say.ts';
import { ToldSentence } from '../../../ui/words/told-sentence.tsx';
import type { Kitchen, OpenRecipe } from '../kitchen.ts';
import { Strip } from '../strip.tsx';
import { RecipeFolds } from './recipe-folds.tsx';

/** Title, author and where the recipe was read. */
function Head({ recipe }: { recipe: Recipe }) {
  const address = webAddress(recipe.url);
  return (
    <header class="recipe-head">
      <h1 class="dish" lang={recipe.language ?? undefined} dir="auto">
        {recipe.title}
      </h1>
      <p class="soft credit">
        {recipe.author && `${say('byAuthor', recipe.author)} `}
        {address
          ? sayWith(
              'readFrom',
              <a href={address} rel="noreferrer noopener" target="_blank">
                {new URL(address).host}
              </a>,
            )
          : say('fromPasted')}{' '}
        {recipe.yield.text && say('pageMakes', recipe.yield.text)}
      </p>
    </header>
  );
}

export function RecipePlace({ kitchen, open }: { kitchen: Kitchen; open: OpenRecipe }) {
  const { work, adaptation, factor } = open;
  const { preferences, own, names } = kitchen;
  const { open: openKey, setOpen, show } = useOpenLine();
  const actions = lineActions(work, {
    table: open.table,
    ownFoods: own.foods,
    names,
    factor,
    onNever: open.neverUse,
  });
  return (
    <>
      <Jumps
        label={say('partsOfRecipe')}
        parts={[
          ['ingredients-title', say('ingredients')],
          ['method-title', say('method')],
          ['folds', say('allTheRest')],
        ]}
      />
      <Strip open={open} />
      <article class="recipe" aria-busy={work.busy} data-paper={paperSize(adaptation)}>
        <Head recipe={adaptation.recipe} />
        <AllergenAlert
          adaptation={adaptation}
          table={open.table}
          onGoals={work.changeGoals}
          onLine={show}
        />
        <Questions adaptation={adaptation} onSay={show} />
        <VerdictCard adaptation={adaptation} aside={wayDown(adaptation)} groups />
        <GraveLine adaptation={adaptation} />
        <PrintTold adaptation={adaptation} table={open.table} />
        {adaptation.plan.notReworked !== null && (
          <p class="not-reworked">
            <ToldSentence text={adaptation.plan.notReworked} />
          </p>
        )}
        <WaysOut adaptation={adaptation} onGoals={work.changeGoals} />
        <NotCounted adaptation={adaptation} onSay={show} />
        <Concerns adaptation={adaptation} />
        <PrintFigures adaptation={adaptation} preferences={preferences} factor={factor} />
        <div class="two">
          <IngredientList
            adaptation={adaptation}
            wish={{ system: preferences.amounts, factor }}
            actions={actions}
            open={openKey}
            onOpen={setOpen}
          />
          <Method adaptation={adaptation} factor={factor} />
        </div>
        <PrintCautions adaptation={adaptation} />
        <RecipeFolds kitchen={kitchen} open={open} onLine={show} />
      </article>
    </>
  );
}
