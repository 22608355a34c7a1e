/** The method, one step a screen, to be cooked from. */
import { useEffect } from 'preact/hooks';
import { browser } from 'wxt/browser';
import { stoveKey } from '../../../store/working/stove.ts';
import { Emblem } from '../../../ui/figures/loaf/emblem.tsx';
import { cookedMethod } from '../../../ui/recipe/cooked-method.ts';
import { ingredientRows } from '../../../ui/recipe/lines/ingredient-rows.ts';
import { wishedTexts } from '../../../ui/recipe/shown-amounts.ts';
import { atHand } from '../../../ui/stove/at-hand.ts';
import { HandList } from '../../../ui/stove/hand-list.tsx';
import { RunningTimers } from '../../../ui/stove/running-timers.tsx';
import { StepLoaf } from '../../../ui/stove/step-loaf.tsx';
import { StoveStep } from '../../../ui/stove/stove-step.tsx';
import { useAwake } from '../../../ui/stove/use-awake.ts';
import { type Stove, useStove } from '../../../ui/stove/use-stove.ts';
import { say } from '../../../ui/words/say.ts';
import type { Kitchen, OpenRecipe } from '../kitchen.ts';
import '../../../ui/styles/stove.css';

interface Props {
  kitchen: Kitchen;
  open: OpenRecipe;
}

function StoveHead({ title, language }: { title: string; language: string | undefined }) {
  return (
    <header class="stove-head">
      <Emblem size={34} />
      <h1 class="dish" lang={language} dir="auto">
        {title}
      </h1>
      <a class="button" href="#recipe">
        {say('leaveStove')}
      </a>
    </header>
  );
}

function StoveFoot({ stove, count, awake }: { stove: Stove; count: number; awake: boolean }) {
  const last = stove.at >= count - 1;
  return (
    <div class="stove-foot">
      <button
        type="button"
        class="button"
        disabled={stove.at === 0}
        onClick={() => stove.goTo(stove.at - 1)}
      >
        {say('stepBefore')}
      </button>
      <p class="soft">{awake && say('screenStaysOn')}</p>
      {last ? (
        <a class="button first" href="#bakes">
          {say('stoveDone')}
        </a>
      ) : (
        <button type="button" class="button first" onClick={() => stove.goTo(stove.at + 1)}>
          {say('nextStep')}
        </button>
      )}
    </div>
  );
}

/** The arrow keys turn the steps, unless a field has them. */
function useArrows(stove: Stove | null): void {
  useEffect(() => {
    const turn = (event: KeyboardEvent) => {
      if (!stove || event.altKey || event.ctrlKey || event.metaKey) return;
      if (
        event.target instanceof Element &&
        event.target.closest('input:not([type="checkbox"]),textarea,select')
      )
        return;
      if (event.key === 'ArrowRight') stove.goTo(stove.at + 1);
      if (event.key === 'ArrowLeft') stove.goTo(stove.at - 1);
    };
    addEventListener('keydown', turn);
    return () => removeEventListener('keydown', turn);
  });
}

function useHandRows({ kitchen, open }: Props) {
  const { preferences, own } = kitchen;
  const { adaptation, factor } = open;
  const texts = wishedTexts(adaptation, { system: preferences.amounts, factor }, own.foods);
  return ingredientRows(adaptation, ({ key, after }) => texts?.get(key) ?? after);
}

export function StovePlace({ kitchen, open }: Props) {
  const { factor, adaptation } = open;
  const { recipe } = adaptation;
  const { steps, told } = cookedMethod(adaptation, factor);
  const language = recipe.language ?? undefined;
  const stove = useStove(browser.storage.local, stoveKey(recipe), steps.length);
  const awake = useAwake();
  const rows = useHandRows({ kitchen, open });
  useArrows(stove);
  const step = stove ? steps[stove.at] : undefined;
  return (
    <section class="stove">
      <StoveHead title={recipe.title} language={language} />
      {steps.length === 0 && <p class="stove-empty">{say('noMethod')}</p>}
      {stove && step && (
        <>
          <StoveStep
            step={stove.at === 0 ? { ...step, told: [...told, ...step.told] } : step}
            factor={factor}
            at={stove.at}
            count={steps.length}
            language={language}
            onTimer={stove.start}
          >
            <HandList
              rows={atHand(rows, step)}
              ticked={stove.ticked}
              language={language}
              onTick={stove.tick}
            />
          </StoveStep>
          <div class="stove-shelf">
            <StepLoaf at={stove.at} count={steps.length} />
            <RunningTimers timers={stove.timers} now={stove.now} onStop={stove.stop} />
          </div>
          <StoveFoot stove={stove} count={steps.length} awake={awake} />
        </>
      )}
    </section>
  );
}
