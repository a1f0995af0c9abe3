/** The bay button: day or night, kept on this device. Without a choice of the reader's the device's setting rules. */
const KEY = 'loomleaf:bay';
const root = document.documentElement;
const dark = matchMedia('(prefers-color-scheme: dark)');

const chosen = (): string | null => {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
};

for (const button of document.querySelectorAll<HTMLButtonElement>('.bay')) {
  button.addEventListener('click', () => {
    const bay = root.dataset['bay'] === 'night' ? 'day' : 'night';
    root.dataset['bay'] = bay;
    try {
      localStorage.setItem(KEY, bay);
    } catch {
      // Kept for this page only.
    }
  });
}
dark.addEventListener('change', () => {
  if (chosen() === null) root.dataset['bay'] = dark.matches ? 'night' : 'day';
});
// Another tab of the same reader.
window.addEventListener('storage', (event) => {
  if (event.key === KEY && event.newValue !== null) root.dataset['bay'] = event.newValue;
});

export {};
