/** A heading or term as an id: "bench-test sheet" → "bench-test-sheet". */
export const slug = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
