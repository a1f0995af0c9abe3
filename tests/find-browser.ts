import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Browsers that the tests can drive, the quickest to start first. */
const NAMES = ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const PLACES = [
  ...(process.env['PATH'] ?? '').split(delimiter).filter((dir) => dir !== ''),
  '/usr/bin',
  '/usr/lib/chromium',
  '/Applications/Chromium.app/Contents/MacOS',
  '/Applications/Google Chrome.app/Contents/MacOS',
];
const NAMED_OTHERWISE = ['Chromium', 'Google Chrome'];

/** Path of an installed browser: the one that `CHROMIUM` names, else the first that is found. */
export function findBrowser(): string | undefined {
  const named = process.env['CHROMIUM'];
  if (named) return existsSync(named) ? named : undefined;
  for (const name of [...NAMES, ...NAMED_OTHERWISE])
    for (const place of PLACES) if (existsSync(join(place, name))) return join(place, name);
  return undefined;
}

/** Finds a browser, or on Debian as root installs one. Otherwise gives the one line that says what to install. */
export function needBrowser(): { path: string } | { missing: string } {
  const found = findBrowser();
  if (found) return { path: found };
  const named = process.env['CHROMIUM'];
  if (named) return { missing: `CHROMIUM names "${named}", and there is no such file` };
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log('No browser found: installing the package chromium-headless-shell');
    const apt = (...args: string[]) =>
      spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'] }).status === 0;
    const installed = () => apt('install', '-y', '--no-install-recommends', 'chromium-headless-shell');
    // The list of packages may be missing or too old: fetch it and try once more.
    if (installed() || (apt('update') && installed())) {
      const path = findBrowser();
      if (path) return { path };
    }
    return {
      missing: 'The browser tests need Chromium, and installing chromium-headless-shell failed: install it by hand',
    };
  }
  return {
    missing:
      'The browser tests need Chromium or Chrome: install one (on Debian: apt-get install chromium-headless-shell), or name one in CHROMIUM',
  };
}
