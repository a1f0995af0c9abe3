import type { Circuit, Part, PartKind } from './model.ts';
import type { Proof } from './prove.ts';
import { splitTerminalRef } from './terminals.ts';

/** A kind of thing to take from the shelf. */
export interface PartsRow {
  kind: PartKind | 'wire' | 'terminal' | 'fuse-holder' | 'relay-socket';
  /** "Fuse 5 A, medium blade". */
  what: string;
  count: number;
  /** Copper to cut from the reel, slack included [m]; wires only. */
  lengthM?: number;
  areaMm2?: number;
  /** Ids of the parts or wires that it is for. */
  for: string[];
}

/** A piece of wire to cut. */
export interface CutRow {
  wire: string;
  areaMm2: number;
  /** Along the route, and to cut with service slack [m]. */
  routeM: number;
  cutM: number;
  from: string;
  to: string;
  colour: string | undefined;
  label: string | undefined;
}

export interface PartsListOptions {
  /** Service slack over the route, as a share of it; default 0.1. */
  slackFraction?: number | undefined;
  /** Least slack at each wire [m]; default 0.05: enough to crimp each end once more. */
  leastSlackM?: number | undefined;
}

const FORM = { C: 'medium blade', E: 'large blade', F: 'miniature blade', strip: 'bolted strip' } as const;
const FORM_OF_RELAY = { make: 'make contact', changeover: 'changeover', break: 'break contact' } as const;

/** Parts of the vehicle, or of the drawing: nobody takes them from a shelf. */
const NOT_FITTED = new Set<PartKind>(['battery', 'feed', 'sink', 'splice', 'chassis']);

const amps = (value: number): string => `${Number(value.toFixed(2))} A`;

/**
 * What the job takes: fuses by rating and form with a holder each, relays with a socket each, loads and other parts by
 * their words, wire by size and colour with its total length, terminals by size.
 *
 * @param circuit as written
 * @param proof of the same circuit, for sizes and lengths
 * @param options `slackFraction` 0 to 1 (0.1) and `leastSlackM` (0.05 m) for service slack; common practice, no source
 * @returns rows in a fixed order: parts, then wire from thick to thin, then terminals
 */
export function partsList(circuit: Circuit, proof: Proof, options: PartsListOptions = {}): PartsRow[] {
  const rows = new Map<string, PartsRow>();
  const take = (row: Omit<PartsRow, 'count' | 'for'>, forId: string, lengthM?: number): void => {
    const known = rows.get(row.what);
    if (known === undefined) {
      rows.set(row.what, { ...row, count: 1, for: [forId], ...(lengthM === undefined ? {} : { lengthM }) });
      return;
    }
    known.count++;
    if (known.for.at(-1) !== forId) known.for.push(forId);
    if (lengthM !== undefined) known.lengthM = Math.round(((known.lengthM ?? 0) + lengthM) * 100) / 100;
  };

  for (const [id, part] of Object.entries(circuit.parts)) {
    if (NOT_FITTED.has(part.kind)) continue;
    take({ kind: part.kind, what: wordsOf(part, proof.figures[id] ?? {}) }, id);
    if (part.kind === 'fuse') take({ kind: 'fuse-holder', what: `Fuse holder, ${FORM[part.form]}` }, id);
    if (part.kind === 'relay') take({ kind: 'relay-socket', what: 'Relay socket' }, id);
  }
  const cuts = cutList(circuit, proof, options);
  for (const cut of [...cuts].sort((a, b) => b.areaMm2 - a.areaMm2)) {
    const colour = cut.colour === undefined ? '' : `, ${cut.colour}`;
    take({ kind: 'wire', what: `Wire ${cut.areaMm2} mm²${colour}`, areaMm2: cut.areaMm2 }, cut.wire, cut.cutM);
  }
  for (const cut of [...cuts].sort((a, b) => b.areaMm2 - a.areaMm2)) {
    for (const end of [cut.from, cut.to]) {
      // Ends that meet in a splice are joined there and carry no terminal.
      if (circuit.parts[splitTerminalRef(end).part]?.kind === 'splice') continue;
      take({ kind: 'terminal', what: `Crimp terminal for ${cut.areaMm2} mm²`, areaMm2: cut.areaMm2 }, cut.wire);
    }
  }
  return [...rows.values()];
}

/** Every piece of wire to cut, in the order of the circuit file. */
export function cutList(circuit: Circuit, proof: Proof, options: PartsListOptions = {}): CutRow[] {
  const { slackFraction = 0.1, leastSlackM = 0.05 } = options;
  if (!(slackFraction >= 0 && slackFraction <= 1)) {
    throw new RangeError(`cutList: unexpected slackFraction ${slackFraction}, expected 0 to 1`);
  }
  return Object.entries(circuit.wires).map(([id, wire]): CutRow => {
    const figures = proof.figures[id];
    if (figures === undefined)
      throw new RangeError(`cutList: wire "${id}" is not in the proof, expected one of this circuit`);
    const routeM = figures['lengthM']!;
    // Whole centimetres, rounded up: nobody cuts shorter than planned.
    const cutM = Math.ceil((routeM + Math.max(leastSlackM, slackFraction * routeM)) * 100 - 1e-6) / 100;
    const { from, to, colour, label } = wire;
    return { wire: id, areaMm2: figures['areaMm2']!, routeM, cutM, from, to, colour, label };
  });
}

/** What to ask for at the counter. */
function wordsOf(part: Part, figures: Record<string, number>): string {
  if (part.spec !== undefined) return part.spec;
  switch (part.kind) {
    case 'fuse':
      return `Fuse ${amps(figures['ratingA'] ?? 0)}, ${FORM[part.form]}`;
    case 'relay': {
      const clamp = part.suppression === undefined ? '' : `, ${part.suppression} built in`;
      return `Relay, ${FORM_OF_RELAY[part.form]}${clamp}`;
    }
    case 'switch':
      return part.changeover ? 'Switch, changeover' : 'Switch';
    case 'diode':
      return 'Diode';
    case 'resistor':
      return `Resistor ${Number((figures['ohm'] ?? 0).toPrecision(3))} ohm`;
    case 'connector':
      return `Connector, ${part.poles} ${part.poles === 1 ? 'pole' : 'poles'}`;
    default:
      return part.label ?? `${part.kind.charAt(0).toUpperCase()}${part.kind.slice(1)}`;
  }
}
