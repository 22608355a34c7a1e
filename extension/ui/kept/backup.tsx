/** All that is kept out to one file, plain or locked, and back in after a look at what it brings. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { type Preview, previewBackup } from '../../store/backup/import-preview.ts';
import { isLocked, lockText, unlockText } from '../../store/backup/locked-file.ts';
import { exportBackup, importBackup, importMessage } from '../../store/backup/transfer.ts';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { isSettled, type Preferences } from '../../store/prefs.ts';
import { downloadText } from '../controls/download.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { Fold } from '../controls/fold.tsx';
import { say } from '../words/say.ts';
import { ImportPreview } from './import-preview-part.tsx';
import { LockForm, UnlockForm } from './locked-parts.tsx';

type State = { done: string } | { failed: string } | null;

/** What is being looked at: a locked file, or what one would bring. */
type Coming = { locked: string } | { text: string; preview: Preview } | null;

/** Largest file that is read, in bytes. */
const LARGEST_FILE = 200_000_000;

interface Props {
  store: Store;
  preferences: Preferences;
  /** Settings of a file are to hold from now on. */
  onSettings(change: Partial<Preferences>): void;
  onImported(): void;
}

async function backupFile(
  { store, preferences }: Pick<Props, 'store' | 'preferences'>,
  passphrase: string | null,
): Promise<void> {
  const now = Date.now();
  const day = new Date(now).toISOString().slice(0, 10);
  const text = await exportBackup(store, now, null, preferences);
  const file = passphrase === null ? text : await lockText(text, passphrase);
  const name = passphrase === null ? `crumbshift-${day}.json` : `crumbshift-${day}-locked.json`;
  downloadText(file, name, 'application/json');
}

function useTransfer({ store, preferences, onSettings, onImported }: Props) {
  const [state, setState] = useState<State>(null);
  const [coming, setComing] = useState<Coming>(null);
  const [busy, setBusy] = useState(false);
  const attempt = async (job: () => Promise<State>) => {
    setBusy(true);
    setState(await job().catch((error: unknown) => ({ failed: storageMessage(error) })));
    setBusy(false);
  };
  const look = async (text: string): Promise<State> => {
    const answer = await previewBackup(store, text);
    setComing(answer.ok ? { text, preview: answer.preview } : null);
    return answer.ok ? null : { failed: answer.why };
  };
  return {
    state,
    coming,
    busy,
    leave: () => setComing(null),
    save: (passphrase: string | null) =>
      attempt(async () => {
        await backupFile({ store, preferences }, passphrase);
        return { done: say('fileHanded') };
      }),
    choose: (file: File) =>
      attempt(async () => {
        if (file.size > LARGEST_FILE) return { failed: say('fileTooLarge') };
        const text = await file.text();
        if (!isLocked(text)) return look(text);
        setComing({ locked: text });
        return null;
      }),
    unlock: (locked: string, passphrase: string) =>
      attempt(async () => {
        const opened = await unlockText(locked, passphrase);
        if (opened.ok) return look(opened.text);
        return {
          failed: say(opened.why === 'damaged' ? 'lockedDamaged' : 'passphraseWrong'),
        };
      }),
    bringIn: (text: string, settings: Partial<Preferences> | null) =>
      attempt(async () => {
        const result = await importBackup(store, text);
        setComing(null);
        if (!result.ok) return { failed: result.why };
        if (settings) onSettings(settings);
        onImported();
        return { done: importMessage(result.count) };
      }),
  };
}

type Transferring = ReturnType<typeof useTransfer>;

/** What comes in stands where the file was chosen, and has the focus. */
function ComingIn({ transfer, settled }: { transfer: Transferring; settled: boolean }) {
  const { coming, busy } = transfer;
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    place.current?.querySelector<HTMLElement>('h3, input')?.focus();
  }, [coming]);
  return (
    <div ref={place}>
      {coming && 'locked' in coming && (
        <UnlockForm
          busy={busy}
          onUnlock={(passphrase) => void transfer.unlock(coming.locked, passphrase)}
          onLeave={transfer.leave}
        />
      )}
      {coming && 'preview' in coming && (
        <ImportPreview
          preview={coming.preview}
          settled={settled}
          onBringIn={(settings) => void transfer.bringIn(coming.text, settings)}
          onLeave={transfer.leave}
        />
      )}
    </div>
  );
}

export function Transfer(props: Props) {
  const transfer = useTransfer(props);
  const { state, busy } = transfer;
  return (
    <div class="transfer">
      <p>{say('keptHereOnly')}</p>
      <div class="acts">
        <button
          type="button"
          class="button"
          disabled={busy}
          onClick={() => void transfer.save(null)}
        >
          {say('allInFile')}
        </button>
        <label class="button pick-file">
          {say('readFileIn')}
          <input
            type="file"
            accept=".json,application/json"
            onChange={({ currentTarget }) => {
              const file = currentTarget.files?.[0];
              currentTarget.value = '';
              if (file) void transfer.choose(file);
            }}
          />
        </label>
      </div>
      <Fold title={say('withPassphrase')} name="locked">
        {() => <LockForm busy={busy} onLock={(passphrase) => void transfer.save(passphrase)} />}
      </Fold>
      <ComingIn transfer={transfer} settled={isSettled(props.preferences)} />
      <p role="status">{state && 'done' in state && state.done}</p>
      <FailureLine text={state && 'failed' in state && state.failed} />
    </div>
  );
}
