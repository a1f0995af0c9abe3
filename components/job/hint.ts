/**
 * What every page may know of jobs without opening their storage: that there are any, and which one is in hand on a
 * guide. Two small entries of local storage; the jobs themselves are elsewhere (`store.ts`).
 */
const VERSION = 'loomleaf:1';
const ANY = `${VERSION}:jobs`;
const handKey = (guide: string): string => `${VERSION}:hand:${guide}`;

const read = (key: string): string | null => {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
};
const write = (key: string, value: string | null): void => {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, value);
  } catch {
    // storage is closed to this page: the job is then found on the page of jobs, or not at all
  }
};

export const anyJobs = (): boolean => read(ANY) !== null;
export const rememberJobs = (some: boolean): void => write(ANY, some ? '1' : null);
/** Id of the job in hand on a guide. */
export const inHand = (guide: string): string | null => read(handKey(guide));
export const takeInHand = (guide: string, job: string | null): void => write(handKey(guide), job);
