import { z } from 'zod';

/** A picture under the step it shows; the words between the tags are its caption. */
export const props = z.strictObject({
  /** A file in images/, named from the guide: `../images/route.svg`. */
  src: z.string().regex(/^\.\.\/images\/.+/, 'must name a file in images/, such as ../images/route.svg'),
  /** What it shows, for those who do not see it. */
  alt: z.string().min(1),
});
