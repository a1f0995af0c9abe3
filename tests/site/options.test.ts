import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MARKER, readOptions } from '../../site/command/options.ts';
import { Refusal } from '../../site/command/refusal.ts';
import { ROOT, run, scratchFolder, TINY } from './spawn.ts';

const dir = scratchFolder();
const at = (name: string) => join(dir, name);
mkdirSync(at('strange'));
writeFileSync(at('strange/letter.txt'), 'not ours');
mkdirSync(at('ours'));
writeFileSync(at(`ours/${MARKER}`), '');
mkdirSync(at('empty'));
writeFileSync(at('file'), '');
const usage = 'Usage: npm run build -- [--content DIR] [--out DIR] [--base /sub/path/] [--port 4321]';

function refusalOf(args: string[]): string {
  try {
    readOptions('build', args);
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
  return '(accepted)';
}

describe('the command line', () => {
  it('has the demonstration as its default', () => {
    expect(readOptions('build', [])).toEqual({
      content: join(ROOT, 'content'),
      out: join(ROOT, 'dist'),
      base: '/',
      port: 4321,
    });
  });

  it('takes any workshop, any place and any base path', () => {
    const given = ['--content', TINY, `--out=${at('new/deep')}`, '--base', 'sub/path', '--port', '0'];
    expect(readOptions('start', given)).toEqual({ content: TINY, out: at('new/deep'), base: '/sub/path/', port: 0 });
    expect(readOptions('build', ['--out', at('ours')]).out).toBe(at('ours'));
    expect(readOptions('build', ['--out', at('empty')]).out).toBe(at('empty'));
  });

  it.each([
    [['--contnt', 'x'], `Unknown option --contnt. Did you mean "--content"? ${usage}`],
    [['-o', 'x'], `Unknown option -o. ${usage}`],
    [['folder'], `Unexpected "folder": build takes options only. ${usage}`],
    [['--out'], '--out needs a value: --out DIR'],
    [['--out', '--base', '/x/'], '--out needs a value: --out DIR'],
    [['--out=a', '--out=b'], '--out is given twice'],
    [['--content', '/no/such/folder'], '--content: there is no folder "/no/such/folder"'],
    [['--content', 'package.json'], '--content: "package.json" is a file, expected a folder'],
    [
      ['--out', at('strange')],
      `--out: "${at('strange')}" holds files that Loomleaf did not write; nothing was touched. Give an empty or new folder.`,
    ],
    [['--out', at('file')], `--out: "${at('file')}" is a file, expected a folder`],
    [
      ['--content', TINY, '--out', join(TINY, 'site')],
      `--out: "${join(TINY, 'site')}" and the content folder lie in one another; give the site a folder of its own`,
    ],
    [
      ['--out', '.', '--content', TINY],
      `--out: "." and the content folder lie in one another; give the site a folder of its own`,
    ],
    [
      ['--base', '/a/../b/'],
      '--base: "/a/../b/" is no path; expected letters, digits and hyphens between slashes, such as /sub/path/',
    ],
    [['--base', '/a//b/'], '--base: "/a//b/" has an empty part between two slashes'],
    [['--port', '80a'], '--port: "80a" is no port; expected a whole number from 0 to 65535'],
    [['--port', '65536'], '--port: "65536" is no port; expected a whole number from 0 to 65535'],
  ])('refuses %j in one line', (args, message) => {
    expect(refusalOf(args)).toBe(message);
  });

  it.each(['build', 'check', 'dev', 'start'])(
    'ends %s with exit 2 and one line',
    async (command) => {
      const { code, out, err } = await run(command, ['--contnt', 'x']);
      expect(err.trimEnd().split('\n')).toEqual([
        `Unknown option --contnt. Did you mean "--content"? ${usage.replace('build', command)}`,
      ]);
      expect(out).toBe('');
      expect(code).toBe(2);
    },
    60_000,
  );
});
