import { render } from 'preact';
import '../../ui/styles/styles.ts';
import './bench.css';
import '../../ui/styles/print.css';
import { beginWith } from '../../ui/words/begin.ts';
import { Bench } from './bench.tsx';
import { beginStore } from './opening.ts';

// A recipe takes most of what there is to read in: with one in the address that begins at once.
if (/[?&](?:id|work)=/.test(location.search)) {
  void import('../../ui/solver/solver-thread.ts');
  void import('./places/recipe-place.tsx');
}

const root = document.getElementById('root');
const begun = beginStore();
if (root) void beginWith(() => render(<Bench {...begun} />, root));
