import type { Cited } from './cited.ts';

/**
 * Safety figures that pages and plans quote. They caution; the maker's text, the safety sheet and local law come first.
 */

/** Fume of rosin flux. No safe level is known; it can cause asthma. */
export const ROSIN_FUME: Cited & { twaMgPerM3: number; stelMgPerM3: number } = {
  twaMgPerM3: 0.05,
  stelMgPerM3: 0.15,
  source: 'HSE SIM 03/2002/26',
  at: 'paragraph 3',
  read: 'seen',
};

/** Lead in air. At the bench it is swallowed more than breathed: wash before eating, no food there. */
export const LEAD: Cited & { pelUgPerM3: number; actionUgPerM3: number; shiftH: number } = {
  pelUgPerM3: 50,
  actionUgPerM3: 30,
  shiftH: 8,
  source: 'OSHA figures on a state health page and a national laboratory course',
  at: 'text',
  read: 'seen',
};

/** Wait before working near airbags when the vehicle maker's text is not at hand. */
export const AIRBAG_WAIT: Cited & { minutes: number; rule: string } = {
  minutes: 10,
  rule: 'vehicle maker text first; else at least 10 min after battery disconnect',
  source: 'common practice, no source; covers every maker value seen',
  at: '-',
  read: 'common practice',
};

/** What makers printed: why one figure from one vehicle is no rule for another. */
export const AIRBAG_WAIT_EXAMPLES: readonly (Cited & { vehicle: string; waitS: number })[] = (
  [
    ['2011 hybrid hatchback', 90],
    ['2003 off-road car', 600],
    ['2002 coupe', 60],
    ['2003 off-road car, another make', 30],
    ['1997 coupe', 600],
  ] as const
).map(([vehicle, waitS]) => ({
  vehicle,
  waitS,
  source: `vehicle maker service text (${vehicle})`,
  at: 'airbag precautions',
  read: 'seen',
}));

/** Rules near airbags; a memory saver can power the airbag unit. */
export const AIRBAG_RULES: Cited & {
  noImpact: boolean;
  noHeatAboveC: number;
  noRepair: boolean;
  noMemorySaver: boolean;
} = {
  noImpact: true,
  noHeatAboveC: 93,
  noRepair: true,
  noMemorySaver: true,
  source: 'vehicle maker service texts (two makes)',
  at: 'airbag precautions',
  read: 'seen',
};

/** High-voltage cables. Installers here do not work on these at all. */
export const HIGH_VOLTAGE: Cited & {
  cableColour: string;
  alsoColours: readonly string[];
  glovesClass: string;
  glovesV: number;
  meter: string;
  touch: boolean;
} = {
  cableColour: 'orange',
  alsoColours: ['blue', 'yellow'],
  glovesClass: '0',
  glovesV: 1000,
  meter: 'CAT III',
  touch: false,
  source: 'carmaker high-voltage safety page; study guide page (colours)',
  at: 'text',
  read: 'seen',
};

/** Above these a system counts as high voltage. */
export const HIGH_VOLTAGE_ABOVE: Cited & { dcV: number; acV: number } = {
  dcV: 60,
  acV: 30,
  source: 'web guide (60 V DC seen); the AC figure and UN R100 recalled',
  at: 'text',
  read: 'seen',
};

/** Hydrogen from charging lead-acid batteries. */
export const BATTERY_HYDROGEN: Cited & { lelPercent: number; uelPercent: number; keepBelowPercent: number } = {
  lelPercent: 4.1,
  uelPercent: 72,
  keepBelowPercent: 1,
  source: 'occupational health centre battery page; battery room page',
  at: 'text',
  read: 'seen',
};

/** Working near batteries. */
export const BATTERY_WORK: Cited & { do: readonly string[]; dont: readonly string[] } = {
  do: ['eye protection', 'insulated single-ended tools', 'cover terminals', 'empty pockets', 'ventilate', 'wash hands'],
  dont: ['smoke', 'wear metal jewellery', 'overcharge'],
  source: 'HSE leaflet on electric storage batteries',
  at: 'lists',
  read: 'seen',
};

/** Order of disconnecting, for negative-earth vehicles. Some need a sleep wait first: maker's text. */
export const BATTERY_ORDER: Cited & { off: string; on: string } = {
  off: 'negative first',
  on: 'negative last',
  source: 'leisure vehicle battery guide; a vehicle maker text (earth lead first)',
  at: 'text',
  read: 'seen',
};

/** Lithium iron phosphate cells are not charged below this [°C]; it takes a management system that cuts off. */
export const LITHIUM_CHARGE_FROM: Cited & { cellC: number } = {
  cellC: 0,
  source: 'trailer maker forum post; battery guides',
  at: 'text',
  read: 'seen',
};

/** Lithium battery in a living space; local law decides. */
export const LITHIUM_VENT: Cited & { gasesMustNotEnterHabitableSpace: boolean } = {
  gasesMustNotEnterHabitableSpace: true,
  source: 'report on AS/NZS 3001.2:2022',
  at: 'text',
  read: 'seen',
};

/** Visible flash rates that can trigger seizures. Dimming at hundreds of hertz is not a flash. */
export const FLASH_RATES: Cited & { minHz: number; maxHz: number; someUpToHz: number } = {
  minHz: 3,
  maxHz: 30,
  someUpToHz: 60,
  source: 'Epilepsy Society page',
  at: 'rates paragraph',
  read: 'seen',
};

/** Colours of light on the outside of a vehicle: a convention with exceptions, so always the local rules. */
export const ROAD_COLOURS: Cited & {
  front: readonly string[];
  side: readonly string[];
  rear: readonly string[];
  other: string;
} = {
  front: ['white', 'selective yellow'],
  side: ['amber'],
  rear: ['red'],
  other: 'emergency vehicles only',
  source: 'encyclopaedia text on the 1949 and 1968 conventions; a national inspection rule page',
  at: 'text',
  read: 'seen',
};

/** Dyne fluids. */
export const DYNE_FLUID_HAZARD: Cited & { hazard: string } = {
  hazard: '2-ethoxyethanol and formamide: reproductive harm; gloves, ventilation; not for pregnant workers',
  source: 'test-fluid procedure page; plastics consultancy page',
  at: 'caution boxes',
  read: 'seen',
};

/** Soldering iron, heat gun and a flammable wipe. */
export const WIPE_AND_HEAT: Cited & { waitAfterIpa: string; flashC: number } = {
  waitAfterIpa: 'until dry and smell gone',
  flashC: 12,
  source: 'common practice, no source',
  at: '-',
  read: 'common practice',
};

/** Bright strips: do not stare into bare high-power strips. */
export const PHOTOBIOLOGY: Cited & { standard: string; groups: readonly string[] } = {
  standard: 'IEC 62471',
  groups: ['exempt', '1', '2', '3'],
  source: 'IEC 62471',
  at: 'title recalled',
  read: 'memory',
};
