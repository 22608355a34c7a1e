/** What repeated water corrections say of a package of the user's own: offered, never taken by itself. */

import { useEffect, useState } from 'preact/hooks';
import {
  type LearnedWater as Lesson,
  learnedWater,
  type WalkOptions,
} from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import type { OwnFoods } from '../../store/kept/kept-packages.ts';
import { keepLesson } from '../../store/kept/lesson.ts';
import { listRecipes } from '../../store/kept/saved.ts';
import type { OwnFood } from '../../store/records.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { say, sayCount } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';

interface Props {
  store: Store;
  own: OwnFoods;
  adaptation: Adaptation;
  options: WalkOptions;
  savedId: string | null;
  /** The lesson is kept; its corrections are in the flour now. */
  onKept(lesson: Lesson): void;
}

/** Results of all saved recipes, read once corrections make them worth it. */
function useSavedResults(store: Store, wanted: boolean): readonly Adaptation[] {
  const [results, setResults] = useState<readonly Adaptation[]>([]);
  useEffect(() => {
    if (!wanted) return;
    listRecipes(store).then(
      ({ recipes }) => setResults(recipes.flatMap((saved) => saved.adaptation ?? [])),
      () => setResults([]),
    );
  }, [wanted]);
  return results;
}

export function LearnedWater({ store, own, adaptation, options, savedId, onKept }: Props) {
  const [state, setState] = useState<{ said: string } | { failed: string } | null>(null);
  const asked = adaptation.goals.adjustments.length > 0 && own.foods.length > 0;
  const others = useSavedResults(store, asked);
  const lessons = asked
    ? own.foods.flatMap((food) => {
        const lesson = learnedWater(food, [...others, adaptation]);
        return lesson ? [{ lesson, food }] : [];
      })
    : [];
  const take = async (lesson: Lesson, { label }: OwnFood) => {
    try {
      const { aliases = {} } = options;
      const changed = await keepLesson(store, lesson, label, savedId, { aliases }, Date.now());
      const others = changed === 0 ? '' : ` ${sayCount('moreWorkedOut', changed)}`;
      setState({ said: `${say('waterLearned', lesson.food.name)}${others}` });
      onKept(lesson);
    } catch (error) {
      setState({ failed: storageMessage(error) });
    }
  };
  return (
    <div class="learned">
      {lessons.map(({ lesson, food }) => (
        <div key={food.id}>
          <p>
            <ToldSentence text={lesson.why} />
          </p>
          <button type="button" class="button" onClick={() => void take(lesson, food)}>
            {say('reckonWithFor', food.name)}
          </button>
        </div>
      ))}
      <div role="status">{state && 'said' in state && <p>{state.said}</p>}</div>
      <FailureLine text={state && 'failed' in state && state.failed} />
    </div>
  );
}
