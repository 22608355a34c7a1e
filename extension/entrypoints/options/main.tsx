import { render } from 'preact';
import '../../ui/styles/base.css';
import '../../ui/styles/parts.css';
import { Options } from './options.tsx';

const root = document.getElementById('root');
if (root) render(<Options />, root);
