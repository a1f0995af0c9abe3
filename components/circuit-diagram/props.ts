import { z } from 'zod';

/** The whole circuit as current paths: `<CircuitDiagram/>`. */
export const props = z.strictObject({});
