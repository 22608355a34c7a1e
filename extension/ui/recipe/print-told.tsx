/** On paper right below the verdict: what the dish holds that is never eaten, and what no figure has. */
import { type FoodTable, goesPastWithIt } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { stillContained } from '../figures/allergens/bringers.ts';
import { nameOf, uncountedLines } from '../figures/concerns.tsx';
import { allergenWord } from '../words/allergen-words.ts';
import { foodWord } from '../words/food-words.ts';
import { PageNames } from '../words/page-names.tsx';
import { say, sayList } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';

interface Props {
  adaptation: Adaptation;
  table: FoodTable;
}

/** 'Still contains egg, milk. It comes with eggs and butter.' */
function StillContains({ adaptation, table }: Props) {
  const found = stillContained(adaptation, (id) => table.byId(id)?.allergens ?? []);
  if (found.length === 0) return null;
  const foods = found.flatMap(({ by }) =>
    by.map(({ foodId, food }) => (foodId ? foodWord(foodId, food) : food)),
  );
  return (
    <p>
      <b>
        {say(
          found.every(({ likely }) => likely) ? 'mayStillContain' : 'stillContains',
          sayList(found.map(({ allergen }) => allergenWord(allergen))),
        )}
        .
      </b>{' '}
      {say('broughtBy', sayList([...new Set(foods)]))}
    </p>
  );
}

function NowContains({ adaptation }: Pick<Props, 'adaptation'>) {
  const { allergensAdded } = adaptation;
  if (allergensAdded.length === 0) return null;
  return (
    <p>
      <b>{say('nowContains', sayList(allergensAdded.map(allergenWord)))}</b>
    </p>
  );
}

/** Every line: paper has no 'and 3 more' to press. */
function Uncounted({ adaptation }: Pick<Props, 'adaptation'>) {
  const { all } = uncountedLines(adaptation);
  if (all.length === 0) return null;
  return (
    <p>
      <b>{say('notCounted')}</b>{' '}
      <PageNames
        names={all.map(({ key, text }) => nameOf(adaptation, key, text))}
        language={adaptation.recipe.language}
      />
      .{goesPastWithIt(adaptation.verdict) && ` ${say('aboveWithIt')}`}
    </p>
  );
}

export function PrintTold({ adaptation, table }: Props) {
  return (
    <div class="print-only print-told">
      <StillContains adaptation={adaptation} table={table} />
      <NowContains adaptation={adaptation} />
      {adaptation.questions.map(({ code, text }) => (
        <p key={code + text}>
          <b>{say('pleaseCheck')}</b> <ToldSentence text={text} />
        </p>
      ))}
      <Uncounted adaptation={adaptation} />
    </div>
  );
}
