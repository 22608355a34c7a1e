import { useId, useState } from 'preact/hooks';
import type { Adaptation } from '../../../engine/model.ts';
import type { Said, SavedVersion } from '../../store/records.ts';
import { amount, momentText, short } from '../../ui/figures/format.ts';
import { compareStates } from '../../ui/kept/compare-versions.ts';

interface SayProps {
  said: Said;
  /** Said to those who hear it, to tell the fields of one state from another's. */
  of: string;
  onSay(said: Partial<Said>): void;
}

/** A name and 'this one worked' for one state. */
function Say({ said, of, onSay }: SayProps) {
  const id = useId();
  return (
    <span class="say">
      <label for={id}>
        Name<span class="hidden"> of {of}</span>
      </label>
      <input
        id={id}
        type="text"
        maxLength={200}
        autocomplete="off"
        value={said.name}
        onChange={({ currentTarget }) => onSay({ name: currentTarget.value.trim() })}
      />
      <label class="tick">
        <input
          type="checkbox"
          checked={said.worked}
          onChange={({ currentTarget }) => onSay({ worked: currentTarget.checked })}
        />{' '}
        this one worked<span class="hidden">: {of}</span>
      </label>
    </span>
  );
}

function figuresOf({ adaptation, goals }: SavedVersion): string {
  const budget = `budget ${short(goals.budgetG)} g`;
  if (!adaptation) return `${budget}; take it up to work it out again`;
  const net = adaptation.after.perServing.netCarbsG;
  const carbs = net ? `${amount(net.best)} g net carbs` : 'net carbs not known';
  return `${carbs}, ${budget}, ${short(adaptation.after.servings)} servings`;
}

function Comparison({ here, there }: { here: Adaptation; there: Adaptation }) {
  return (
    <table class="plain compared">
      <thead>
        <tr>
          <th scope="col">
            <span class="hidden">Figure or line</span>
          </th>
          <th scope="col">On the screen</th>
          <th scope="col">That version</th>
        </tr>
      </thead>
      <tbody>
        {compareStates(here, there).map((row) => (
          <tr key={`${row.label}.${row.here}.${row.there}`}>
            <th scope="row">{row.label}</th>
            <td>{row.here}</td>
            <td>{row.there}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface Props {
  /** What is said of the state that is saved now, or null when nothing is saved. */
  now: Said | null;
  versions: readonly SavedVersion[];
  adaptation: Adaptation;
  onSayNow(said: Partial<Said>): void;
  onSay(version: SavedVersion, said: Partial<Said>): void;
  onTake(version: SavedVersion): void;
}

/** The saved state and earlier ones: named, compared, taken up again. Taking up changes nothing until it is saved. */
export function Versions({ now, versions, adaptation, onSayNow, onSay, onTake }: Props) {
  const [compared, setCompared] = useState<string | null>(null);
  if (!now) return null;
  return (
    <section class="no-print" aria-labelledby="versions-title">
      <h2 id="versions-title">Versions</h2>
      <p class="version-now">
        The version saved last. <Say said={now} of="the version saved last" onSay={onSayNow} />
      </p>
      <ul class="saved">
        {versions.map((version) => {
          const when = momentText(version.savedAt);
          const open = compared === version.id;
          return (
            <li key={version.id}>
              <span>{when}</span>
              <span class="figure">{figuresOf(version)}</span>
              <Say said={version} of={`the version of ${when}`} onSay={(s) => onSay(version, s)} />
              {version.adaptation && (
                <button
                  type="button"
                  aria-expanded={open}
                  onClick={() => setCompared(open ? null : version.id)}
                >
                  Compare
                </button>
              )}
              <button type="button" onClick={() => onTake(version)}>
                Take up again
              </button>
              {open && version.adaptation && (
                <Comparison here={adaptation} there={version.adaptation} />
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
