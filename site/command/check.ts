import { check, problemLine } from '../check/check.ts';
const { problems, files, errors } = await check(process.argv[2] ?? 'content');
for (const p of problems) console.error(problemLine(p));
console.log(files, errors);
