import { defineMiddleware } from 'astro:middleware';
import { pageWatch } from './finish/page-watch.ts';
import { base } from './links.ts';

/** While building: tells whoever watches the pages when each begins and when it is drawn. */
export const onRequest = defineMiddleware(async ({ url }, next) => {
  const drawn = pageWatch()?.(url.pathname.startsWith(base) ? url.pathname.slice(base.length - 1) : url.pathname);
  try {
    return await next();
  } finally {
    drawn?.();
  }
});
