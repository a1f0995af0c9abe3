import { defineMiddleware } from 'astro:middleware';
import { renderedTaker } from './finish/rendered.ts';
import { base } from './links.ts';

/** While building: hands each page as it is written to whoever takes the pages, and keeps its place while it is drawn. */
export const onRequest = defineMiddleware(async ({ url }, next) => {
  const take = renderedTaker()?.(url.pathname.startsWith(base) ? url.pathname.slice(base.length - 1) : url.pathname);
  if (!take) return next();
  let page: Uint8Array<ArrayBuffer> | undefined;
  try {
    const response = await next();
    if (!response.body) return response;
    page = new Uint8Array(await response.arrayBuffer());
    return new Response(page, response);
  } finally {
    take(page);
  }
});
