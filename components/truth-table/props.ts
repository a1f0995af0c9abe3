import { z } from 'zod';

/** Every state of the guide's circuit: `<TruthTable/>`. */
export const props = z.strictObject({});
