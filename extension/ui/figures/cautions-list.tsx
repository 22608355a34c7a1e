/** Allergen changes, cautions and notes. The last line is always there. */
import type { Adaptation } from '../../../engine/model.ts';
import { allergenWord } from '../words/allergen-words.ts';
import { engineLang } from '../words/engine-language.ts';
import { say, sayList } from '../words/say.ts';

/**
 * Every caution and note of the engine once, but for what stands beside an uncounted line already and what the
 * screens say in their own language.
 */
export function cautionTexts({ cautions, notes, recipe, before, after }: Adaptation): string[] {
  const said = new Set([...before.uncounted, ...after.uncounted].map(({ key }) => key));
  const texts = [...cautions, ...notes, ...recipe.notes]
    .filter(({ code, key }) => code !== 'ESTIMATES' && (key === null || !said.has(key)))
    .map(({ text }) => text);
  return [...new Set(texts)];
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
      <li>{say('estimatesOnly')}</li>
      {cautionTexts(adaptation).map((text) => (
        <li key={text} lang={engineLang()}>
          {text}
        </li>
      ))}
      <li>{say('careTeam')}</li>
    </ul>
  );
}
