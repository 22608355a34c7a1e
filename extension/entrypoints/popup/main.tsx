import { render } from 'preact';
import '../../ui/styles/styles.ts';
import './popup.css';
import { beginWith } from '../../ui/words/begin.ts';
import { Popup } from './popup.tsx';

document.body.classList.toggle('as-page', location.search !== '');

const root = document.getElementById('root');
if (root) void beginWith(() => render(<Popup />, root));
