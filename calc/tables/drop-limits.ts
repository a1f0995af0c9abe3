import { cite, type Row } from './rows.ts';

/** How much voltage various rules let a run lose. A limit holds for its own trade; a guide names the one it uses. */
export const DROP_LIMITS: readonly Row<{ part: string; maxDropFraction: number }>[] = cite(
  { source: 'ABYC E-11, as quoted on boating forums', at: 'E-11.14.2.6', read: 'seen', unit: 'share of supply' },
  [
    { part: 'critical', maxDropFraction: 0.03 },
    { part: 'non-critical', maxDropFraction: 0.1 },
    {
      part: 'main feeder',
      maxDropFraction: 0.02,
      source: 'FAA Aviation Maintenance Technician Handbook',
      at: 'wire size selection; allowable voltage drop',
    },
  ],
);

/** Largest resistance of a ground path: a chassis return counts as nothing only after this is measured. */
export const GROUND_PATHS: readonly Row<{ part: string; maxResistanceOhm: number }>[] = cite(
  {
    source: 'FAA Aviation Maintenance Technician Handbook (powerplant)',
    at: 'voltage drop section',
    read: 'seen',
    unit: 'ohm',
  },
  [{ part: 'ground return', maxResistanceOhm: 0.005 }],
);

/** Least voltage at a lamp socket with the engine running, as a share of the lamp's own design voltage. */
export const LEAST_LAMP_SHARE: Row<{ share: number }> = {
  share: 0.85,
  unit: 'share of design voltage',
  source: 'California Code of Regulations title 13 sec. 1249',
  at: 'par. (c)',
  read: 'seen',
};

/** Fire apparatus: drop allowed as a share of supply, and wire rating as a share of the protection ahead of it. */
export const FIRE_APPARATUS: Row<{ maxDropFraction: number; wireShare: number }> = {
  maxDropFraction: 0.1,
  wireShare: 1.25,
  unit: 'ratio',
  source: 'NFPA 1901 low-voltage chapter, as quoted in a fire-truck specification',
  at: 'wiring clause',
  read: 'seen',
};
