/** A passphrase for a file: to lock one, or to open one. */

import { useId, useState } from 'preact/hooks';
import { SHORTEST_PASSPHRASE } from '../../store/backup/locked-file.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { say } from '../words/say.ts';

interface FieldProps {
  label: string;
  value: string;
  isNew: boolean;
  onValue(text: string): void;
}

function PassphraseField({ label, value, isNew, onValue }: FieldProps) {
  const id = useId();
  const [shown, setShown] = useState(false);
  const field = {
    id,
    autocomplete: isNew ? 'new-password' : 'off',
    value,
    onInput: ({ currentTarget }: { currentTarget: HTMLInputElement }) =>
      onValue(currentTarget.value),
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <span class="field-input">
        {shown ? <input type="text" {...field} /> : <input type="password" {...field} />}
        <button type="button" class="button bare" onClick={() => setShown(!shown)}>
          {say(shown ? 'hidePassphrase' : 'showPassphrase')}
        </button>
      </span>
    </div>
  );
}

/** A lost passphrase is a lost file, and that is said before. */
export function LockForm({ busy, onLock }: { busy: boolean; onLock(passphrase: string): void }) {
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState(false);
  return (
    <form
      class="lock-form"
      onSubmit={(event) => {
        event.preventDefault();
        const short = [...typed].length < SHORTEST_PASSPHRASE;
        setWrong(short);
        if (!short) onLock(typed);
      }}
    >
      <p>{say('lockWarning')}</p>
      <PassphraseField label={say('passphrase')} value={typed} isNew onValue={setTyped} />
      <FailureLine text={wrong && say('passphraseShort', SHORTEST_PASSPHRASE)} />
      <button type="submit" class="button" disabled={busy}>
        {say('allInLockedFile')}
      </button>
      <p class="soft">{say('lockHow')}</p>
    </form>
  );
}

interface UnlockProps {
  busy: boolean;
  onUnlock(passphrase: string): void;
  onLeave(): void;
}

export function UnlockForm({ busy, onUnlock, onLeave }: UnlockProps) {
  const [typed, setTyped] = useState('');
  return (
    <form
      class="lock-form"
      onSubmit={(event) => {
        event.preventDefault();
        onUnlock(typed);
      }}
    >
      <p>{say('fileIsLocked')}</p>
      <PassphraseField
        label={say('passphraseOfFile')}
        value={typed}
        isNew={false}
        onValue={setTyped}
      />
      <div class="acts">
        <button type="submit" class="button first" disabled={busy}>
          {say('openFile')}
        </button>
        <button type="button" class="button" onClick={onLeave}>
          {say('leaveFile')}
        </button>
      </div>
    </form>
  );
}
