import { z } from 'zod';

/** Predicted against measured for every state: `<BenchSheet/>`. */
export const props = z.strictObject({});
