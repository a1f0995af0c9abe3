import { openJobs } from '../../../components/job/store.ts';

const id = new URLSearchParams(location.search).get('job') ?? '';
const guides = document.getElementById('card-way')?.dataset['guides'] ?? '/guides/';
const job = id === '' ? undefined : await (await openJobs()).get(id);
if (job !== undefined) location.replace(`${guides}${job.guide.id}/card/?job=${encodeURIComponent(id)}`);
else document.getElementById('card-missing')!.hidden = false;
