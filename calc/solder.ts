/**
 * Soldering by hand: which alloy, how hot the tip, how much heat the joint takes, how a joint is judged.
 */
import { positive, within } from './guard.ts';
import type { Cited } from './tables/cited.ts';
import { SOLDER_ALLOYS, type SolderAlloy, TIP_TEMPERATURES, type TipTemperature } from './tables/solder-alloys.ts';

/**
 * Melting range of a solder alloy.
 * @param o.alloy as in the table, such as 'Sn63Pb37' or 'SAC305'
 * @param o.table rows; SOLDER_ALLOYS by default
 * @returns `found` with `solidusC` and `liquidusC` [°C] and `eutectic` (one melting point, no paste), or reasons
 * @throws nothing: an alloy that is not listed is not found
 * @formula table look-up; eutectic when the two are equal
 * @source alloy property table (web)
 * @example meltingRange({ alloy: 'Sn60Pb40' }).liquidusC // 191
 */
export function meltingRange(o: { alloy: string; table?: readonly SolderAlloy[] }): {
  found: boolean;
  solidusC?: number;
  liquidusC?: number;
  eutectic?: boolean;
  reasons: string[];
} {
  const table = o.table ?? SOLDER_ALLOYS;
  const row = table.find(({ alloy }) => alloy === o.alloy);
  if (row === undefined) {
    return { found: false, reasons: [`no alloy "${o.alloy}"; listed: ${table.map(({ alloy }) => alloy).join(', ')}`] };
  }
  const { solidusC, liquidusC } = row;
  return { found: true, solidusC, liquidusC, eutectic: solidusC === liquidusC, reasons: [] };
}

/** Most fluxes stop helping above this [°C]. */
export const FLUX_HOLDS_TO_C = 350;

/**
 * Span of tip temperatures that sources give, and where to start. Never one setting: change the tip's size before the heat.
 * @param o.alloy an alloy of SOLDER_ALLOYS
 * @param o.sources rows; TIP_TEMPERATURES by default
 * @returns `fromC` and `toC` [°C] over all sources that speak of this alloy or of any; `startC` [°C], the lowest that is
 *   at least 80 K above the alloy's liquidus; `sources` used
 * @throws RangeError for an alloy that is not listed
 * @formula lowest and highest of the sources; start = max(lowest, liquidus + 80)
 * @source see TIP_TEMPERATURES; 80 K above the liquidus: common practice, no source
 * @example tipRange({ alloy: 'Sn63Pb37' }).fromC // 280
 */
export function tipRange(o: { alloy: string; sources?: readonly TipTemperature[] }): {
  fromC: number;
  toC: number;
  startC: number;
  sources: readonly TipTemperature[];
} {
  const melting = meltingRange({ alloy: o.alloy });
  if (melting.liquidusC === undefined) throw new RangeError(`tipRange: ${melting.reasons.join('; ')}`);
  const tinLead = o.alloy.includes('Pb');
  const sources = (o.sources ?? TIP_TEMPERATURES).filter(({ alloys }) =>
    alloys.some((name) => name === 'any' || name === o.alloy || (name === 'SnPb' && tinLead)),
  );
  const fromC = Math.min(...sources.map(({ tipC }) => tipC[0]));
  const toC = Math.max(...sources.map(({ tipC }) => tipC[1]));
  return { fromC, toC, startC: Math.min(toC, Math.max(fromC, melting.liquidusC + 80)), sources };
}

/** Time of the tip on a joint. A joint not wetted by the last figure has the wrong tip, not too little heat. */
export const TIP_TIME: Cited & {
  throughHoleS: readonly [number, number];
  smallPadS: readonly [number, number];
  retryLimitS: number;
} = {
  throughHoleS: [3, 6],
  smallPadS: [2, 4],
  retryLimitS: 8,
  source: 'open electronics manufacturing handbook, hand soldering chapter',
  at: 'text',
  read: 'seen',
};

/** Heat in metals [J/gK] and [J/g]. */
export const SOLDER_HEAT = {
  copperHeatJPerGK: { value: 0.385, source: 'handbook value, recalled', at: 'copper', read: 'memory' },
  tinLeadHeatJPerGK: { value: 0.17, source: 'materials comparison page', at: 'Pb55Sn45', read: 'seen' },
  tinLeadLatentJPerG: { value: 40, source: 'materials comparison page', at: 'Pb55Sn45', read: 'seen' },
  leadFreeHeatJPerGK: { value: 0.22, source: 'materials comparison page', at: 'lead-free', read: 'seen' },
  leadFreeLatentJPerG: { value: 61, source: 'materials comparison page', at: 'lead-free', read: 'seen' },
} as const;

/**
 * Heat that brings the metal of a joint up to temperature and melts the solder. The wires carry more than this away.
 * @param o.copperG [g] of copper in the joint, 0 to 1000
 * @param o.solderG [g], 0 to 1000
 * @param o.startC [°C], -40 to 150
 * @param o.endC [°C], above startC to 450
 * @param o.copperHeatJPerGK [J/gK], 0.1 to 1; 0.385 by default
 * @param o.solderHeatJPerGK [J/gK], 0.1 to 1; 0.17, tin-lead, by default
 * @param o.latentJPerG [J/g], 10 to 200; 40, tin-lead, by default
 * @returns energy [J]
 * @throws RangeError outside those ranges
 * @formula Q = (m_cu·c_cu + m_s·c_s)·ΔT + m_s·L
 * @source see SOLDER_HEAT
 * @example jointHeatJ({ copperG: 0.27, solderG: 0.1, startC: 20, endC: 230 }) // 29.4
 */
export function jointHeatJ(o: {
  copperG: number;
  solderG: number;
  startC: number;
  endC: number;
  copperHeatJPerGK?: number;
  solderHeatJPerGK?: number;
  latentJPerG?: number;
}): number {
  const copper = within('jointHeatJ', 'copperG', o.copperG, 0, 1000, 'g');
  const solder = within('jointHeatJ', 'solderG', o.solderG, 0, 1000, 'g');
  const start = within('jointHeatJ', 'startC', o.startC, -40, 150, '°C');
  const end = within('jointHeatJ', 'endC', o.endC, start, 450, '°C');
  const copperHeat = o.copperHeatJPerGK ?? SOLDER_HEAT.copperHeatJPerGK.value;
  const solderHeat = o.solderHeatJPerGK ?? SOLDER_HEAT.tinLeadHeatJPerGK.value;
  const latent = o.latentJPerG ?? SOLDER_HEAT.tinLeadLatentJPerG.value;
  within('jointHeatJ', 'copperHeatJPerGK', copperHeat, 0.1, 1, 'J/gK');
  within('jointHeatJ', 'solderHeatJPerGK', solderHeat, 0.1, 1, 'J/gK');
  within('jointHeatJ', 'latentJPerG', latent, 10, 200, 'J/g');
  return (copper * copperHeat + solder * solderHeat) * (end - start) + solder * latent;
}

/**
 * Time to put a heat in at the power that reaches the joint.
 * @param o.energyJ [J], 0 to 10000
 * @param o.netPowerW [W] that reaches the joint, above 0 to 500; a station's rating is far more
 * @returns time [s]
 * @throws RangeError outside those ranges
 * @formula t = Q/P
 * @source physics
 * @example heatingTimeS({ energyJ: 26.48, netPowerW: 10 }) // 2.648
 */
export function heatingTimeS(o: { energyJ: number; netPowerW: number }): number {
  const energy = within('heatingTimeS', 'energyJ', o.energyJ, 0, 10000, 'J');
  const power = within('heatingTimeS', 'netPowerW', o.netPowerW, 0, 500, 'W');
  return energy / positive('heatingTimeS', 'netPowerW', power, 'W');
}

/**
 * Judges the angle of solder at the edge of the fillet.
 * @param o.angleDeg [°], 0 to 180
 * @returns 'good' below 90, 'limit' at 90, 'reject' above. Above 90 is allowed only where solder runs over the edge of the
 *   wettable area. A verdict has no unit
 * @throws RangeError outside that range
 * @formula 90° border; one handbook wants below 60
 * @source IPC-A-610 chapter 5 as discussed by an expert panel and a forum
 * @example solderWetting({ angleDeg: 120 }) // 'reject'
 */
export function solderWetting(o: { angleDeg: number }): 'good' | 'limit' | 'reject' {
  const angle = within('solderWetting', 'angleDeg', o.angleDeg, 0, 180, '°');
  if (angle === 90) return 'limit';
  return angle < 90 ? 'good' : 'reject';
}

/** What rejects a soldered joint, and what does not. A lead-free joint is dull when it is good. */
export const JOINT_CRITERIA: Cited & { reject: readonly string[]; accept: readonly string[] } = {
  reject: [
    'disturbed or fractured',
    'dewetted',
    'no wetting',
    'cold (blocky, wrinkled, abrupt edge)',
    'overheated or grainy',
    'pin hole or void',
    'flux joint',
    'excess solder hiding strands',
    'birdcaged strands',
    'cut or nicked strands',
    'charred insulation',
  ],
  accept: ['slight discolouration of insulation', 'slight scuffing'],
  source:
    'NASA soldering training picture set; ECSS glossary entries for cold and disturbed joints; NASA workmanship pictorial 1.02, 4.06',
  at: 'captions',
  read: 'seen',
};

/** Words that tie what one sees at the joint to a criterion; every group needs one of its words. */
const SIGHTS: readonly { criterion: string; groups: readonly (readonly string[])[] }[] = [
  { criterion: 'charred insulation', groups: [['insulation'], ['charred', 'burnt', 'black', 'melted away']] },
  {
    criterion: 'slight discolouration of insulation',
    groups: [['insulation'], ['discolo', 'yellowed']],
  },
  { criterion: 'slight scuffing', groups: [['scuff']] },
  {
    criterion: 'excess solder hiding strands',
    groups: [
      ['strands', 'strand'],
      ['not visible', 'hidden', 'hiding', 'cannot be seen'],
    ],
  },
  { criterion: 'birdcaged strands', groups: [['birdcage']] },
  { criterion: 'cut or nicked strands', groups: [['strand'], ['cut', 'nicked', 'broken']] },
  { criterion: 'disturbed or fractured', groups: [['disturbed', 'fractured', 'cracked', 'moved while']] },
  { criterion: 'dewetted', groups: [['dewet', 'de-wet', 'pulled back']] },
  { criterion: 'no wetting', groups: [['no wetting', 'not wetted', 'non-wetting', 'nonwetting', 'balled']] },
  { criterion: 'cold (blocky, wrinkled, abrupt edge)', groups: [['cold', 'blocky', 'wrinkled', 'abrupt']] },
  { criterion: 'overheated or grainy', groups: [['overheated', 'grainy', 'gritty']] },
  { criterion: 'pin hole or void', groups: [['pin hole', 'pinhole', 'void', 'blow hole']] },
  { criterion: 'flux joint', groups: [['flux']] },
];

/**
 * Judges a joint by what one sees, in words, against the criteria.
 * @param o.seen what the picture or the joint shows, in a few words
 * @returns `verdict` 'reject', 'accept' or 'unclear', with the `criterion` it rests on; no unit
 * @throws TypeError for empty words
 * @formula the first criterion whose words all appear
 * @source see JOINT_CRITERIA
 * @example judgeJoint({ seen: 'solder thick, strands not visible' }).verdict // 'reject'
 */
export function judgeJoint(o: { seen: string }): { verdict: 'reject' | 'accept' | 'unclear'; criterion?: string } {
  const seen = o.seen.trim().toLowerCase();
  if (seen === '') throw new TypeError('judgeJoint: unexpected empty seen, expected a few words');
  const sight = SIGHTS.find(({ groups }) => groups.every((words) => words.some((word) => seen.includes(word))));
  if (sight === undefined) return { verdict: 'unclear' };
  const rejects = JOINT_CRITERIA.reject.includes(sight.criterion);
  return { verdict: rejects ? 'reject' : 'accept', criterion: sight.criterion };
}
