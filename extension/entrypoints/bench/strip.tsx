/** What stays in sight over a recipe: verdict, budget, servings, undo and redo, Keep. */
import { useEffect } from 'preact/hooks';
import { Icon } from '../../ui/controls/icon.tsx';
import { short } from '../../ui/figures/format.ts';
import { StateMark } from '../../ui/figures/loaf/state-mark.tsx';
import { shownVerdict } from '../../ui/figures/verdict.ts';
import { GoalSteppers } from '../../ui/goals/goal-steppers.tsx';
import type { WorkState } from '../../ui/hooks/use-work.ts';
import { KeepButton } from '../../ui/kept/keep-button.tsx';
import { WaySwitch } from '../../ui/ways/way-switch.tsx';
import { portionNoun, portionWord } from '../../ui/words/portion.ts';
import { say } from '../../ui/words/say.ts';
import type { OpenRecipe } from './kitchen.ts';

/** Ctrl or Cmd with Z, and with Shift or Y the other way; typing in a field is the field's own. */
function useUndoKeys({ undo, redo }: WorkState): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const key = event.key.toLowerCase();
      if (!(event.ctrlKey || event.metaKey) || (key !== 'z' && key !== 'y')) return;
      if ((event.target as Element | null)?.closest('input, textarea, select')) return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo();
      else undo();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [undo, redo]);
}

function UndoRedo({ work }: { work: WorkState }) {
  return (
    <span class="undo-redo">
      <button
        type="button"
        class="button bare square"
        aria-label={say('undo')}
        title={say('undo')}
        disabled={!work.canUndo}
        onClick={work.undo}
      >
        <Icon name="undo" />
      </button>
      <button
        type="button"
        class="button bare square"
        aria-label={say('redo')}
        title={say('redo')}
        disabled={!work.canRedo}
        onClick={work.redo}
      >
        <Icon name="redo" />
      </button>
    </span>
  );
}

export function Strip({ open }: { open: OpenRecipe }) {
  const { work, adaptation, history } = open;
  const verdict = shownVerdict(adaptation);
  useUndoKeys(work);
  const { goals } = work.current;
  const servings = goals.servings ?? adaptation.after.servings;
  const steppers = (
    <GoalSteppers adaptation={adaptation} goals={goals} brief onGoals={work.changeGoals} />
  );
  return (
    <section class="strip" aria-label={say('stripName')}>
      <div class="strip-sum" aria-live="polite" aria-busy={work.busy}>
        {verdict && <StateMark state={verdict.state} />}
        <span class={work.busy ? 'fresh-soon' : ''}>
          <b class="strip-figure">{verdict ? `${short(verdict.after.best)} g` : '–'}</b>{' '}
          <span class="strip-portion">{portionWord(adaptation)}</span>
        </span>
      </div>
      <div class="strip-wide">{steppers}</div>
      <details class="strip-narrow">
        <summary class="button">
          {short(goals.budgetG)} g, {short(servings)} {portionNoun(adaptation, servings)}
        </summary>
        <div class="strip-menu">
          {steppers}
          <WaySwitch adaptation={adaptation} onGoals={work.changeGoals} />
          <UndoRedo work={work} />
        </div>
      </details>
      <div class="strip-choices">
        <WaySwitch adaptation={adaptation} onGoals={work.changeGoals} />
        <UndoRedo work={work} />
      </div>
      <KeepButton
        what={work.options}
        again={history.savedId !== null}
        saved={open.isKept}
        first
        keep={open.keep}
      />
      {open.elsewhere && (
        <p class="strip-note" role="status">
          {say('keptElsewhere')}
        </p>
      )}
      {open.notWritten !== null && (
        <p class="strip-note failure" role="alert">
          {say('notKept')} {open.notWritten}
        </p>
      )}
    </section>
  );
}
