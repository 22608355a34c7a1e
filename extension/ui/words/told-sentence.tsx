/** A limit, note or question of the engine's, in the screen's language where there are words for it. */
import { toldHere } from './engine-language.ts';

export function ToldSentence({ text }: { text: string }) {
  const told = toldHere(text);
  return <span lang={told.lang}>{told.text}</span>;
}
