/** The state kept last and earlier ones: named, looked at beside the present one, taken up again. */
import { useId, useState } from 'preact/hooks';
import type { Adaptation } from '../../../engine/model.ts';
import type { Said, SavedVersion } from '../../store/records.ts';
import { amount, momentText, short } from '../figures/format.ts';
import { say } from '../words/say.ts';
import { changeTexts } from './compare-versions.ts';

interface SayProps {
  said: Said;
  /** Told to those who hear it, to tell the fields of one state from another's. */
  of: string;
  onSay(said: Partial<Said>): void;
}

/** What the cook wrote to one state; a line to press until there is something. */
function Note({ said, of, onSay }: SayProps) {
  const id = useId();
  const [open, setOpen] = useState(said.note !== '');
  if (!open) {
    return (
      <button type="button" class="button bare" onClick={() => setOpen(true)}>
        {say('addNote')}
        <span class="hidden">: {of}</span>
      </button>
    );
  }
  return (
    <div class="field wide">
      <label for={id}>
        {say('note')}
        <span class="hidden">: {of}</span>
      </label>
      <textarea
        id={id}
        rows={2}
        maxLength={5000}
        value={said.note}
        onChange={({ currentTarget }) => onSay({ note: currentTarget.value.trim() })}
      />
    </div>
  );
}

/** A name and 'this one worked' for one state. */
function NameAndWorked({ said, of, onSay }: SayProps) {
  const id = useId();
  return (
    <div class="try-said">
      <div class="field">
        <label for={id}>
          {say('name')}
          <span class="hidden">: {of}</span>
        </label>
        <input
          id={id}
          type="text"
          maxLength={200}
          autocomplete="off"
          value={said.name}
          onChange={({ currentTarget }) => onSay({ name: currentTarget.value.trim() })}
        />
      </div>
      <label class="tick">
        <input
          type="checkbox"
          checked={said.worked}
          onChange={({ currentTarget }) => onSay({ worked: currentTarget.checked })}
        />
        <span>
          {say('thisWorked')}
          <span class="hidden">: {of}</span>
        </span>
      </label>
    </div>
  );
}

function figuresOf({ adaptation, goals }: SavedVersion): string {
  if (!adaptation) return say('tryToWorkOut');
  const net = adaptation.after.perServing.netCarbsG;
  const carbs = net ? `${amount(net.best)} g` : say('notKnown');
  return say('tryFigures', carbs, short(goals.budgetG), short(adaptation.after.servings));
}

/** From the earlier state to the one on the screen. */
function Differences({ here, there }: { here: Adaptation; there: Adaptation }) {
  const texts = changeTexts(there, here);
  return (
    <p class="differences">
      {texts.length === 0 ? say('sinceThenSame') : say('sinceThen', texts.join('; '))}
    </p>
  );
}

interface TryProps {
  version: SavedVersion;
  adaptation: Adaptation;
  onSay(said: Partial<Said>): void;
  onTake(): void;
}

function EarlierTry({ version, adaptation, onSay, onTake }: TryProps) {
  const [open, setOpen] = useState(false);
  const when = momentText(version.savedAt);
  return (
    <li>
      <p>
        <b>{when}</b> <span class="soft">{figuresOf(version)}</span>
      </p>
      <NameAndWorked said={version} of={when} onSay={onSay} />
      <Note said={version} of={when} onSay={onSay} />
      <div class="acts">
        {version.adaptation && (
          <button type="button" class="button" aria-expanded={open} onClick={() => setOpen(!open)}>
            {say('whatDiffers')}
          </button>
        )}
        <button type="button" class="button" onClick={onTake}>
          {say('takeUpAgain')}
        </button>
      </div>
      {open && version.adaptation && <Differences here={adaptation} there={version.adaptation} />}
    </li>
  );
}

interface Props {
  /** What is said of the state that is kept now, or null when nothing is kept. */
  now: Said | null;
  versions: readonly SavedVersion[];
  adaptation: Adaptation;
  onSayNow(said: Partial<Said>): void;
  onSay(version: SavedVersion, said: Partial<Said>): void;
  onTake(version: SavedVersion): void;
}

/** Taking an earlier one up changes nothing on disk until it is kept. */
export function Tries({ now, versions, adaptation, onSayNow, onSay, onTake }: Props) {
  if (!now) return <p>{say('triesNone')}</p>;
  return (
    <>
      <div class="try-now">
        <p>{say('keptLast')}</p>
        <NameAndWorked said={now} of={say('keptLast')} onSay={onSayNow} />
        <Note said={now} of={say('keptLast')} onSay={onSayNow} />
      </div>
      <ul class="tries">
        {versions.map((version) => (
          <EarlierTry
            key={version.id}
            version={version}
            adaptation={adaptation}
            onSay={(said) => onSay(version, said)}
            onTake={() => onTake(version)}
          />
        ))}
      </ul>
    </>
  );
}
