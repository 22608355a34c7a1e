/** What can be done with several kept dishes at once. */

import { useRef, useState } from 'preact/hooks';
import { toFiguresTable } from '../../../engine/index.ts';
import { exportBackup } from '../../store/backup/transfer.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { getRecipes, type NextState, putBack, saveSeveral } from '../../store/kept/several.ts';
import type { SavedRecipe } from '../../store/records.ts';
import { downloadText } from '../controls/download.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { say, sayCount } from '../words/say.ts';
import { type OptionsFor, type Replanned, replanAll } from './replan.ts';

/** More at once would keep the page busy for long. Own choice. */
const MOST_REPLANNED = 100;

export interface SeveralProps {
  store: Store;
  ids: readonly string[];
  budgetG: number;
  optionsFor: OptionsFor;
  onBuy(ids: readonly string[]): void;
  /** Something on disk has changed. */
  onChanged(): void;
}

interface Done {
  before: SavedRecipe[];
  states: NextState[];
}

type Said = { done: string } | { failed: string } | null;

function useReplanning({ store, ids, optionsFor, onChanged }: SeveralProps) {
  const [plans, setPlans] = useState<Replanned[] | null>(null);
  const [last, setLast] = useState<Done | null>(null);
  const [said, setSaid] = useState<Said>(null);
  const [busy, setBusy] = useState(false);
  const attempt = async (job: () => Promise<Said>) => {
    setBusy(true);
    setSaid(await job().catch((error: unknown) => ({ failed: storageMessage(error) })));
    setBusy(false);
  };
  return {
    plans,
    last,
    said,
    busy,
    attempt,
    look: (budgetG: number) =>
      attempt(async () => {
        setLast(null);
        const recipes = await getRecipes(store, ids.slice(0, MOST_REPLANNED));
        const all = await replanAll(recipes, budgetG, optionsFor, (done) =>
          setSaid({ done: say('replanning', done, recipes.length) }),
        );
        setPlans(all);
        return null;
      }),
    take: () =>
      attempt(async () => {
        const states = (plans ?? []).flatMap(({ next }) => (next ? [next] : []));
        const before = await saveSeveral(store, states, Date.now());
        setPlans(null);
        setLast({ before, states });
        onChanged();
        return { done: sayCount('replanned', before.length) };
      }),
    undo: (done: Done) =>
      attempt(async () => {
        const count = await putBack(store, done.before, done.states, Date.now());
        setLast(null);
        onChanged();
        return { done: sayCount('putBack', count) };
      }),
  };
}

type Replanning = ReturnType<typeof useReplanning>;

function AtBudget({ budgetG, work }: { budgetG: number; work: Replanning }) {
  const [budget, setBudget] = useState(budgetG);
  return (
    <form
      class="amount-row"
      onSubmit={(event) => {
        event.preventDefault();
        void work.look(budget);
      }}
    >
      <NumberField
        label={say('anotherBudget')}
        unit="g"
        min={0}
        max={500}
        value={budget}
        onValue={setBudget}
      />
      <button type="submit" class="button" disabled={work.busy}>
        {say('whatWouldChange')}
      </button>
    </form>
  );
}

function Plans({ plans, work }: { plans: readonly Replanned[]; work: Replanning }) {
  const changing = plans.filter(({ next }) => next !== null).length;
  return (
    <>
      <ul class="notes replans">
        {plans.map(({ saved, text }) => (
          <li key={saved.id}>
            <b lang={saved.recipe.language ?? undefined} dir="auto">
              {saved.recipe.title}
            </b>
            : {text}
          </li>
        ))}
      </ul>
      {changing > 0 && (
        <button
          type="button"
          class="button first"
          disabled={work.busy}
          onClick={() => void work.take()}
        >
          {sayCount('takeForAll', changing)}
        </button>
      )}
    </>
  );
}

const today = (): string => new Date().toISOString().slice(0, 10);

export function SeveralPart(props: SeveralProps) {
  const { store, ids, budgetG, onBuy } = props;
  const work = useReplanning(props);
  const { plans, last, said } = work;
  const [atBudget, setAtBudget] = useState(false);
  const head = useRef<HTMLElement>(null);
  const handed = () => ({ done: say('fileHanded') });
  const backup = async () => {
    const text = await exportBackup(store, Date.now(), new Set(ids));
    downloadText(text, `crumbshift-${ids.length}-${today()}.json`, 'application/json');
    return handed();
  };
  const table = async () => {
    const recipes = await getRecipes(store, ids);
    const known = recipes.flatMap(({ adaptation }) => adaptation ?? []);
    downloadText(toFiguresTable(known), `crumbshift-figures-${today()}.csv`, 'text/csv');
    return handed();
  };
  const none = ids.length === 0 || work.busy;
  return (
    <section class="several" ref={head} aria-label={say('chooseSeveral')}>
      <p role="status">{sayCount('severalChosen', ids.length)}</p>
      <div class="acts">
        <button type="button" class="button" disabled={none} onClick={() => onBuy(ids)}>
          {say('buyForAll')}
        </button>
        <button
          type="button"
          class="button"
          disabled={none}
          onClick={() => void work.attempt(backup)}
        >
          {say('backupOfThese')}
        </button>
        <button
          type="button"
          class="button"
          disabled={none}
          onClick={() => void work.attempt(table)}
        >
          {say('figuresTable')}
        </button>
        <button
          type="button"
          class="button"
          disabled={none}
          aria-expanded={atBudget}
          onClick={() => setAtBudget(!atBudget)}
        >
          {say('atAnotherBudget')}
        </button>
      </div>
      {atBudget && ids.length > 0 && <AtBudget budgetG={budgetG} work={work} />}
      {atBudget && plans && <Plans plans={plans} work={work} />}
      <div role="status" class="undo">
        {said && 'done' in said && said.done}{' '}
        {last && (
          <button type="button" class="button" onClick={() => void work.undo(last)}>
            {say('undo')}
          </button>
        )}
      </div>
      <FailureLine text={said && 'failed' in said && said.failed} />
    </section>
  );
}
