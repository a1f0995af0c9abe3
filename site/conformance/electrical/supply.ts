import { tables } from '../../../calc/index.ts';
import type { Shape } from '../row.ts';

type SupplyTable = readonly { systemV: number }[];

/** A question of the system voltage alone, answered by one table. */
const bySystem = (table: SupplyTable, gives: readonly string[]): Shape => ({
  needs: ['systemV'],
  gives,
  answer: ({ systemV }) => table.find((row) => row.systemV === systemV),
});

/** What the supply of a vehicle does. */
export const supply: readonly Shape[] = [
  bySystem(tables.RUNNING_V, ['minV', 'maxV']),
  bySystem(tables.JUMP_START, ['testV', 'seconds']),
  bySystem(tables.LOAD_DUMP, ['minPeakV', 'maxPeakV', 'minOhm', 'maxOhm', 'minMs', 'maxMs']),
  bySystem(tables.LOAD_DUMP_CLAMPED, ['clampV']),
  bySystem(tables.COLD_CRANK, ['worstV', 'minMs', 'maxMs', 'thenV']),
  {
    needs: ['systemV', 'code'],
    gives: ['minV', 'maxV'],
    answer: ({ systemV, code }) => tables.SUPPLY_CODES.find((row) => row.systemV === systemV && row.code === code),
  },
];
