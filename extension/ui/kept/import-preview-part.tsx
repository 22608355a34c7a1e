/** What a file would bring, to be looked at before it is read in. */
import { useState } from 'preact/hooks';
import type { Kind } from '../../store/backup/backup-file.ts';
import type { Preview, Standing } from '../../store/backup/import-preview.ts';
import type { ReadSettings } from '../../store/backup/settings-read.ts';
import type { Preferences } from '../../store/prefs.ts';
import { Fold } from '../controls/fold.tsx';
import { type MessageKey, say, sayCount, sayList } from '../words/say.ts';

const STANDINGS: readonly (readonly [Standing, MessageKey])[] = [
  ['new', 'previewNew'],
  ['fileNewer', 'previewFileNewer'],
  ['hereNewer', 'previewHereNewer'],
  ['same', 'previewSame'],
];

const OTHERS: readonly (readonly [keyof Preview['added'], MessageKey])[] = [
  ['bakes', 'countBakes'],
  ['foods', 'countPackages'],
  ['aliases', 'countNames'],
  ['pantry', 'countPantry'],
  ['photos', 'countPhotos'],
];

const KINDS: Record<Kind, MessageKey> = {
  recipes: 'countRecipes',
  versions: 'countVersions',
  bakes: 'countBakes',
  foods: 'countPackages',
  aliases: 'countNames',
  pantry: 'countPantry',
  photos: 'countPhotos',
};

/** Titles of a group; long lists are folded. */
const FEW = 5;

function Titles({ titles, standing }: { titles: readonly string[]; standing: Standing }) {
  const list = (
    <ul class="notes">
      {titles.map((title, at) => (
        <li key={`${title}.${at}`}>{title}</li>
      ))}
    </ul>
  );
  if (titles.length <= FEW) return list;
  return (
    <Fold title={say('whichOnes')} name={`preview-${standing}`}>
      {() => list}
    </Fold>
  );
}

interface SettingsProps {
  settings: ReadSettings;
  takes: boolean;
  onTakes(takes: boolean): void;
}

/** Settings take the place of those here, so they come only if the user wants them. */
function Settings({ settings, takes, onTakes }: SettingsProps) {
  return (
    <>
      {Object.keys(settings.change).length > 0 && (
        <label class="tick">
          <input
            type="checkbox"
            checked={takes}
            onChange={({ currentTarget }) => onTakes(currentTarget.checked)}
          />
          {say('previewSettings')}
        </label>
      )}
      {settings.refused > 0 && (
        <p class="failure">{sayCount('previewSettingsRefused', settings.refused)}</p>
      )}
    </>
  );
}

interface Props {
  preview: Preview;
  /** The user has settings here already, which stay unless the user says otherwise. */
  settled: boolean;
  /** With the settings to take along, or null. */
  onBringIn(settings: Partial<Preferences> | null): void;
  onLeave(): void;
}

export function ImportPreview({ preview, settled, onBringIn, onLeave }: Props) {
  const [takes, setTakes] = useState(!settled);
  const { recipes, added, refused, foodsKeptHere, settings } = preview;
  const others = OTHERS.flatMap(([kind, word]) =>
    added[kind] > 0 ? [sayCount(word, added[kind])] : [],
  );
  const bad = (Object.keys(KINDS) as Kind[]).flatMap((kind) =>
    refused[kind] > 0 ? [sayCount(KINDS[kind], refused[kind])] : [],
  );
  return (
    <section class="import-preview" aria-labelledby="preview-title">
      <h3 id="preview-title" tabIndex={-1}>
        {say('previewTitle')}
      </h3>
      {STANDINGS.map(([standing, word]) => {
        const titles = recipes.filter((one) => one.standing === standing).map(({ title }) => title);
        if (titles.length === 0) return null;
        return (
          <div key={standing}>
            <p>{sayCount(word, titles.length)}</p>
            {standing !== 'same' && <Titles titles={titles} standing={standing} />}
          </div>
        );
      })}
      {others.length > 0 && <p>{say('previewOthers', sayList(others))}</p>}
      {foodsKeptHere.length > 0 && (
        <p>{say('previewFoodsHere', sayList(foodsKeptHere.map((name) => `“${name}”`)))}</p>
      )}
      {bad.length > 0 && <p class="failure">{say('previewRefused', sayList(bad))}</p>}
      {settings && <Settings settings={settings} takes={takes} onTakes={setTakes} />}
      <div class="acts">
        <button
          type="button"
          class="button first"
          onClick={() => onBringIn(takes && settings ? settings.change : null)}
        >
          {say('bringIn')}
        </button>
        <button type="button" class="button" onClick={onLeave}>
          {say('leaveFile')}
        </button>
      </div>
    </section>
  );
}
