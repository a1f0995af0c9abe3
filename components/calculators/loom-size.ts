import { bundleByArea, bundleOf, chooseSleeve, sleeveFill } from '../../calc/index.ts';
import { type Calculator, cell, figure, number } from './form.ts';

/** Most wires that packing is known or searched for. */
const MOST = 61;
const LINE = /^(?:(\d+)\s*[x×*]\s*)?(\d+(?:[.,]\d+)?)\s*(?:mm)?$/i;

/** Diameters of a list such as `6 x 2.4` a line, or what is wrong with it. */
export function wiresOf(text: string): { wiresMm: number[] } | { fault: string } {
  const lines = text
    .split(/\n|;/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  if (lines.length === 0)
    return { fault: 'Type at least one wire, such as 6 × 2.4: how many, then millimetres over the insulation.' };
  const wiresMm: number[] = [];
  for (const line of lines) {
    const match = LINE.exec(line);
    if (match === null)
      return {
        fault: `"${line.slice(0, 24)}" is not a line like 6 × 2.4: how many, then millimetres over the insulation.`,
      };
    const count = Number(match[1] ?? 1);
    const wire = Number(match[2]!.replace(',', '.'));
    if (count < 1 || wiresMm.length + count > MOST) return { fault: `1 to ${MOST} wires in all; split a larger loom.` };
    if (wire < 0.3 || wire > 50) return { fault: `${wire} mm: a wire is 0.3 to 50 mm over its insulation.` };
    wiresMm.push(...Array.from({ length: count }, () => wire));
  }
  return { wiresMm };
}

export const calculator: Calculator = {
  id: 'loom-size',
  number: 'C27',
  title: 'Loom diameter and sleeve',
  lead: 'How thick a loom of these wires gets, by the best known packing and by hand, and which sleeve takes it.',
  fields: () => [
    {
      name: 'wires',
      label: 'Wires, a line each: how many × millimetres over the insulation',
      kind: 'ratio',
      default: '7 × 2.4',
      rows: 4,
      read: (text) => {
        const result = wiresOf(text);
        return 'fault' in result ? result.fault : undefined;
      },
      error: 'Type wires like 6 × 2.4, a line each.',
    },
    number(
      'fillPercent',
      'Fill of the sleeve at most, by diameter',
      'percent',
      80,
      [40, 100, 5],
      'Fill must be 40 to 100 % of the inner diameter.',
    ),
  ],
  compute(input, { say }) {
    const read = wiresOf(input.s('wires'));
    if ('fault' in read) throw new RangeError(`loom-size: unexpected wires, ${read.fault}`);
    const { wiresMm } = read;
    const bundle = bundleOf({ wiresMm });
    const [least, most] = bundle.handLaidMm;
    const rule = bundleByArea({ wiresMm });
    const sleeve = chooseSleeve({ bundleMm: most, fillLimit: input.n('fillPercent') / 100 });
    const mm = (value: number): string => say(value, 'millimetres');
    const fill =
      sleeve.sleeveMm === undefined
        ? undefined
        : sleeveFill({ bundleMm: bundle.bundleMm, sleeveInnerMm: sleeve.sleeveMm });
    const small = rule.estimateMm < bundle.bundleMm - 0.005;
    return {
      main: 'bundleMm',
      flag: sleeve.found ? 'pass' : 'warn',
      flagText: sleeve.found ? `Sleeve ${mm(sleeve.sleeveMm!)}` : 'No kept sleeve is wide enough',
      say: `Laid by hand expect ${mm(least)} to ${mm(most)}. The sleeve is chosen for the thicker.`,
      outputs: [
        { key: 'bundleMm', label: 'Loom, ideally packed', value: bundle.bundleMm, kind: 'millimetres' },
        { key: 'wiresCount', label: 'Wires', value: wiresMm.length, kind: 'count' },
        { key: 'handMm', label: 'Laid by hand, at most', value: most, kind: 'millimetres' },
        {
          key: 'ruleMm',
          label: 'Rule of thumb 1.2 × √Σd²',
          value: rule.estimateMm,
          kind: 'millimetres',
          ...(small ? { state: 'warn' as const } : {}),
        },
        { key: 'sleeveMm', label: 'Sleeve, inside', value: sleeve.sleeveMm ?? 'split the loom', kind: 'millimetres' },
        { key: 'fillD', label: 'Fill by diameter', value: fill?.diameterFillFraction ?? 'no sleeve', kind: 'fraction' },
        { key: 'fillA', label: 'Fill by area', value: fill?.areaFillFraction ?? 'no sleeve', kind: 'fraction' },
      ],
      formula: [
        cell('', 'D', mm(bundle.bundleMm), 'calc', bundle.method),
        cell('=', 'k', figure(bundle.bundleMm / Math.max(...wiresMm)), 'plain', 'loom over its thickest wire'),
        cell('×', 'd', mm(Math.max(...wiresMm)), 'set', 'thickest wire'),
      ],
      work: [
        `by hand: ${mm(bundle.bundleMm)} × 1.05 to 1.15 = ${mm(least)} to ${mm(most)}`,
        ...(small ? [`the rule of thumb gives ${mm(rule.estimateMm)}: too small here`] : []),
      ],
      change: sleeve.found ? [] : sleeve.reasons,
    };
  },
  source:
    'Best known packings of equal circles in a circle (Specht list); unequal wires: packing found by search, an upper bound; hand-laid factor, fill and kept sleeves: common practice, no source',
  functions: ['bundleOf', 'bundleByArea', 'chooseSleeve', 'sleeveFill'],
  example: {
    from: 'Published ratio for seven equal wires, 3',
    in: { wires: '7 × 2.4', fillPercent: 80 },
    out: { bundleMm: '7.2', handMm: '8.28', ruleMm: '7.62', sleeveMm: '13' },
  },
};
