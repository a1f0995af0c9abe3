(() => {
  const root = document.documentElement;
  root.dataset.script = '';
  let bay;
  try {
    bay = localStorage.getItem('loomleaf:bay');
  } catch {}
  if (bay !== 'day' && bay !== 'night') bay = matchMedia('(prefers-color-scheme: dark)').matches ? 'night' : 'day';
  root.dataset.bay = bay;
})();
