import { render } from 'preact';
import '../../ui/styles/styles.ts';
import './popup.css';
import { beginWith } from '../../ui/words/begin.ts';
import '../../ui/solver/solver-thread.ts';
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
    void popup.then(({ Popup }) => render(<Popup first={gathering} />, root));
  });
