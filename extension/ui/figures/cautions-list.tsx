/** Allergen changes, cautions and notes; the line on the care team stands below, always in sight. */
import { cautionText } from '../../../engine/index.ts';
import type { Adaptation } from '../../../engine/model.ts';
import { allergenWord } from '../words/allergen-words.ts';
import { engineLang, toldHere } from '../words/engine-language.ts';
import { locale, say, sayList } from '../words/say.ts';

/** A sentence beside the figures; `byEngine` when it is said in the engine's English. */
export interface Told {
  text: string;
  byEngine: boolean;
}

/**
 * Every caution and note once, but for what stands beside an uncounted line already and what the screens say
 * of themselves. Cautions are said in the language of the screen.
 */
export function cautionTexts({ cautions, notes, recipe, before, after }: Adaptation): Told[] {
  const beside = new Set([...before.uncounted, ...after.uncounted].map(({ key }) => key));
  const gravest = cautions
    .filter(({ code }) => code !== 'ESTIMATES')
    .map((caution) => ({ text: cautionText(caution, locale()), byEngine: false }));
  const others = [...notes, ...recipe.notes]
    .filter(({ key }) => key === null || !beside.has(key))
    .map(({ text }) => toldHere(text))
    .map(({ text, lang }) => ({ text, byEngine: lang !== undefined }));
  const all = [...gravest, ...others];
  return all.filter(({ text }, at) => all.findIndex((one) => one.text === text) === at);
}

export function Cautions({ adaptation }: { adaptation: Adaptation }) {
  const { allergensAdded, allergensRemoved } = adaptation;
  return (
    <ul class="cautions">
      {allergensAdded.length > 0 && (
        <li>
          <strong>{say('nowContains', sayList(allergensAdded.map(allergenWord)))}</strong>
        </li>
      )}
      {allergensRemoved.length > 0 && (
        <li>{say('noLongerContains', sayList(allergensRemoved.map(allergenWord)))}</li>
      )}
      <li>{say('notForDoses')}</li>
      {cautionTexts(adaptation).map(({ text, byEngine }) => (
        <li key={text} lang={byEngine ? engineLang() : undefined}>
          {text}
        </li>
      ))}
    </ul>
  );
}
