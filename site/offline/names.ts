/** Names that the worker and the pages share. */
export const PAGES_CACHE = 'loomleaf-pages';
/** Kept pages of a version that waits to be let in. */
export const NEXT_CACHE = 'loomleaf-pages-next';
export const ASSETS_CACHE = 'loomleaf-assets';
/** Message from a page: let the waiting version in. */
export const SWAP = 'swap';

/** What the site weighs, by address below its base; `offline.json` of a built site. */
export interface OfflineList {
  version: string;
  /** Bytes of each page that is not on the device from the start, and the pictures that it shows. */
  pages: Record<string, { bytes: number; images: string[] }>;
  images: Record<string, number>;
}
