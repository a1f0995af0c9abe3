import {
  awg,
  bendRadius,
  bundleByArea,
  bundleOf,
  bundleOfEqual,
  type Jacket,
  packingFactor,
  SAE_WALLS,
  sleeveFill,
  spaceTieSpacingMm,
  strandAreaMm2,
  TIE_PRACTICES,
  TIE_TENSION,
  tieCount,
  wireOuter,
} from '../../../calc/index.ts';
import { num, type Shape, type Value, word } from '../row.ts';
import { each, fact, numbers } from './fact.ts';

const outer = (inputs: Record<string, Value>) => {
  const { row } = wireOuter({
    standard: word(inputs, 'standard'),
    ...(inputs['awg'] === undefined ? { areaMm2: num(inputs, 'area_mm2') } : { awg: num(inputs, 'awg') }),
  });
  if (row === undefined) return undefined;
  return {
    outerMax_mm: row.outerMaxMm,
    outerNominal_mm: row.outerNominalMm,
    conductor_mm: row.conductorMm,
    strands: row.strands,
    strand_mm: row.strandMm,
    resistance_mOhm_m: row.resistanceMohmPerM,
    temp_C: [row.temperatureMinC, row.temperatureMaxC],
  };
};
const OUTER_KEYS = [
  'outerMax_mm',
  'outerNominal_mm',
  'conductor_mm',
  'strands',
  'strand_mm',
  'resistance_mOhm_m',
  'temp_C',
];

/** Looms, ties, bends and wire diameters. */
export const looms: readonly Shape[] = [
  {
    needs: ['n', 'wire_mm'],
    gives: ['ratio', 'bundle_mm'],
    answer: (inputs) => {
      const { ratio, bundleMm } = bundleOfEqual({ wires: num(inputs, 'n'), wireMm: num(inputs, 'wire_mm') });
      return { ratio, bundle_mm: bundleMm };
    },
  },
  {
    needs: ['n'],
    gives: ['factor'],
    answer: (inputs) => ({ factor: each(inputs, 'n', (n) => packingFactor({ wires: n as number })) }),
  },
  {
    needs: ['diameters_mm'],
    gives: ['bundle_mm'],
    answer: (inputs) => ({ bundle_mm: bundleOf({ wiresMm: numbers(inputs, 'diameters_mm') }).bundleMm }),
  },
  {
    needs: ['diameters_mm', 'factor'],
    gives: ['sqrtSumSquares_mm', 'estimate_mm'],
    answer: (inputs) => {
      const { rootSumSquareMm, estimateMm } = bundleByArea({
        wiresMm: numbers(inputs, 'diameters_mm'),
        factor: num(inputs, 'factor'),
      });
      return { sqrtSumSquares_mm: rootSumSquareMm, estimate_mm: estimateMm };
    },
  },
  {
    needs: ['diameter_mm', 'jacket'],
    gives: ['min_mm', 'longTerm_mm'],
    answer: (inputs) => {
      const { minMm, longTermMm } = bendRadius({
        diameterMm: num(inputs, 'diameter_mm'),
        jacket: word(inputs, 'jacket') as Jacket,
      });
      return { min_mm: minMm, longTerm_mm: longTermMm };
    },
  },
  {
    needs: ['supportSpacing_mm'],
    gives: ['tiesRequiredAbove_mm'],
    answer: () => ({ tiesRequiredAbove_mm: TIE_PRACTICES['aircraft repair'].tiesRequiredAboveMm }),
  },
  fact(/military vehicle/, {
    min_mm: TIE_PRACTICES['military vehicle interior'].minMm,
    max_mm: TIE_PRACTICES['military vehicle interior'].maxMm,
  }),
  {
    needs: ['bundle_mm'],
    gives: ['spacing_mm'],
    answer: (inputs) => ({
      spacing_mm: each(inputs, 'bundle_mm', (bundle) => spaceTieSpacingMm({ bundleMm: bundle as number })),
    }),
  },
  {
    needs: ['run_mm', 'maxSpacing_mm'],
    gives: ['ties'],
    answer: (inputs) => tieCount({ runMm: num(inputs, 'run_mm'), maxSpacingMm: num(inputs, 'maxSpacing_mm') }),
  },
  fact(/tie too tight/, { wireDistortion: TIE_TENSION.wireDistortion }),
  {
    needs: ['bundle_mm', 'sleeveInner_mm'],
    gives: ['diameterFill', 'areaFill'],
    answer: (inputs) => {
      const { diameterFillFraction, areaFillFraction } = sleeveFill({
        bundleMm: num(inputs, 'bundle_mm'),
        sleeveInnerMm: num(inputs, 'sleeveInner_mm'),
      });
      return { diameterFill: diameterFillFraction, areaFill: areaFillFraction };
    },
  },
  { needs: ['area_mm2', 'standard'], may: ['temp_C'], gives: OUTER_KEYS, answer: outer },
  { needs: ['awg', 'standard'], may: ['temp_C'], gives: OUTER_KEYS, answer: outer },
  {
    needs: ['strands', 'strand_mm'],
    gives: ['area_mm2'],
    answer: (inputs) => ({
      area_mm2: strandAreaMm2({ strands: num(inputs, 'strands'), strandMm: num(inputs, 'strand_mm') }),
    }),
  },
  {
    needs: ['awg'],
    gives: ['diameter_mm', 'area_mm2'],
    answer: (inputs) => {
      const { diameterMm, areaMm2 } = awg({ gaugeAwg: num(inputs, 'awg') });
      return { diameter_mm: diameterMm, area_mm2: areaMm2 };
    },
  },
  fact(/insulation wall/, {
    orderThinToThick: SAE_WALLS.thinToThick,
    temp_C: [SAE_WALLS.temperatureMinC, SAE_WALLS.temperatureMaxC],
  }),
];
