import type { Station } from '../read/outline.ts';

/** Most stations a phone of 320 px shows at 44 px each. */
const MOST = 7;

/** The stations that stand in the run bar: all where they fit, else first those that carry a value or a part of the circuit. */
export function runOf(stations: readonly Station[]): Station[] {
  if (stations.length <= MOST) return [...stations];
  const weight = ({ value, part, wire }: Station): number => (value ? 4 : 0) + (part ? 2 : 0) + (wire ? 1 : 0);
  const kept = new Set(
    stations
      .map((station, index) => ({ station, index }))
      .sort((a, b) => weight(b.station) - weight(a.station) || a.index - b.index)
      .slice(0, MOST)
      .map(({ station }) => station),
  );
  return stations.filter((station) => kept.has(station));
}
