import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/**
 * Gives memory that is not in use back to the system at once. An engine at rest keeps it, and a process that runs beside
 * it may need as much.
 */
export function releaseMemory(): void {
  setFlagsFromString('--expose-gc');
  const gc = runInNewContext('gc') as (options: { type: 'major'; flavor: 'last-resort' }) => void;
  gc({ type: 'major', flavor: 'last-resort' });
}
