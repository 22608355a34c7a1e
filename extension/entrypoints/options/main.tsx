import { render } from 'preact';
import '../../ui/base.css';
import '../../ui/parts.css';
import { Options } from './options.tsx';

const root = document.getElementById('root');
if (root) render(<Options />, root);
