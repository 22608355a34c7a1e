/** The bakes of the recipe on the bench: tell of one, see what it says, take up what it asks for. */
import { withoutLearned } from '../../../store/kept/lesson.ts';
import { BakeLogPart } from '../../../ui/bakes/bake-log.tsx';
import { MeterPart } from '../../../ui/bakes/meter/meter-part.tsx';
import { bandIn } from '../../../ui/bakes/meter/meter-unit.tsx';
import { EmptyBoard } from '../../../ui/figures/loaf/empty-board.tsx';
import { LearnedWater } from '../../../ui/taught/learned-water-panel.tsx';
import { TaughtList } from '../../../ui/taught/taught-list.tsx';
import { say } from '../../../ui/words/say.ts';
import type { PlaceProps } from '../kitchen.ts';
import '../../../ui/styles/bakes.css';

export function BakesPlace({ kitchen, open }: PlaceProps) {
  if (!open) {
    return (
      <section class="place">
        <h1>{say('placeBakes')}</h1>
        <EmptyBoard />
        <p>{say('bakesNeedRecipe')}</p>
        <a class="button" href="#kept">
          {say('lookInKept')}
        </a>
        <TaughtList lessons={kitchen.lessons} recipeId={null} accepted={[]} onWithdraw={() => {}} />
      </section>
    );
  }
  const { work, adaptation, history, factor } = open;
  const { preferences, prefer } = kitchen;
  return (
    <section class="place bakes-place">
      <h1>{say('placeBakes')}</h1>
      <p class="dish" lang={adaptation.recipe.language ?? undefined} dir="auto">
        {adaptation.recipe.title}
      </p>
      <BakeLogPart
        store={kitchen.store}
        current={work.current}
        adaptation={adaptation}
        options={work.options}
        log={history.log}
        factor={factor}
        meter={preferences.meter}
        onMeterUnit={(meter) =>
          prefer({ meter, meterBand: bandIn(preferences.meterBand, preferences.meter, meter) })
        }
        heat={preferences.heat}
        onLogged={async () => {
          await history.read();
          kitchen.lessons.reload();
        }}
        onGoals={work.changeGoals}
      />
      <TaughtList
        lessons={kitchen.lessons}
        recipeId={history.savedId}
        accepted={work.current.goals.adjustments}
        onWithdraw={({ id }) =>
          work.changeGoals({
            adjustments: work.current.goals.adjustments.filter((one) => one.id !== id),
          })
        }
      />
      <MeterPart
        bakes={history.log.bakes}
        unit={preferences.meter}
        band={preferences.meterBand}
        onMeter={prefer}
      />
      <LearnedWater
        store={kitchen.store}
        own={kitchen.own}
        adaptation={adaptation}
        options={work.options}
        savedId={history.savedId}
        onKept={(lesson) => {
          work.changeGoals({ adjustments: withoutLearned(work.current.goals.adjustments, lesson) });
          kitchen.noteImported();
        }}
      />
    </section>
  );
}
