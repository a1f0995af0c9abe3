import { createHash } from 'node:crypto';

/** What a file of the built site weighs. */
export interface Weighed {
  /** SHA-256 of its bytes, in hexadecimal. */
  digest: string;
  bytes: number;
  /** Pictures of the workshop that it shows, addresses below the base. */
  images: string[];
}

export function weigh(bytes: Uint8Array, base: string): Weighed {
  const data = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // most files show no picture, and a look at the bytes says so
  const images = data.includes(`src="${base}images/`) ? imagesOf(data.toString(), base) : [];
  return { digest: createHash('sha256').update(data).digest('hex'), bytes: data.length, images };
}

function imagesOf(html: string, base: string): string[] {
  const images = new Set<string>();
  // a copy: a part of a string keeps the whole of it in memory
  for (const [, src] of html.matchAll(/\ssrc="([^"]+)"/g))
    if (src!.startsWith(`${base}images/`)) images.add(Buffer.from(src!.slice(base.length)).toString());
  return [...images].sort();
}
