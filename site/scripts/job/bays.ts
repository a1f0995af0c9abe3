import { anyJobs } from '../../../components/job/hint.ts';

/** Jobs in the bays, on the home page: nothing is fetched where there are none. */
async function show(list: HTMLElement): Promise<void> {
  const [{ openJobs }, { fillRow, summaryOf }] = await Promise.all([
    import('../../../components/job/store.ts'),
    import('./summary.ts'),
  ]);
  const store = await openJobs();
  const template = document.querySelector<HTMLTemplateElement>('#job-row')!;
  const render = async (): Promise<void> => {
    const jobs = (await store.list()).map((job) => ({ job, summary: summaryOf(job) }));
    const open = jobs.filter(({ summary }) => !summary.finished).sort((a, b) => b.summary.touched - a.summary.touched);
    list.replaceChildren(
      ...open.map(({ job, summary }) => {
        const row = template.content.cloneNode(true) as DocumentFragment;
        fillRow(row, summary, `${list.dataset['guides']}${job.guide.id}/?job=${encodeURIComponent(job.id)}`);
        return row;
      }),
    );
    document.querySelector<HTMLElement>('#jobs-none')!.hidden = open.length > 0;
  };
  await render();
  store.onChange(() => void render());
}
const list = document.querySelector<HTMLElement>('#jobs-here');
if (list !== null && anyJobs()) void show(list);
