import {
  awg,
  CONDUCTORS,
  type Conductor,
  conductorResistance,
  convert,
  factorTo20C,
  resistivity,
  sae,
} from '../../../calc/index.ts';
import { METALS, TRADE_RESISTIVITIES } from '../../../calc/tables/copper.ts';
import { num, type Shape, word } from '../row.ts';

const cmilPerFt = (value: number): number => convert({ value, from: 'ohm mm2/m', to: 'ohm cmil/ft' });

/** Sizes, what copper is, and what it resists. */
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
    needs: ['gaugeAwg', 'temperatureC'],
    gives: ['resistanceOhmPerM'],
    answer: (inputs) =>
      conductorResistance({
        gaugeAwg: num(inputs, 'gaugeAwg'),
        temperatureC: num(inputs, 'temperatureC'),
      }),
  },
  {
    needs: ['areaMm2', 'conductor', 'temperatureC'],
    gives: ['resistanceOhmPerM'],
    answer: (inputs) => {
      const conductor = word(inputs, 'conductor');
      if (!CONDUCTORS.includes(conductor as Conductor)) return undefined;
      return {
        resistanceOhmPerM: conductorResistance({
          areaMm2: num(inputs, 'areaMm2'),
          temperatureC: num(inputs, 'temperatureC'),
          conductor: conductor as Conductor,
        }).resistanceOhmPerM,
      };
    },
  },
  {
    needs: ['material', 'temperatureC'],
    gives: ['resistivityOhmMm2PerM', 'resistivityOhmCmilPerFt'],
    answer: (inputs) => {
      const metal = METALS.find((row) => row.metal === inputs['material'])?.metal;
      if (metal === undefined) return undefined;
      const { resistivityOhmMm2PerM } = resistivity({ metal, temperatureC: num(inputs, 'temperatureC') });
      return { resistivityOhmMm2PerM, resistivityOhmCmilPerFt: cmilPerFt(resistivityOhmMm2PerM) };
    },
  },
  {
    needs: ['material', 'referenceTemperatureC'],
    gives: ['tempCoefficientPerK'],
    answer: (inputs) => {
      const row = METALS.find((each) => each.metal === inputs['material']);
      return row?.referenceC === inputs['referenceTemperatureC'] ? row : undefined;
    },
  },
  {
    needs: ['use'],
    may: ['temperatureC'],
    gives: ['resistivityOhmCmilPerFt'],
    answer: (inputs) => TRADE_RESISTIVITIES.find((row) => row.use === inputs['use']),
  },
  {
    needs: ['temperatureC'],
    gives: ['factorTo20C'],
    answer: (inputs) => ({ factorTo20C: factorTo20C({ temperatureC: num(inputs, 'temperatureC') }) }),
  },
];
