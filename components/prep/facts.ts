import type { SearchableSurface, SurfaceFacts } from '../../calc/index.ts';

/** What the selector has to know of a surface: what the planner reads, and what it is found by. */
export type PrepSurface = SurfaceFacts & SearchableSurface;

/** The careful way for whatever nobody has listed; the file that holds it. */
export const UNLISTED = 'unlisted';

/** The part of a surface's file that the selector reads, and no more: all of them go to a reader's device. */
export function factsOf(surface: PrepSurface): PrepSurface {
  const { id, name, words, looks, signs, energyClass, energy, porous, bond, bondWhy, harmful, procedure } = surface;
  const { plasticiserRisk, discolourRisk, solventStressRisk, siliconeTape, areaFactor } = surface;
  const { abrade, primer, stepWords, fixing, warmMaxC, expansion, cautions, sources } = surface;
  return {
    ...{ id, name, words, looks, signs, energyClass, energy, porous, bond, bondWhy, harmful, procedure },
    ...{ plasticiserRisk, discolourRisk, solventStressRisk, siliconeTape, areaFactor },
    ...{ abrade, primer, stepWords, fixing, warmMaxC, expansion, cautions, sources },
  };
}

/** Steps in a word each, in order, for a list: "Scuff, wipe, prime, tape". */
export function inShort({ abrade, primer, procedure, bond }: SurfaceFacts): string {
  const words = [
    ...(abrade.use === 'always' ? ['scuff'] : []),
    ...(procedure.length > 0 ? ['wipe'] : []),
    ...(primer?.use === 'always' ? ['prime'] : primer ? ['prime at need'] : []),
    ...(bond === 'no tape' ? ['fix mechanically'] : ['tape']),
  ];
  const text = words.join(', ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}
