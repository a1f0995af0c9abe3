/** One part of the benchmark: what it prints, line by line, and its figures by name. */
export interface Part {
  lines: string[];
  figures: Record<string, number>;
}

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

/** "31.2 kB", counted in thousands. */
export const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
