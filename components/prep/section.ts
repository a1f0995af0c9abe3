import type { SurfaceFacts } from '../../calc/index.ts';

/** What the bulk of a surface is drawn as. */
export type Bulk = 'metal' | 'wood' | 'glass' | 'fibre' | 'rubber' | 'soft' | 'plastic';

/** Its word beside the drawing. */
export const BULK_WORDS: Record<Bulk, string> = {
  metal: 'Metal',
  wood: 'Wood',
  glass: 'Glass',
  fibre: 'Laminate',
  rubber: 'Rubber',
  soft: 'Fabric, foam or hide',
  plastic: 'Plastic',
};

type Named = Pick<SurfaceFacts, 'id' | 'energyClass' | 'porous' | 'plasticiserRisk'>;

const has = (id: string, ...words: string[]): boolean => words.some((word) => id.includes(word));

export function bulkOf({ id }: Named): Bulk {
  if (has(id, 'steel', 'aluminium', 'chrome', 'copper', 'metal', 'galvanised', 'coat', 'paint', 'wrap')) return 'metal';
  if (has(id, 'wood')) return 'wood';
  if (has(id, 'glass', 'frit')) return 'glass';
  if (has(id, 'grp', 'epoxy')) return 'fibre';
  if (has(id, 'rubber', 'butyl', 'epdm', 'silicone')) return 'rubber';
  if (has(id, 'carpet', 'foam', 'leather')) return 'soft';
  return 'plastic';
}

/** Whether something lies on the bulk that the tape would hold to. */
export const hasSkin = ({ id }: Named): boolean =>
  has(id, 'paint', 'coat', 'wrap', 'chrome', 'anodised', 'gelcoat', 'sealed', 'galvanised');

/** A ring as a path, for a drawing that is bound by attributes alone. */
const ring = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
const grid = (r: number): string =>
  [27, 36, 45].flatMap((y, row) => [8, 20, 32, 44, 56].map((x) => ring(x + row * 4, y, r))).join('');

const LINES: Partial<Record<Bulk, string>> = {
  metal: 'M1 41 22 20M1 51 32 20M11 51 42 20M21 51 52 20M31 51 62 20M41 51 71 21M51 51 71 31M61 51 71 41',
  wood: 'M1 28q18-5 35 0t35 0M1 36q18-5 35 0t35 0M1 44q18-5 35 0t35 0',
  glass: 'M16 44 36 24M26 46 46 26M40 46 54 32',
  fibre: 'M1 26q9-8 18 0t18 0 18 0 17 0M1 35q9-8 18 0t18 0 18 0 17 0M1 44q9-8 18 0t18 0 18 0 17 0',
  soft: 'M6 50V24M14 50V28M22 50V22M30 50V27M38 50V23M46 50V28M54 50V22M62 50V26',
};

/**
 * A surface as its cut section, 72 by 52: bulk as its kind of material is drawn, skin on top, pores, softener coming out.
 * A drawing, not a photo. Each field is one path; an empty one is not drawn.
 */
export function sectionOf(surface: Named) {
  const bulk = bulkOf(surface);
  const low = surface.energyClass === 'low';
  return {
    lines: LINES[bulk] ?? (bulk === 'plastic' && low ? grid(3) : ''),
    solid: bulk === 'rubber' ? 'M1 20H71V51H1Z' : bulk === 'plastic' && !low ? grid(1.8) : '',
    skin: hasSkin(surface) ? 'M1 15H71' : '',
    pores: surface.porous ? 'M4 20v6M18 20v5M33 20v7M49 20v5M63 20v6' : '',
    sweat: surface.plasticiserRisk === 'high' ? 'M12 15v-7M30 15v-9M48 15v-7M62 15v-9' : '',
  };
}
export type SectionView = ReturnType<typeof sectionOf>;
