import type { LessonRecord } from '../../components/lesson/record.ts';

/** The study path on this device: each lesson as its short line, what is next, what is due today. */
const list = document.getElementById('study-path');
if (list !== null) void start(JSON.parse(list.textContent ?? '[]') as Entry[]);

interface Entry {
  id: string;
  title: string;
  order: number;
  href: string;
  after: string[];
  questions: { id: string; ask: string }[];
}

async function start(lessons: readonly Entry[]): Promise<void> {
  const [rules, { openLessons }] = await Promise.all([
    import('../../components/lesson/record.ts'),
    import('../../components/lesson/store.ts'),
  ]);
  const store = await openLessons();
  const records = new Map((await store.all()).map((record): [string, LessonRecord] => [record.id, record]));

  for (const { id, questions } of lessons) {
    const line = rules.lineOf(
      records.get(id),
      questions.map((question) => question.id),
    );
    for (const row of document.querySelectorAll<HTMLElement>(`[data-line="${CSS.escape(id)}"]`)) {
      row.querySelector('[data-line-words]')!.textContent = line.words;
      const at = (300 * line.done) / line.of;
      row.querySelector('[data-line-done]')!.setAttribute('width', String(at));
      row.querySelector('[data-line-arm]')!.setAttribute('d', line.done > 0 && !line.signed ? `M${at} 13l26-9` : '');
    }
  }

  const next = rules.nextLesson(lessons, records);
  const lead = document.querySelector<HTMLAnchorElement>('[data-next-lesson]');
  if (lead !== null) {
    if (next === undefined) lead.hidden = true;
    else {
      lead.href = next.href;
      lead.textContent = `${records.has(next.id) ? 'Carry on' : 'Next'}: lesson ${next.order}, ${next.title}`;
    }
  }
  const signed = [...records.values()].filter((record) => record.signed !== undefined).length;
  const count = document.querySelector('[data-signed-count]');
  if (count !== null) count.textContent = `${signed} of ${lessons.length} signed`;

  const due = rules.dueToday([...records.values()], Date.now());
  const items = due.flatMap(({ lesson, question }) => {
    const entry = lessons.find(({ id }) => id === lesson);
    const asked = entry?.questions.find(({ id }) => id === question);
    if (entry === undefined || asked === undefined) return [];
    const item = document.createElement('li');
    const link = document.createElement('a');
    link.href = `${entry.href}#question-${question}`;
    link.textContent = asked.ask;
    item.append(link, ` Lesson ${entry.order}.`);
    return [item];
  });
  document.querySelector('[data-due]')!.replaceChildren(...items);
  document.querySelector('[data-due-words]')!.textContent =
    items.length === 0
      ? 'Nothing is due today. A question that was missed comes back here another day.'
      : `${items.length} ${items.length === 1 ? 'question comes' : 'questions come'} back today.`;

  const clear = document.querySelector<HTMLButtonElement>('[data-clear]');
  if (clear !== null) {
    clear.hidden = records.size === 0;
    let sure = false;
    clear.addEventListener('click', async () => {
      if (!sure) {
        sure = true;
        clear.textContent = 'Press again to erase every answer and signature kept here';
        return;
      }
      await store.clear();
      location.reload();
    });
  }
  document.documentElement.dataset['lesson'] = 'ready';
}
