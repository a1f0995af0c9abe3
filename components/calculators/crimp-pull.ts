import { awg, insulationGap, PULL_STANDARDS, pullForce, wireBreak } from '../../calc/index.ts';
import { type Calculator, cell, choice, numberChoice } from './form.ts';

/** Gauges that a vehicle's crimps have, thin to thick. */
const GAUGES = [26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4];

export const calculator: Calculator = {
  id: 'crimp-pull',
  number: 'C29',
  title: 'Pull test of a crimp',
  lead: 'How hard to pull on a crimp of this size before it may be trusted, and where the wire itself would break.',
  fields: () => [
    numberChoice('gaugeAwg', 'Wire', 'ratio', 14, GAUGES, 'AWG', 'Choose the wire of the crimp.'),
    choice('standard', 'Figures', 'commercial', PULL_STANDARDS, 'Choose whose figures to use.'),
  ],
  compute(input, { say }) {
    const gaugeAwg = input.n('gaugeAwg');
    const standard = PULL_STANDARDS.find((each) => each === input.s('standard'))!;
    const pull = pullForce({ gaugeAwg, standard });
    const strength = wireBreak({ gaugeAwg });
    const gap = insulationGap({ gaugeAwg });
    const area = awg({ gaugeAwg }).areaMm2;
    const shared = [
      { key: 'breakN', label: 'The wire itself breaks at about', value: strength.forceN, kind: 'force' as const },
      { key: 'gapMm', label: 'Insulation to barrel, at most', value: gap.maxMm, kind: 'millimetres' as const },
      { key: 'areaMm2', label: 'Copper', value: area, kind: 'area' as const },
    ];
    if (pull === null) {
      return {
        main: 'forceN',
        flag: 'warn',
        flagText: 'Not in this table',
        say: 'This table has no such size. Take the figure of the terminal maker, or another table.',
        outputs: [{ key: 'forceN', label: 'Pull', value: 'no figure' }, ...shared],
        formula: [cell('', 'F', 'no figure', 'plain', standard)],
        work: [],
        change: ['Choose other figures, or the table of the terminal itself.'],
      };
    }
    const share = Math.round((100 * pull.forceN) / strength.forceN);
    return {
      main: 'forceN',
      flag: 'pass',
      flagText: 'Pull to this',
      say: `Slowly, and hold a few seconds. That is ${share} % of what breaks the wire.`,
      outputs: [
        { key: 'forceN', label: 'Pull', value: pull.forceN, kind: 'force' },
        { key: 'forceLbf', label: 'As printed', value: `${pull.forceLbf} lbf` },
        ...shared,
      ],
      formula: [
        cell('', 'F', say(pull.forceN, 'force'), 'calc', 'pull'),
        cell('=', 'f', `${pull.forceLbf} lbf`, 'plain', `${standard} figure`),
        cell('×', '4.448', '4.448 N/lbf', 'plain', 'by definition'),
      ],
      work: [`${pull.source.source}, ${pull.source.at}${pull.source.read === 'memory' ? ', from memory' : ''}`],
    };
  },
  source:
    'UL 486A and MIL-T-7928 as terminal makers print them; NASA-STD-8739.4 Table 13-1; wire strength of soft annealed copper from a general page',
  functions: ['pullForce', 'wireBreak', 'insulationGap'],
  cautions: [
    'Test a sample of the same wire, terminal and die, not the part that goes into the vehicle. The table of the terminal you hold comes first; commercial and military figures differ by about two.',
    'Never solder a crimp to save it, never crimp tinned strands.',
  ],
  example: {
    from: 'UL 486A figure for 14 AWG, 50 lbf',
    in: { gaugeAwg: 14, standard: 'commercial' },
    out: { forceN: '222.4', forceLbf: '50 lbf' },
  },
};
