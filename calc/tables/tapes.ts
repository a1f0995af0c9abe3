import { type Cited, COMMON_PRACTICE } from './cited.ts';

/** Tape by class, never by brand: what its adhesive can do. */
export interface TapeClass extends Cited {
  id: string;
  name: string;
  /** Does not go on below this [°C]. */
  applyFromC: number;
  /** Long-term heat it takes [°C]. */
  holdsToC: number;
  /** Wets low-energy plastic without a promoter. */
  lowEnergy: boolean;
  /** Holds on silicone. */
  silicone: boolean;
  /** How it stands plasticiser: the softener that comes out of soft vinyl and rubber. */
  plasticiser: 'poor' | 'fair';
  note: string;
}

/** Heat limits are what the trade expects of a class (common practice): the tape's own sheet decides. */
export const TAPES: readonly TapeClass[] = [
  {
    id: 'acrylic-foam',
    name: 'acrylic foam tape',
    applyFromC: 10,
    holdsToC: 90,
    lowEnergy: false,
    silicone: false,
    plasticiser: 'fair',
    note: 'The usual mounting tape: takes up unevenness, builds up over three days.',
    ...COMMON_PRACTICE,
  },
  {
    id: 'acrylic-thin',
    name: 'thin double-sided acrylic tape',
    applyFromC: 10,
    holdsToC: 90,
    lowEnergy: false,
    silicone: false,
    plasticiser: 'fair',
    note: 'What is on the back of most strips. Needs a flat, smooth face; takes up nothing.',
    ...COMMON_PRACTICE,
  },
  {
    id: 'low-energy-acrylic',
    name: 'acrylic tape made for low-energy plastic',
    applyFromC: 10,
    holdsToC: 90,
    lowEnergy: true,
    silicone: false,
    plasticiser: 'fair',
    note: 'Grips polypropylene and its like without a promoter.',
    ...COMMON_PRACTICE,
  },
  {
    id: 'rubber',
    name: 'rubber-based tape',
    applyFromC: 10,
    holdsToC: 60,
    lowEnergy: true,
    silicone: false,
    plasticiser: 'poor',
    note: 'Grabs at once, lets go in heat and softens with plasticiser: for holding while something else sets.',
    ...COMMON_PRACTICE,
  },
  {
    id: 'silicone',
    name: 'silicone adhesive tape',
    applyFromC: 10,
    holdsToC: 150,
    lowEnergy: true,
    silicone: true,
    plasticiser: 'fair',
    note: 'The one that holds on silicone. Leaves a film nothing else sticks to.',
    ...COMMON_PRACTICE,
  },
];

/** Ids of the tape classes, in the order of the list. */
export const TAPE_IDS = TAPES.map(({ id }) => id);

/** Where a part sits. */
export interface Place extends Cited {
  id: string;
  name: string;
  /** Highest temperature to design for [°C]. */
  highestC: number;
  outside: boolean;
  /** Lowest surface temperature at which tape for this place goes on [°C]; exterior trim makers ask for more than tape makers. */
  applyFromC: number;
}

/** Places on a vehicle, each with the air it sees. */
export const PLACES: readonly Place[] = [
  {
    id: 'cabin',
    name: 'cabin',
    highestC: 85,
    outside: false,
    applyFromC: 10,
    source: 'public design-condition template in an open repository',
    at: 'environment list, interior',
    read: 'seen',
  },
  {
    id: 'load space',
    name: 'load space',
    highestC: 85,
    outside: false,
    applyFromC: 10,
    source: 'public design-condition template in an open repository',
    at: 'environment list, interior',
    read: 'seen',
  },
  {
    id: 'engine bay',
    name: 'engine bay',
    highestC: 125,
    outside: false,
    applyFromC: 10,
    source: 'public design-condition template in an open repository',
    at: 'environment list, engine bay',
    read: 'seen',
  },
  {
    id: 'outside',
    name: 'outside of the body',
    highestC: 85,
    outside: true,
    applyFromC: 18,
    source: 'trim maker web page (frequent questions) for 18 °C; 85 °C for a dark panel in the sun is common practice',
    at: 'temperature answer',
    read: 'seen',
  },
  {
    id: 'motorcycle',
    name: 'motorcycle',
    highestC: 85,
    outside: true,
    applyFromC: 18,
    source: 'as outside; common practice, no source',
    at: '-',
    read: 'common practice',
  },
];

/** Ids of the places, in the order of the list. */
export const PLACE_IDS = PLACES.map(({ id }) => id);

/** What is on the surface before work starts. */
export const SOILS = ['light', 'oil', 'wax', 'oxide', 'none'] as const;
export type Soil = (typeof SOILS)[number];
