/**
 * May tape go on at this temperature? Always the temperature of the surface, and of the part, not of the air; and the
 * surface above the dew point.
 */
import { within } from './guard.ts';
import type { Cited } from './tables/cited.ts';

export interface ApplicationRange extends Cited {
  id: string;
  /** Below this the tape does not go on [°C]. */
  minC: number;
  /** Some sources give the lowest temperature as a span: its upper end [°C]. */
  minUpToC?: number;
  idealMinC?: number;
  idealMaxC?: number;
  maxC?: number;
}

/** What sources say; they differ by kind of tape, so a plan names the one it used. */
export const APPLICATION_RANGES: readonly ApplicationRange[] = [
  {
    id: 'tape in general',
    minC: (40 - 32) / 1.8,
    minUpToC: (50 - 32) / 1.8,
    source: 'tape converter web page on application temperature',
    at: 'text (40 to 50 °F)',
    read: 'seen',
  },
  {
    id: 'exterior trim',
    minC: 17,
    idealMinC: 26,
    idealMaxC: 44,
    maxC: 44,
    source: 'trim supplier web page on body side mouldings',
    at: 'section B step 3 (prints 80 °F as 26 °C and 64 °F as 17 °C)',
    read: 'seen',
  },
  {
    id: 'exterior trim, second maker',
    minC: 18,
    source: 'trim maker web page (frequent questions)',
    at: 'temperature answer',
    read: 'seen',
  },
  {
    id: 'default',
    minC: 10,
    idealMinC: 21,
    idealMaxC: 38,
    source: 'tape application guides, recalled',
    at: '-',
    read: 'memory',
  },
];

/** The range called by its id. */
export function applicationRange(id: string): ApplicationRange {
  const found = APPLICATION_RANGES.find((range) => range.id === id);
  if (found === undefined) {
    const known = APPLICATION_RANGES.map((range) => range.id).join(', ');
    throw new RangeError(`applicationRange: unexpected id "${id}", expected one of ${known}`);
  }
  return found;
}

/** Default gate: refuse below the first, warn below the second [°C]. */
export const APPLICATION_GATE = { refuseBelowC: 10, warnBelowC: 18, refuseAboveC: 44 } as const;

/** Workshop rule: warm surface and part to this first [°C] (common practice, no source). */
export const WARM_TO_C = 15;

/**
 * Gate by surface temperature.
 * @param o.surfaceC [°C] of the surface and of the part, -40 to 90
 * @param o.refuseBelowC [°C], -10 to 40; 10 by default
 * @param o.warnBelowC [°C], -10 to 40; 18 by default
 * @param o.refuseAboveC [°C], 20 to 90; 44 by default
 * @returns 'refuse', 'warn' or 'ok'; a verdict has no unit
 * @throws RangeError outside those ranges
 * @formula refuse below 10 and above 44, warn below 18
 * @source default of tape application guides, recalled; 17, 18 and 44 from trim supplier web pages
 * @example temperatureGate({ surfaceC: 12 }) // 'warn'
 */
export function temperatureGate(o: {
  surfaceC: number;
  refuseBelowC?: number;
  warnBelowC?: number;
  refuseAboveC?: number;
}): 'refuse' | 'warn' | 'ok' {
  const surface = within('temperatureGate', 'surfaceC', o.surfaceC, -40, 90, '°C');
  const refuse = within(
    'temperatureGate',
    'refuseBelowC',
    o.refuseBelowC ?? APPLICATION_GATE.refuseBelowC,
    -10,
    40,
    '°C',
  );
  const warn = within('temperatureGate', 'warnBelowC', o.warnBelowC ?? APPLICATION_GATE.warnBelowC, -10, 40, '°C');
  const above = within(
    'temperatureGate',
    'refuseAboveC',
    o.refuseAboveC ?? APPLICATION_GATE.refuseAboveC,
    20,
    90,
    '°C',
  );
  if (surface < refuse || surface > above) return 'refuse';
  return surface < warn ? 'warn' : 'ok';
}

/**
 * Dew point of air: a colder surface is wet, though it may look dry.
 * @param o.airC [°C], -20 to 50
 * @param o.humidityPercent [%] relative, above 0 to 100
 * @returns dew point [°C]
 * @throws RangeError outside those ranges
 * @formula Magnus: γ = ln(rh/100) + 17.62·T/(243.12 + T); dew = 243.12·γ/(17.62 - γ)
 * @source Magnus formula with the constants of WMO-No. 8, from memory
 * @example dewPointC({ airC: 20, humidityPercent: 50 }) // 9.26
 */
export function dewPointC(o: { airC: number; humidityPercent: number }): number {
  const air = within('dewPointC', 'airC', o.airC, -20, 50, '°C');
  const humidity = within('dewPointC', 'humidityPercent', o.humidityPercent, 0.1, 100, '%');
  const gamma = Math.log(humidity / 100) + (17.62 * air) / (243.12 + air);
  return (243.12 * gamma) / (17.62 - gamma);
}
