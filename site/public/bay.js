// Runs before the first paint, so that no page shows in the wrong bay or with controls that do nothing.
(() => {
  const root = document.documentElement;
  root.dataset.script = '';
  let bay = null;
  try {
    bay = localStorage.getItem('loomleaf:bay');
  } catch {
    // Storage is closed to this page: the device's setting rules.
  }
  if (bay !== 'day' && bay !== 'night') bay = matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'day';
  root.dataset.bay = bay;
})();
