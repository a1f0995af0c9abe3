export const PARTS = ['circuit', 'bench-sheet', 'checker', 'builds', 'search', 'weight', 'live'] as const;

/** `npm run bench -- [part …] [--guides 100,1000,5000]`: all parts and the two smaller sizes where nothing is named. */
export function parseOptions(args: readonly string[]): { parts: readonly string[]; guides: readonly number[] } {
  const parts: string[] = [];
  let guides: readonly number[] = [100, 1000];
  for (let at = 0; at < args.length; at++) {
    const arg = args[at]!;
    if (arg === '--guides') {
      guides = (args[++at] ?? '').split(',').map(Number);
      if (guides.length === 0 || guides.some((count) => !Number.isInteger(count) || count < 1))
        stop(`--guides takes whole numbers such as 100,1000,5000, not "${args[at] ?? ''}"`);
    } else if ((PARTS as readonly string[]).includes(arg)) parts.push(arg);
    else stop(`"${arg}" is no part of the benchmark: ${PARTS.join(', ')}, --guides N,N`);
  }
  return { parts: parts.length === 0 ? PARTS : parts, guides };
}

function stop(message: string): never {
  console.error(message);
  process.exit(2);
}
