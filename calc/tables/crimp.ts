import type { Read } from './cited.ts';
import { cite, type Row } from './rows.ts';

/** Least force a crimp must hold, by wire size. Commercial and military figures differ by about two: say which. */
export const PULL_STANDARDS = ['commercial', 'military', 'grounding lead'] as const;
export type PullStandard = (typeof PULL_STANDARDS)[number];
export type PullRow = Row<{ standard: PullStandard; gaugeAwg: number; forceLbf: number }>;

const pulls = /* @__NO_SIDE_EFFECTS__ */ (
  standard: PullStandard,
  source: string,
  at: string,
  rows: readonly (readonly [gaugeAwg: number, forceLbf: number, read?: Read])[],
): readonly PullRow[] =>
  cite(
    { source, at, read: 'seen', unit: 'lbf' },
    rows.map(([gaugeAwg, forceLbf, read]) => ({
      standard,
      gaugeAwg,
      forceLbf,
      ...(read === undefined ? {} : { read }),
    })),
  );

export const PULL_FORCES: readonly PullRow[] = [
  ...pulls('commercial', "UL 486A, as a terminal maker's specification prints it", 'tensile table', [
    [26, 3],
    [24, 5],
    [22, 8],
    [20, 13],
    [18, 20],
    [16, 30],
    [14, 50],
    [12, 70],
    [10, 80],
    [8, 90],
    [6, 100],
    [4, 140],
    [3, 160, 'memory'],
    [2, 180],
    [1, 200, 'memory'],
    [0, 250],
    [-1, 300],
    [-2, 350, 'memory'],
    [-3, 450, 'memory'],
  ]),
  ...pulls('military', "MIL-T-7928, as a terminal maker's specification prints it", 'tensile table', [
    [26, 7],
    [24, 10],
    [22, 15],
    [20, 19],
    [18, 38],
    [16, 50],
    [14, 70],
    [12, 110],
    [10, 150],
    [8, 225, 'memory'],
    [6, 300, 'memory'],
    [4, 400, 'memory'],
    [2, 550, 'memory'],
    [1, 650, 'memory'],
    [0, 700, 'memory'],
  ]),
  ...pulls('grounding lead', 'NASA-STD-8739.4', 'Table 13-1', [
    [24, 8],
    [22, 13],
  ]),
];

/** Shares of a force that a rule asks for. */
export const PULL_RULES: readonly Row<{ rule: string; fraction: number }>[] = cite(
  { source: 'NASA-STD-8739.4', at: '', read: 'seen', unit: 'ratio' },
  [
    { rule: 'unlisted size', fraction: 0.6, at: 'text before par. 13.7.5 and Table 13-1 note: share of wire strength' },
    { rule: 'retention test', fraction: 0.8, at: 'Table 13 note 1: share of the crimp minimum' },
  ],
);

/** Gap between insulation and crimp barrel: too much leaves copper bare, none lets insulation into the crimp. */
export const INSULATION_GAPS: readonly Row<{ wire: string; thickestAwg: number; minMm: number; maxMm: number }>[] =
  cite({ source: 'NASA-STD-8739.4', at: 'par. 10.1.7b', read: 'seen', unit: 'mm' }, [
    { wire: '20 AWG and thinner', thickestAwg: 20, minMm: 0.25, maxMm: 0.75 },
    { wire: '18 AWG and thicker', thickestAwg: -3, minMm: 0.25, maxMm: 1.25 },
  ]);

/** What may be crimped. Solder creeps under pressure and solid wire works loose; plated strands are fine. */
export const CRIMPABLE: readonly Row<{ conductor: string; allowed: boolean }>[] = cite(
  { source: 'NASA-STD-8739.4', at: 'par. 4.3 no. 4', read: 'seen', unit: 'yes or no' },
  [
    { conductor: 'stranded, solder-tinned', allowed: false },
    { conductor: 'solid', allowed: false },
    { conductor: 'stranded, plated', allowed: true },
  ],
);

/** How far the strands show past the conductor crimp, in conductor diameters. */
export const PROTRUSION: readonly Row<{ crimp: string; minDiameters: number; maxDiameters: number }>[] = cite(
  { source: 'NASA workmanship handbook', at: 'crimp section 2.01', read: 'seen', unit: 'conductor diameters' },
  [{ crimp: 'open barrel', minDiameters: 0, maxDiameters: 1 }],
);

/** How a pull test is done: one inch a minute. */
export const TEST_SPEEDS: readonly Row<{ test: string; speedMmPerMin: number }>[] = cite(
  { source: "terminal makers' crimp handbooks", at: 'pull force testing', read: 'seen', unit: 'mm/min' },
  [{ test: 'pull', speedMmPerMin: 25.4 }],
);

/** Insulation to take off. */
export const STRIP_LENGTHS: readonly Row<{ joint: string; lengthMm: number }>[] = cite(
  { source: 'common practice, no source', at: '', read: 'common practice', unit: 'mm' },
  [
    { joint: 'strip pad', lengthMm: 3.2, at: 'about 1/8 in' },
    { joint: '6.3 mm blade', lengthMm: 5, at: 'barrel length plus about 1 mm' },
  ],
);

/** Resistance of nickel-plated copper: 23 % above plain. */
export const NICKEL_PLATED: readonly Row<{ gaugeAwg: number; resistanceOhmPerM: number }>[] = cite(
  {
    source: "diesel engine maker's electronic installation manual",
    at: 'Table 4.6',
    read: 'seen',
    unit: 'ohm/m at 20 °C',
  },
  [{ gaugeAwg: 12, resistanceOhmPerM: 0.00641 }],
);
