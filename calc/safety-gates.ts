import { within } from './guard.ts';
import { FLASH_RATES, LITHIUM_CHARGE_FROM } from './tables/safety.ts';

/**
 * Gate for a visible flash effect.
 * @param o.frequencyHz [Hz], 0 to 100000
 * @returns 'warn' where a flash of this rate can trigger seizures, else 'ok'; a verdict has no unit
 * @throws RangeError outside that range
 * @formula warn from 3 to 60 Hz: 3 to 30 for most who are affected, to 60 for some
 * @source Epilepsy Society page
 * @example flashGate({ frequencyHz: 12 }) // 'warn'
 */
export function flashGate(o: { frequencyHz: number }): 'ok' | 'warn' {
  const f = within('flashGate', 'frequencyHz', o.frequencyHz, 0, 100000, 'Hz');
  return f >= FLASH_RATES.minHz && f <= FLASH_RATES.someUpToHz ? 'warn' : 'ok';
}

/**
 * May a lithium iron phosphate cell be charged at this temperature?
 * @param o.cellC [°C] of the cell, -60 to 100
 * @returns true at 0 °C and above; a verdict has no unit
 * @throws RangeError outside that range
 * @formula not below 0 °C
 * @source trailer maker forum post; battery guides. The battery's own management decides
 * @example lithiumChargeAllowed({ cellC: -2 }) // false
 */
export function lithiumChargeAllowed(o: { cellC: number }): boolean {
  return within('lithiumChargeAllowed', 'cellC', o.cellC, -60, 100, '°C') >= LITHIUM_CHARGE_FROM.cellC;
}
