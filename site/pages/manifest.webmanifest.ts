import type { APIRoute } from 'astro';
import { to } from '../links.ts';
import { workshop } from '../workshop.ts';

/** What a device needs to keep the site as an app of its own. */
export const GET: APIRoute = async () => {
  const { shop } = await workshop();
  const icon = (size: number, purpose: string) => ({
    src: to(`/icons/${purpose === 'maskable' ? 'full-' : ''}${size}.png`),
    sizes: `${size}x${size}`,
    type: 'image/png',
    purpose,
  });
  const manifest = {
    name: `${shop.name}: install guides`,
    short_name: 'Loomleaf',
    description: shop.about,
    lang: shop.language,
    id: to('/'),
    start_url: to('/'),
    scope: to('/'),
    display: 'standalone',
    background_color: '#dde5dc',
    theme_color: '#dde5dc',
    icons: [icon(192, 'any'), icon(512, 'any'), icon(512, 'maskable')],
  };
  return new Response(`${JSON.stringify(manifest, null, 1)}\n`, {
    headers: { 'content-type': 'application/manifest+json' },
  });
};
