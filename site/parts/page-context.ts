import type { Proof } from '../../calc/index.ts';
import type { PageContext, Study } from '../../components/context.ts';
import { studyFrom } from '../../components/study.ts';
import { base } from '../links.ts';
import { proofOf } from '../proofs.ts';
import { type Guide, type Workshop, workshop } from '../workshop.ts';
import { pictureSize } from './pictures.ts';
import { surfacesByUse } from './surfaces.ts';

/** What components on a page may know: the workshop's settings and words, and on a guide its circuit worked out. */
export async function pageContext(guide?: Guide, circuitId?: string): Promise<PageContext> {
  const shop = await workshop();
  const wanted = circuitId ?? (typeof guide?.data.circuit === 'string' ? guide.data.circuit : undefined);
  const circuit = (wanted === undefined ? undefined : shop.circuits.get(wanted)) ?? null;
  const proof = circuit === null ? undefined : await proofOf(circuit.id);
  return {
    ...(await everywhere(shop)),
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
    study: proof === undefined ? null : once(studies, proof, studyFrom),
    traits: guide ? traitsOf(guide, shop) : [],
  };
}

type Everywhere = Pick<PageContext, 'base' | 'shop' | 'terms' | 'lessons' | 'surfaces' | 'relays'>;
const studies = new WeakMap<Proof, Study>();
const shared = new WeakMap<Workshop, Promise<Everywhere>>();

/** What is the same on every page of a workshop. */
const everywhere = (shop: Workshop): Promise<Everywhere> =>
  once(shared, shop, async () => ({
    base,
    shop: settingsOf(shop),
    terms: shop.terms.map(({ term, meaning }) => ({ term, meaning })),
    lessons: shop.lessons.map(({ id, data }) => ({ id, title: data.title, minutes: data.minutes })),
    surfaces: Object.fromEntries((await surfacesByUse()).map((surface) => [surface.id, surface])),
    pictureSize,
    relays: Object.fromEntries(shop.relays.map((relay) => [relay.id, relay])),
  }));

/** Makes of a thing what follows from it, the first time that it is asked for. */
function once<K extends object, V>(made: WeakMap<K, V>, of: K, make: (of: K) => V): V {
  let found = made.get(of);
  if (found === undefined) made.set(of, (found = make(of)));
  return found;
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
