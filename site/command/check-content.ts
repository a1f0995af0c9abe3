import { type Checked, check, problemLine } from '../check/check.ts';
import { remember } from '../workshop.ts';

/** Checks a content folder and says all that is wrong with it. The workshop it read is the one the pages will use. */
export async function checkContent(dir: string): Promise<Checked & { seconds: number }> {
  const began = performance.now();
  const checked = await check(dir);
  remember(checked.workshop);
  for (const problem of checked.problems) console.error(problemLine(problem));
  return { ...checked, seconds: (performance.now() - began) / 1000 };
}

export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
