import {
  applicationRange,
  areaCm2PerKg,
  convert,
  DWELL_POINTS,
  dwellFraction,
  MEASURED_TEMPERATURES,
  PAINT_WAIT,
  PEEL_ADVICE,
  PLACE_TEMPERATURES,
  PRESS_PRESSURE,
  pressForce,
  psdRmsMPerS2,
  tapeForMass,
  tapeShearKpa,
  tapeThicknessMm,
  temperatureGate,
  thermalMismatch,
  VIBRATION_PROFILES,
  vibrationLoad,
  WASH_WAIT,
} from '../../../calc/index.ts';
import { num, type Shape, type Value } from '../row.ts';
import { each, fact, numbers } from './fact.ts';

/** The tape that sources quote lengths for when they name only a mass [mm]. */
const QUOTED_WIDTH_MM = 25;

const place = (name: string): readonly [number, number] | undefined => {
  const found = PLACE_TEMPERATURES.find((each) => each.place === name);
  return found === undefined ? undefined : [found.lowestC, found.highestC];
};

const general = applicationRange('tape in general');
const trim = applicationRange('exterior trim');
const byDefault = applicationRange('default');

const dwell = (inputs: Record<string, Value>) => {
  // The points hold near 21 °C; at another temperature nothing is known.
  const temperature = inputs['temperature_C'];
  if (temperature !== undefined && temperature !== 21) return undefined;
  return {
    fraction: each(inputs, 'minutes', (minutes) => dwellFraction({ timeMin: minutes as number }).fraction),
    fractionAtMost: each(inputs, 'minutes', (minutes) => dwellFraction({ timeMin: minutes as number }).fractionAtMost),
    flag: each(inputs, 'minutes', (minutes) => dwellFraction({ timeMin: minutes as number }).flag),
    points: DWELL_POINTS.length,
  };
};

/** Tape under load, pressing, dwell, temperature, vibration and expansion. */
export const tape: readonly Shape[] = [
  {
    needs: ['mass_kg'],
    gives: ['area_cm2', 'length_25mm_tape_mm'],
    answer: (inputs) => {
      const { areaCm2, lengthMm } = tapeForMass({ massKg: num(inputs, 'mass_kg'), widthMm: QUOTED_WIDTH_MM });
      return { area_cm2: areaCm2, length_25mm_tape_mm: lengthMm };
    },
  },
  {
    needs: ['in2_per_lb'],
    gives: ['cm2_per_kg'],
    answer: (inputs) => ({ cm2_per_kg: areaCm2PerKg({ areaIn2PerLb: num(inputs, 'in2_per_lb') }) }),
  },
  {
    needs: ['mass_kg', 'width_mm'],
    may: ['cm2_per_kg'],
    gives: ['area_cm2', 'length_mm'],
    answer: (inputs) => {
      const { areaCm2, lengthMm } = tapeForMass({
        massKg: num(inputs, 'mass_kg'),
        widthMm: num(inputs, 'width_mm'),
        ...(inputs['cm2_per_kg'] === undefined ? {} : { cm2PerKg: num(inputs, 'cm2_per_kg') }),
      });
      return { area_cm2: areaCm2, length_mm: lengthMm };
    },
  },
  {
    needs: ['mass_kg', 'area_cm2'],
    may: ['g_m_s2'],
    gives: ['stress_kPa'],
    answer: (inputs) => ({
      stress_kPa: tapeShearKpa({
        massKg: num(inputs, 'mass_kg'),
        areaCm2: num(inputs, 'area_cm2'),
        ...(inputs['g_m_s2'] === undefined ? {} : { accelerationMPerS2: num(inputs, 'g_m_s2') }),
      }),
    }),
  },
  {
    needs: ['frequency_Hz', 'psd_m2_s4_Hz'],
    may: ['interpolation'],
    gives: ['rms_m_s2', 'rms_printed_m_s2'],
    answer: (inputs) => {
      const interpolation = inputs['interpolation'];
      if (interpolation !== undefined && interpolation !== 'log-log') return undefined;
      const psd = numbers(inputs, 'psd_m2_s4_Hz');
      const points = numbers(inputs, 'frequency_Hz').map((frequencyHz, i) => ({
        frequencyHz,
        psdM2PerS4Hz: psd[i] ?? Number.NaN,
      }));
      const same = VIBRATION_PROFILES.find((profile) => JSON.stringify(profile.points) === JSON.stringify(points));
      return { rms_m_s2: psdRmsMPerS2({ points }), rms_printed_m_s2: same?.printedRmsMPerS2 };
    },
  },
  {
    needs: ['mass_kg', 'rms_m_s2'],
    may: ['sigma'],
    gives: ['force_N'],
    answer: (inputs) => ({
      force_N: vibrationLoad({
        massKg: num(inputs, 'mass_kg'),
        rmsMPerS2: num(inputs, 'rms_m_s2'),
        ...(inputs['sigma'] === undefined ? {} : { sigma: num(inputs, 'sigma') }),
      }).forceN,
    }),
  },
  fact(/temperatures by place/, { interior_C: place('interior'), engineBay_C: place('engine bay') }),
  {
    needs: ['ambient_C'],
    gives: ['dash_C', 'cameraBody_C'],
    answer: (inputs) => {
      const { ambientC, dashC, cameraBodyC } = MEASURED_TEMPERATURES.dashTop;
      return num(inputs, 'ambient_C') === ambientC ? { dash_C: dashC, cameraBody_C: cameraBodyC } : undefined;
    },
  },
  fact(/console and boot/, {
    console_F: MEASURED_TEMPERATURES.console.consoleF,
    boot_F_below: MEASURED_TEMPERATURES.console.bootBelowF,
    console_C: MEASURED_TEMPERATURES.console.consoleC,
  }),
  {
    needs: ['length_mm', 'deltaT_K', 'alpha1_per_K', 'alpha2_per_K'],
    gives: ['growth_mm'],
    answer: (inputs) => ({
      growth_mm: thermalMismatch({
        lengthMm: num(inputs, 'length_mm'),
        deltaK: num(inputs, 'deltaT_K'),
        alpha1PerK: num(inputs, 'alpha1_per_K'),
        alpha2PerK: num(inputs, 'alpha2_per_K'),
      }).growthMm,
    }),
  },
  fact(/peel or cleavage/, { allowable: PEEL_ADVICE.allowableN, advice: PEEL_ADVICE.advice }),
  fact(/lowest application temperature/, { min_C: general.minC, max_of_min_C: general.minUpToC }),
  fact(/body side moulding/, {
    ideal_min_C: trim.idealMinC,
    ideal_max_C: trim.idealMaxC,
    never_below_C: trim.minC,
    never_above_C: trim.maxC,
  }),
  fact(/second trim maker/, { min_C: applicationRange('exterior trim, second maker').minC }),
  fact(/used as default/, {
    min_C: byDefault.minC,
    ideal_min_C: byDefault.idealMinC,
    ideal_max_C: byDefault.idealMaxC,
  }),
  {
    needs: ['surface_C'],
    gives: ['verdict'],
    answer: (inputs) => ({ verdict: temperatureGate({ surfaceC: num(inputs, 'surface_C') }) }),
  },
  fact(/application pressure/, {
    min_kPa: PRESS_PRESSURE.minKpa,
    min_psi: PRESS_PRESSURE.minPsi,
    exact_15psi_kPa: convert({ value: PRESS_PRESSURE.minPsi, from: 'psi', to: 'kPa' }),
  }),
  {
    needs: ['width_mm', 'length_mm'],
    may: ['pressure_kPa'],
    gives: ['force_N', 'force_kgf'],
    answer: (inputs) => {
      const { forceN, forceKgf } = pressForce({
        widthMm: num(inputs, 'width_mm'),
        lengthMm: num(inputs, 'length_mm'),
        ...(inputs['pressure_kPa'] === undefined ? {} : { pressureKpa: num(inputs, 'pressure_kPa') }),
      });
      return { force_N: forceN, force_kgf: forceKgf };
    },
  },
  { needs: ['minutes'], may: ['temperature_C'], gives: ['fraction', 'fractionAtMost', 'flag'], answer: dwell },
  fact(/before washing/, { hours: WASH_WAIT.hours }),
  fact(/after refinishing/, { days: PAINT_WAIT.days }),
  {
    needs: ['mismatch_mm'],
    gives: ['tapeThickness_mm'],
    answer: (inputs) => ({ tapeThickness_mm: tapeThicknessMm({ mismatchMm: num(inputs, 'mismatch_mm') }) }),
  },
];
