import { idleWork } from './idle.ts';

/**
 * What holds most of a long page. Steps are counted through the page and stay in it; hold points too, which grow when a
 * job begins: what is measured must stay as it is.
 */
const PARTS = '.inst > .ib';

/**
 * Lets each large part of the page be laid out and drawn by itself, and only near the screen: a number that changes far
 * away then costs nothing until the reader comes there. Each part first stands measured, so that no link jumps to a wrong
 * place and nothing moves when it is drawn. A page of another width is measured anew.
 */
export function layApart(page: HTMLElement): void {
  const parts = [...page.querySelectorAll<HTMLElement>(PARTS)];
  const idle = idleWork();
  const measure = (): void => {
    const sizes = parts.map((part) => {
      const { paddingTop, paddingBottom } = getComputedStyle(part);
      return part.getBoundingClientRect().height - Number.parseFloat(paddingTop) - Number.parseFloat(paddingBottom);
    });
    for (const [index, part] of parts.entries()) {
      const heightPx = sizes[index]!;
      if (heightPx <= 0) continue; // not shown now; it stays as it is
      part.style.setProperty('contain-intrinsic-block-size', `auto ${heightPx}px`);
      part.classList.add('apart');
    }
  };
  let widthPx = 0;
  new ResizeObserver(([entry]) => {
    if (entry!.contentRect.width === widthPx) return;
    widthPx = entry!.contentRect.width;
    for (const part of parts) part.classList.remove('apart');
    idle([() => void document.fonts.ready.then(measure)]);
  }).observe(page);
}
