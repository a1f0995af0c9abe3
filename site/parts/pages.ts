/** Names of the site's pages, in the order of the top bar. `menu`: in the menu and the foot only. */
export const PAGES: readonly { path: string; name: string; menu?: true }[] = [
  { path: '/guides/', name: 'Guides' },
  { path: '/calculators/', name: 'Calculators' },
  { path: '/surfaces/', name: 'Prep' },
  { path: '/lessons/', name: 'Lessons' },
  { path: '/jobs/', name: 'Job cards' },
  { path: '/terms/', name: 'Terms', menu: true },
  { path: '/sources/', name: 'Sources', menu: true },
];
