import { ask, type Counts, type Filters, open } from './engine.ts';
import { resultRow } from './show.ts';

/** The search page: question and filters above, answers below, the address always says what is asked. */
const root = document.querySelector<HTMLElement>('#search')!;
const form = root.querySelector('form')!;
const input = form.querySelector<HTMLInputElement>('[name=q]')!;
const status = root.querySelector<HTMLElement>('#search-status')!;
const waiting = root.querySelector<HTMLElement>('.waiting')!;
const list = root.querySelector<HTMLElement>('.results')!;
const nothing = root.querySelector<HTMLElement>('#search-nothing')!;
const more = root.querySelector<HTMLButtonElement>('#search-more')!;
const template = root.querySelector<HTMLTemplateElement>('#result')!;
const base = root.dataset['base'] ?? '/';
const symbols = new Set([...root.querySelectorAll('symbol')].map(({ id }) => id.slice('s-'.length)));

const PAGE = 10;
/** From a letter to its question: the letter itself is shown first. One question is answered at a time, the latest next. */
const PAUSE_MS = 20;
const FILTERS = ['vehicle', 'work', 'level', 'page'] as const;
/** Filters in the order they were set: the last is the first to be dropped. */
let order: string[] = [];
let shown = PAGE;
let turn = 0;
let pause: ReturnType<typeof setTimeout> | undefined;

const controls = (name: string): HTMLInputElement[] => [...form.querySelectorAll<HTMLInputElement>(`[name=${name}]`)];
const select = form.querySelector<HTMLSelectElement>('select[name=vehicle]')!;
const chosenIn = (name: string): string =>
  name === 'vehicle' ? select.value : (controls(name).find(({ checked }) => checked)?.value ?? '');
function setValue(name: string, value: string): void {
  if (name === 'vehicle') select.value = value;
  else for (const control of controls(name)) control.checked = control.value === value;
}
const wordsOf = (name: string): string =>
  name === 'vehicle'
    ? (select.selectedOptions[0]?.dataset['name'] ?? select.value)
    : (controls(name).find(({ checked }) => checked)?.dataset['name'] ?? '');

function filters(): Filters {
  return Object.fromEntries(FILTERS.map((name) => [name, chosenIn(name)]).filter(([, value]) => value !== ''));
}

/** Puts the address's question into the form. */
function readAddress(): void {
  const asked = new URLSearchParams(location.search);
  input.value = asked.get('q') ?? '';
  for (const name of FILTERS) setValue(name, asked.get(name) ?? '');
  order = FILTERS.filter((name) => chosenIn(name) !== '');
}
function writeAddress(): void {
  const asked = new URLSearchParams();
  if (input.value.trim() !== '') asked.set('q', input.value.trim());
  for (const [name, value] of Object.entries(filters())) asked.set(name, value);
  const query = asked.toString();
  history.replaceState(null, '', query === '' ? location.pathname : `?${query}`);
}

function showCounts(counts: Counts): void {
  for (const option of select.options) {
    if (option.value === '') continue;
    const count = counts['vehicle']?.[option.value] ?? 0;
    option.textContent = `${option.dataset['name']} (${count})`;
  }
  for (const name of ['work', 'level', 'page']) {
    for (const control of controls(name)) {
      if (control.value === '') continue;
      const count = counts[name]?.[control.value] ?? 0;
      const place = control.parentElement?.querySelector('.count');
      if (place) place.textContent = String(count);
      control.parentElement?.toggleAttribute('data-empty', count === 0 && !control.checked);
    }
  }
}

const narrow = root.querySelector<HTMLButtonElement>('#narrow')!;
narrow.addEventListener('click', () => {
  const unfolded = root.querySelector('#chips')!.classList.toggle('unfolded');
  narrow.setAttribute('aria-expanded', String(unfolded));
});
/** What the chips are set to, on the button that unfolds them. */
function showChosen(): void {
  const set = ['work', 'level', 'page'].map(wordsOf).filter((word) => word !== '');
  narrow.textContent = set.length === 0 ? 'Narrow down' : `Narrowed to ${set.join(', ')}`;
}

const spelled = (): string => {
  const words = input.value.trim() === '' ? [] : [`“${input.value.trim()}”`];
  return [...words, ...FILTERS.map(wordsOf).filter((word) => word !== '')].join(', ');
};

/** Says what was asked and offers the way out, the last filter first. */
function showNothing(): void {
  nothing.hidden = false;
  nothing.querySelector('.asked-for')!.textContent = `Nothing found for ${spelled()}.`;
  const offers = nothing.querySelector('.btns')!;
  offers.replaceChildren();
  const offer = (text: string, act: () => void): void => {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'btn big';
    button.textContent = text;
    button.addEventListener('click', () => {
      act();
      input.focus();
      search();
    });
    offers.append(button);
  };
  const last = order.at(-1);
  if (last !== undefined) {
    offer(`Drop “${wordsOf(last)}”`, () => {
      setValue(last, '');
      order = order.slice(0, -1);
    });
  }
  if (order.length > 1) {
    offer('Drop all filters', () => {
      for (const name of FILTERS) setValue(name, '');
      order = [];
    });
  }
  const words = input.value.trim().split(/\s+/);
  if (words.length > 1) offer(`Search “${words[0]}” alone`, () => (input.value = words[0]!));
}

async function search(): Promise<void> {
  const mine = ++turn;
  writeAddress();
  showChosen();
  const query = input.value.trim();
  const chosen = filters();
  if (query === '' && Object.keys(chosen).length === 0) {
    list.replaceChildren();
    nothing.hidden = true;
    more.hidden = true;
    status.textContent = 'Type a part, place, number or symptom, or pick a filter.';
  }
  const late = setTimeout(() => {
    if (mine !== turn) return;
    waiting.hidden = false;
    status.textContent = 'Loading the search index…';
  }, 300);
  try {
    const answer = await ask(base, query, chosen, shown, () => mine === turn);
    // A later question is already on its way: this answer is stale.
    if (answer === null || mine !== turn) return;
    showCounts(answer.counts);
    if (query === '' && Object.keys(chosen).length === 0) return;
    list.replaceChildren(...answer.hits.map((hit) => resultRow(template, hit, symbols)));
    nothing.hidden = answer.total > 0;
    more.hidden = answer.total <= shown;
    more.textContent = `Show ${Math.min(PAGE, answer.total - shown)} more`;
    const also = answer.also.slice(0, 4);
    status.textContent =
      answer.total === 0
        ? 'Nothing found.'
        : `${answer.total} ${answer.total === 1 ? 'page' : 'pages'} for ${spelled()}${also.length > 0 ? `; also asked for ${also.join(', ')}` : ''}${answer.unknown.length > 0 ? `; ${answer.unknown.map((word) => `“${word}”`).join(', ')} stands on no page` : ''}.`;
    if (answer.total === 0) showNothing();
  } catch {
    if (mine !== turn) return;
    list.replaceChildren();
    status.textContent = 'The search index did not load. Check the connection, then press Find again.';
  } finally {
    clearTimeout(late);
    if (mine === turn) waiting.hidden = true;
  }
}

function changed(name: string): void {
  order = order.filter((each) => each !== name);
  if (chosenIn(name) !== '') order.push(name);
  shown = PAGE;
  void search();
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  clearTimeout(pause);
  shown = PAGE;
  void search();
});
input.addEventListener('input', () => {
  clearTimeout(pause);
  shown = PAGE;
  pause = setTimeout(() => void search(), PAUSE_MS);
});
select.addEventListener('change', () => changed('vehicle'));
for (const name of ['work', 'level', 'page'])
  for (const control of controls(name)) control.addEventListener('change', () => changed(name));
more.addEventListener('click', () => {
  const before = shown;
  shown += PAGE;
  void search().then(() => list.querySelectorAll<HTMLElement>('a.todo')[before]?.focus());
});
// Up and down move through the answers, from the question and back.
root.addEventListener('keydown', (event) => {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const at = event.target as HTMLElement;
  const links = [...list.querySelectorAll<HTMLElement>('a.todo')];
  const here = links.indexOf(at);
  if (here < 0 && at !== input) return;
  const next = event.key === 'ArrowDown' ? links[here + 1] : here > 0 ? links[here - 1] : input;
  if (next === undefined || (at === input && event.key === 'ArrowUp')) return;
  event.preventDefault();
  next.focus();
});
addEventListener('popstate', () => {
  readAddress();
  void search();
});

readAddress();
if (location.search === '') {
  // Nothing asked yet: warm the index while the reader types, and show what there is.
  status.textContent = 'Type a part, place, number or symptom, or pick a filter.';
  void open(base).then(
    () => search(),
    () => undefined,
  );
} else void search();
