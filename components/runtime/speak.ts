/** Quiet time after the last change before anything is said: a held stepper is one change. */
const QUIET_MS = 700;
/** More than this many answers are counted, not read out. */
const MOST = 3;

/** A changed answer: its name, what it is now, what it was. */
interface Change {
  was: string;
  now: string;
}

/** Text for changes gathered since it last spoke: "Fuse F1: 7.5 A, was 5 A. Wire W2: 4 mm², was 2.5 mm²." */
export function sentenceOf(changes: ReadonlyMap<string, Change>): string {
  const real = [...changes].filter(([, { was, now }]) => was !== now);
  const said = real.slice(0, MOST).map(([name, { was, now }]) => `${name}: ${now}, was ${was}.`);
  const more = real.length - said.length;
  if (more > 0) said.push(`${more} more ${more === 1 ? 'answer' : 'answers'} changed.`);
  return said.join(' ');
}

/** One polite live region for the whole page. */
export function speaker(): { changed: (name: string, was: string, now: string) => void; say: (text: string) => void } {
  const region = document.createElement('div');
  region.className = 'vh';
  region.setAttribute('role', 'status');
  document.body.append(region);
  let changes = new Map<string, Change>();
  let timer = 0;
  const say = (text: string): void => {
    // the same text twice is silent in most readers, unless the region was empty between
    region.textContent = '';
    if (text !== '') requestAnimationFrame(() => (region.textContent = text));
  };
  return {
    say,
    changed(name, was, now) {
      changes.set(name, { was: changes.get(name)?.was ?? was, now });
      clearTimeout(timer);
      timer = window.setTimeout(() => {
        const text = sentenceOf(changes);
        changes = new Map();
        if (text !== '') say(text);
      }, QUIET_MS);
    },
  };
}
