const two = (n: number): string => String(n).padStart(2, '0');

/** "25 Nov 2026, 09:14", in the time of the place. */
export function clock(iso: string): string {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return iso;
  const month = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'][at.getMonth()];
  return `${at.getDate()} ${month} ${at.getFullYear()}, ${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** True where a field has an entry; otherwise it says that it needs one. */
export function ask(input: HTMLInputElement): boolean {
  const filled = input.value.trim() !== '';
  if (filled) input.removeAttribute('aria-invalid');
  else {
    input.setAttribute('aria-invalid', 'true');
    input.focus();
  }
  return filled;
}
