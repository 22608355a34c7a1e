/** Cautions and notes; the line on the care team stands below, always in sight. */
import { cautionText } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { allergenWord } from '../words/allergen-words.ts';
import { engineLang, toldHere } from '../words/engine-language.ts';
import { locale, say, sayCount, sayList } from '../words/say.ts';

/** A sentence beside the figures; `byEngine` when it is said in the engine's English. */
export interface Told {
  text: string;
  byEngine: boolean;
}

/** The cautions but for the estimate line, the gravest first, in the language of the screen: three at most. */
const gravest = ({ cautions }: Pick<Adaptation, 'cautions'>): Told[] =>
  cautions
    .filter(({ code }) => code !== 'ESTIMATES')
    .map((caution) => ({ text: cautionText(caution, locale()), byEngine: false }));

/** Every note once, but for what stands beside an uncounted line already. */
function noteTexts({ notes, recipe, before, after }: Adaptation): Told[] {
  const beside = new Set([...before.uncounted, ...after.uncounted].map(({ key }) => key));
  const all = [...notes, ...recipe.notes]
    .filter(({ key }) => key === null || !beside.has(key))
    .map(({ text }) => toldHere(text))
    .map(({ text, lang }) => ({ text, byEngine: lang !== undefined }));
  return all.filter(({ text }, at) => all.findIndex((one) => one.text === text) === at);
}

/** Cautions, then notes, as a list that is cut may take them. */
export const cautionTexts = (adaptation: Adaptation): Told[] => [
  ...gravest(adaptation),
  ...noteTexts(adaptation),
];

/** Notes in sight; the others are one press away. Own choice. */
const MOST_NOTES = 4;

const Lines = ({ lines }: { lines: readonly Told[] }) => (
  <>
    {lines.map(({ text, byEngine }) => (
      <li key={text} lang={byEngine ? engineLang() : undefined}>
        {text}
      </li>
    ))}
  </>
);

/** How the recipe was read, below the cautions: nobody is hurt by not reading it. */
function Notes({ adaptation }: { adaptation: Adaptation }) {
  const { allergensRemoved } = adaptation;
  const gone = sayList(allergensRemoved.map(allergenWord));
  const all: Told[] = [
    ...(gone === '' ? [] : [{ text: say('noLongerContains', gone), byEngine: false }]),
    ...noteTexts(adaptation),
  ];
  if (all.length === 0) return null;
  const more = all.slice(MOST_NOTES);
  return (
    <>
      <p>
        <b>{say('howItWasRead')}</b>
      </p>
      <ul class="notes">
        <Lines lines={all.slice(0, MOST_NOTES)} />
      </ul>
      {more.length > 0 && (
        <details class="plain-fold">
          <summary>{sayCount('andMore', more.length)}</summary>
          <ul class="notes">
            <Lines lines={more} />
          </ul>
        </details>
      )}
    </>
  );
}

/** Four cautions at most, the gravest first; what came in of allergens stands under the verdict. */
export function Cautions({ adaptation }: { adaptation: Adaptation }) {
  return (
    <>
      <ul class="cautions">
        <li>{say('notForDoses')}</li>
        <Lines lines={gravest(adaptation)} />
      </ul>
      <Notes adaptation={adaptation} />
    </>
  );
}
