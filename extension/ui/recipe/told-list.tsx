/** What the cook is told beside a step, or above the method. */
import { engineLang } from '../words/engine-language.ts';

export function ToldList({ told }: { told: readonly string[] }) {
  if (told.length === 0) return null;
  return (
    <ul class="told" lang={engineLang()}>
      {told.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}
