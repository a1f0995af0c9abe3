import { defineMiddleware } from 'astro:middleware';
import { base } from './links.ts';
import { renderedTaker } from './rendered.ts';

/** While building: hands each page that was rendered to whoever asked for it, such as the search index. */
export const onRequest = defineMiddleware(async ({ url }, next) => {
  const response = await next();
  const take = renderedTaker();
  if (!take || !response.headers.get('content-type')?.startsWith('text/html')) return response;
  const html = await response.text();
  take(url.pathname.startsWith(base) ? url.pathname.slice(base.length - 1) : url.pathname, html);
  return new Response(html, response);
});
