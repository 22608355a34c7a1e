import { useId, useState } from 'preact/hooks';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { exportBackup, importBackup, importMessage } from '../../store/kept/transfer.ts';
import { downloadText } from '../controls/download.ts';
import { say } from '../words/say.ts';

type State = { done: string } | { failed: string } | null;

/** Largest file that is read, in bytes. */
const LARGEST_FILE = 200_000_000;

interface Props {
  store: Store;
  onImported(): void;
}

/** All saved recipes out to one file and back in. */
export function Transfer({ store, onImported }: Props) {
  const id = useId();
  const [state, setState] = useState<State>(null);
  const exportAll = async () => {
    try {
      const now = Date.now();
      const day = new Date(now).toISOString().slice(0, 10);
      downloadText(await exportBackup(store, now), `crumbshift-${day}.json`, 'application/json');
      setState({ done: say('fileHanded') });
    } catch (error) {
      setState({ failed: storageMessage(error) });
    }
  };
  const importFile = async (file: File) => {
    if (file.size > LARGEST_FILE) {
      setState({ failed: say('fileTooLarge') });
      return;
    }
    try {
      const result = await importBackup(store, await file.text());
      setState(result.ok ? { done: importMessage(result.count) } : { failed: result.why });
      if (result.ok) onImported();
    } catch (error) {
      setState({ failed: storageMessage(error) });
    }
  };
  return (
    <div class="transfer">
      <p>{say('keptHereOnly')}</p>
      <button type="button" class="button" onClick={exportAll}>
        {say('allInFile')}
      </button>
      <div class="field">
        <label for={`${id}-file`}>{say('readFileIn')}</label>
        <input
          id={`${id}-file`}
          type="file"
          accept=".json,application/json"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            currentTarget.value = '';
            if (file) void importFile(file);
          }}
        />
      </div>
      <p role="status">{state && 'done' in state && state.done}</p>
      {state && 'failed' in state && (
        <p role="alert" class="failure">
          {state.failed}
        </p>
      )}
    </div>
  );
}
