import { defineMiddleware } from 'astro:middleware';
import { base } from './links.ts';
import { renderedTaker } from './rendered.ts';

/** While building: hands each page that was rendered to whoever asked for it, such as the search index. */
export const onRequest = defineMiddleware(async ({ url }, next) => {
  const take = renderedTaker()?.(url.pathname.startsWith(base) ? url.pathname.slice(base.length - 1) : url.pathname);
  if (!take) return next();
  let html: string | undefined;
  try {
    const response = await next();
    if (!response.headers.get('content-type')?.startsWith('text/html')) return response;
    html = await response.text();
    return new Response(html, response);
  } finally {
    take(html);
  }
});
