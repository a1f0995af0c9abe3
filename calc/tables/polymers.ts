import type { Cited } from './cited.ts';

/**
 * Critical surface tension [mN/m] and water contact angle [°] of untreated polymers, as one survey prints them.
 *
 * The two columns rank polymers differently (polycarbonate against acrylic and polyamide 66), so a ranking uses one
 * column, never a mix. Clean laboratory samples: additives, filler and roughness move an angle by 10° or more.
 */
export interface PolymerRow {
  id: string;
  name: string;
  criticalMnPerM: number;
  waterAngleDeg: number;
}

/** The survey that the rows are taken from. */
export const POLYMER_SURVEY: Cited = {
  source: 'table "Critical Surface Tension and Contact Angle with Water for Various Polymers"',
  at: 'rows by polymer name',
  read: 'seen',
};

const row = (id: string, name: string, criticalMnPerM: number, waterAngleDeg: number): PolymerRow => ({
  id,
  name,
  criticalMnPerM,
  waterAngleDeg,
});

/** Plastics with surface energy and water contact angle. */
export const POLYMERS: readonly PolymerRow[] = [
  row('butyl', 'Polyisobutylene (butyl rubber)', 27, 112.1),
  row('phfp', 'Polyhexafluoropropylene', 16.9, 112),
  row('ptfe', 'Polytetrafluoroethylene', 19.4, 109.2),
  row('paraffin', 'Paraffin', 24.8, 108.9),
  row('hexatriacontane', 'Hexatriacontane', 20.6, 108.5),
  row('fep', 'Fluorinated ethylene propylene', 19.1, 108.5),
  row('ptbma', 'Poly t-butyl methacrylate', 18.1, 108.1),
  row('silicone', 'Polydimethylsiloxane (silicone)', 20.1, 107.2),
  row('pp', 'Polypropylene', 30.5, 102.1),
  row('pctfe', 'Polychlorotrifluoroethylene', 30.8, 99.3),
  row('pe', 'Polyethylene', 31.6, 96),
  row('polybutadiene', 'Polybutadiene', 29.3, 96),
  row('pa1010', 'Polyamide 10,10', 32, 94),
  row('polytrifluoroethylene', 'Polytrifluoroethylene', 26.5, 92),
  row('pnbma', 'Poly n-butyl methacrylate', 29.8, 91),
  row('pvdf', 'Polyvinylidene fluoride', 31.6, 89),
  row('ps', 'Polystyrene', 34, 87.4),
  row('pa99', 'Polyamide 9,9', 34, 86),
  row('pa88', 'Polyamide 8,8', 34, 86),
  row('pvc', 'Polyvinyl chloride', 37.9, 85.6),
  row('pvf', 'Polyvinyl fluoride', 32.7, 84.5),
  row('pc', 'Polycarbonate', 44, 82),
  row('pa11', 'Polyamide 11', 35.6, 82),
  row('abs', 'Acrylonitrile butadiene styrene', 38.5, 80.9),
  row('pps', 'Polyphenylene sulfide', 38, 80.3),
  row('pvdc', 'Polyvinylidene chloride', 40.2, 80),
  row('pom', 'Polyoxymethylene (acetal)', 37, 76.8),
  row('epoxy', 'Epoxies', 44.5, 76.3),
  row('pet', 'Polyethylene terephthalate', 39, 72.5),
  row('pa12', 'Polyamide 12', 37.1, 72.4),
  row('pmma', 'Polymethyl methacrylate (acrylic)', 37.5, 70.9),
  row('psu', 'Polysulfone', 42.1, 70.5),
  row('pa77', 'Polyamide 7,7', 43, 70),
  row('pa66', 'Polyamide 6,6', 42.2, 68.3),
  row('peo', 'Polyethylene oxide', 43, 63),
  row('pa6', 'Polyamide 6', 43.9, 62.6),
  row('pvac', 'Polyvinyl acetate', 35.3, 60.6),
  row('pvoh', 'Polyvinyl alcohol', 37, 51),
];
