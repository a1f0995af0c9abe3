import { parse } from '../conformance/options.ts';
import { UsageError } from '../conformance/read.ts';

/** `npm run conformance -- --rows FILE…`: exit 0 when all agree, 1 when something differs, 2 when it was asked wrongly. */
try {
  const parts = parse(process.argv.slice(2));
  const asked = new Map(parts.map(({ mode, files }) => [mode.option, files]));
  const tallies: string[] = [];
  for (const { mode, files } of parts) {
    const { lines, differs } = await mode.report(files, asked);
    for (const line of lines.slice(0, -1)) console.log(line);
    tallies.push(...lines.slice(-1));
    if (differs) process.exitCode = 1;
  }
  console.log(tallies.join('\n'));
} catch (error) {
  if (!(error instanceof UsageError)) throw error;
  console.error(`conformance: ${error.message}`);
  process.exitCode = 2;
}
