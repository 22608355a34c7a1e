/** The styles of every page of the extension, in the order they build on each other. */
import './tokens.css';
import './base.css';
import './controls.css';
import './wishes.css';
import './loaf.css';
import './recipe.css';
import './about.css';
