import type { DocumentParts, Tag } from './document.ts';

/** One stop of the page line. */
export interface Station {
  kind: 'station';
  id: string;
  title: string;
  part?: string;
  symbol?: string;
  value?: string;
  wire?: string;
  steps: Step[];
}
/** A hold point: work stops until its checks are done. */
export interface Hold {
  kind: 'hold';
  id: string;
  point: string;
  title: string;
  /** The station it stands in or behind; empty before the first. */
  station: string;
  checks: HoldCheck[];
}
export interface HoldCheck {
  id: string;
  text: string;
  reads?: string;
  unit?: string;
}
/** Steps count through the whole guide, from 1. */
export interface Step {
  id: string;
  number: number;
  station: string;
  text: string;
}
/** A component with its plain properties and the stop it stands in. */
export interface Placed {
  name: string;
  props: Record<string, unknown>;
  stop: string;
}
export interface HeadingMark {
  depth: number;
  text: string;
  id: string;
}

/** What a guide or lesson is made of, without its prose. */
export interface Outline {
  stations: Station[];
  holds: Hold[];
  /** Stations and holds as the reader meets them. */
  stops: (Station | Hold)[];
  steps: Step[];
  components: Placed[];
  headings: HeadingMark[];
  /** Every id that a link may name after `#`. */
  anchors: string[];
}

const text = (value: unknown): string | undefined =>
  typeof value === 'string' && value !== '' ? value : typeof value === 'number' ? String(value) : undefined;

/** The id that the page gives a thing: steps and checks may bear the name of their station. */
export function anchorOf(component: string, id: string): string {
  return component === 'Step' ? `step-${id}` : component === 'Check' ? `check-${id}` : id;
}

const STRUCTURE = new Set(['Station', 'Steps', 'Step', 'Hold', 'Check']);

export function outlineOf(parts: DocumentParts): Outline {
  const outline: Outline = { stations: [], holds: [], stops: [], steps: [], components: [], headings: [], anchors: [] };
  const stopOf = new Map<Tag, Station | Hold>();
  const inside = (tag: Tag): Station | Hold | undefined => {
    for (let up = tag.parent; up; up = up.parent) {
      const stop = stopOf.get(up);
      if (stop) return stop;
    }
    return undefined;
  };

  for (const tag of parts.tags) {
    const id = text(tag.props['id']) ?? '';
    if (id !== '') outline.anchors.push(anchorOf(tag.name, id));
    const within = inside(tag);
    if (tag.name === 'Station') {
      const optional = Object.fromEntries(
        ['part', 'symbol', 'value', 'wire'].flatMap((key) => {
          const value = text(tag.props[key]);
          return value === undefined ? [] : [[key, value]];
        }),
      );
      const station: Station = {
        kind: 'station',
        id,
        title: text(tag.props['title']) ?? id,
        ...optional,
        steps: [],
      };
      stopOf.set(tag, station);
      outline.stations.push(station);
      outline.stops.push(station);
    } else if (tag.name === 'Hold') {
      const station = within?.kind === 'station' ? within : outline.stations.at(-1);
      const hold: Hold = {
        kind: 'hold',
        id,
        point: text(tag.props['point']) ?? '',
        title: text(tag.props['title']) ?? id,
        station: station?.id ?? '',
        checks: [],
      };
      stopOf.set(tag, hold);
      outline.holds.push(hold);
      outline.stops.push(hold);
    } else if (tag.name === 'Step') {
      const station = within?.kind === 'station' ? within : undefined;
      const step: Step = { id, number: outline.steps.length + 1, station: station?.id ?? '', text: tag.text };
      outline.steps.push(step);
      station?.steps.push(step);
    } else if (tag.name === 'Check') {
      const reads = text(tag.props['reads']);
      const unit = text(tag.props['unit']);
      if (within?.kind === 'hold')
        within.checks.push({ id, text: tag.text, ...(reads && { reads }), ...(unit && { unit }) });
    }
    if (!STRUCTURE.has(tag.name)) outline.components.push({ name: tag.name, props: tag.props, stop: within?.id ?? '' });
  }

  const taken = new Map<string, number>();
  for (const heading of parts.headings) {
    const slug = slugOf(heading.text, taken);
    outline.headings.push({ depth: heading.depth, text: heading.text, id: slug });
    outline.anchors.push(slug);
  }
  return outline;
}

/** The id that the page gives a heading: lower case, punctuation out, spaces to hyphens, a number where it repeats. */
function slugOf(heading: string, taken: Map<string, number>): string {
  const base = heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\p{M}\p{Pc}\- ]/gu, '')
    .replace(/ /g, '-');
  let slug = base;
  let count = taken.get(base) ?? 0;
  while (taken.has(slug)) slug = `${base}-${++count}`;
  taken.set(base, count);
  taken.set(slug, taken.get(slug) ?? 0);
  return slug;
}

/** Words of prose, near enough to say how long reading takes: runs of signs between spaces. */
export function wordsOf(parts: DocumentParts): number {
  let words = 0;
  for (const { text: prose } of parts.prose) {
    let inside = false;
    for (let i = 0; i < prose.length; i++) {
      const space = prose.charCodeAt(i) <= 32;
      if (!space && !inside) words++;
      inside = !space;
    }
  }
  return words;
}
