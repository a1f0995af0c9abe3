import {
  areaForDropMm2,
  awgNotBelow,
  convert,
  hotLengthM,
  loadedWireC,
  longestRunM,
  saeNotBelow,
  seriesCircuit,
  tables,
} from '../../../calc/index.ts';
import { num, type Shape, type Value } from '../row.ts';

/** Sizes of boat-cable tables: even numbers, and 1 between 2 and 1/0. */
const EVEN_AWG = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3] as const;

/** Area a run needs by the resistivity the row names. */
function neededMm2(inputs: Record<string, Value>): number {
  return areaForDropMm2({
    currentA: num(inputs, 'currentA'),
    lengthM: num(inputs, 'lengthM'),
    allowedDropV: num(inputs, 'allowedDropV'),
    resistivityOhmMm2PerM: convert({
      value: num(inputs, 'resistivityOhmCmilPerFt'),
      from: 'ohm cmil/ft',
      to: 'ohm mm2/m',
    }),
  });
}

const cmil = (areaMm2: number): number => convert({ value: areaMm2, from: 'mm2', to: 'cmil' });

/** The next larger size of the family the row names. */
function choose(areaMm2: number, table: Value | undefined): object | undefined {
  if (table === 'AWG') return { gaugeAwg: awgNotBelow({ areaMm2, sizes: EVEN_AWG }) };
  if (table === 'solid AWG') return { gaugeAwg: awgNotBelow({ areaMm2 }) };
  if (table === 'SAE') return { gaugeSae: saeNotBelow({ areaCmil: cmil(areaMm2) }) };
  return undefined;
}

/** How thick, how long, how warm a run may be. */
export const run: readonly Shape[] = [
  {
    needs: ['currentA', 'lengthM', 'allowedDropV', 'resistivityOhmCmilPerFt'],
    may: ['lengthFt', 'lengthOneWayFt', 'sourceV', 'allowedDropFraction'],
    gives: ['areaMm2', 'areaCmil'],
    answer: (inputs) => {
      const areaMm2 = neededMm2(inputs);
      return { areaMm2, areaCmil: cmil(areaMm2) };
    },
  },
  {
    needs: ['currentA', 'lengthM', 'allowedDropV', 'resistivityOhmCmilPerFt', 'table'],
    may: ['lengthFt', 'sourceV', 'allowedDropFraction'],
    gives: ['gaugeAwg', 'gaugeSae'],
    answer: (inputs) => choose(neededMm2(inputs), inputs['table']),
  },
  {
    needs: ['areaCmil', 'table'],
    gives: ['gaugeAwg', 'gaugeSae'],
    answer: (inputs) => choose(convert({ value: num(inputs, 'areaCmil'), from: 'cmil', to: 'mm2' }), inputs['table']),
  },
  {
    // The thinnest size of the printed table whose resistance serves at 20 °C.
    needs: ['currentA', 'lengthFt', 'lengthM', 'allowedDropV', 'temperatureC', 'table'],
    may: ['sourceV'],
    gives: ['gaugeAwg'],
    answer: (inputs) => {
      if (inputs['table'] !== 'FAA Table 11-9' || inputs['temperatureC'] !== 20) return undefined;
      const mostOhmPerFt = num(inputs, 'allowedDropV') / (num(inputs, 'currentA') * num(inputs, 'lengthFt'));
      return tables.TABLE_11_9.find((row) => row.ohmPerKft / 1000 <= mostOhmPerFt * (1 + 1e-9));
    },
  },
  {
    needs: ['gaugeAwg', 'resistanceOhmPerFt', 'currentA', 'allowedDropV'],
    gives: ['lengthFt', 'lengthM'],
    answer: (inputs) => {
      const lengthM = longestRunM({
        resistanceOhmPerM: convert({ value: num(inputs, 'resistanceOhmPerFt'), from: 'ohm/ft', to: 'ohm/m' }),
        currentA: num(inputs, 'currentA'),
        allowedDropV: num(inputs, 'allowedDropV'),
      });
      return { lengthM, lengthFt: convert({ value: lengthM, from: 'm', to: 'ft' }) };
    },
  },
  {
    needs: ['temperatureC', 'lengthM'],
    gives: ['lengthM'],
    answer: (inputs) => ({
      lengthM: hotLengthM({ lengthM: num(inputs, 'lengthM'), temperatureC: num(inputs, 'temperatureC') }),
    }),
  },
  {
    needs: ['temperatureC', 'lengthFt'],
    gives: ['lengthFt'],
    answer: (inputs) => {
      const lengthM = convert({ value: num(inputs, 'lengthFt'), from: 'ft', to: 'm' });
      const hotM = hotLengthM({ lengthM, temperatureC: num(inputs, 'temperatureC') });
      return { lengthFt: convert({ value: hotM, from: 'm', to: 'ft' }) };
    },
  },
  {
    needs: ['ambientC', 'ratedC', 'currentA', 'maxCurrentA'],
    gives: ['temperatureC'],
    answer: (inputs) => ({
      temperatureC: loadedWireC({
        ambientC: num(inputs, 'ambientC'),
        ratedC: num(inputs, 'ratedC'),
        currentA: num(inputs, 'currentA'),
        maxCurrentA: num(inputs, 'maxCurrentA'),
      }),
    }),
  },
  {
    needs: ['sourceV', 'wiringOhm', 'loadOhm'],
    gives: ['currentA'],
    answer: (inputs) =>
      seriesCircuit({
        sourceV: num(inputs, 'sourceV'),
        wireOhmEach: num(inputs, 'wiringOhm') / 2,
        loadOhm: num(inputs, 'loadOhm'),
      }),
  },
  {
    needs: ['sourceV', 'loadOhm', 'wireOhmEach', 'temperatureC'],
    may: ['tempCoefficientPerK'],
    gives: ['loadV', 'dropPerWireV'],
    answer: (inputs) =>
      seriesCircuit({
        sourceV: num(inputs, 'sourceV'),
        loadOhm: num(inputs, 'loadOhm'),
        wireOhmEach: num(inputs, 'wireOhmEach'),
        temperatureC: num(inputs, 'temperatureC'),
        ...('tempCoefficientPerK' in inputs ? { tempCoefficientPerK: num(inputs, 'tempCoefficientPerK') } : {}),
      }),
  },
];
