/**
 * Joints in wire: stripping, lap splices, solder gaps, nicked strands, ferrules. Limits as printed; the table of pull-out
 * forces of crimps is in crimp.ts.
 *
 * "Wire diameter" means the bare conductor in the overlap of a lap splice, and the insulated diameter in clearances, edge
 * flash and sleeve overlap. Each name below says which.
 */
import { positive, whole, within } from './guard.ts';
import type { Cited } from './tables/cited.ts';

const NASA = 'NASA-STD-8739.4 with Change 6';

/**
 * Overlap of the two conductors of a lap splice.
 * @param o.conductorMm [mm] bare, above 0 to 20
 * @returns `minMm` and `maxMm` [mm]
 * @throws RangeError outside that range
 * @formula 3 to 6 conductor diameters
 * @source NASA-STD-8739.4 with Change 6, 19.6.1
 * @example lapOverlap({ conductorMm: 1.6 }).minMm // 4.8
 */
export function lapOverlap(o: { conductorMm: number }): { minMm: number; maxMm: number } {
  const d = within('lapOverlap', 'conductorMm', o.conductorMm, 0, 20, 'mm');
  positive('lapOverlap', 'conductorMm', d, 'mm');
  return { minMm: 3 * d, maxMm: 6 * d };
}

/** What a good lap splice looks like, and how it is made. */
export const LAP_SPLICE: Cited & {
  filletBothSides: boolean;
  wholeOverlap: boolean;
  strandContourVisible: boolean;
  made: readonly string[];
} = {
  filletBothSides: true,
  wholeOverlap: true,
  strandContourVisible: true,
  made: [
    'conductors tinned first',
    'parallel and touching',
    'not twisted together',
    'not over the insulation of the other wire',
    'no loose strands',
  ],
  source: NASA,
  at: '19.6.1 and 19.6.2',
  read: 'seen',
};

/** Where a splice may sit in a loom. */
export const SPLICE_PLACE: Cited & { notInFlexZone: boolean; stagger: boolean; tieBothEnds: boolean } = {
  notInFlexZone: true,
  stagger: true,
  tieBothEnds: true,
  source: 'NASA workmanship pictorial 4.07',
  at: 'general requirements',
  read: 'seen',
};

/** When a soldered splice is looked at, and what is done before the sleeve. */
export const SPLICE_INSPECTION: Cited & { when: readonly string[]; cleanBeforeSleeve: boolean } = {
  when: ['before sleeve is shrunk', 'after sleeve is shrunk'],
  cleanBeforeSleeve: true,
  source: NASA,
  at: '19.2.1 and 19.2.2',
  read: 'seen',
};

/**
 * May a conductor be crimped as it is?
 * @param o.conductor 'stranded', 'stranded, tinned with solder' or 'solid'
 * @returns `allowed` and the reason; a verdict has no unit
 * @throws RangeError for another word
 * @formula plain stranded only: solder creeps under pressure and solid wire does not spread
 * @source NASA-STD-8739.4 with Change 6, 4.3 as the change log quotes it
 * @example mayCrimp({ conductor: 'stranded, tinned with solder' }).allowed // false
 */
export function mayCrimp(o: { conductor: 'stranded' | 'stranded, tinned with solder' | 'solid' }): {
  allowed: boolean;
  reason: string;
} {
  switch (o.conductor) {
    case 'stranded':
      return { allowed: true, reason: 'Plain strands spread and lock in the barrel.' };
    case 'stranded, tinned with solder':
      return {
        allowed: false,
        reason: 'Solder creeps under pressure and the crimp goes loose: tin for soldering only.',
      };
    case 'solid':
      return { allowed: false, reason: 'A solid conductor does not spread in the barrel.' };
    default:
      throw new RangeError(`mayCrimp: unexpected conductor "${String(o.conductor)}"`);
  }
}

/**
 * Gap between the end of the insulation and a crimp barrel.
 * @param o.awg gauge number, -3 to 40
 * @returns `minMm` and `maxMm` [mm]
 * @throws RangeError outside that range or for a fraction
 * @formula 0.25 to 0.75 mm for 20 AWG and thinner, to 1.25 mm for 18 AWG and thicker
 * @source NASA-STD-8739.4 with Change 6, 10.1, page 53
 * @example crimpClearance({ awg: 18 }).maxMm // 1.25
 */
export function crimpClearance(o: { awg: number }): { minMm: number; maxMm: number } {
  const awg = whole('crimpClearance', 'awg', o.awg, -3, 40);
  return { minMm: 0.25, maxMm: awg >= 20 ? 0.75 : 1.25 };
}

/**
 * Verdict on the gap between the insulation and a soldered joint.
 * @param o.insulatedMm [mm] over the insulation, above 0 to 50
 * @param o.gapMm [mm], 0 to 100
 * @returns verdict in words: no gap may hide melted insulation; two diameters or more is too much; no unit
 * @throws RangeError outside those ranges
 * @formula ok above 0 and below 2 insulated diameters
 * @source NASA workmanship pictorial 6.17 citing NASA-STD-8739.3, 9.1.2
 * @example solderGap({ insulatedMm: 2, gapMm: 1.5 }) // 'ok'
 */
export function solderGap(o: {
  insulatedMm: number;
  gapMm: number;
}): 'check for melted or embedded insulation' | 'ok' | 'reject' {
  const d = positive('solderGap', 'insulatedMm', within('solderGap', 'insulatedMm', o.insulatedMm, 0, 50, 'mm'), 'mm');
  const gap = within('solderGap', 'gapMm', o.gapMm, 0, 100, 'mm');
  if (gap === 0) return 'check for melted or embedded insulation';
  return gap < 2 * d ? 'ok' : 'reject';
}

/**
 * Longest ragged edge of insulation after stripping.
 * @param o.insulatedMm [mm] over the insulation, above 0 to 50
 * @returns length [mm]
 * @throws RangeError outside that range
 * @formula a quarter of the insulated diameter
 * @source NASA workmanship pictorial 1.02 citing NASA-STD-8739.4, 10.1.6
 * @example edgeFlashMaxMm({ insulatedMm: 2.4 }) // 0.6
 */
export function edgeFlashMaxMm(o: { insulatedMm: number }): number {
  const d = within('edgeFlashMaxMm', 'insulatedMm', o.insulatedMm, 0, 50, 'mm');
  return positive('edgeFlashMaxMm', 'insulatedMm', d, 'mm') / 4;
}

/**
 * Nicked and cut strands a braided shield may have.
 * @param o.strands whole number, 1 to 5000
 * @returns `maxNicked`, counts; `maxSevered`, none
 * @throws RangeError outside that range
 * @formula 10 % nicked, rounded down; none cut
 * @source NASA-STD-8739.4 with Change 6, 10.2
 * @example shieldStrands({ strands: 80 }).maxNicked // 8
 */
export function shieldStrands(o: { strands: number }): { maxNicked: number; maxSevered: number } {
  return { maxNicked: Math.floor(whole('shieldStrands', 'strands', o.strands, 1, 5000) / 10), maxSevered: 0 };
}

export interface StrandLimit {
  /** Thickest and thinnest gauge of the row; 0, -1, -2, -3 for 1/0 to 4/0. */
  awgFrom: number;
  awgTo: number;
  /** Strand counts of the row, lowest and highest. */
  strands: readonly [number, number];
  maxNicked: number;
  maxBroken: number;
}

/** Nicked and broken strands of a copper conductor, aircraft repair practice. None of either is allowed in aluminium. */
export const AIRCRAFT_STRANDS: Cited & { rows: readonly StrandLimit[] } = {
  rows: [
    { awgFrom: 14, awgTo: 24, strands: [19, 19], maxNicked: 2, maxBroken: 0 },
    { awgFrom: 10, awgTo: 12, strands: [37, 37], maxNicked: 4, maxBroken: 0 },
    { awgFrom: 4, awgTo: 8, strands: [133, 133], maxNicked: 6, maxBroken: 6 },
    { awgFrom: 1, awgTo: 2, strands: [665, 817], maxNicked: 6, maxBroken: 6 },
    { awgFrom: -1, awgTo: 0, strands: [1045, 1330], maxNicked: 6, maxBroken: 6 },
    { awgFrom: -2, awgTo: -2, strands: [1665, 1665], maxNicked: 6, maxBroken: 6 },
    { awgFrom: -3, awgTo: -3, strands: [2109, 2109], maxNicked: 6, maxBroken: 6 },
  ],
  source: 'FAA AC 43.13-1B',
  at: 'Table 11-13, page 11-62',
  read: 'seen',
};

/**
 * Nicked and broken strands a copper conductor may have, aircraft repair practice. This workshop's own limit is none.
 * @param o.awg gauge number, -3 to 24
 * @param o.strands whole number, 1 to 5000, as the wire has
 * @returns `found` with `maxNicked` and `maxBroken`, counts, or reasons when the table has no such wire
 * @throws RangeError outside those ranges
 * @formula table look-up
 * @source FAA AC 43.13-1B, Table 11-13
 * @example aircraftStrands({ awg: 14, strands: 19 }).maxNicked // 2
 */
export function aircraftStrands(o: { awg: number; strands: number }): {
  found: boolean;
  maxNicked?: number;
  maxBroken?: number;
  reasons: string[];
} {
  const awg = whole('aircraftStrands', 'awg', o.awg, -3, 40);
  const strands = whole('aircraftStrands', 'strands', o.strands, 1, 5000);
  const row = AIRCRAFT_STRANDS.rows.find(
    (r) => awg >= r.awgFrom && awg <= r.awgTo && strands >= r.strands[0] && strands <= r.strands[1],
  );
  if (row === undefined) return { found: false, reasons: [`no row for ${awg} AWG of ${strands} strands`] };
  return { found: true, maxNicked: row.maxNicked, maxBroken: row.maxBroken, reasons: [] };
}

/**
 * How far conductors may stick out of a ferrule.
 * @param o.wireMm [mm] bare diameter of the largest wire, above 0 to 20
 * @param o.ferrule 'solder' or 'crimp'
 * @returns longest protrusion [mm]
 * @throws RangeError outside that range or for another ferrule
 * @formula one wire diameter for solder ferrules, two for crimp ferrules
 * @source NASA-STD-8739.4 with Change 6, 19.10.1 and 19.13.1
 * @example ferruleProtrusionMm({ wireMm: 1.3, ferrule: 'solder' }) // 1.3
 */
export function ferruleProtrusionMm(o: { wireMm: number; ferrule: 'solder' | 'crimp' }): number {
  const d = within('ferruleProtrusionMm', 'wireMm', o.wireMm, 0, 20, 'mm');
  positive('ferruleProtrusionMm', 'wireMm', d, 'mm');
  if (o.ferrule !== 'solder' && o.ferrule !== 'crimp') {
    throw new RangeError(`ferruleProtrusionMm: unexpected ferrule "${String(o.ferrule)}", expected solder or crimp`);
  }
  return o.ferrule === 'solder' ? d : 2 * d;
}
