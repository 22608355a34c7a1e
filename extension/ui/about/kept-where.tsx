/** Where each thing lies that is kept, for how long, and how to be rid of all of it. */
import { useEffect, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Store } from '../../store/db.ts';
import { type Amounts, amountsOf } from '../../store/kept/amounts.ts';
import { type MessageKey, say, sayCount } from '../words/say.ts';
import { EraseAll } from './erase-all.tsx';

/** What, where, how long. */
const ROWS = [
  ['keptDishes', 'inDatabase', 'untilDeleted'],
  ['keptBakes', 'inDatabase', 'untilYouDelete'],
  ['keptThings', 'inDatabase', 'untilYouDelete'],
  ['keptWork', 'inStorage', 'untilTwenty'],
  ['keptLookedAt', 'inStorage', 'untilNextStart'],
  ['keptSettings', 'inStorage', 'untilChanged'],
  ['keptUnread', 'inMemory', 'untilClosed'],
  ['keptFiles', 'whereYouPut', 'yours'],
] as const satisfies readonly (readonly [MessageKey, MessageKey, MessageKey])[];

function Places() {
  return (
    <div class="table-wide">
      <table class="kept-where">
        <thead>
          <tr>
            <th scope="col">{say('keptWhat')}</th>
            <th scope="col">{say('keptWhere')}</th>
            <th scope="col">{say('keptHowLong')}</th>
          </tr>
        </thead>
        <tbody>
          {ROWS.map(([what, where, howLong]) => (
            <tr key={what}>
              <th scope="row">{say(what)}</th>
              <td>{say(where)}</td>
              <td>{say(howLong)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function useAmounts(store: Store): Amounts | null {
  const [amounts, setAmounts] = useState<Amounts | null>(null);
  useEffect(() => {
    amountsOf(store, browser.storage.local).then(setAmounts, () => setAmounts(null));
  }, []);
  return amounts;
}

export function KeptWhere({ store }: { store: Store }) {
  const amounts = useAmounts(store);
  const erased = new URLSearchParams(location.search).has('erased');
  return (
    <section class="place about">
      <h1>{say('whatIsKeptWhere')}</h1>
      {erased && <p role="status">{say('allErased')}</p>}
      <p>{say('nothingLeaves')}</p>
      <p>{say('whenPagesAreRead')}</p>
      <Places />
      {amounts && (
        <p>
          {say(
            'hereNow',
            sayCount('countDishes', amounts.recipes),
            sayCount('countBakes', amounts.bakes),
            sayCount('countPackages', amounts.packages),
            sayCount('countWork', amounts.work),
          )}
        </p>
      )}
      <p>{say('privateWindows')}</p>
      <EraseAll store={store} />
    </section>
  );
}
