/** Path that the site lives under, with a slash at both ends. */
export const base = `/${(import.meta.env?.BASE_URL ?? '/').replace(/^\/+|\/+$/g, '')}/`.replace('//', '/');

/** Address of a page or file of the site: `to('/guides/cargo-light/#fuse')`. What leaves the site is left as it is. */
export function to(path: string): string {
  return path.startsWith('/') && !path.startsWith('//') ? base + path.slice(1) : path;
}
