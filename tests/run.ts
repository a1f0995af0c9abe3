import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { needBrowser } from './find-browser.ts';

/** `npm test`: every runner one after the other; the last line says how many passed and failed in all. */
const ROOT = join(import.meta.dirname, '..');
const BIN = join(ROOT, 'node_modules/.bin');
const WORK = join(ROOT, '.loomleaf/test');
const SITE = join(WORK, 'site');

interface Tally {
  passed: number;
  failed: number;
}

const browser = needBrowser();
if ('missing' in browser) {
  console.error(browser.missing);
  process.exit(2);
}
rmSync(WORK, { recursive: true, force: true });
mkdirSync(WORK, { recursive: true });
const environment = {
  ...process.env,
  PATH: `${BIN}${delimiter}${process.env['PATH'] ?? ''}`,
  ASTRO_TELEMETRY_DISABLED: '1',
  CHROMIUM: browser.path,
  LOOMLEAF_DIST: SITE,
};

function start(command: string, args: readonly string[]): Promise<number> {
  return new Promise((done) => {
    const child = spawn(command, args, { cwd: ROOT, env: environment, stdio: 'inherit' });
    child.on('error', () => done(-1));
    child.on('close', (code) => done(code ?? -1));
  });
}

/** A runner that either holds or does not. */
const whole = (command: string, args: readonly string[]) => async (): Promise<Tally> =>
  (await start(command, args)) === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

const own = (command: string, ...args: string[]) =>
  whole(process.execPath, ['--import', './site/command/preload.mjs', `./site/command/${command}.ts`, ...args]);

/** A runner that counts its tests. One that breaks off, or says it failed without a failed test, is a failure itself. */
const suite = (project: string) => async (): Promise<Tally> => {
  const report = join(WORK, `${project}.json`);
  const args = ['run', '--project', project, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const code = await start(join(BIN, 'vitest'), args);
  try {
    const { numPassedTests, numTotalTests } = JSON.parse(readFileSync(report, 'utf8'));
    // A test that was skipped has shown nothing: it counts as failed.
    const failed = numTotalTests - numPassedTests;
    return { passed: numPassedTests, failed: code !== 0 && failed === 0 ? 1 : failed };
  } catch {
    return { passed: 0, failed: 1 };
  }
};

const rows = (folder: string): string[] =>
  readdirSync(join(ROOT, 'tests/calc/rows', folder)).map((name) => `tests/calc/rows/${folder}/${name}`);

const stages: [string, () => Promise<Tally>][] = [
  ['lint', whole(join(BIN, 'biome'), ['check', '--error-on-warnings', '.'])],
  ['types', whole(join(BIN, 'astro'), ['check'])],
  ['content', own('check')],
  ['build', own('build', '--out', SITE)],
  ['conformance', own('conformance', '--rows', ...rows('electrical'), ...rows('materials'))],
  ['unit tests', suite('unit')],
  ['browser tests', suite('browser')],
];

const total: Tally = { passed: 0, failed: 0 };
const summary: string[] = [];
for (const [name, stage] of stages) {
  console.log(`\n== ${name}`);
  const began = performance.now();
  const { passed, failed } = await stage();
  total.passed += passed;
  total.failed += failed;
  summary.push(
    `${name.padEnd(14)} ${String(passed).padStart(6)} passed ${String(failed).padStart(4)} failed ${((performance.now() - began) / 1000).toFixed(0).padStart(5)} s`,
  );
}
console.log(`\n${summary.join('\n')}\n`);
console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;
