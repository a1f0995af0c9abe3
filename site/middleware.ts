import { defineMiddleware } from 'astro:middleware';
import { base } from './links.ts';
import { renderedTaker } from './rendered.ts';

/** While building: keeps each page's place with whoever takes the pages, such as the search index. */
export const onRequest = defineMiddleware(async ({ url, locals }, next) => {
  const take = renderedTaker()?.(url.pathname.startsWith(base) ? url.pathname.slice(base.length - 1) : url.pathname);
  if (!take) return next();
  let page: Parameters<typeof take>[0];
  locals.take = (title, main) => {
    page = { title, main };
  };
  try {
    return await next();
  } finally {
    take(page);
  }
});
