/** The print button of a sheet. */
for (const button of document.querySelectorAll<HTMLButtonElement>('[data-print]')) {
  button.addEventListener('click', () => print());
}
