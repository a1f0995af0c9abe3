import type { Row, Value } from '../row.ts';

/**
 * A row that describes a surface has fields of its own instead of inputs and expect: its name is the question, its figures
 * are the answer. Undefined for anything else.
 */
export function surfaceRow(raw: unknown): Row | undefined {
  if (typeof raw !== 'object' || raw === null) return undefined;
  const row = raw as Record<string, Value>;
  if (typeof row['name'] !== 'string' || !('surfaceEnergy_mN_m' in row) || !('energyClass' in row)) return undefined;
  const energy = row['surfaceEnergy_mN_m'] as { min: number; max: number; basis: string } | null;
  const copied = ['energyClass', 'porous', 'plasticiserRisk', 'discolourRisk', 'solventStressRisk', 'waterAngle_deg'];
  return {
    id: String(row['id']),
    about: `surface: ${row['name']}`,
    inputs: { surfaceName: row['name'] },
    expect: {
      energyMin_mN_m: energy?.min ?? null,
      energyMax_mN_m: energy?.max ?? null,
      basis: energy?.basis ?? null,
      ...Object.fromEntries(copied.filter((key) => row[key] !== undefined).map((key) => [key, row[key] as Value])),
    },
    tolerance: { abs: 0 },
    source: String(row['source'] ?? ''),
    at: String(row['at'] ?? ''),
    read: String(row['read'] ?? ''),
  };
}
