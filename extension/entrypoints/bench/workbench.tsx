import { useState } from 'preact/hooks';
import type { Current } from '../../store/current.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import type { SaveAnswer } from '../../store/keeper.ts';
import { weighedDish } from '../../store/kept-bakes.ts';
import type { OwnFoods } from '../../store/kept-packages.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { Work } from '../../store/records.ts';
import { sameWork, saveRecipe } from '../../store/saved.ts';
import { Message } from '../../ui/controls/message.tsx';
import { TraceContext, useLazyTrace } from '../../ui/figures/trace-context.ts';
import type { Names } from '../../ui/hooks/use-names.ts';
import type { Pantry } from '../../ui/hooks/use-pantry.ts';
import { useWork } from '../../ui/hooks/use-work.ts';
import { Credit } from './credit.tsx';
import { hold } from './hold.ts';
import { KeptParts } from './kept-parts.tsx';
import { RecipeParts } from './recipe-parts.tsx';
import { useHistory } from './use-history.ts';

interface Props {
  start: Current;
  preferences: Preferences;
  own: OwnFoods;
  names: Names;
  pantry: Pantry;
  store: Store;
  /** Goes up with each file read in. */
  imports: number;
  onPreferences(change: Partial<Preferences>): void;
  /** Something was saved: lists of saved recipes are read again. */
  onSaved(): void;
  /** Packages were changed on disk. */
  onOwnChanged(): void;
}

/** A dish that was put on the scale without logging a bake; it holds for this state only. */
interface Weighed {
  work: Work;
  /** Grams of the recipe made once. */
  grams: number | null;
}

/** One recipe in full. */
export function Workbench(props: Props) {
  const { start, preferences, own, names, pantry, store, onSaved } = props;
  const history = useHistory(store, start.savedId, props.imports, onSaved);
  const [onScale, setOnScale] = useState<Weighed | null>(null);
  const [factor, setFactor] = useState(1);
  const weighed = (work: Work) =>
    onScale && sameWork(onScale.work, work) ? onScale.grams : weighedDish(history.log.bakes, work);
  const work = useWork(start, { ownFoods: own.foods, aliases: names.map, weighed }, hold);
  const { current, adaptation } = work;
  const trace = useLazyTrace(adaptation, own.foods);
  if (!adaptation) {
    return (
      <Message title="This recipe could not be worked out" alert>
        <p>Paste it below instead; lines with an amount, a unit and a name are read best.</p>
      </Message>
    );
  }
  const save = async (): Promise<SaveAnswer> => {
    try {
      const what = { ...current, adaptation };
      const saved = await saveRecipe(store, what, history.savedId, Date.now());
      work.setSavedId(saved.id);
      await history.read(saved.id);
      onSaved();
      return { ok: true, id: saved.id };
    } catch (error) {
      return { ok: false, why: storageMessage(error) };
    }
  };
  const shared = { work, adaptation, factor };
  return (
    <TraceContext.Provider value={trace}>
      <article id="recipe">
        <Credit recipe={current.recipe} />
        <RecipeParts
          {...shared}
          preferences={preferences}
          ownFoods={own.foods}
          names={names}
          pantry={pantry}
          saved={history.savedId !== null}
          save={save}
          onWish={({ system, factor: next }) => {
            setFactor(next);
            if (system !== preferences.amounts) props.onPreferences({ amounts: system });
          }}
          onDish={(grams) => setOnScale({ work: current, grams: grams && grams / factor })}
        />
        <KeptParts
          {...shared}
          store={store}
          own={own}
          history={history}
          onOwnChanged={() => {
            props.onOwnChanged();
            onSaved();
          }}
        />
      </article>
    </TraceContext.Provider>
  );
}
