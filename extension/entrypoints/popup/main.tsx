// First of all: what works recipes out takes longest to be read in, and the page is read meanwhile.
import '../../ui/solver/solver-thread.ts';
import '../../ui/styles/styles.ts';
import './popup.css';
import { gatherTab } from './gather-tab.ts';

document.body.classList.toggle('as-page', location.search !== '');

const root = document.getElementById('root');
const gathering = gatherTab(location.search);
// Told of when it is read.
gathering.catch(() => {});
if (root) void import('./first-look.tsx').then(({ begin }) => begin(root, gathering));
