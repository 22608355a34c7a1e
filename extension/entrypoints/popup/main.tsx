// First of all: it is read in while the rest of this is.
import '../../ui/solver/solver-thread.ts';
import { render } from 'preact';
import '../../ui/styles/styles.ts';
import './popup.css';
import { beginWith } from '../../ui/words/begin.ts';
import { learnEngineWords } from '../../ui/words/engine-words.ts';
import { gatherTab } from './gather-tab.ts';
import { WorkingHead } from './working-head.tsx';

document.body.classList.toggle('as-page', location.search !== '');

const root = document.getElementById('root');
const gathering = gatherTab(location.search);
// Told of when it is read.
gathering.catch(() => {});
// What works recipes out is large: the popup says that it is there while that is read in.
const popup = import('./popup.tsx');
if (root)
  void beginWith(() => {
    render(<WorkingHead title={null} />, root);
    const words = learnEngineWords();
    void popup.then(async ({ Popup }) => {
      await words;
      render(<Popup first={gathering} />, root);
    });
  });
