import { defineMiddleware } from 'astro:middleware';
import { base } from './links.ts';
import { renderedTaker } from './rendered.ts';
import { SEARCHED } from './search-text.ts';

/** While building: hands each page that is searched to whoever asked for it, such as the search index. */
export const onRequest = defineMiddleware(async ({ url }, next) => {
  const take = renderedTaker()?.(url.pathname.startsWith(base) ? url.pathname.slice(base.length - 1) : url.pathname);
  if (!take) return next();
  let html: string | undefined;
  try {
    const response = await next();
    if (!response.headers.get('content-type')?.startsWith('text/html')) return response;
    const bytes = Buffer.from(await response.arrayBuffer());
    // most pages' bytes go on as they came: turning them into text and back takes as long as drawing them
    if (bytes.includes(SEARCHED)) html = bytes.toString();
    return new Response(bytes, response);
  } finally {
    take(html);
  }
});
