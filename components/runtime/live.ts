import type { Page } from './page.ts';
import type { PageData } from './page-data.ts';

let page: Promise<Page> | undefined;

/** What the page was built from; null on a page without live parts. */
export function readPageData(): PageData | null {
  const text = document.getElementById('page-data')?.textContent;
  return text === undefined || text === null || text === '' ? null : (JSON.parse(text) as PageData);
}

/**
 * The page's state, made on first call. Other browser code (jobs, diagrams) comes in here: there is one state a page.
 * Null on a page without live parts.
 */
export function live(): Promise<Page> | null {
  if (page !== undefined) return page;
  const data = readPageData();
  if (data === null) return null;
  page = import('./work.ts').then(({ work }) => work(data));
  return page;
}
