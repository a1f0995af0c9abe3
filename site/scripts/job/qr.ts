import { create } from 'qrcode';
import type { Page } from '../../../components/runtime/page.ts';

/** Quiet modules round the code. ISO/IEC 18004 asks for four. */
const QUIET = 4;

/** Address of the guide with the values that differ from its own. */
export function linkOf(page: Page, path: string): string {
  const specs = page.data.circuit?.values ?? {};
  const pairs = Object.entries(page.values.value).filter(([name, value]) => value !== specs[name]?.default);
  return (
    location.origin + path + (pairs.length > 0 ? `#${pairs.map(([name, value]) => `${name}=${value}`).join('&')}` : '')
  );
}

/** Draws the code that opens the guide, with the numbers of a page that has other ones; it follows them. */
export function drawQr(root: ParentNode, page: Page | null, path: string): void {
  const box = root.querySelector<HTMLElement>('[data-qr]');
  const svg = box?.querySelector('svg');
  if (!box || !svg) return;
  const draw = (link: string): void => {
    const { modules } = create(link, { errorCorrectionLevel: 'M' });
    let d = '';
    for (let y = 0; y < modules.size; y++)
      for (let x = 0; x < modules.size; x++) if (modules.get(y, x)) d += `M${x + QUIET} ${y + QUIET}h1v1h-1z`;
    const size = modules.size + 2 * QUIET;
    svg.setAttribute('viewBox', `0 0 ${size} ${size}`);
    const drawn = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    drawn.setAttribute('d', d);
    drawn.setAttribute('fill', '#000');
    svg.replaceChildren(drawn);
  };
  if (page === null) draw(location.origin + path);
  else page.values.subscribe(() => draw(linkOf(page, path)));
}
