import type { RelayPart } from '../../calc/index.ts';

/** A relay form as content/relays has it, as far as it is drawn. */
export interface PinView {
  name: string;
  form: RelayPart['form'];
  widthMm: number;
  depthMm: number;
  source: string;
  pins: readonly { terminal: string; xMm: number; yMm: number; wide: 'across' | 'along' }[];
}

export interface DrawnPin {
  terminal: string;
  x: number;
  y: number;
  w: number;
  h: number;
}

const PX_PER_MM = 4.6;
/** Blade as drawn [mm]: 6.3 mm wide, thickness for the eye. */
const BLADE_MM = { wide: 6.3, thin: 2 };

/** Pins of one view; the socket is the mirror of the relay's own pin side. */
export function pinsOf(relay: PinView, mirrored: boolean): { width: number; height: number; pins: DrawnPin[] } {
  const width = relay.widthMm * PX_PER_MM;
  const height = relay.depthMm * PX_PER_MM;
  return {
    width,
    height,
    pins: relay.pins.map(({ terminal, xMm, yMm, wide }) => {
      const w = (wide === 'across' ? BLADE_MM.wide : BLADE_MM.thin) * PX_PER_MM;
      const h = (wide === 'across' ? BLADE_MM.thin : BLADE_MM.wide) * PX_PER_MM;
      const x = width / 2 + (mirrored ? -xMm : xMm) * PX_PER_MM - w / 2;
      return { terminal, x, y: height / 2 - yMm * PX_PER_MM - h / 2, w, h };
    }),
  };
}

/** The relay form of a part: the one it names, else the only one of its form; undefined where neither says. */
export function pinViewOf(part: RelayPart, relays: Readonly<Record<string, unknown>>): PinView | undefined {
  const all = relays as Readonly<Record<string, PinView | { data: PinView }>>;
  const plain = (each: PinView | { data: PinView } | undefined) => (each && 'data' in each ? each.data : each);
  if (part.pins !== undefined) return plain(all[part.pins]);
  const same = Object.values(all)
    .map(plain)
    .filter((each) => each?.form === part.form);
  return same.length === 1 ? same[0] : undefined;
}
