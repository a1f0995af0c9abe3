/** One line at the foot that says what just happened, aloud too; it goes after a while or when pressed. */
const SHOWN_MS = 9000;
let region: HTMLElement | undefined;
let timer = 0;

export function toast(text: string, action?: { label: string; run: () => void }): void {
  if (region === undefined) {
    region = document.createElement('div');
    region.className = 'toast noprint';
    region.setAttribute('role', 'status');
    document.body.append(region);
  }
  region.replaceChildren();
  const words = document.createElement('span');
  words.textContent = text;
  const close = document.createElement('button');
  close.type = 'button';
  close.className = 'link';
  close.textContent = 'Close';
  close.addEventListener('click', () => region?.replaceChildren());
  region.append(words);
  if (action !== undefined) {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'link';
    button.textContent = action.label;
    button.addEventListener('click', action.run);
    region.append(button);
  }
  region.append(close);
  clearTimeout(timer);
  // what asks for something waits until it is answered
  if (action === undefined) timer = window.setTimeout(() => region?.replaceChildren(), SHOWN_MS);
}
