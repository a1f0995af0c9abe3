import { conductorResistance, convert, tables } from '../../../calc/index.ts';
import { num, type Shape, type Value } from '../row.ts';

/** Copper of NEC Table 8 is at this temperature [°C]. */
const TABLE_8_C = 75;

const table8 = ({ gaugeAwg, temperatureC }: Record<string, Value>) =>
  temperatureC === TABLE_8_C ? tables.TABLE_8.find((row) => row.gaugeAwg === gaugeAwg) : undefined;

const perKft = (inputs: Record<string, Value>, ohmPerKft: number | undefined): number | undefined =>
  ohmPerKft === undefined ? undefined : (ohmPerKft * num(inputs, 'lengthFt')) / 1000;

/** Resistance of a length in feet, as American tables print it. */
export const wireLength: readonly Shape[] = [
  {
    needs: ['gaugeAwg', 'lengthFt', 'temperatureC'],
    gives: ['resistanceOhm'],
    answer: (inputs) => {
      const { resistanceOhmPerM } = conductorResistance({
        gaugeAwg: num(inputs, 'gaugeAwg'),
        temperatureC: num(inputs, 'temperatureC'),
      });
      return { resistanceOhm: resistanceOhmPerM * convert({ value: num(inputs, 'lengthFt'), from: 'ft', to: 'm' }) };
    },
  },
  {
    // Stranded aircraft wire has its own area, printed beside its resistance.
    needs: ['gaugeAwg', 'lengthFt', 'temperatureC'],
    gives: ['resistanceOhm', 'areaCmil'],
    answer: (inputs) => {
      const row = tables.TABLE_11_9.find((each) => each.gaugeAwg === inputs['gaugeAwg']);
      if (row === undefined || inputs['temperatureC'] !== 20) return undefined;
      return { resistanceOhm: perKft(inputs, row.ohmPerKft), areaCmil: row.areaCmil };
    },
  },
  {
    needs: ['gaugeAwg', 'lengthFt', 'temperatureC', 'stranded', 'coated'],
    gives: ['resistanceOhm'],
    answer: (inputs) => {
      const row = table8(inputs);
      if (row === undefined) return undefined;
      const { stranded, coated } = inputs;
      const ohmPerKft = stranded
        ? coated
          ? row.coatedStrandedOhmPerKft
          : row.strandedOhmPerKft
        : coated
          ? row.coatedSolidOhmPerKft
          : row.solidOhmPerKft;
      const resistanceOhm = perKft(inputs, ohmPerKft);
      return resistanceOhm === undefined ? undefined : { resistanceOhm };
    },
  },
  {
    needs: ['gaugeAwg', 'lengthFt', 'temperatureC', 'coated'],
    gives: ['solidOhm', 'strandedOhm'],
    answer: (inputs) => {
      const row = table8(inputs);
      if (row === undefined) return undefined;
      const coated = inputs['coated'] === true;
      return {
        solidOhm: perKft(inputs, coated ? row.coatedSolidOhmPerKft : row.solidOhmPerKft),
        strandedOhm: perKft(inputs, coated ? row.coatedStrandedOhmPerKft : row.strandedOhmPerKft),
      };
    },
  },
];
