import { render } from 'preact';
import '../../ui/base.css';
import '../../ui/parts.css';
import './bench.css';
import '../../ui/print.css';
import { Bench } from './bench.tsx';

const root = document.getElementById('root');
if (root) render(<Bench />, root);
