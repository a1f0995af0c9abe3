import {
  bounceLx,
  lineFluxLm,
  pointError,
  pointFromM,
  pointLx,
  reflectanceOf,
  stripLx,
  tubeLx,
} from '../../../calc/index.ts';
import { num, type Shape, word } from '../row.ts';
import { list } from './fact.ts';

/** Light from points, strips and tubes, and back from walls. */
export const light: readonly Shape[] = [
  {
    needs: ['flux_lm_per_m', 'length_m', 'distance_m'],
    may: ['offsetAlong_m'],
    gives: ['illuminance_lx'],
    answer: (inputs) => ({
      illuminance_lx: stripLx({
        fluxLmPerM: num(inputs, 'flux_lm_per_m'),
        lengthM: num(inputs, 'length_m'),
        distanceM: num(inputs, 'distance_m'),
        ...(inputs['offsetAlong_m'] === undefined ? {} : { offsetAlongM: num(inputs, 'offsetAlong_m') }),
      }),
    }),
  },
  {
    needs: ['peakIntensity_cd'],
    gives: ['flux_lm'],
    answer: (inputs, row) => ({
      flux_lm: lineFluxLm({
        peakIntensityCd: num(inputs, 'peakIntensity_cd'),
        shape: /round|tube/.test(row.about) ? 'round diffusing tube' : 'flat strip',
      }),
    }),
  },
  {
    needs: ['flux_lm_per_m', 'distance_m'],
    gives: ['illuminance_lx'],
    answer: (inputs, row) =>
      /tube/.test(row.about)
        ? { illuminance_lx: tubeLx({ fluxLmPerM: num(inputs, 'flux_lm_per_m'), distanceM: num(inputs, 'distance_m') }) }
        : undefined,
  },
  {
    needs: ['intensity_cd', 'distance_m'],
    may: ['angle_deg'],
    gives: ['illuminance_lx'],
    answer: (inputs) => ({
      illuminance_lx: pointLx({
        intensityCd: num(inputs, 'intensity_cd'),
        distanceM: num(inputs, 'distance_m'),
        ...(inputs['angle_deg'] === undefined ? {} : { angleDeg: num(inputs, 'angle_deg') }),
      }),
    }),
  },
  {
    needs: ['length_m'],
    gives: ['minDistance_m'],
    answer: (inputs) => ({ minDistance_m: pointFromM({ lengthM: num(inputs, 'length_m') }) }),
  },
  {
    needs: ['flux_lm_per_m', 'length_m', 'distance_m'],
    gives: ['point_lx', 'strip_lx', 'over_percent'],
    answer: (inputs) => {
      const found = pointError({
        fluxLmPerM: num(inputs, 'flux_lm_per_m'),
        lengthM: num(inputs, 'length_m'),
        distanceM: num(inputs, 'distance_m'),
      });
      return { point_lx: found.pointLx, strip_lx: found.stripLx, over_percent: found.overPercent };
    },
  },
  {
    needs: ['surface'],
    gives: ['reflectance'],
    answer: (inputs) => {
      const { row } = reflectanceOf({ surface: word(inputs, 'surface') });
      return row === undefined ? undefined : { reflectance: row.reflectance };
    },
  },
  {
    needs: ['surface'],
    gives: ['reflectance_min', 'reflectance_max'],
    answer: (inputs) => {
      const rows = list(inputs, 'surface').map((surface) => reflectanceOf({ surface: String(surface) }).row);
      if (rows.some((row) => row?.min === undefined)) return undefined;
      return { reflectance_min: rows.map((row) => row?.min), reflectance_max: rows.map((row) => row?.max) };
    },
  },
  {
    needs: ['flux_lm', 'area_m2', 'reflectance'],
    gives: ['indirect_lx'],
    answer: (inputs) => ({
      indirect_lx: bounceLx({
        fluxLm: num(inputs, 'flux_lm'),
        areaM2: num(inputs, 'area_m2'),
        reflectance: num(inputs, 'reflectance'),
      }),
    }),
  },
];
