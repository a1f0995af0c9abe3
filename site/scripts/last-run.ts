/**
 * Remembers the guide opened last and marks its run on the vehicle boards in copper. Without storage or scripts the
 * boards stay hollow, and nothing is lost.
 */
const KEY = 'loomleaf:last-guide';

const store = (): Storage | null => {
  try {
    return localStorage;
  } catch {
    return null;
  }
};

const guide = document.querySelector<HTMLElement>('article[data-guide]')?.dataset['guide'];
if (guide !== undefined) {
  try {
    store()?.setItem(KEY, guide);
  } catch {
    // Storage is full: the boards keep the mark they have.
  }
}

const last = store()?.getItem(KEY);
if (last) {
  for (const board of document.querySelectorAll('.board')) {
    const marked = [...board.querySelectorAll<Element>('[data-guides]')].filter((element) =>
      (element.getAttribute('data-guides') ?? '').split(' ').includes(last),
    );
    if (marked.length === 0) continue;
    for (const element of [...marked, ...board.querySelectorAll('.trunk')]) element.setAttribute('data-is', 'live');
    board.querySelector('.last-run')?.removeAttribute('hidden');
  }
}

export {};
