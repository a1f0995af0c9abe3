import { crimpedTogetherMm2, type PullStandard, pullForce, tables, wireBreak } from '../../../calc/index.ts';
import { num, type Shape } from '../row.ts';

/** Three standards answer the same question with different forces: the row's source says which. */
function standardOf(source: string): PullStandard | undefined {
  if (/486A/.test(source)) return 'commercial';
  if (/T-7928/.test(source)) return 'military';
  return /8739/.test(source) ? 'grounding lead' : undefined;
}

/** Crimps and the ends of wires. */
export const crimp: readonly Shape[] = [
  {
    needs: ['gaugeAwg'],
    gives: ['forceN', 'forceLbf'],
    answer: (inputs, { source }) => {
      const standard = standardOf(source);
      return standard && (pullForce({ gaugeAwg: num(inputs, 'gaugeAwg'), standard }) ?? undefined);
    },
  },
  {
    needs: ['gaugeAwg', 'strengthPsi'],
    gives: ['forceN', 'forceLbf'],
    answer: (inputs) => wireBreak({ gaugeAwg: num(inputs, 'gaugeAwg'), strengthPsi: num(inputs, 'strengthPsi') }),
  },
  {
    needs: ['rule'],
    gives: ['fraction'],
    answer: ({ rule }) => tables.PULL_RULES.find((row) => row.rule === rule),
  },
  {
    needs: ['wire'],
    gives: ['minMm', 'maxMm'],
    answer: ({ wire }) => tables.INSULATION_GAPS.find((row) => row.wire === wire),
  },
  {
    needs: ['conductor'],
    gives: ['allowed'],
    answer: ({ conductor }) => tables.CRIMPABLE.find((row) => row.conductor === conductor),
  },
  {
    needs: ['crimp'],
    gives: ['minDiameters', 'maxDiameters'],
    answer: (inputs) => tables.PROTRUSION.find((row) => row.crimp === inputs['crimp']),
  },
  {
    needs: ['test'],
    gives: ['speedMmPerMin'],
    answer: ({ test }) => tables.TEST_SPEEDS.find((row) => row.test === test),
  },
  {
    needs: ['joint'],
    gives: ['lengthMm'],
    answer: ({ joint }) => tables.STRIP_LENGTHS.find((row) => row.joint === joint),
  },
  {
    needs: ['areasMm2'],
    gives: ['areaMm2'],
    answer: ({ areasMm2 }) =>
      Array.isArray(areasMm2) ? { areaMm2: crimpedTogetherMm2({ areasMm2: areasMm2 as number[] }) } : undefined,
  },
];
