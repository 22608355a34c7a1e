import { useEffect, useState } from 'preact/hooks';
import {
  type LearnedWater as Lesson,
  learnedWater,
  type WalkOptions,
} from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { type OwnFoods, saveOwnFood } from '../../store/own-foods.ts';
import { listRecipes } from '../../store/saved.ts';

interface Props {
  store: Store;
  own: OwnFoods;
  adaptation: Adaptation;
  options: WalkOptions;
  /** The lesson is kept; these water corrections are in the flour now. */
  onKept(adjustmentIds: readonly string[]): void;
}

/** What repeated water corrections say of a package of the user's own: offered, never taken by itself. */
export function LearnedWater({ store, own, adaptation, onKept }: Props) {
  const [others, setOthers] = useState<readonly Adaptation[]>([]);
  const [state, setState] = useState<{ said: string } | { failed: string } | null>(null);
  const asked = adaptation.goals.adjustments.length > 0 && own.foods.length > 0;
  useEffect(() => {
    if (!asked) return;
    listRecipes(store).then(
      ({ recipes }) => setOthers(recipes.flatMap((saved) => saved.adaptation ?? [])),
      () => setOthers([]),
    );
  }, [asked]);
  const lessons = asked
    ? own.foods.flatMap((food) => {
        const lesson = learnedWater(food, [...others, adaptation]);
        return lesson ? [{ lesson, label: food.label }] : [];
      })
    : [];
  const take = async (
    { food, adjustmentIds }: Lesson,
    label: OwnFoods['foods'][number]['label'],
  ) => {
    try {
      await saveOwnFood(store, { ...food, label });
      setState({ said: `${food.name} now takes its water from your bakes.` });
      onKept(adjustmentIds);
    } catch (error) {
      setState({ failed: storageMessage(error) });
    }
  };
  return (
    <div class="learned no-print">
      {lessons.map(({ lesson, label }) => (
        <div key={lesson.food.id}>
          <p>{lesson.why}</p>
          <button type="button" onClick={() => void take(lesson, label)}>
            Reckon with this for {lesson.food.name}
          </button>
        </div>
      ))}
      <div role="status">{state && 'said' in state && <p>{state.said}</p>}</div>
      {state && 'failed' in state && (
        <p role="alert" class="failure">
          {state.failed}
        </p>
      )}
    </div>
  );
}
