import { join } from 'node:path';

export const ROOT = join(import.meta.dirname, '../..');
/** Generated guides and the sites built of them; the next run writes over them. */
export const SCRATCH = join(ROOT, '.loomleaf/bench');
