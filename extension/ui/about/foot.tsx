/** The way to how figures are made and to what is kept where, at the end of every screen. */
import { say } from '../words/say.ts';

const ABOUT = [
  ['figures-made', 'figuresMade'],
  ['privacy', 'whatIsKeptWhere'],
] as const;

/** `onOpen` where a link would open inside a popup. */
export function Foot({ onOpen }: { onOpen?: (place: '#figures-made' | '#privacy') => void }) {
  return (
    <footer class="foot">
      {ABOUT.map(([place, word]) => (
        <a
          key={place}
          href={`/bench.html#${place}`}
          onClick={(event) => {
            if (!onOpen) return;
            event.preventDefault();
            onOpen(`#${place}`);
          }}
        >
          {say(word)}
        </a>
      ))}
    </footer>
  );
}
