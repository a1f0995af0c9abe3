import {
  adiabaticAreaMm2,
  adiabaticK,
  adiabaticTimeS,
  allowedCurrent,
  awgName,
  fuseProtects,
  largestFuseByRule,
  meltingCurrentA,
  tables,
} from '../../../calc/index.ts';
import { num, type Shape, type Value } from '../row.ts';

/** The wires of a row, each with its share of the published table. */
function wiresOf(inputs: Record<string, Value>): { name: string; limitA: number }[] | undefined {
  const gauges = inputs['gaugesAwg'];
  if (!Array.isArray(gauges)) return undefined;
  return gauges.map((each: Value) => {
    const gaugeAwg = num({ each }, 'each');
    const allowed = allowedCurrent({
      gaugeAwg,
      insulationC: num(inputs, 'insulationC'),
      ambientC: num(inputs, 'ambientC'),
    });
    if (allowed === null) throw new RangeError(`no table cell for gauge ${gaugeAwg}`);
    return { name: awgName({ gaugeAwg }), limitA: allowed.allowedA * num(inputs, 'shareOfTable') };
  });
}

/** What a wire stands, and the fuse that spares it. */
export const protection: readonly Shape[] = [
  {
    needs: ['conductor', 'startC', 'endC'],
    gives: ['kAS05PerMm2'],
    answer: (inputs) => {
      const metal = tables.ADIABATIC_CONSTANTS.find((row) => row.metal === inputs['conductor'])?.metal;
      if (metal === undefined) return undefined;
      return adiabaticK({ conductor: metal, startC: num(inputs, 'startC'), endC: num(inputs, 'endC') });
    },
  },
  {
    needs: ['areaMm2', 'kAS05PerMm2', 'currentA'],
    gives: ['timeS'],
    answer: (inputs) => ({
      timeS: adiabaticTimeS({
        areaMm2: num(inputs, 'areaMm2'),
        kAS05PerMm2: num(inputs, 'kAS05PerMm2'),
        currentA: num(inputs, 'currentA'),
      }),
    }),
  },
  {
    needs: ['currentA', 'timeS', 'kAS05PerMm2'],
    gives: ['areaMm2'],
    answer: (inputs) => ({
      areaMm2: adiabaticAreaMm2({
        currentA: num(inputs, 'currentA'),
        timeS: num(inputs, 'timeS'),
        kAS05PerMm2: num(inputs, 'kAS05PerMm2'),
      }),
    }),
  },
  {
    needs: ['gaugeAwg', 'insulationC', 'systemV'],
    gives: ['tableA', 'maxFuseA'],
    answer: (inputs) =>
      largestFuseByRule({
        gaugeAwg: num(inputs, 'gaugeAwg'),
        insulationC: num(inputs, 'insulationC'),
        systemV: num(inputs, 'systemV'),
      }) ?? undefined,
  },
  {
    needs: ['rule'],
    gives: ['maxShare'],
    answer: ({ rule }) => tables.NEXT_SIZE_SHARES.find((row) => row.rule === rule),
  },
  {
    needs: ['gaugeAwg', 'conductors'],
    gives: ['ampacityA', 'maxFuseA'],
    answer: ({ gaugeAwg, conductors }) => {
      const row = tables.TRAILING_FUSES.find((each) => each.gaugeAwg === gaugeAwg);
      if (row === undefined) return undefined;
      if (conductors === 2) return { ampacityA: row.twoAmpacityA, maxFuseA: row.twoMaxFuseA };
      if (conductors !== 1 || row.singleAmpacityA === undefined) return undefined;
      return { ampacityA: row.singleAmpacityA, maxFuseA: row.singleMaxFuseA };
    },
  },
  {
    needs: ['gaugeAwg'],
    gives: ['singleAmpacityA', 'singleMaxFuseA', 'twoAmpacityA', 'twoMaxFuseA'],
    answer: ({ gaugeAwg }) => tables.TRAILING_FUSES.find((row) => row.gaugeAwg === gaugeAwg),
  },
  {
    needs: ['gaugeAwg'],
    gives: ['maxInstantA'],
    answer: ({ gaugeAwg }) => tables.TRAILING_BREAKERS.find((row) => row.gaugeAwg === gaugeAwg),
  },
  {
    needs: ['gaugeAwg'],
    gives: ['breakerA', 'fuseA'],
    answer: ({ gaugeAwg }) => tables.TABLE_11_3.find((row) => row.gaugeAwg === gaugeAwg),
  },
  {
    needs: ['gaugeAwg'],
    gives: ['maxFuseA'],
    answer: ({ gaugeAwg }) => tables.SMALL_CONDUCTORS.find((row) => row.gaugeAwg === gaugeAwg),
  },
  {
    needs: ['diameterMm'],
    may: ['gaugeAwg'],
    gives: ['fusingA'],
    answer: (inputs) => ({ fusingA: meltingCurrentA({ diameterMm: num(inputs, 'diameterMm') }) }),
  },
  {
    needs: ['fuseA', 'gaugesAwg', 'insulationC', 'ambientC', 'shareOfTable'],
    gives: ['protected', 'limitA'],
    answer: (inputs) => {
      const wires = wiresOf(inputs);
      return wires === undefined ? undefined : fuseProtects({ fuseA: num(inputs, 'fuseA'), wires });
    },
  },
];
