/** Path that the site lives under, with a slash at both ends. Written out so that the build puts its value here. */
export const base = `${import.meta.env.BASE_URL.replace(/\/+$/, '')}/`;

/** Address of a page or file of the site: `to('/guides/cargo-light/#fuse')`. What leaves the site is left as it is. */
export function to(path: string): string {
  return path.startsWith('/') && !path.startsWith('//') ? base + path.slice(1) : path;
}
