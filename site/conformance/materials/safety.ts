import {
  AIRBAG_RULES,
  AIRBAG_WAIT,
  AIRBAG_WAIT_EXAMPLES,
  BATTERY_HYDROGEN,
  BATTERY_ORDER,
  BATTERY_WORK,
  DYNE_FLUID_HAZARD,
  FLASH_RATES,
  flashGate,
  HIGH_VOLTAGE,
  HIGH_VOLTAGE_ABOVE,
  ISOPROPYL_ALCOHOL,
  LEAD,
  LITHIUM_VENT,
  liquidForLel,
  lithiumChargeAllowed,
  PHOTOBIOLOGY,
  ROAD_COLOURS,
  ROSIN_FUME,
  vapourPpm,
  WIPE_AND_HEAT,
} from '../../../calc/index.ts';
import { num, type Shape, word } from '../row.ts';
import { fact } from './fact.ts';

/** Exposure, airbags, high voltage, batteries, flashes and colours. */
export const safety: readonly Shape[] = [
  fact(/isopropyl alcohol limits/, {
    twa_ppm: ISOPROPYL_ALCOHOL.twaPpm,
    stel_ppm: ISOPROPYL_ALCOHOL.stelPpm,
    idlh_ppm: ISOPROPYL_ALCOHOL.idlhPpm,
    ppm_to_mg_m3: ISOPROPYL_ALCOHOL.mgPerM3PerPpm,
    lel_percent: ISOPROPYL_ALCOHOL.lelPercent,
    uel_percent: ISOPROPYL_ALCOHOL.uelPercent,
    flash_C: ISOPROPYL_ALCOHOL.flashC,
  }),
  {
    needs: ['volume_ml', 'space_m3'],
    may: ['density_g_ml', 'molarMass_g_mol', 'molarVolume_l_mol'],
    gives: ['ppm', 'above400', 'above200'],
    answer: (inputs) => {
      const asked = {
        volumeMl: num(inputs, 'volume_ml'),
        spaceM3: num(inputs, 'space_m3'),
        ...(inputs['density_g_ml'] === undefined ? {} : { densityGPerMl: num(inputs, 'density_g_ml') }),
        ...(inputs['molarMass_g_mol'] === undefined ? {} : { molarMassGPerMol: num(inputs, 'molarMass_g_mol') }),
        ...(inputs['molarVolume_l_mol'] === undefined ? {} : { molarVolumeLPerMol: num(inputs, 'molarVolume_l_mol') }),
      };
      return {
        ppm: vapourPpm(asked).ppm,
        above400: vapourPpm({ ...asked, limitPpm: 400 }).aboveLimit,
        above200: vapourPpm({ ...asked, limitPpm: 200 }).aboveLimit,
      };
    },
  },
  {
    needs: ['space_m3', 'fractionOfLel'],
    gives: ['ppm', 'volume_ml'],
    answer: (inputs) => {
      const found = liquidForLel({ spaceM3: num(inputs, 'space_m3'), fractionOfLel: num(inputs, 'fractionOfLel') });
      return { ppm: found.ppm, volume_ml: found.volumeMl };
    },
  },
  fact(/rosin/, { twa_mg_m3: ROSIN_FUME.twaMgPerM3, stel_mg_m3: ROSIN_FUME.stelMgPerM3 }),
  {
    needs: ['shift_h'],
    gives: ['pel_ug_m3', 'action_ug_m3'],
    answer: (inputs) => {
      const shift = num(inputs, 'shift_h');
      // Longer shifts share the same daily dose among more hours.
      const pel = shift > LEAD.shiftH ? (LEAD.pelUgPerM3 * LEAD.shiftH) / shift : LEAD.pelUgPerM3;
      return { pel_ug_m3: pel, action_ug_m3: LEAD.actionUgPerM3 };
    },
  },
  fact(/airbag wait when/, { minutes: AIRBAG_WAIT.minutes, rule: AIRBAG_WAIT.rule }),
  {
    needs: ['vehicle'],
    gives: ['wait_s'],
    answer: (inputs) => {
      const found = AIRBAG_WAIT_EXAMPLES.find(({ vehicle }) => vehicle === word(inputs, 'vehicle'));
      return found === undefined ? undefined : { wait_s: found.waitS };
    },
  },
  fact(/rules near airbags/, {
    noImpact: AIRBAG_RULES.noImpact,
    noHeatAbove_C: AIRBAG_RULES.noHeatAboveC,
    noRepair: AIRBAG_RULES.noRepair,
    noMemorySaver: AIRBAG_RULES.noMemorySaver,
  }),
  fact(/high-voltage cables/, {
    colour: HIGH_VOLTAGE.cableColour,
    also: HIGH_VOLTAGE.alsoColours,
    glovesClass: HIGH_VOLTAGE.glovesClass,
    gloves_V: HIGH_VOLTAGE.glovesV,
    meter: HIGH_VOLTAGE.meter,
    touch: HIGH_VOLTAGE.touch,
  }),
  fact(/counts as high voltage/, { dc_V: HIGH_VOLTAGE_ABOVE.dcV, ac_V: HIGH_VOLTAGE_ABOVE.acV }),
  fact(/hydrogen/, {
    lel_percent: BATTERY_HYDROGEN.lelPercent,
    uel_percent: BATTERY_HYDROGEN.uelPercent,
    keepBelow_percent: BATTERY_HYDROGEN.keepBelowPercent,
  }),
  fact(/near batteries/, { do: BATTERY_WORK.do, dont: BATTERY_WORK.dont }),
  fact(/disconnect order/, { off: BATTERY_ORDER.off, on: BATTERY_ORDER.on }),
  {
    needs: ['cell_C'],
    gives: ['chargeAllowed'],
    answer: (inputs) => ({ chargeAllowed: lithiumChargeAllowed({ cellC: num(inputs, 'cell_C') }) }),
  },
  fact(/lithium battery in a living space/, {
    gasesMustNotEnterHabitableSpace: LITHIUM_VENT.gasesMustNotEnterHabitableSpace,
  }),
  fact(/flash rates/, {
    min_Hz: FLASH_RATES.minHz,
    max_Hz: FLASH_RATES.maxHz,
    someUpTo_Hz: FLASH_RATES.someUpToHz,
  }),
  {
    needs: ['frequency_Hz'],
    gives: ['verdict'],
    answer: (inputs) => ({ verdict: flashGate({ frequencyHz: num(inputs, 'frequency_Hz') }) }),
  },
  fact(/light colours/, {
    front: ROAD_COLOURS.front,
    side: ROAD_COLOURS.side,
    rear: ROAD_COLOURS.rear,
    other: ROAD_COLOURS.other,
  }),
  fact(/dyne fluids/, { hazard: DYNE_FLUID_HAZARD.hazard }),
  fact(/flammable wipe/, { waitAfterIpa: WIPE_AND_HEAT.waitAfterIpa, flash_C: WIPE_AND_HEAT.flashC }),
  fact(/bright LED strips/, { standard: PHOTOBIOLOGY.standard, groups: PHOTOBIOLOGY.groups }),
];
