/** Says that the popup is there, and then what it has to say, once the tab is read. */
import { render } from 'preact';
import { beginWith } from '../../ui/words/begin.ts';
import { learnEngineWords } from '../../ui/words/engine-words.ts';
import type { Gathering } from './gather-tab.ts';
import { WorkingHead } from './working-head.tsx';

export function begin(root: Element, gathering: Promise<Gathering>): void {
  // What shows recipes is large: the popup says that it is there while that is read in.
  const popup = import('./popup.tsx');
  void beginWith(() => {
    render(<WorkingHead title={null} />, root);
    const words = learnEngineWords();
    void popup.then(async ({ Popup }) => {
      await words;
      render(<Popup first={gathering} />, root);
    });
  });
}
