import { checkContent, count } from './check-content.ts';
import { readOptions } from './options.ts';
import { run } from './refusal.ts';

await run(async () => {
  const { content } = readOptions('check', process.argv.slice(2));
  const { files, workshop, errors, problems, seconds } = await checkContent(content);
  const warnings = problems.length - errors;
  console.log(
    `${count(files, 'file')} (${count(workshop.guides.length, 'guide')}) checked in ${seconds.toFixed(2)} s: ${count(errors, 'error')}, ${count(warnings, 'warning')}`,
  );
  return errors > 0 ? 1 : 0;
});
