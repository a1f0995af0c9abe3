import { parse } from '../conformance/options.ts';
import { UsageError } from '../conformance/read.ts';

/** `npm run conformance -- --rows FILE…`: exit 0 when all agree, 1 when something differs, 2 when it was asked wrongly. */
try {
  for (const { mode, files } of parse(process.argv.slice(2))) {
    const report = await mode.report(files);
    console.log(report.lines.join('\n'));
    if (report.differs) process.exitCode = 1;
  }
} catch (error) {
  if (!(error instanceof UsageError)) throw error;
  console.error(`conformance: ${error.message}`);
  process.exitCode = 2;
}
