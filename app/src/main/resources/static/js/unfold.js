// A link to a place that is folded away unfolds it. Without this file browsers that do not do so by themselves show the fold.
(() => {
  'use strict';
  const unfold = () => {
    const place = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
    let folded = false;
    for (let hides = place?.closest('details:not([open])'); hides; hides = hides.parentElement.closest('details:not([open])')) {
      hides.open = true;
      folded = true;
    }
    if (folded) {
      place.scrollIntoView();
    }
  };
  addEventListener('hashchange', unfold);
  unfold();
})();
