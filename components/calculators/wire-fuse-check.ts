import { workshopLimit } from '../../calc/index.ts';
import { type Calculator, cell, fuseField, WIRE_SIZES_MM2 } from './form.ts';

interface Segment {
  name: string;
  areaMm2: number;
  wires: number;
  ambientC: number;
}

const ROW =
  /^(?<name>.*?)\s+(?<size>[\d.,]+)\s*(?:mm2|mm²)?\s*[x×]\s*(?<wires>\d+)\s*(?:at|@)\s*(?<air>[-−]?\d+(?:[.,]\d+)?)\s*(?:°?\s*C)?$/iu;
const fault = (row: number, field: string): string =>
  `Each row needs a name, a size from the list, 1 to 40 wires and -20 to 85 C. Row ${row} is missing its ${field}.`;

/** Reads rows such as "pigtail 0.5 x 2 at 50"; a text tells what is missing where. */
export function segmentsOf(text: string): Segment[] | string {
  const rows = text
    .split('\n')
    .map((row) => row.trim())
    .filter((row) => row !== '');
  if (rows.length === 0 || rows.length > 40) return 'Type 1 to 40 rows.';
  const segments: Segment[] = [];
  for (const [index, row] of rows.entries()) {
    const groups = ROW.exec(row)?.groups;
    if (groups === undefined) {
      const missing = !/[x×]\s*\d/i.test(row)
        ? 'wires'
        : !/(?:at|@)\s*[-−]?\d/i.test(row)
          ? 'air temperature'
          : !/^\D/.test(row)
            ? 'name'
            : 'size';
      return fault(index + 1, missing);
    }
    const areaMm2 = Number(groups['size']!.replace(',', '.'));
    const wires = Number(groups['wires']);
    const ambientC = Number(groups['air']!.replace('−', '-').replace(',', '.'));
    if (groups['name'] === '') return fault(index + 1, 'name');
    if (!WIRE_SIZES_MM2.includes(areaMm2)) return fault(index + 1, 'size');
    if (wires < 1 || wires > 40) return fault(index + 1, 'wires');
    if (!(ambientC >= -20 && ambientC <= 85)) return fault(index + 1, 'air temperature');
    segments.push({ name: groups['name']!, areaMm2, wires, ambientC });
  }
  return segments;
}

export const calculator: Calculator = {
  id: 'wire-fuse-check',
  number: 'C05',
  title: 'Every wire against its fuse',
  lead: 'Whether one fuse protects every piece of wire behind it, the thin pigtail first of all.',
  fields: (shop) => [
    fuseField('fuseA', shop, 5),
    {
      name: 'segments',
      label: 'Pieces of wire, one a row: name, mm² × loaded wires in the bundle at air °C',
      kind: 'ratio',
      default: 'pigtail 0.5 x 2 at 50\nfeed 1.5 x 2 at 50',
      rows: 4,
      read: (text) => {
        const segments = segmentsOf(text);
        return typeof segments === 'string' ? segments : undefined;
      },
      error: 'Each row needs a name, a size from the list, 1 to 40 wires and -20 to 85 C.',
    },
  ],
  compute(input, { say }) {
    const fuseA = input.n('fuseA');
    const segments = segmentsOf(input.s('segments'));
    if (typeof segments === 'string') throw new RangeError(segments);
    const judged = segments.map((segment) => {
      const limit = workshopLimit({ areaMm2: segment.areaMm2, wires: segment.wires, ambientC: segment.ambientC });
      return { ...segment, ...limit, passes: fuseA <= limit.limitA * (1 + 1e-9) };
    });
    const worst = judged.reduce((low, each) => (each.limitA < low.limitA ? each : low));
    const failing = judged.filter(({ passes }) => !passes);
    return {
      main: 'thinnest',
      flag: failing.length === 0 ? 'pass' : 'stop',
      flagText:
        failing.length === 0
          ? 'Every wire is protected'
          : `${failing.map(({ name }) => name).join(', ')} would burn first`,
      say: `The ${worst.name} sets the limit: ${say(worst.limitA, 'current')}.`,
      outputs: [
        { key: 'thinnest', label: 'Weakest piece', value: worst.name },
        ...judged.map(({ name, limitA, passes }) => ({
          key: name,
          label: `${name}: at most`,
          value: limitA,
          kind: 'current' as const,
          state: passes ? ('pass' as const) : ('stop' as const),
        })),
      ],
      formula: [
        cell('', 'limit', say(worst.limitA, 'current'), 'calc', `largest fuse for ${worst.name}`),
        cell('=', 'table', say(worst.tableA, 'current'), 'plain', `${say(worst.areaMm2, 'area')} in open air`),
        cell('×', 'kb', String(worst.bundleFactor), 'calc', `${worst.wires} loaded wires together`),
        cell('×', 'kt', worst.heatFactor.toFixed(3), 'calc', `air at ${say(worst.ambientC, 'temperature')}`),
      ],
      work: judged.map(
        ({ name, limitA, passes }) =>
          `${name}: ${say(fuseA, 'current')} fuse, limit ${say(limitA, 'current')}: ${passes ? 'pass' : 'stop'}`,
      ),
      change:
        failing.length === 0 ? [] : ['A thicker wire for that piece, or a smaller fuse of its own where it begins.'],
    };
  },
  source: 'The fuse protects the thinnest wire: common practice, no source. Insulation for 90 °C is assumed',
  functions: ['workshopLimit'],
  example: {
    from: 'Workshop example, computed apart from this code',
    in: { fuseA: 5, segments: 'pigtail 0.5 x 2 at 50\nfeed 1.5 x 2 at 50' },
    out: { pigtail: '5.0', feed: '15.0' },
  },
};
