import type { GuideData, KINDS_OF_WORK } from '../schemas/guide.ts';

type Work = (typeof KINDS_OF_WORK)[number];

/** Kinds of work as a reader meets them. */
export const WORK: Readonly<Record<Work, string>> = {
  lighting: 'Lights',
  warning: 'Warning lamps',
  power: 'Sockets and power',
  charging: 'Charging',
  camera: 'Cameras',
  heating: 'Heating',
  trailer: 'Trailer',
  fixing: 'Fixing and sticking',
  'fault-finding': 'Fault finding',
};

export const LEVEL: Readonly<Record<GuideData['level'], string>> = { easy: 'Easy', medium: 'Medium', hard: 'Hard' };

export const PATH: Readonly<Record<string, string>> = {
  safety: 'Safety',
  soldering: 'Soldering',
  preparation: 'Preparing a surface',
  fitting: 'Fitting',
};

/** "45 min", "2 h", "2 h 30 min"; long jobs stay in hours, as they are booked. */
export function duration(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });

/** "3 Nov 2026". */
export const day = (iso: string): string => DAY.format(new Date(`${iso}T00:00:00Z`));
