import { knownSurfaces } from '../../../site/conformance/materials/surfaces.ts';

/** Facts of every surface in the workshop's content, in order of id. */
export const surfaces = knownSurfaces().map(({ facts }) => facts);

export const surface = (id: string) => {
  const found = surfaces.find((each) => each.id === id);
  if (found === undefined) throw new RangeError(`no surface "${id}"`);
  return found;
};
