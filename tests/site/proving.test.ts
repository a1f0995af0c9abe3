import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { check, problemLine } from '../../site/check/check.ts';
import { proveAll } from '../../site/check/proving.ts';
import { shopSchema } from '../../site/schemas/shop.ts';
import { workshop } from '../../site/workshop.ts';
import { ROOT, scratchFolder, TINY } from './spawn.ts';

const dir = scratchFolder();
const MINUTE = 60_000;

describe('proving', () => {
  it(
    'stops the guide of a 7.5 A fuse ahead of a 0.5 mm² pigtail, naming fuse, wire, guide, file and line',
    async () => {
      const content = join(dir, 'content');
      cpSync(join(ROOT, 'content'), content, { recursive: true });
      const file = join(content, 'circuits/cargo-work-light.yaml');
      const circuit = readFileSync(file, 'utf8');
      const changed = circuit.replace(/(F1: \{.* ratingA: )auto/, '$17.5');
      expect(changed).not.toBe(circuit);
      writeFileSync(file, changed);
      const line = changed.split('\n').findIndex((text) => text.startsWith('  F1:')) + 1;
      const { problems, errors } = await check(content, { proving: { cacheDir: undefined } });
      expect(errors).toBeGreaterThan(0);
      expect(problems.map(problemLine).filter((text) => text.includes(' stop '))[0]).toBe(
        `${file}:${line}:3 stop fuse-over-wire (F1, L1.pigtail+): Fuse F1 (7.5 A) is larger than the plus pigtail of L1 (0.5 mm², at most 5 A) allows. The wire becomes the fuse and sets fire to what it touches. Cure: Fit a fuse of at most 5 A, or a wire that allows 7.5 A, or a fuse of its own where the wire gets thin. [guide "cargo-work-light" (${join(content, 'guides/cargo-work-light.mdx')}) cannot be published]`,
      );
    },
    2 * MINUTE,
  );

  it(
    'answers a circuit of 2,000 parts at once and in one sentence',
    async () => {
      const content = join(dir, 'huge');
      cpSync(TINY, content, { recursive: true });
      const ids = Array.from({ length: 2000 }, (_, n) => `S${n}`);
      writeFileSync(
        join(content, 'circuits/huge.yaml'),
        [
          'title: Two thousand splices',
          'systemV: 12',
          'supply: { restingV: 12.6, chargingV: 14.4, sourceOhm: 0.02 }',
          'parts:',
          ...ids.map((id) => `  ${id}: { kind: splice }`),
          'wires:',
          ...ids.slice(1).map((id, n) => `  W${n}: { from: S${n}, to: ${id}, lengthM: 1, areaMm2: 1 }`),
          'intent: { says: Nothing., loads: {} }',
          '',
        ].join('\n'),
      );
      const began = performance.now();
      const { problems } = await check(content, { proving: { cacheDir: undefined } });
      expect((performance.now() - began) / 1000).toBeLessThan(15);
      expect(problems.map(problemLine).map((text) => text.replace(`${content}/`, ''))).toEqual([
        'circuits/huge.yaml:4:1 2000 parts, expected at most 400: split the circuit.',
        'circuits/huge.yaml:2005:1 1999 wires, expected at most 1200: split the circuit.',
      ]);
    },
    2 * MINUTE,
  );

  it(
    'gives a proof up when its time is over, and goes on',
    async () => {
      const { circuits, shop } = await workshop(TINY);
      const outcomes = await proveAll(circuits, shop, { limitS: 0.001 });
      expect(outcomes.get('cart-lamp')).toEqual({
        failed: 'the proof took longer than 0.001 s: split the circuit into smaller ones',
      });
    },
    MINUTE,
  );

  it(
    'keeps proofs between runs, by circuit and by stock',
    async () => {
      const { circuits, shop } = await workshop(TINY);
      const cacheDir = join(dir, 'proofs');
      const first = await proveAll(circuits, shop, { cacheDir });
      expect(readdirSync(cacheDir)).toHaveLength(1);
      // A limit that no proof can meet: the second outcome can only come from the first run.
      const second = await proveAll(circuits, shop, { cacheDir, limitS: 0.001 });
      expect(second).toEqual(first);
      const otherStock = shopSchema.parse({ ...shop, stockedFusesA: [3] });
      await proveAll(circuits, otherStock, { cacheDir });
      expect(readdirSync(cacheDir)).toHaveLength(2);
    },
    MINUTE,
  );

  it(
    'leaves no cache where none is wanted',
    async () => {
      const { circuits, shop } = await workshop(TINY);
      const outcomes = await proveAll(circuits, shop);
      expect([...outcomes.keys()]).toEqual(['cart-lamp']);
      expect(existsSync(join(TINY, '.loomleaf'))).toBe(false);
    },
    MINUTE,
  );
});
