import { join } from 'node:path';

export const ROOT = join(import.meta.dirname, '../../..');
export const DEMO_PAGES = join(ROOT, 'tests/pages/demo');
export const CHROMIUM_BUILD = join(ROOT, '.output/chrome-mv3');
export const FIREFOX_BUILD = join(ROOT, '.output/firefox-mv3');
/** The page that every main path walks through. */
export const LOAF = 'hearth-loaf.html';
