import {
  CROSS_CUT,
  convert,
  crossCutClass,
  crossCutSpacingMm,
  DYNE_LEVELS_MN_PER_M,
  dyneReading,
  ENERGY_CLASS_LIMITS,
  energyClass,
  PEEL_TESTS,
  waterBreak,
} from '../../../calc/index.ts';
import { num, type Shape, type Value } from '../row.ts';
import { each, fact } from './fact.ts';

const peel = (id: string) => PEEL_TESTS.find((test) => test.id === id)!;
const pstc = peel('pstc-101');

/** Simple surface tests and the conditions of peel tests. */
export const surfaceTests: readonly Shape[] = [
  {
    needs: ['filmBreaksWithin_s'],
    gives: ['pass'],
    answer: (inputs) => ({ pass: waterBreak({ breaksAfterS: inputs['filmBreaksWithin_s'] as number | null }).pass }),
  },
  {
    needs: ['wetFor_s'],
    gives: ['reading_mN_m', 'uncertainty_mN_m'],
    answer: (inputs) => {
      const wet = inputs['wetFor_s'] as Record<string, Value>;
      const wetForS = Object.fromEntries(Object.keys(wet).map((level) => [level, num(wet, level)]));
      const { readingMnPerM, uncertaintyMnPerM } = dyneReading({ wetForS });
      return { reading_mN_m: readingMnPerM, uncertainty_mN_m: uncertaintyMnPerM };
    },
  },
  fact(/pen levels/, { levels_mN_m: DYNE_LEVELS_MN_PER_M }),
  fact(/class limits/, {
    low_below_mN_m: ENERGY_CLASS_LIMITS.lowBelowMnPerM,
    medium_up_to_mN_m: ENERGY_CLASS_LIMITS.mediumUpToMnPerM,
  }),
  {
    needs: ['surfaceEnergy_mN_m'],
    gives: ['energyClass'],
    answer: (inputs) => ({ energyClass: energyClass({ surfaceEnergyMnPerM: num(inputs, 'surfaceEnergy_mN_m') }) }),
  },
  fact(/cross-cut test/, {
    cutsEachWay: CROSS_CUT.cutsEachWay,
    classes: CROSS_CUT.classes,
    maxThickness_um: CROSS_CUT.maxThicknessUm,
    texturedCoatings: CROSS_CUT.texturedCoatings,
  }),
  {
    needs: ['thickness_um'],
    gives: ['spacing_mm'],
    answer: (inputs) => ({
      spacing_mm: each(inputs, 'thickness_um', (thickness) => crossCutSpacingMm({ thicknessUm: thickness as number })),
    }),
  },
  {
    needs: ['area_percent'],
    gives: ['class'],
    answer: (inputs) => ({
      class: each(inputs, 'area_percent', (percent) => crossCutClass({ detachedPercent: percent as number })),
    }),
  },
  fact(/180 and 90 degree peel/, {
    speed_mm_min: peel('finat').speedMmPerMin,
    width_mm: peel('finat').widthMm,
    times_min: peel('finat').dwellMin,
    roller_kg: peel('finat').rollerKg,
  }),
  fact(/US practice/, {
    roller_lb: convert({ value: pstc.rollerKg ?? 0, from: 'kg', to: 'lb' }),
    speed_in_min: pstc.speedMmPerMin / 25.4,
    speed_mm_min: pstc.speedMmPerMin,
    dwell_min: pstc.dwellMin?.[0],
  }),
  fact(/ISO 8510-2/, { speed_mm_min: peel('iso-8510-2').speedMmPerMin }),
];
