import type { APIRoute } from 'astro';
import { workshop } from '../workshop.ts';

/** The trade's synonyms for the search page: groups of words that find each other. */
export const GET: APIRoute = async () => {
  const { synonyms } = await workshop();
  const groups = synonyms.map(({ term, also }) => [term, ...also].map((word) => word.toLowerCase()));
  return new Response(JSON.stringify(groups), { headers: { 'content-type': 'application/json' } });
};
