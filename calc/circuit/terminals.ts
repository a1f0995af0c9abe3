import type { Part, PartKind, TerminalRef } from './model.ts';

/** A point of a part where a wire or another terminal may sit. */
export interface Terminal {
  /** Trade or DIN 72552 designation; '' for a part with a single point, which is named by its bare id. */
  name: string;
  meaning: string;
  /** A part with this terminal open cannot do its work. */
  required: boolean;
}

const terminal = (name: string, meaning: string, required = true): Terminal => ({ name, meaning, required });

const LOAD_TERMINALS = [terminal('+', 'supply side'), terminal('-', 'return side')];

/** What a part of each kind offers, where that does not depend on how it is written. */
const FIXED: Partial<Record<PartKind, readonly Terminal[]>> = {
  battery: [terminal('+', 'positive post'), terminal('-', 'negative post; on the chassis unless wired', false)],
  feed: [terminal('out', 'positive of the vehicle, behind its fuse')],
  sink: [terminal('out', 'contact or output of the vehicle that switches to chassis')],
  fuse: [terminal('1', 'source side'), terminal('2', 'protected side')],
  diode: [terminal('A', 'anode'), terminal('K', 'cathode, the end with the stripe')],
  resistor: [terminal('1', 'one end'), terminal('2', 'other end')],
  splice: [terminal('', 'joint of the wires')],
  chassis: [terminal('', 'ground point on the body')],
};

const COIL_AND_COMMON = [
  terminal('85', 'coil, ground side'),
  terminal('86', 'coil, positive side'),
  terminal('30', 'common contact'),
];

const THROWS = {
  make: [terminal('87', 'contact made while the coil is energised')],
  break: [terminal('87a', 'contact made while the coil is at rest')],
  changeover: [
    terminal('87', 'contact made while the coil is energised', false),
    terminal('87a', 'contact made while the coil is at rest', false),
  ],
};

/**
 * Terminals of a part, in the order of its nameplate.
 *
 * @param part as an author writes it
 * @returns names, meanings, and whether the part is useless with that terminal open
 * @source DIN 72552 designations for relay contacts and coil; the rest is common practice, no source
 */
export function terminalsOf(part: Part): readonly Terminal[] {
  switch (part.kind) {
    case 'relay':
      return [...COIL_AND_COMMON, ...(THROWS[part.form] ?? [])];
    case 'switch':
      return part.changeover
        ? [
            terminal('1', 'common'),
            terminal('2', 'made while the switch is on'),
            terminal('3', 'made while the switch is off', false),
          ]
        : [terminal('1', 'one side'), terminal('2', 'other side')];
    case 'connector':
      return Array.from({ length: Math.max(0, Math.min(64, part.poles)) }, (_, pole) => [
        terminal(`${pole + 1}a`, `pole ${pole + 1}, one half`, false),
        terminal(`${pole + 1}b`, `pole ${pole + 1}, other half`, false),
      ]).flat();
    default:
      return FIXED[part.kind] ?? LOAD_TERMINALS;
  }
}

/** The one terminal that a part's bare id means, or undefined where the author must say which. */
export function soleTerminalOf(part: Part): Terminal | undefined {
  const terminals = terminalsOf(part);
  return terminals.length === 1 ? terminals[0] : undefined;
}

/**
 * Splits `K1.87a` into part and terminal. Part ids hold no dot, so the first one parts them.
 *
 * @returns the id, and the terminal's name or undefined where the reference is a bare id
 */
export function splitTerminalRef(ref: TerminalRef): { part: string; terminal: string | undefined } {
  const dot = ref.indexOf('.');
  return dot < 0 ? { part: ref, terminal: undefined } : { part: ref.slice(0, dot), terminal: ref.slice(dot + 1) };
}
