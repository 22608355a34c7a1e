import type { Adaptation } from '../../../engine/model.ts';
import type { Store } from '../../store/db.ts';
import type { OwnFoods } from '../../store/kept-packages.ts';
import { withoutLearned } from '../../store/lesson.ts';
import type { WorkState } from '../../ui/hooks/use-work.ts';
import { Bakes } from './bakes-place.tsx';
import { Versions } from './kept-versions.tsx';
import { LearnedWater } from './learned-water-panel.tsx';
import type { History } from './use-history.ts';

interface Props {
  work: WorkState;
  adaptation: Adaptation;
  /** How much of the recipe is made. */
  factor: number;
  store: Store;
  own: OwnFoods;
  history: History;
  /** Packages, and with them other saved recipes, were changed on disk. */
  onOwnChanged(): void;
}

/** What is kept of a recipe beside itself: its bakes, what they taught, its versions. */
export function KeptParts(props: Props) {
  const { work, adaptation, factor, store, own, history, onOwnChanged } = props;
  const { current, options, changeGoals } = work;
  const { savedId } = history;
  return (
    <>
      {history.failure && (
        <p role="alert" class="failure">
          {history.failure}
        </p>
      )}
      <Bakes
        store={store}
        current={current}
        adaptation={adaptation}
        options={options}
        log={history.log}
        factor={factor}
        onLogged={() => history.read()}
        onGoals={changeGoals}
      />
      <LearnedWater
        store={store}
        own={own}
        adaptation={adaptation}
        options={options}
        savedId={savedId}
        onKept={(lesson) => {
          changeGoals({ adjustments: withoutLearned(current.goals.adjustments, lesson) });
          onOwnChanged();
        }}
      />
      <Versions
        now={history.now}
        versions={history.versions}
        adaptation={adaptation}
        onSayNow={history.sayNow}
        onSay={history.say}
        onTake={({ recipe, goals, corrections }) =>
          work.replace({ recipe, goals, corrections, savedId })
        }
      />
    </>
  );
}
