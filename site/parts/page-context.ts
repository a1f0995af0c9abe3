import type { PageContext } from '../../components/context.ts';
import { studyFrom } from '../../components/study.ts';
import { base } from '../links.ts';
import { proofOf } from '../proofs.ts';
import { type Guide, type Workshop, workshop } from '../workshop.ts';
import { surfacesByUse } from './surfaces.ts';

/** What components on a page may know: the workshop's settings and words, and on a guide its circuit worked out. */
export async function pageContext(guide?: Guide, circuitId?: string): Promise<PageContext> {
  const shop = await workshop();
  const wanted = circuitId ?? (typeof guide?.data.circuit === 'string' ? guide.data.circuit : undefined);
  const circuit = (wanted === undefined ? undefined : shop.circuits.get(wanted)) ?? null;
  const settings = settingsOf(shop);
  const proof = circuit === null ? undefined : await proofOf(circuit.id);
  return {
    base,
    shop: settings,
    guide: guide
      ? {
          id: guide.id,
          title: guide.data.title,
          number: `${shop.shop.prefix}-${guide.data.number}`,
          issue: guide.data.issue,
          updated: guide.data.updated,
          stations: guide.outline.stations,
        }
      : null,
    circuit,
    study: proof === undefined ? null : studyFrom(proof),
    traits: guide ? traitsOf(guide, shop) : [],
    terms: shop.terms.map(({ term, meaning }) => ({ term, meaning })),
    lessons: shop.lessons.map(({ id, data }) => ({ id, title: data.title, minutes: data.minutes })),
    surfaces: Object.fromEntries((await surfacesByUse()).map((surface) => [surface.id, surface])),
    relays: Object.fromEntries(shop.relays.map((relay) => [relay.id, relay])),
  };
}

function settingsOf({ shop }: Workshop): PageContext['shop'] {
  const { name, contact, prefix, localRules, paper, units, systemV } = shop;
  const { stockedFusesA, stockedWiresMm2, dropFraction, continuousFraction, slackFraction, standingDays } = shop;
  return {
    name,
    contact,
    prefix,
    localRules,
    paper,
    units,
    systemV,
    stockedFusesA,
    stockedWiresMm2,
    dropFraction,
    continuousFraction,
    slackFraction,
    standingDays,
  };
}

/** Traits that a guide's vehicle types bring, and its own, worst first. */
function traitsOf(guide: Guide, { vehicles, traits }: Workshop): PageContext['traits'] {
  const ids = new Set(guide.data.traits);
  for (const vehicle of vehicles)
    if (guide.data.vehicles.includes(vehicle.id)) for (const id of vehicle.traits) ids.add(id);
  const rank = { stop: 0, warn: 1, note: 2 };
  return traits.filter(({ id }) => ids.has(id)).sort((a, b) => rank[a.severity] - rank[b.severity]);
}
