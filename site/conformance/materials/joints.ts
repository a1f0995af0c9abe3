import {
  aircraftStrands,
  crimpClearance,
  edgeFlashMaxMm,
  ferruleProtrusionMm,
  heatingTimeS,
  JOINT_CRITERIA,
  jointHeatJ,
  judgeJoint,
  LAP_SPLICE,
  lapOverlap,
  mayCrimp,
  meltingRange,
  SHRINK_TEMPERATURES,
  SPLICE_INSPECTION,
  SPLICE_PLACE,
  shieldStrands,
  shrunkLength,
  sleeveFit,
  sleeveOverlapMm,
  solderGap,
  solderWetting,
  TIP_TEMPERATURES,
  TIP_TIME,
} from '../../../calc/index.ts';
import { num, type Row, type Shape, type Value, word } from '../row.ts';
import { each, fact, list, numbers } from './fact.ts';

/** One source's word on tip temperature, in every form that sources print it. */
function tip(row: Row) {
  const found = TIP_TEMPERATURES.find(({ id }) => row.about.toLowerCase().includes(id));
  if (found === undefined) return undefined;
  const [from, to] = found.tipC;
  return {
    tip_C: from === to ? from : found.tipC,
    typical_C: found.tipC,
    smallJoint_C: found.smallJointC,
    recommended_C: from,
    max_C: found.maxC,
    tip_F: found.tipC.map((celsius) => celsius * 1.8 + 32),
    alloys: found.alloys,
  };
}

const TIP_KEYS = ['tip_C', 'typical_C', 'smallJoint_C', 'recommended_C', 'max_C', 'tip_F'];

/** Does the source speak of just these alloys? */
const speaksOf = (inputs: Record<string, Value>, alloys: readonly string[]): boolean =>
  JSON.stringify(list(inputs, 'alloy')) === JSON.stringify(alloys);

/** Splices, soldering and sleeves. */
export const joints: readonly Shape[] = [
  {
    needs: ['conductorDiameter_mm'],
    gives: ['min_mm', 'max_mm'],
    answer: (inputs) => {
      const { minMm, maxMm } = lapOverlap({ conductorMm: num(inputs, 'conductorDiameter_mm') });
      return { min_mm: minMm, max_mm: maxMm };
    },
  },
  fact(/solder on a lap splice/, {
    filletBothSides: LAP_SPLICE.filletBothSides,
    wholeOverlap: LAP_SPLICE.wholeOverlap,
    strandContourVisible: LAP_SPLICE.strandContourVisible,
  }),
  fact(/tinned strands in a crimp/, { allowed: mayCrimp({ conductor: 'stranded, tinned with solder' }).allowed }),
  {
    needs: ['awg'],
    gives: ['min_mm', 'max_mm'],
    answer: (inputs, row) =>
      /clearance at a crimp/.test(row.about)
        ? {
            min_mm: each(inputs, 'awg', (awg) => crimpClearance({ awg: awg as number }).minMm),
            max_mm: each(inputs, 'awg', (awg) => crimpClearance({ awg: awg as number }).maxMm),
          }
        : undefined,
  },
  {
    needs: ['insulatedDiameter_mm', 'gap_mm'],
    gives: ['verdict'],
    answer: (inputs) => ({
      verdict: each(inputs, 'gap_mm', (gap) =>
        solderGap({ insulatedMm: num(inputs, 'insulatedDiameter_mm'), gapMm: gap as number }),
      ),
    }),
  },
  {
    needs: ['insulatedDiameter_mm'],
    gives: ['max_mm'],
    answer: (inputs, row) =>
      /flash/.test(row.about)
        ? { max_mm: edgeFlashMaxMm({ insulatedMm: num(inputs, 'insulatedDiameter_mm') }) }
        : undefined,
  },
  {
    needs: ['insulatedDiameter_mm'],
    gives: ['overlap_mm'],
    answer: (inputs) => ({ overlap_mm: sleeveOverlapMm({ insulatedMm: num(inputs, 'insulatedDiameter_mm') }) }),
  },
  {
    needs: ['strands'],
    gives: ['maxNicked', 'maxSevered'],
    answer: (inputs) => shieldStrands({ strands: num(inputs, 'strands') }),
  },
  {
    needs: ['awg', 'strands'],
    gives: ['maxNicked', 'maxBroken'],
    answer: (inputs) => {
      const strands = list(inputs, 'strands');
      const found = list(inputs, 'awg').map((awg, i) =>
        aircraftStrands({ awg: awg as number, strands: strands[i] as number }),
      );
      if (found.some((each) => !each.found)) return undefined;
      const one = !Array.isArray(inputs['awg']);
      return {
        maxNicked: one ? found[0]?.maxNicked : found.map((each) => each.maxNicked),
        maxBroken: one ? found[0]?.maxBroken : found.map((each) => each.maxBroken),
      };
    },
  },
  fact(/inspect a soldered splice/, { when: SPLICE_INSPECTION.when }),
  fact(/clean the area/, { required: SPLICE_INSPECTION.cleanBeforeSleeve }),
  fact(/where a splice may sit/, {
    notInFlexZone: SPLICE_PLACE.notInFlexZone,
    stagger: SPLICE_PLACE.stagger,
    tieBothEnds: SPLICE_PLACE.tieBothEnds,
  }),
  {
    needs: ['largestWireDiameter_mm'],
    gives: ['max_mm'],
    answer: (inputs, row) => ({
      max_mm: ferruleProtrusionMm({
        wireMm: num(inputs, 'largestWireDiameter_mm'),
        ferrule: /crimp/.test(row.about) ? 'crimp' : 'solder',
      }),
    }),
  },
  {
    needs: ['alloy'],
    gives: ['solidus_C', 'liquidus_C', 'eutectic'],
    answer: (inputs) => {
      const melting = meltingRange({ alloy: word(inputs, 'alloy') });
      if (!melting.found) return undefined;
      return { solidus_C: melting.solidusC, liquidus_C: melting.liquidusC, eutectic: melting.eutectic };
    },
  },
  {
    needs: ['alloy'],
    gives: TIP_KEYS,
    answer: (inputs, row) => {
      const found = tip(row);
      return found !== undefined && speaksOf(inputs, found.alloys) ? found : undefined;
    },
  },
  { needs: [], gives: TIP_KEYS, answer: (_inputs, row) => tip(row) },
  fact(/time on the joint/, {
    throughHole_s: TIP_TIME.throughHoleS,
    smallPad_s: TIP_TIME.smallPadS,
    retryLimit_s: TIP_TIME.retryLimitS,
  }),
  {
    needs: ['angle_deg'],
    gives: ['verdict'],
    answer: (inputs) => ({
      verdict: each(inputs, 'angle_deg', (angle) => solderWetting({ angleDeg: angle as number })),
    }),
  },
  fact(/reject a joint/, { reject: JOINT_CRITERIA.reject, accept: JOINT_CRITERIA.accept }),
  {
    needs: ['picture'],
    gives: ['answer'],
    answer: (inputs) => {
      const { verdict } = judgeJoint({ seen: word(inputs, 'picture') });
      return verdict === 'unclear' ? undefined : { answer: verdict };
    },
  },
  {
    needs: ['copper_g', 'solder_g', 'start_C', 'end_C', 'copperHeat_J_gK', 'solderHeat_J_gK', 'latent_J_g'],
    gives: ['energy_J'],
    answer: (inputs) => ({
      energy_J: jointHeatJ({
        copperG: num(inputs, 'copper_g'),
        solderG: num(inputs, 'solder_g'),
        startC: num(inputs, 'start_C'),
        endC: num(inputs, 'end_C'),
        copperHeatJPerGK: num(inputs, 'copperHeat_J_gK'),
        solderHeatJPerGK: num(inputs, 'solderHeat_J_gK'),
        latentJPerG: num(inputs, 'latent_J_g'),
      }),
    }),
  },
  {
    needs: ['energy_J', 'netPower_W'],
    gives: ['seconds'],
    answer: (inputs) => ({
      seconds: heatingTimeS({ energyJ: num(inputs, 'energy_J'), netPowerW: num(inputs, 'netPower_W') }),
    }),
  },
  {
    needs: ['object_mm', 'supplied_mm', 'ratio'],
    gives: ['fitsOver', 'recovered_mm', 'tight'],
    answer: (inputs) => {
      const { fitsOver, recoveredMm, tight } = sleeveFit({
        objectMm: num(inputs, 'object_mm'),
        suppliedMm: num(inputs, 'supplied_mm'),
        ratio: num(inputs, 'ratio'),
      });
      return { fitsOver, recovered_mm: recoveredMm, tight };
    },
  },
  {
    needs: ['supplied_mm', 'ratio'],
    gives: ['recovered_mm'],
    answer: (inputs) => {
      const supplied = Array.isArray(inputs['supplied_mm'])
        ? numbers(inputs, 'supplied_mm')
        : [num(inputs, 'supplied_mm')];
      const ratios = list(inputs, 'ratio');
      const recovered = supplied.map(
        // The object plays no part in how far a sleeve shrinks, so any that fits will do to ask.
        (suppliedMm, i) => sleeveFit({ objectMm: suppliedMm / 2, suppliedMm, ratio: ratios[i] as number }).recoveredMm,
      );
      return { recovered_mm: Array.isArray(inputs['supplied_mm']) ? recovered : recovered[0] };
    },
  },
  {
    needs: ['cut_mm'],
    gives: ['afterMin_mm', 'afterMax_mm'],
    answer: (inputs) => {
      const { leastMm, mostMm } = shrunkLength({ cutMm: num(inputs, 'cut_mm') });
      return { afterMin_mm: leastMm, afterMax_mm: mostMm };
    },
  },
  fact(/temperature range over sleeve/, {
    min_C: SHRINK_TEMPERATURES.minC,
    max_C: SHRINK_TEMPERATURES.maxC,
    polyolefinTypical_C: SHRINK_TEMPERATURES.polyolefinTypicalC,
  }),
];
