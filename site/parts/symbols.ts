import type { KINDS_OF_WORK } from '../schemas/guide.ts';

/** Symbol of a kind of work. */
export const WORK_SYMBOL: Readonly<Record<(typeof KINDS_OF_WORK)[number], string>> = {
  lighting: 'lamp',
  warning: 'buzzer',
  power: 'socket',
  charging: 'charger',
  camera: 'camera',
  heating: 'heater',
  trailer: 'connector',
  fixing: 'tape',
  'fault-finding': 'meter',
};
