/** Finds an installed browser; on Debian as root it installs one when there is none. */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

export type Engine = 'chromium' | 'firefox';

const NAMES: Record<Engine, readonly string[]> = {
  chromium: ['chromium', 'chromium-browser', 'chromium.exe'],
  firefox: ['firefox-esr', 'firefox', 'firefox.exe'],
};

const USUAL_PLACES: Record<Engine, readonly string[]> = {
  chromium: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    'C:\\Program Files\\Chromium\\Application\\chrome.exe',
  ],
  firefox: [
    '/Applications/Firefox.app/Contents/MacOS/firefox',
    'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
  ],
};

const PACKAGES: Record<Engine, string> = { chromium: 'chromium', firefox: 'firefox-esr' };

function isExecutable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

export const isRoot = (): boolean => process.getuid?.() === 0;

/** Path of an installed browser, or null. */
export function findBrowser(engine: Engine): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const onPath = NAMES[engine].flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...USUAL_PLACES[engine]].find(isExecutable) ?? null;
}

const canInstall = (): boolean => isRoot() && existsSync('/etc/debian_version');

function install(engine: Engine): void {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const run = (args: string[]) => spawnSync('apt-get', args, { env, stdio: 'inherit' });
  run(['update', '-q']);
  run(['install', '-y', '-q', '--no-install-recommends', PACKAGES[engine]]);
}

/** What to do when there is none, in one line. */
export const installHint = (engine: Engine): string =>
  `No ${engine === 'chromium' ? 'Chromium' : 'Firefox'} found: install the package '${PACKAGES[engine]}' of your system and put it on the PATH.`;

/** Path of a browser, installed first where that can be done. @throws {Error} with {@link installHint}. */
export function needBrowser(engine: Engine): string {
  const found = findBrowser(engine);
  if (found) return found;
  if (canInstall()) install(engine);
  const installed = findBrowser(engine);
  if (!installed) throw new Error(installHint(engine));
  return installed;
}
