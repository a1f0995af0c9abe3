/**
 * Soldering to a pad, as a model to learn from: how the pad warms under the tip, and how a stripped wire lies on it.
 *
 * One lump of metal between a hot tip and cool surroundings. It teaches why a bigger tip beats a hotter one; it is no
 * setting for an iron.
 */
import { positive, within } from './guard.ts';
import { TIP_TIME } from './solder.ts';

/** Pads come off the board or strip when the glue below is held above about this [°C] (common practice, no source). */
export const PAD_LIFTS_ABOVE_C = 290;
/** A joint wants to be this far above the alloy's liquidus to flow [K] (common practice, no source). */
export const FLOW_MARGIN_K = 30;

/**
 * Temperature of a pad while the tip is on it, and what that does to the joint.
 * @param o.tipC [°C], 150 to 480
 * @param o.timeS [s] tip on the pad, 0 to 30
 * @param o.heatCapacityJPerK [J/K] of pad, wire end and solder, 0.001 to 20
 * @param o.contactWPerK [W/K] from tip to pad: grows with the tip's face and with wet solder, 0.001 to 5
 * @param o.lossWPerK [W/K] from pad to wire and surroundings, 0 to 5
 * @param o.liquidusC [°C] of the solder, 100 to 320
 * @param o.startC [°C], -20 to 120; 20 by default
 * @returns `padC` [°C] at that time; `finalC` [°C] it would reach; `heatJ` [J] that went into the pad; `flowsAfterS` [s] or null if never; `verdict` 'cold', 'good' or 'overheated'
 * @throws RangeError outside those ranges
 * @formula T = T∞ + (T0 - T∞)·e^(-t/τ); T∞ = (G·Ttip + L·T0)/(G + L); τ = C/(G + L); Q = C·(T - T0)
 * @source lumped heating; limits: common practice, no source
 * @example padHeating({ tipC: 350, timeS: 2, heatCapacityJPerK: 0.1, contactWPerK: 0.1, lossWPerK: 0.02, liquidusC: 183 }).verdict // 'good'
 */
export function padHeating(o: {
  tipC: number;
  timeS: number;
  heatCapacityJPerK: number;
  contactWPerK: number;
  lossWPerK: number;
  liquidusC: number;
  startC?: number;
}): {
  padC: number;
  finalC: number;
  heatJ: number;
  flowsAfterS: number | null;
  verdict: 'cold' | 'good' | 'overheated';
} {
  const where = 'padHeating';
  const tip = within(where, 'tipC', o.tipC, 150, 480, '°C');
  const time = within(where, 'timeS', o.timeS, 0, 30, 's');
  const capacity = within(where, 'heatCapacityJPerK', o.heatCapacityJPerK, 0.001, 20, 'J/K');
  const contact = within(where, 'contactWPerK', o.contactWPerK, 0.001, 5, 'W/K');
  const loss = within(where, 'lossWPerK', o.lossWPerK, 0, 5, 'W/K');
  const liquidus = within(where, 'liquidusC', o.liquidusC, 100, 320, '°C');
  const start = within(where, 'startC', o.startC ?? 20, -20, 120, '°C');
  const finalC = (contact * tip + loss * start) / (contact + loss);
  const tau = capacity / (contact + loss);
  const padC = finalC + (start - finalC) * Math.exp(-time / tau);
  const flowC = liquidus + FLOW_MARGIN_K;
  const flowsAfterS = finalC > flowC ? tau * Math.log((finalC - start) / (finalC - flowC)) : null;
  return {
    padC,
    finalC,
    heatJ: capacity * (padC - start),
    flowsAfterS,
    verdict: padC > PAD_LIFTS_ABOVE_C ? 'overheated' : padC < flowC ? 'cold' : 'good',
  };
}

/** Stripped length for a strip pad [mm], and how far insulation may shrink back (common practice, no source). */
export const PAD_STRIP = { minMm: 2.5, idealMm: 3, maxMm: 3.5, shrinkBackMaxMm: 0.5 } as const;

/**
 * How a stripped wire lies on a strip pad.
 * @param o.stripMm [mm] bare, 0 to 20
 * @param o.padLengthMm [mm] along the wire, 0.5 to 20
 * @param o.padWidthMm [mm] across the wire, 0.5 to 20
 * @param o.padGapMm [mm] between this pad and the next, 0.1 to 20
 * @param o.conductorMm [mm] bare diameter, 0.1 to 5
 * @param o.offsetMm [mm] wire off the middle of the pad, towards the next one, -10 to 10; 0 by default
 * @returns `onPadMm` [mm] soldered; `bareBeyondMm` [mm] past the pad; `toNextPadMm` [mm] of clearance, negative when they touch; `verdict` and `reasons`
 * @throws RangeError outside those ranges
 * @formula on pad = min(strip, pad); clearance = gap + width/2 - offset - conductor/2
 * @source geometry; 2.5 to 3.5 mm bare and none beyond the pad: common practice, no source
 * @example padFit({ stripMm: 3, padLengthMm: 3, padWidthMm: 2, padGapMm: 0.6, conductorMm: 1 }).verdict // 'accept'
 */
export function padFit(o: {
  stripMm: number;
  padLengthMm: number;
  padWidthMm: number;
  padGapMm: number;
  conductorMm: number;
  offsetMm?: number;
}): {
  onPadMm: number;
  bareBeyondMm: number;
  toNextPadMm: number;
  verdict: 'accept' | 'reject';
  reasons: string[];
} {
  const where = 'padFit';
  const strip = within(where, 'stripMm', o.stripMm, 0, 20, 'mm');
  const padLength = within(where, 'padLengthMm', o.padLengthMm, 0.5, 20, 'mm');
  const padWidth = within(where, 'padWidthMm', o.padWidthMm, 0.5, 20, 'mm');
  const gap = within(where, 'padGapMm', o.padGapMm, 0.1, 20, 'mm');
  const conductor = positive(where, 'conductorMm', within(where, 'conductorMm', o.conductorMm, 0.1, 5, 'mm'), 'mm');
  const offset = within(where, 'offsetMm', o.offsetMm ?? 0, -10, 10, 'mm');
  const onPadMm = Math.min(strip, padLength);
  const bareBeyondMm = Math.max(0, strip - padLength);
  const toNextPadMm = gap + padWidth / 2 - offset - conductor / 2;
  const reasons: string[] = [];
  if (strip < PAD_STRIP.minMm) reasons.push(`${strip} mm bare: too short to hold; ${PAD_STRIP.minMm} mm or more.`);
  if (strip > PAD_STRIP.maxMm)
    reasons.push(`${strip} mm bare: longer than ${PAD_STRIP.maxMm} mm shorts more than it holds.`);
  if (bareBeyondMm > 0) reasons.push(`${bareBeyondMm.toFixed(1)} mm bare past the pad: it can bridge.`);
  if (toNextPadMm <= 0) reasons.push('The wire touches the next pad.');
  else if (toNextPadMm < conductor / 2)
    reasons.push('Less than half a wire of clearance to the next pad: solder bridges it.');
  return { onPadMm, bareBeyondMm, toNextPadMm, verdict: reasons.length === 0 ? 'accept' : 'reject', reasons };
}

/** How long the tip stays on a small pad [s], from the handbook; see TIP_TIME. */
export const PAD_TIME_S = TIP_TIME.smallPadS;
