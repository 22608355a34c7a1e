/** What an opened line tells and offers: the page's own line, or a food that came in. */
import { useMemo, useState } from 'preact/hooks';
import type { Adaptation, Ingredient } from '../../../../engine/model.ts';
import { foodWord } from '../../words/food-words.ts';
import { say } from '../../words/say.ts';
import { ToldSentence } from '../../words/told-sentence.tsx';
import { ComeIn } from './come-in-panel.tsx';
import { CorrectLine } from './correct-line.tsx';
import { reasonsOf } from './doubtful-lines.ts';
import type { IngredientRow } from './ingredient-rows.ts';
import { type LineActions, pinnedWith } from './line-actions.ts';
import { ReasonWords } from './reason-words.tsx';
import { RowSources } from './row-sources.tsx';
import { SetAmountField } from './set-amount.tsx';
import { tiesOf } from './tied-foods.ts';

interface Props {
  row: IngredientRow;
  adaptation: Adaptation;
  actions: LineActions;
}

/** How the line was read, and the way to put it right; always there, however sure we were. */
function Reading({
  ingredient,
  adaptation,
  actions,
}: Omit<Props, 'row'> & { ingredient: Ingredient }) {
  const { key, item } = ingredient;
  const [choosing, setChoosing] = useState(ingredient.match === null);
  const correction = actions.goals && adaptation.corrections[key];
  const ties = useMemo(
    () => (choosing ? tiesOf(adaptation, ingredient, actions.options, actions.table) : []),
    [choosing, adaptation],
  );
  const meant = actions.names.meant(item.name);
  return (
    <>
      {meant && !correction && (
        <p>{say('byYourWord', meant.name, foodWord(meant.foodId, meant.foodName))}</p>
      )}
      <CorrectLine
        ingredient={ingredient}
        correction={correction}
        table={actions.table}
        ties={ties}
        names={actions.names}
        choosing={choosing}
        onChoosing={setChoosing}
        onCorrect={(next) => actions.onCorrect(key, next)}
      />
    </>
  );
}

function PinButton({ actions, ingredient }: Pick<Props, 'actions'> & { ingredient: Ingredient }) {
  const { key } = ingredient;
  const pinned = actions.goals.pinned.includes(key);
  return (
    <button
      type="button"
      class="button"
      aria-pressed={pinned}
      onClick={() => actions.onGoals(pinnedWith(actions.goals, key, !pinned))}
    >
      {say(pinned ? 'mayChangeAgain' : 'leaveAsItWas')}
    </button>
  );
}

/** A line that is left out comes back by its own button. */
function BackIn({ actions, line }: { actions: LineActions; line: string }) {
  const { leftOut } = actions.goals;
  if (!leftOut.includes(line)) return null;
  return (
    <div class="acts">
      <button
        type="button"
        class="button"
        onClick={() => actions.onGoals({ leftOut: leftOut.filter((one) => one !== line) })}
      >
        {say('putBackIn')}
      </button>
    </div>
  );
}

export function LinePanel({ row, adaptation, actions }: Props) {
  const { line, why, ingredient, swap } = row;
  const language = adaptation.recipe.language ?? undefined;
  const doubts = ingredient ? reasonsOf(ingredient) : [];
  return (
    <>
      {why && (
        <p>
          <ToldSentence text={why} />
        </p>
      )}
      {line.change !== 'kept' && line.before !== null && (
        <p class="soft">
          {say('pageSays')}{' '}
          <q lang={language} dir="auto">
            {line.before}
          </q>
        </p>
      )}
      {doubts.length > 0 && (
        <p>
          <ReasonWords reasons={doubts} />
        </p>
      )}
      <BackIn line={line.key} actions={actions} />
      <SetAmountField row={row} adaptation={adaptation} actions={actions}>
        {ingredient && <PinButton ingredient={ingredient} actions={actions} />}
      </SetAmountField>
      {swap && <ComeIn swap={swap} foodId={row.foodId} adaptation={adaptation} actions={actions} />}
      {ingredient && (
        <>
          {swap && <h4>{say('theLineItself')}</h4>}
          <Reading ingredient={ingredient} adaptation={adaptation} actions={actions} />
        </>
      )}
      <RowSources line={line} rows={adaptation.lines} />
    </>
  );
}
