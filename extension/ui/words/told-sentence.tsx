/** A sentence of the engine's, in the screen's language where there are words for it. */
import { toldHere } from './engine-language.ts';

interface Props {
  text: string;
  /** What it is said in where the screen's language has no words for it: English, or the recipe's own. */
  otherwise?: string | undefined;
}

export function ToldSentence({ text, otherwise }: Props) {
  const told = toldHere(text);
  return (
    <span lang={told.lang && (otherwise ?? told.lang)} dir="auto">
      {told.text}
    </span>
  );
}
