import type { APIRoute } from 'astro';
import { factsOf } from '../../../components/prep/facts.ts';
import { surfacesByUse } from '../../parts/surfaces.ts';

/** What the selector knows of every surface: fetched when somebody uses it on a page that has no surface of its own. */
export const GET: APIRoute = async () => {
  const facts = (await surfacesByUse()).map(factsOf);
  return new Response(JSON.stringify({ facts }), { headers: { 'content-type': 'application/json' } });
};
