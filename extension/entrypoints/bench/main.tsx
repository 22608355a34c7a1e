import { render } from 'preact';
import '../../ui/styles/styles.ts';
import './bench.css';
import '../../ui/styles/print.css';
import { beginWith } from '../../ui/words/begin.ts';
import { Bench } from './bench.tsx';

const root = document.getElementById('root');
if (root) void beginWith(() => render(<Bench />, root));
