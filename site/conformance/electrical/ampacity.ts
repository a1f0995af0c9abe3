import { allowedCurrent, ambientFactor, bundleFactor, deratedA, tables } from '../../../calc/index.ts';
import { num, type Shape } from '../row.ts';

/** Current a wire may carry, and the factors on it. */
export const ampacity: readonly Shape[] = [
  {
    needs: ['gaugeAwg', 'insulationC', 'ambientC', 'engineSpace'],
    gives: ['allowedA'],
    answer: (inputs) =>
      allowedCurrent({
        gaugeAwg: num(inputs, 'gaugeAwg'),
        insulationC: num(inputs, 'insulationC'),
        ambientC: num(inputs, 'ambientC'),
        engineSpace: inputs['engineSpace'] === true,
      }) ?? undefined,
  },
  {
    needs: ['gaugeAwg', 'insulationC'],
    gives: ['outsideA', 'insideA'],
    answer: (inputs) => {
      const wire = { gaugeAwg: num(inputs, 'gaugeAwg'), insulationC: num(inputs, 'insulationC') };
      const outside = allowedCurrent(wire);
      const inside = allowedCurrent({ ...wire, engineSpace: true });
      return outside && inside ? { outsideA: outside.allowedA, insideA: inside.allowedA } : undefined;
    },
  },
  {
    needs: ['gaugeAwg', 'insulationC', 'conductors'],
    gives: ['outsideA', 'insideEngineSpaceA'],
    answer: (inputs) => {
      const wire = {
        gaugeAwg: num(inputs, 'gaugeAwg'),
        insulationC: num(inputs, 'insulationC'),
        bundled: num(inputs, 'conductors'),
      };
      const outside = allowedCurrent(wire);
      const inside = allowedCurrent({ ...wire, engineSpace: true });
      return outside && inside ? { outsideA: outside.allowedA, insideEngineSpaceA: inside.allowedA } : undefined;
    },
  },
  {
    needs: ['insulationC', 'ambientC', 'baseAmbientC'],
    gives: ['factor'],
    answer: (inputs) => ({
      factor: ambientFactor({
        insulationC: num(inputs, 'insulationC'),
        ambientC: num(inputs, 'ambientC'),
        baseAmbientC: num(inputs, 'baseAmbientC'),
      }),
    }),
  },
  {
    // No base named: the engine-space note, whose factors stand for one air temperature.
    needs: ['insulationC', 'ambientC'],
    gives: ['factor'],
    answer: ({ insulationC, ambientC }) =>
      tables.ENGINE_SPACE_183_425.find((row) => row.insulationC === insulationC && row.ambientC === ambientC),
  },
  {
    // One step of a table: both ends of it must carry the same factor.
    needs: ['conductorsFrom', 'conductorsTo'],
    gives: ['factor'],
    answer: (inputs, { source }) => {
      const table = /\bNEC\b/.test(source) ? tables.BUNDLE_NEC : tables.BUNDLE_183_425;
      const factor = bundleFactor({ conductors: num(inputs, 'conductorsFrom'), table });
      const last = bundleFactor({ conductors: num(inputs, 'conductorsTo'), table });
      return { factor: factor === last ? factor : Number.NaN };
    },
  },
  {
    needs: ['chartA', 'altitudeFactor', 'bundleFactor', 'bundleWires', 'loadShare'],
    gives: ['afterAltitudeA', 'allowedA'],
    answer: (inputs) => {
      const afterAltitudeA = deratedA({
        currentA: num(inputs, 'chartA'),
        factors: [num(inputs, 'altitudeFactor')],
      });
      return {
        afterAltitudeA,
        allowedA: deratedA({ currentA: afterAltitudeA, factors: [num(inputs, 'bundleFactor')] }),
      };
    },
  },
  {
    needs: ['gaugeAwg', 'ambientC'],
    gives: ['at105C_A', 'at150C_A', 'at200C_A'],
    answer: ({ gaugeAwg, ambientC }) => {
      const row = tables.TABLE_11_9.find((each) => each.gaugeAwg === gaugeAwg);
      if (row === undefined || ambientC !== 70) return undefined;
      return { at105C_A: row.at105CA, at150C_A: row.at150CA, at200C_A: row.at200CA };
    },
  },
  {
    needs: ['gaugeAwg', 'ambientC', 'installation'],
    gives: ['at60C_A', 'at75C_A', 'at90C_A'],
    answer: ({ gaugeAwg, ambientC, installation }) => {
      const row = tables.FREE_AIR.find((each) => each.gaugeAwg === gaugeAwg);
      if (row === undefined || ambientC !== 30 || installation !== 'free air') return undefined;
      return { at60C_A: row.at60CA, at75C_A: row.at75CA, at90C_A: row.at90CA };
    },
  },
  {
    needs: ['installation'],
    gives: ['gaugeAwg'],
    answer: ({ installation }) => tables.LEAST_GAUGES.find((row) => row.place === installation),
  },
  {
    needs: ['circuit'],
    gives: ['gaugeAwg'],
    answer: ({ circuit }) => tables.LEAST_GAUGES.find((row) => row.place === circuit),
  },
  {
    needs: ['installation'],
    gives: ['singleMm2', 'inSheathMm2'],
    answer: ({ installation }) => tables.LEAST_AREAS.find((row) => row.place === installation),
  },
];
