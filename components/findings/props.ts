import { z } from 'zod';

/** What the proof says against the guide's circuit: `<Findings/>`. */
export const props = z.strictObject({});
