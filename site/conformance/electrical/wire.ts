import {
  awg,
  CONDUCTORS,
  type Conductor,
  conductorResistance,
  convert,
  factorTo20C,
  resistivity,
  sae,
  tables,
} from '../../../calc/index.ts';
import { num, type Shape, word } from '../row.ts';

const cmilPerFt = (value: number): number => convert({ value, from: 'ohm mm2/m', to: 'ohm cmil/ft' });
const metalOf = (name: unknown) => tables.METALS.find((row) => row.metal === name);

/** Sizes, what copper is, and what a metre of it resists. */
export const wire: readonly Shape[] = [
  {
    needs: ['gaugeAwg'],
    gives: ['diameterMm', 'areaMm2', 'areaCmil'],
    answer: (inputs) => awg({ gaugeAwg: num(inputs, 'gaugeAwg') }),
  },
  {
    needs: ['gaugeFromAwg', 'gaugeToAwg'],
    gives: ['areaRatio'],
    answer: (inputs) => ({
      areaRatio:
        awg({ gaugeAwg: num(inputs, 'gaugeToAwg') }).areaMm2 / awg({ gaugeAwg: num(inputs, 'gaugeFromAwg') }).areaMm2,
    }),
  },
  {
    needs: ['gaugeSae'],
    gives: ['areaMm2', 'areaCmil'],
    answer: (inputs) => sae({ gaugeSae: num(inputs, 'gaugeSae') }),
  },
  {
    needs: ['gaugeSae'],
    gives: ['metricNameMm2'],
    answer: ({ gaugeSae }) => tables.SAE_METRIC_NAMES.find((row) => row.gaugeSae === gaugeSae),
  },
  {
    needs: ['gaugeAwg'],
    gives: ['nearestMetricMm2'],
    answer: ({ gaugeAwg }) => tables.VEHICLE_METRIC_NAMES.find((row) => row.gaugeAwg === gaugeAwg),
  },
  {
    needs: ['gaugeAwg', 'temperatureC'],
    gives: ['resistanceOhmPerM'],
    answer: (inputs) =>
      conductorResistance({ gaugeAwg: num(inputs, 'gaugeAwg'), temperatureC: num(inputs, 'temperatureC') }),
  },
  {
    needs: ['areaMm2', 'conductor', 'temperatureC'],
    gives: ['resistanceOhmPerM'],
    answer: (inputs) => {
      const named = word(inputs, 'conductor');
      const conductor = CONDUCTORS.find((each) => each === named);
      if (conductor === undefined) return undefined;
      return resistance(inputs, conductor);
    },
  },
  {
    // Road-vehicle cable: the row names no class, its source names the standard.
    needs: ['areaMm2', 'temperatureC'],
    gives: ['resistanceOhmPerM'],
    answer: (inputs, { source }) => (/ISO (6722|19642)/.test(source) ? resistance(inputs, 'iso6722') : undefined),
  },
  {
    needs: ['gaugeAwg', 'plating', 'temperatureC'],
    gives: ['resistanceOhmPerM'],
    answer: ({ gaugeAwg, plating, temperatureC }) =>
      plating === 'nickel' && temperatureC === 20
        ? tables.NICKEL_PLATED.find((row) => row.gaugeAwg === gaugeAwg)
        : undefined,
  },
  {
    needs: ['material', 'temperatureC'],
    gives: ['resistivityOhmMm2PerM', 'resistivityOhmCmilPerFt'],
    answer: (inputs) => {
      const row = metalOf(inputs['material']);
      if (row === undefined) return undefined;
      const temperatureC = num(inputs, 'temperatureC');
      const { resistivityOhmMm2PerM } = resistivity({ metal: row.metal, temperatureC });
      return { resistivityOhmMm2PerM, resistivityOhmCmilPerFt: cmilPerFt(resistivityOhmMm2PerM) };
    },
  },
  {
    needs: ['material', 'referenceTemperatureC'],
    gives: ['tempCoefficientPerK'],
    answer: ({ material, referenceTemperatureC }) => {
      const row = metalOf(material);
      return row?.referenceC === referenceTemperatureC ? row : undefined;
    },
  },
  {
    needs: ['use'],
    may: ['temperatureC'],
    gives: ['resistivityOhmCmilPerFt'],
    answer: ({ use }) => tables.TRADE_RESISTIVITIES.find((row) => row.use === use),
  },
  {
    needs: ['temperatureC'],
    gives: ['factorTo20C'],
    answer: (inputs) => ({ factorTo20C: factorTo20C({ temperatureC: num(inputs, 'temperatureC') }) }),
  },
];

function resistance(inputs: Parameters<Shape['answer']>[0], conductor: Conductor): object {
  return conductorResistance({
    areaMm2: num(inputs, 'areaMm2'),
    temperatureC: num(inputs, 'temperatureC'),
    conductor,
  });
}
