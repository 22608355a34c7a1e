/** The dish, and the ways to what is kept and to the settings. */
import { Icon } from '../../ui/controls/icon.tsx';
import { Emblem } from '../../ui/figures/loaf/emblem.tsx';
import { say } from '../../ui/words/say.ts';
import { openBench } from './open-bench.ts';

interface Props {
  title: string;
  language: string | null;
  /** Opens the first questions, as long as they are neither answered nor put off. */
  onAsk?: (() => void) | undefined;
}

export function PopupHead({ title, language, onAsk }: Props) {
  return (
    <header class="popup-head">
      <Emblem />
      <h1 class="dish" lang={language ?? undefined} dir="auto" title={title}>
        {title}
      </h1>
      {onAsk && (
        <button type="button" class="button bare" title={say('threeQuestions')} onClick={onAsk}>
          {say('threeInShort')}
        </button>
      )}
      <button type="button" class="button bare" onClick={() => void openBench('#kept')}>
        {say('placeKept')}
      </button>
      <button
        type="button"
        class="button bare square"
        aria-label={say('placeSettings')}
        title={say('placeSettings')}
        onClick={() => void openBench('#settings')}
      >
        <Icon name="settings" />
      </button>
    </header>
  );
}
