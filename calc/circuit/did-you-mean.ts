/** Number of single-character edits (swap of neighbours included) between two words. */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, before[j - 2]! + 1);
      row.push(cost);
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
}

/**
 * Nearest known name to one that is not known, or undefined when none is near enough to be meant.
 *
 * Upper and lower case count as the same; a third of the letters may differ, at least one.
 */
export function nearestName(name: string, known: Iterable<string>): string | undefined {
  const folded = name.toLowerCase();
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(name.length / 3)) + 1;
  for (const candidate of known) {
    // A long list of long names must not cost time: names of very different length cannot be near.
    if (Math.abs(candidate.length - name.length) >= bestDistance) continue;
    const distance = editDistance(folded, candidate.toLowerCase());
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}
