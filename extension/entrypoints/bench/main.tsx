import { render } from 'preact';
import '../../ui/styles/base.css';
import '../../ui/styles/parts.css';
import './bench.css';
import '../../ui/styles/print.css';
import { Bench } from './bench.tsx';

const root = document.getElementById('root');
if (root) render(<Bench />, root);
