import { cite, type Row } from './rows.ts';

/**
 * Resting voltage of a 12 V lead-acid battery by charge. Tables differ by up to 0.1 V, which is 15 to 25 % of charge: rest
 * the battery first (8 h), and never read it closer than that.
 */
export interface RestingRow {
  set: 'maker' | 'rounded' | 'motorhome';
  stateOfChargeFraction: number;
  openCircuitV: number;
  specificGravity?: number;
}

export const RESTING_V: readonly Row<RestingRow>[] = cite({ source: '', at: '', read: 'seen', unit: 'V' }, [
  ...(
    [
      [0, 11.89, 1.12, 'seen'],
      [0.25, 12.06, 1.155, 'memory'],
      [0.5, 12.24, 1.19, 'seen'],
      [0.75, 12.45, 1.225, 'memory'],
      [1, 12.65, 1.265, 'seen'],
    ] as const
  ).map(([stateOfChargeFraction, openCircuitV, specificGravity, read]) => ({
    set: 'maker' as const,
    stateOfChargeFraction,
    openCircuitV,
    specificGravity,
    read,
    source: "battery maker's state-of-charge page",
    at: 'table for 26.7 °C',
  })),
  ...(
    [
      [0, 11.6],
      [0.25, 12],
      [0.5, 12.2],
      [0.75, 12.4],
      [1, 12.6],
    ] as const
  ).map(([stateOfChargeFraction, openCircuitV]) => ({
    set: 'rounded' as const,
    stateOfChargeFraction,
    openCircuitV,
    source: "radio users' mailing list, flooded cell rule",
    at: 'posting',
  })),
  ...(
    [
      [0.25, 12.15],
      [0.5, 12.3],
      [0.75, 12.45],
    ] as const
  ).map(([stateOfChargeFraction, openCircuitV]) => ({
    set: 'motorhome' as const,
    stateOfChargeFraction,
    openCircuitV,
    source: 'motorhome magazine answer',
    at: 'text',
  })),
]);

/** Correction to a voltmeter reading: volts per kelvin about the table's temperature (0.024 V per 10 °F about 80 °F). */
export const RESTING_CORRECTION: Row<{ voltPerK: number; aboutC: number }> = {
  voltPerK: 0.024 / (10 * (5 / 9)),
  aboutC: ((80 - 32) * 5) / 9,
  unit: 'V/K',
  source: "battery maker's state-of-charge page",
  at: 'temperature compensation table',
  read: 'seen',
};

/** Reserve capacity [min] to ampere-hours: which factor holds depends on how fast the battery is drained. */
export const RESERVE_RATES: readonly Row<{ rate: 'slow' | '25 A'; ahPerMin: number }>[] = cite(
  { source: '', at: '', read: 'seen', unit: 'Ah/min' },
  [
    { rate: 'slow', ahPerMin: 0.6, source: 'service bulletin text on parked drain', at: 'rules of thumb' },
    { rate: '25 A', ahPerMin: 25 / 60, source: 'public car battery FAQ (2003)', at: 'section 10: 25 A by definition' },
  ],
);

/** Parked drain: what is usual, what is too much, how long to wait for modules to sleep. */
export const PARKED_DRAIN: Row<{
  usualMinA: number;
  usualMaxA: number;
  tooMuchA: number;
  waitMin: number;
  ampPerReserveMin: number;
}> = {
  usualMinA: 0.02,
  usualMaxA: 0.12,
  tooMuchA: 0.035,
  waitMin: 20,
  ampPerReserveMin: 0.00025,
  unit: 'A, min',
  source:
    "public car battery FAQ (2003) section 10; technician training module; vehicle maker's service manual, drain test",
  at: 'section 10; current drains; steps 5 and 17 (reserve capacity over 4, read as milliamperes)',
  read: 'seen',
};

/** Share of capacity that must be gone before the engine will not start; or 20 to 30 Ah on an ordinary battery. */
export const NO_START: Row<{ temperatureC: number; fraction: number }> = {
  temperatureC: 25,
  fraction: 0.4,
  unit: 'share of capacity',
  source: 'service bulletin text on parked drain',
  at: 'rules of thumb',
  read: 'seen',
};

/** Self-discharge by type; 5 % a month is only a mild-weather middle, and 10 K warmer doubles it. */
export const SELF_DISCHARGE: readonly Row<{ type: string; minPercentPerMonth: number; maxPercentPerMonth: number }>[] =
  cite({ source: "avionics technician's note", at: 'lead-acid internal discharge', read: 'seen', unit: '%/month' }, [
    { type: 'flooded antimony', minPercentPerMonth: 8, maxPercentPerMonth: 40 },
    { type: 'calcium AGM or gel', minPercentPerMonth: 2, maxPercentPerMonth: 10 },
  ]);
export const SELF_DISCHARGE_MILD: Row<{ temperatureC: number; percentPerMonth: number; doublesPerK: number }> = {
  temperatureC: 20,
  percentPerMonth: 5,
  doublesPerK: 10,
  unit: '%/month, K',
  source: "public articles on lead-acid storage; battery supplier's article",
  at: 'text; causes of self-discharge',
  read: 'seen',
};

/** End-of-charge voltage of a 12 V battery by temperature. */
export const CHARGE_END: readonly Row<{ temperatureC: number; conventionalV: number; maintenanceFreeV: number }>[] =
  cite(
    { source: 'club technical page on vehicle batteries', at: 'charging, voltage method', read: 'seen', unit: 'V' },
    [
      { temperatureC: -18, conventionalV: 15.1, maintenanceFreeV: 15.4 },
      { temperatureC: 35, conventionalV: 14.2, maintenanceFreeV: 14.5 },
    ],
  );

/** Ampere-hours to put back for each ampere-hour missing. */
export const CHARGE_FACTOR: Row<{ factor: number }> = {
  factor: 1.6,
  unit: 'ratio',
  source: 'club technical page on vehicle batteries',
  at: 'charging, calculation method',
  read: 'seen',
};
