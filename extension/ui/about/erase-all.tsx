/** Erases everything the extension keeps, after the user has said so twice. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { browser } from 'wxt/browser';
import type { Store } from '../../store/db.ts';
import { eraseAll } from '../../store/erase.ts';
import { storageMessage } from '../../store/failure.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { ALL_PAGES } from '../settings/all-pages.ts';
import { say } from '../words/say.ts';

/** The page starts anew: nothing that was on it may be put back by it. */
const AFTER = '/bench.html?erased#privacy';

function Sure({ onYes, onNo }: { onYes(): void; onNo(): void }) {
  const no = useRef<HTMLButtonElement>(null);
  useEffect(() => no.current?.focus(), []);
  return (
    <fieldset class="sure">
      <legend>{say('eraseSure')}</legend>
      <p>{say('eraseFileFirst')}</p>
      <div class="acts">
        <button type="button" class="button" ref={no} onClick={onNo}>
          {say('eraseNot')}
        </button>
        <a class="button" href="#kept">
          {say('allInFile')}
        </a>
        <button type="button" class="button" onClick={onYes}>
          {say('eraseYes')}
        </button>
      </div>
    </fieldset>
  );
}

export function EraseAll({ store }: { store: Store }) {
  const [state, setState] = useState<'idle' | 'asked' | { why: string }>('idle');
  const erase = async () => {
    try {
      await browser.permissions.remove(ALL_PAGES).catch(() => false);
      await eraseAll(store, [browser.storage.local, browser.storage.session]);
      if (location.href.endsWith(AFTER)) location.reload();
      else location.replace(AFTER);
    } catch (error) {
      setState({ why: storageMessage(error) });
    }
  };
  return (
    <section id="erase">
      <h2>{say('eraseAll')}</h2>
      <p>{say('eraseAllHow')}</p>
      {state === 'asked' ? (
        <Sure onYes={() => void erase()} onNo={() => setState('idle')} />
      ) : (
        <button type="button" class="button" onClick={() => setState('asked')}>
          {say('eraseAll')}
        </button>
      )}
      <FailureLine text={typeof state === 'object' && state.why} />
    </section>
  );
}
