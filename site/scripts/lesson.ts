import { unscramble } from '../../components/lesson/answers.ts';
import type { LessonRecord, Signed } from '../../components/lesson/record.ts';
import type { LessonStore } from '../../components/lesson/store.ts';

/**
 * A lesson's page: checks answers, keeps what was done on this device, lets a trainer sign. What keeps and schedules is
 * loaded once the page stands, so that reading never waits for it.
 */
const article = document.querySelector<HTMLElement>('article[data-lesson]');
const data = document.getElementById('lesson-data')?.textContent;
if (article !== null && data)
  void start(article, article.dataset['lesson']!, JSON.parse(data) as Record<string, string>);

type Rules = typeof import('../../components/lesson/record.ts');

async function start(page: HTMLElement, id: string, answers: Readonly<Record<string, string>>): Promise<void> {
  const [rules, { openLessons }] = await Promise.all([
    import('../../components/lesson/record.ts'),
    import('../../components/lesson/store.ts'),
  ]);
  const store = await openLessons();
  const record = (await store.all()).find((each) => each.id === id) ?? rules.emptyRecord(id);
  const trouble = page.querySelector<HTMLElement>('[data-trouble]');
  const tell = (): void => {
    if (trouble !== null) trouble.textContent = store.trouble() ?? '';
  };
  for (const ask of page.querySelectorAll<HTMLFieldSetElement>('[data-question]'))
    question(ask, { id, answer: answers[ask.dataset['question']!]!, record, rules, store, tell });
  practice(page, { id, record, store, tell });
  signOff(page, { id, record, rules, store, tell });
  tell();
  document.documentElement.dataset['lesson'] = 'ready';
}

interface Kept {
  id: string;
  record: LessonRecord;
  store: LessonStore;
  tell: () => void;
}

/** One question: pick, check, hear why; a wrong answer leaves the others open. */
function question(ask: HTMLFieldSetElement, o: Kept & { answer: string; rules: Rules }): void {
  const name = ask.dataset['question']!;
  const { right, why } = unscramble(o.answer, name);
  const inputs = [...ask.querySelectorAll<HTMLInputElement>('input')];
  const button = ask.querySelector<HTMLButtonElement>('[data-check]')!;
  const says = ask.querySelector<HTMLElement>('[data-says]')!;
  const asked = o.record.questions[name];
  const again = o.rules.isOpen(asked, Date.now()) && asked?.card !== undefined && asked.rightAt !== undefined;
  ask.querySelector<HTMLElement>('[data-again]')!.hidden = !again;
  button.disabled = false;

  const verdict = (input: HTMLInputElement, good: boolean): void => {
    const flag = input.closest('.opt')!.querySelector<HTMLElement>('[data-verdict]')!;
    flag.hidden = false;
    flag.classList.add(good ? 'pass' : 'stop');
    flag.querySelector('use')!.setAttribute('href', good ? '#i-pass' : '#i-stop');
    flag.querySelector('span')!.textContent = good ? 'Right' : 'Not this';
  };
  /** Right: say why, and why not the others. The question is closed. */
  const close = (): void => {
    inputs[right]!.checked = true;
    verdict(inputs[right]!, true);
    says.dataset['is'] = 'yes';
    says.textContent = `Right. ${why[right]}`;
    for (const input of inputs) input.disabled = true;
    button.hidden = true;
    const others = document.createElement('ul');
    others.className = 'others';
    inputs.forEach((input, index) => {
      if (index === right) return;
      const line = document.createElement('li');
      line.textContent = `${input.closest('.opt')!.querySelector('span')!.textContent}: ${why[index]}`;
      others.append(line);
    });
    const more = document.createElement('details');
    const summary = document.createElement('summary');
    summary.textContent = 'Why not the others';
    more.append(summary, others);
    says.after(more);
  };
  if (!o.rules.isOpen(asked, Date.now())) {
    close();
    return;
  }
  button.addEventListener('click', async () => {
    const option = inputs.findIndex((input) => input.checked);
    if (option < 0) {
      says.dataset['is'] = '';
      says.textContent = 'Pick one first.';
      inputs[0]!.focus();
      return;
    }
    const good = option === right;
    if (good) {
      // the button goes away: the next thing to do takes the focus
      close();
      const next = [...document.querySelectorAll<HTMLElement>('[data-check]')].find(
        (each) => !each.hidden && ask.compareDocumentPosition(each) & Node.DOCUMENT_POSITION_FOLLOWING,
      );
      (next?.closest<HTMLElement>('[data-question]') ?? document.getElementById('sign-off-title'))?.focus();
    } else {
      verdict(inputs[option]!, false);
      says.dataset['is'] = 'no';
      says.textContent = `Not this. ${why[option]} Pick once more.`;
      inputs[option]!.focus();
    }
    await o.store.change(o.id, (record) =>
      o.rules.answered(record, { question: name, option, right: good, now: Date.now() }),
    );
    o.tell();
  });
}

/** Read and practised: boxes the learner ticks himself. */
function practice(page: HTMLElement, { id, record, store, tell }: Kept): void {
  const read = page.querySelector<HTMLInputElement>('[data-read]');
  if (read !== null) {
    read.disabled = false;
    read.checked = record.readAt !== undefined;
    read.addEventListener('change', async () => {
      await store.change(id, (now) => ({ ...now, readAt: read.checked ? Date.now() : undefined }));
      tell();
    });
  }
  for (const box of page.querySelectorAll<HTMLInputElement>('[data-practice]')) {
    const index = Number(box.dataset['practice']);
    box.disabled = false;
    box.checked = record.practice[index] === true;
    box.addEventListener('change', async () => {
      await store.change(id, (now) => ({
        ...now,
        practice: now.practice.map((made, at) => (at === index ? box.checked : made)),
      }));
      tell();
    });
  }
}

const day = (at: number): string =>
  new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at));

/** The open contact: closes when every criterion is met and both names are in; opens again for a reason. */
function signOff(page: HTMLElement, { id, record, rules, store, tell }: Kept & { rules: Rules }): void {
  const form = page.querySelector<HTMLElement>('[data-signoff]');
  if (form === null) return;
  const station = form.closest<HTMLElement>('.stn')!;
  const field = (name: string): HTMLInputElement =>
    form.querySelector<HTMLInputElement>(`[data-signoff-field="${name}"]`)!;
  const boxes = (name: string): HTMLInputElement[] => [...form.querySelectorAll<HTMLInputElement>(`[data-${name}]`)];
  const [accept, reject] = [boxes('accept'), boxes('reject')];
  const button = form.querySelector<HTMLButtonElement>('[data-signoff-close]')!;
  const state = form.querySelector<HTMLElement>('[data-signoff-state]')!;
  const missing = form.querySelector<HTMLElement>('[data-signoff-missing]')!;
  const reopen = form.querySelector<HTMLElement>('[data-signoff-reopen]')!;
  const old = form.querySelector<HTMLElement>('[data-signoff-old]')!;
  const asked = state.textContent ?? '';
  const fields = [field('piece'), field('learner'), field('trainer')];
  for (const input of [...accept, ...reject, ...fields, button]) input.disabled = false;

  const lacks = (): string[] =>
    rules.missingFor({
      accept: accept.map(({ checked }) => checked),
      reject: reject.map(({ checked }) => checked),
      piece: field('piece').value,
      learner: field('learner').value,
      trainer: field('trainer').value,
    });
  const look = (): void => {
    const list = lacks();
    button.setAttribute('aria-disabled', String(list.length > 0));
    missing.textContent = list.length === 0 ? 'All seen. The trainer closes the line.' : `Needs ${list.join(', ')}.`;
  };
  const show = (signed: Signed | undefined, before: readonly Signed[]): void => {
    const shut = signed !== undefined;
    form.dataset['is'] = shut ? 'closed' : '';
    station.classList.toggle('open', !shut);
    station.dataset['is'] = shut ? 'done' : '';
    form.querySelector<HTMLElement>('.hb')!.hidden = shut;
    reopen.hidden = !shut;
    state.textContent =
      signed === undefined
        ? asked
        : `${signed.learner} made: ${signed.piece}. Signed by ${signed.trainer}, ${day(signed.at)}.`;
    old.hidden = before.length === 0;
    old.replaceChildren(
      ...before.map((each) => {
        const line = document.createElement('li');
        const struck = document.createElement('s');
        struck.textContent = `${each.trainer}, ${day(each.at)}`;
        line.append(struck, ` Opened again: ${each.reopened ?? ''}`);
        return line;
      }),
    );
    if (!shut) look();
  };
  for (const input of [...accept, ...reject, ...fields]) {
    input.addEventListener('input', look);
    input.addEventListener('change', look);
  }
  button.addEventListener('click', async () => {
    const list = lacks();
    if (list.length > 0) {
      missing.textContent = `Not yet. Needs ${list.join(', ')}.`;
      const open = [
        ...accept.filter(({ checked }) => !checked),
        ...fields.filter(({ value }) => value.trim() === ''),
      ][0];
      open?.focus();
      return;
    }
    const signed: Signed = {
      learner: field('learner').value.trim(),
      trainer: field('trainer').value.trim(),
      piece: field('piece').value.trim(),
      at: Date.now(),
    };
    const after = await store.change(id, (now) => ({ ...now, signed }));
    show(after.signed, after.before);
    document.getElementById('sign-off-title')?.focus();
    tell();
  });
  form.querySelector('[data-signoff-open]')!.addEventListener('click', async () => {
    const reason = field('reason').value.trim();
    if (reason === '') {
      field('reason').focus();
      return;
    }
    const after = await store.change(id, ({ signed, ...now }) => ({
      ...now,
      before: signed === undefined ? now.before : [...now.before, { ...signed, reopened: reason }],
    }));
    field('reason').value = '';
    for (const input of [...accept, ...reject]) input.checked = false;
    show(after.signed, after.before);
    document.getElementById('sign-off-title')?.focus();
    tell();
  });
  show(record.signed, record.before);
}
