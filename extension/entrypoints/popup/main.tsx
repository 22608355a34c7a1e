import { render } from 'preact';
import '../../ui/styles/base.css';
import '../../ui/styles/parts.css';
import './popup.css';
import { Popup } from './popup.tsx';

document.body.classList.toggle('as-page', location.search !== '');

const root = document.getElementById('root');
if (root) render(<Popup />, root);
