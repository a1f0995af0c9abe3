import {
  contactAngle,
  fowkes,
  interfaceWork,
  LIQUID_RANGES,
  LIQUIDS,
  type LiquidDrop,
  METHOD_SPREAD,
  owensWendt,
  rankByAngle,
  type SolidSurface,
  substrateFor,
  type TestLiquid,
  workOfAdhesion,
} from '../../../calc/index.ts';
import { num, type Row, type Shape, type Value, word } from '../row.ts';
import { each, fact } from './fact.ts';

type Inputs = Record<string, Value>;

function record(value: Value | undefined, what: string): Record<string, Value> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new TypeError(`${what} is ${JSON.stringify(value)}, expected a record`);
  }
  return value as Record<string, Value>;
}

const liquid = (value: Value | undefined): TestLiquid => {
  const parts = record(value, 'liquid');
  return {
    name: word(parts, 'name'),
    dispersiveMnPerM: num(parts, 'dispersive_mN_m'),
    polarMnPerM: num(parts, 'polar_mN_m'),
  };
};

const solid = (parts: Record<string, Value>): SolidSurface => ({
  dispersiveMjPerM2: num(parts, 'dispersive_mJ_m2'),
  polarMjPerM2: num(parts, 'polar_mJ_m2'),
});

/** Drops of a row: each liquid with the angle that is given under its name. */
function drops(inputs: Inputs): LiquidDrop[] {
  const angles = record(inputs['angles_deg'], 'angles_deg');
  return (inputs['liquids'] as readonly Value[]).map((value) => {
    const drop = liquid(value);
    return { liquid: drop, angleDeg: num(angles, drop.name ?? '') };
  });
}

function energy(inputs: Inputs) {
  const given = drops(inputs);
  const method = word(inputs, 'method');
  if (method === 'owens-wendt' || method === 'owrk-regression') return owensWendt({ drops: given });
  if (method !== 'fowkes') return undefined;
  const apolar = given.find((drop) => drop.liquid.polarMnPerM === 0);
  const polar = given.find((drop) => drop.liquid.polarMnPerM > 0);
  return apolar === undefined || polar === undefined ? undefined : fowkes({ apolar, polar });
}

/** A liquid by name; where sources split it differently, by the source and place a reader is pointed at. */
function liquidRow(inputs: Inputs, row: Row) {
  const named = LIQUIDS.filter((each) => each.liquid === word(inputs, 'liquid'));
  if (named.length < 2) return named[0];
  const cited = named.filter(({ source }) => row.source.replaceAll('"', '').includes(source.replaceAll('"', '')));
  return cited.find(({ at }) => near(at, row.at)) ?? cited[0];
}

/** Two ways to write one place in a source: the same words but for "ref" and "reference" and commas. */
const near = (a: string, b: string): boolean => plain(a) === plain(b);
const plain = (at: string): string =>
  at.replaceAll('reference', 'ref').replaceAll(',', '').replace(/[()]/g, '').replace(/^row /, '').trim();

/** Wetting, work of adhesion and surface energy. */
export const adhesion: readonly Shape[] = [
  {
    needs: ['method', 'liquids', 'angles_deg'],
    gives: [
      'dispersive_mJ_m2',
      'polar_mJ_m2',
      'total_mJ_m2',
      'polarRoot',
      'dispersive_if_clamped_mJ_m2',
      'dispersive_if_refit_mJ_m2',
      'flag',
    ],
    answer: (inputs) => {
      const found = energy(inputs);
      if (found === undefined) return undefined;
      return {
        dispersive_mJ_m2: found.dispersiveMjPerM2,
        polar_mJ_m2: found.polarMjPerM2,
        total_mJ_m2: found.totalMjPerM2,
        polarRoot: found.polarRoot,
        dispersive_if_clamped_mJ_m2: found.dispersiveMjPerM2,
        dispersive_if_refit_mJ_m2: found.dispersiveIfRefitMjPerM2,
        flag: found.flag,
      };
    },
  },
  {
    needs: ['dispersive_mJ_m2', 'polar_mJ_m2', 'liquid'],
    gives: ['angle_deg', 'cosine', 'flag'],
    answer: (inputs) => {
      const { angleDeg, cosine, flag } = contactAngle({ solid: solid(inputs), liquid: liquid(inputs['liquid']) });
      return { angle_deg: angleDeg, cosine, flag };
    },
  },
  {
    needs: ['solid', 'liquid'],
    gives: ['workOfAdhesion_mJ_m2', 'interfacialTension_mJ_m2', 'spreading_mJ_m2'],
    answer: (inputs) => {
      const found = interfaceWork({
        solid: solid(record(inputs['solid'], 'solid')),
        liquid: liquid(inputs['liquid']),
      });
      return {
        workOfAdhesion_mJ_m2: found.workMjPerM2,
        interfacialTension_mJ_m2: found.interfacialMjPerM2,
        spreading_mJ_m2: found.spreadingMjPerM2,
      };
    },
  },
  {
    needs: ['liquidTension_mN_m'],
    may: ['angle_deg', 'angles_deg'],
    gives: ['workOfAdhesion_mJ_m2'],
    answer: (inputs) => {
      const name = inputs['angle_deg'] === undefined ? 'angles_deg' : 'angle_deg';
      if (inputs[name] === undefined) return undefined;
      const liquidTensionMnPerM = num(inputs, 'liquidTension_mN_m');
      return {
        workOfAdhesion_mJ_m2: each(
          inputs,
          name,
          (angle) => workOfAdhesion({ liquidTensionMnPerM, angleDeg: angle as number }).workMjPerM2,
        ),
      };
    },
  },
  {
    needs: ['angle_deg'],
    gives: ['orderWeakToStrong'],
    answer: (inputs) => {
      const angles = record(inputs['angle_deg'], 'angle_deg');
      const surfaces = Object.keys(angles).map((id) => ({ id, angleDeg: num(angles, id) }));
      return { orderWeakToStrong: rankByAngle({ surfaces }) };
    },
  },
  {
    needs: ['liquidTension_mN_m'],
    gives: ['substrateMin_mN_m', 'substrateComfort_mN_m'],
    answer: (inputs) => {
      const found = substrateFor({ liquidTensionMnPerM: num(inputs, 'liquidTension_mN_m') });
      return { substrateMin_mN_m: found.minMnPerM, substrateComfort_mN_m: found.comfortMnPerM };
    },
  },
  fact(/how far models differ/, {
    neumann_vs_owens_wendt_max_percent: METHOD_SPREAD.neumannAgainstOwensWendtMaxPercent,
    owens_wendt_vs_acid_base_max_percent: METHOD_SPREAD.owensWendtAgainstAcidBaseMaxPercent,
  }),
  {
    needs: ['liquid'],
    may: ['temperature_C'],
    gives: ['total_mN_m', 'dispersive_mN_m', 'polar_mN_m'],
    answer: (inputs, row) => {
      const found = liquidRow(inputs, row);
      // The table is at 20 °C; a row for another temperature is another question.
      if (found === undefined || (inputs['temperature_C'] !== undefined && inputs['temperature_C'] !== 20)) {
        return undefined;
      }
      return {
        total_mN_m: found.totalMnPerM,
        dispersive_mN_m: found.dispersiveMnPerM,
        polar_mN_m: found.polarMnPerM,
      };
    },
  },
  {
    needs: ['liquid'],
    gives: ['min_mN_m', 'max_mN_m'],
    answer: (inputs) => {
      const found = LIQUID_RANGES.find((range) => range.liquid === word(inputs, 'liquid'));
      return found === undefined ? undefined : { min_mN_m: found.minMnPerM, max_mN_m: found.maxMnPerM };
    },
  },
];
