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
  const images = !data.includes(`src="${base}images/`)
    ? []
    : [...data.toString().matchAll(/\ssrc="([^"]+)"/g)].flatMap(([, src]) =>
        src!.startsWith(`${base}images/`) ? [src!.slice(base.length)] : [],
      );
  return {
    digest: createHash('sha256').update(data).digest('hex'),
    bytes: data.length,
    images: [...new Set(images)].sort(),
  };
}
