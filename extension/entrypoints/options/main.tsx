import { render } from 'preact';
import '../../ui/styles/styles.ts';
import { beginWith } from '../../ui/words/begin.ts';
import { Options } from './options.tsx';

const root = document.getElementById('root');
if (root) void beginWith(() => render(<Options />, root));
