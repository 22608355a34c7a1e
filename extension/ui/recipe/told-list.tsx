/** What the cook is told beside a step, or above the method. */
import { ToldSentence } from '../words/told-sentence.tsx';

interface Props {
  told: readonly string[];
  /** What it is said in where the screen's language has no words for it. */
  otherwise: string | undefined;
}

export function ToldList({ told, otherwise }: Props) {
  if (told.length === 0) return null;
  return (
    <ul class="told">
      {told.map((text) => (
        <li key={text}>
          <ToldSentence text={text} otherwise={otherwise} />
        </li>
      ))}
    </ul>
  );
}
