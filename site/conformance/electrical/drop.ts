import { convert, tables, voltageDropV } from '../../../calc/index.ts';
import { num, type Shape } from '../row.ts';

/** Volts lost along a run, and how many may be lost. */
export const drop: readonly Shape[] = [
  {
    // A printed resistance beside a length: the drop is their product, whatever the gauge is called.
    needs: ['lengthFt', 'lengthM', 'currentA', 'resistanceOhmPerFt', 'gaugeAwg'],
    may: ['resistanceOhmPerM'],
    gives: ['dropV'],
    answer: (inputs) => {
      const ohmPerM = convert({ value: num(inputs, 'resistanceOhmPerFt'), from: 'ohm/ft', to: 'ohm/m' });
      return { dropV: num(inputs, 'currentA') * ohmPerM * num(inputs, 'lengthM') };
    },
  },
  {
    // Worked from resistivity, not from a ceiling: the two must not be tested against each other.
    needs: ['currentA', 'lengthM', 'areaMm2', 'temperatureC'],
    gives: ['dropV'],
    answer: (inputs) => ({
      dropV: voltageDropV({
        currentA: num(inputs, 'currentA'),
        lengthM: num(inputs, 'lengthM'),
        areaMm2: num(inputs, 'areaMm2'),
        temperatureC: num(inputs, 'temperatureC'),
        conductor: 'annealed',
      }),
    }),
  },
  {
    needs: ['systemV'],
    gives: ['continuousV', 'intermittentV'],
    answer: ({ systemV }) => tables.TABLE_11_6.find((row) => row.systemV === systemV),
  },
  {
    needs: ['part'],
    gives: ['maxDropFraction'],
    answer: ({ part }) => tables.DROP_LIMITS.find((row) => row.part === part),
  },
  {
    needs: ['circuit'],
    gives: ['maxDropFraction'],
    answer: ({ circuit }) => tables.DROP_LIMITS.find((row) => row.part === circuit),
  },
  {
    needs: ['part'],
    gives: ['maxResistanceOhm'],
    answer: ({ part }) => tables.GROUND_PATHS.find((row) => row.part === part),
  },
  {
    needs: ['designV'],
    gives: ['minLampV'],
    answer: (inputs) => ({ minLampV: tables.LEAST_LAMP_SHARE.share * num(inputs, 'designV') }),
  },
  {
    needs: ['protectionA', 'systemV'],
    gives: ['maxDropV', 'minWireRatingA'],
    answer: (inputs) => ({
      maxDropV: tables.FIRE_APPARATUS.maxDropFraction * num(inputs, 'systemV'),
      minWireRatingA: tables.FIRE_APPARATUS.wireShare * num(inputs, 'protectionA'),
    }),
  },
];
