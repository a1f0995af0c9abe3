import { z } from 'zod';

/** A meter on the guide's circuit, in the state and with the fault that the page looks at: `<Meter/>`. */
export const props = z.strictObject({});
