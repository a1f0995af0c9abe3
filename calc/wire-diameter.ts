/** Diameters of wire over the insulation by standard and size, and copper area by strands. Bare gauges: `awg`. */
import { positive, whole, within } from './guard.ts';
import { WIRE_OUTERS, type WireOuterRow } from './tables/wire-outer.ts';

/**
 * Copper area from strands. The nominal size of a wire is set by its resistance, so this comes out a little below it.
 * @param o.strands whole number, 1 to 5000
 * @param o.strandMm [mm] diameter of one strand, above 0 to 5
 * @returns area [mm²]
 * @throws RangeError outside those ranges
 * @formula n·π·d²/4
 * @source geometry
 * @example strandAreaMm2({ strands: 30, strandMm: 0.25 }) // 1.473
 */
export function strandAreaMm2(o: { strands: number; strandMm: number }): number {
  const strands = whole('strandAreaMm2', 'strands', o.strands, 1, 5000);
  const strand = within('strandAreaMm2', 'strandMm', o.strandMm, 0, 5, 'mm');
  return (strands * Math.PI * positive('strandAreaMm2', 'strandMm', strand, 'mm') ** 2) / 4;
}

/**
 * Printed outer diameter of a wire by standard and size. Never a nearest guess: an unlisted size is not found.
 * @param o.standard as in the table, such as 'ISO 6722 thin wall' or 'SAE J1128 general purpose'
 * @param o.areaMm2 [mm²], above 0, for metric standards; or
 * @param o.awg gauge number for SAE standards, -3 to 40
 * @param o.table rows; WIRE_OUTERS by default
 * @returns `found` with the row (diameters [mm]), or reasons and the sizes that are listed
 * @throws TypeError when neither or both of areaMm2 and awg are given
 * @formula table look-up
 * @source wire maker data pages stating compliance with the standard
 * @example wireOuter({ standard: 'ISO 6722 thin wall', areaMm2: 1.5 }).row?.outerMaxMm // 2.4
 */
export function wireOuter(o: { standard: string; areaMm2?: number; awg?: number; table?: readonly WireOuterRow[] }): {
  found: boolean;
  row?: WireOuterRow;
  reasons: string[];
} {
  if ((o.areaMm2 === undefined) === (o.awg === undefined)) {
    throw new TypeError('wireOuter: expected either areaMm2 or awg');
  }
  const table = o.table ?? WIRE_OUTERS;
  const ofStandard = table.filter((row) => row.standard === o.standard);
  if (ofStandard.length === 0) {
    const known = [...new Set(table.map((row) => row.standard))].join(', ');
    return { found: false, reasons: [`no standard "${o.standard}" in the table; it has ${known}`] };
  }
  const row = ofStandard.find((r) => (o.awg === undefined ? r.areaMm2 === o.areaMm2 : r.awg === o.awg));
  if (row !== undefined) return { found: true, row, reasons: [] };
  const sizes = ofStandard.map((r) => (o.awg === undefined ? r.areaMm2 : r.awg)).filter((size) => size !== undefined);
  const wanted = o.awg === undefined ? `${o.areaMm2} mm²` : `${o.awg} AWG`;
  return { found: false, reasons: [`${o.standard} has no row for ${wanted}; listed: ${sizes.join(', ')}`] };
}
