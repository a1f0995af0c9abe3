import {
  capacityFromReserve,
  chargeEndV,
  idealHours,
  parkedDrainLimitA,
  replaceHours,
  restingCorrectionV,
  restingVoltage,
  selfDischargePercentPerMonth,
  standingDays,
  tables,
} from '../../../calc/index.ts';
import { num, type Shape } from '../row.ts';

/** Charge, drain and time of a battery. */
export const battery: readonly Shape[] = [
  {
    needs: ['stateOfChargePercent'],
    may: ['temperatureC', 'restH'],
    gives: ['openCircuitV', 'specificGravity'],
    answer: (inputs, { source }) => {
      const stateOfChargeFraction = num(inputs, 'stateOfChargePercent') / 100;
      const set = /mailing list/.test(source) ? 'rounded' : /motorhome/.test(source) ? 'motorhome' : 'maker';
      return restingVoltage({ stateOfChargeFraction, set }) ?? undefined;
    },
  },
  {
    needs: ['temperatureC'],
    gives: ['correctionV'],
    answer: (inputs) => ({ correctionV: restingCorrectionV({ temperatureC: num(inputs, 'temperatureC') }) }),
  },
  {
    needs: ['reserveCapacityMin'],
    gives: ['maxDrainMa'],
    answer: (inputs) => ({ maxDrainMa: parkedDrainLimitA({ reserveMin: num(inputs, 'reserveCapacityMin') }) * 1000 }),
  },
  {
    needs: ['reserveCapacityMin'],
    gives: ['capacityAh'],
    answer: (inputs, { about }) =>
      capacityFromReserve({
        reserveMin: num(inputs, 'reserveCapacityMin'),
        rate: /25 A/.test(about) ? '25 A' : 'slow',
      }),
  },
  {
    needs: ['vehicle'],
    gives: ['limitMa', 'minMa', 'maxMa', 'minutes'],
    answer: ({ vehicle }) =>
      vehicle === 'car'
        ? {
            limitMa: tables.PARKED_DRAIN.tooMuchA * 1000,
            minMa: tables.PARKED_DRAIN.usualMinA * 1000,
            maxMa: tables.PARKED_DRAIN.usualMaxA * 1000,
            minutes: tables.PARKED_DRAIN.waitMin,
          }
        : undefined,
  },
  {
    needs: ['temperatureC'],
    gives: ['fraction'],
    answer: ({ temperatureC }, { source }) =>
      source.includes(tables.NO_START.source) && temperatureC === tables.NO_START.temperatureC
        ? tables.NO_START
        : undefined,
  },
  {
    needs: ['capacityAh', 'standbyMa', 'usableFraction'],
    may: ['selfDischargePerMonth'],
    gives: ['days'],
    answer: (inputs) => {
      const { daysAfter } = standingDays({
        capacityAh: num(inputs, 'capacityAh'),
        startFraction: 1,
        minFraction: 1 - num(inputs, 'usableFraction'),
        baseA: num(inputs, 'standbyMa') / 1000,
        selfFractionPerMonth: 'selfDischargePerMonth' in inputs ? num(inputs, 'selfDischargePerMonth') : 0,
      });
      return { days: daysAfter };
    },
  },
  {
    needs: ['capacityAh', 'currentA'],
    gives: ['hours'],
    answer: (inputs) => ({
      hours: idealHours({ capacityAh: num(inputs, 'capacityAh'), currentA: num(inputs, 'currentA') }),
    }),
  },
  {
    needs: ['type'],
    gives: ['minPercentPerMonth', 'maxPercentPerMonth'],
    answer: ({ type }) => tables.SELF_DISCHARGE.find((row) => row.type === type),
  },
  {
    needs: ['temperatureC'],
    gives: ['percentPerMonth'],
    answer: (inputs) => ({
      percentPerMonth: selfDischargePercentPerMonth({ temperatureC: num(inputs, 'temperatureC') }),
    }),
  },
  {
    needs: ['deltaK'],
    gives: ['ratio'],
    answer: (inputs) => ({
      ratio:
        selfDischargePercentPerMonth({ temperatureC: 20 + num(inputs, 'deltaK') }) /
        selfDischargePercentPerMonth({ temperatureC: 20 }),
    }),
  },
  {
    needs: ['temperatureC'],
    gives: ['conventionalV', 'maintenanceFreeV'],
    answer: (inputs) => chargeEndV({ temperatureC: num(inputs, 'temperatureC') }),
  },
  {
    needs: ['missingAh', 'chargerA'],
    gives: ['hours'],
    answer: (inputs) => ({
      hours: replaceHours({ missingAh: num(inputs, 'missingAh'), chargerA: num(inputs, 'chargerA') }),
    }),
  },
];
