// Arrow keys between the search box and what it found. Without this file Tab and Enter do the same.
(() => {
  'use strict';
  const box = document.getElementById('q');
  const hits = () => Array.from(document.querySelectorAll('#found .hit'));

  document.addEventListener('keydown', event => {
    const inList = event.target.classList && event.target.classList.contains('hit');
    if (event.target !== box && !inList || event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    const all = hits();
    const at = all.indexOf(event.target);
    let to = null;
    if (event.key === 'ArrowDown') {
      to = all[Math.min(at + 1, all.length - 1)];
    } else if (event.key === 'ArrowUp' && inList) {
      to = at === 0 ? box : all[at - 1];
    } else if (event.key === 'Escape' && inList) {
      to = box;
    }
    if (to) {
      event.preventDefault();
      to.focus();
    }
  });

  // A search in vain has filled in what was typed: go on with the first field that is still empty.
  const form = document.getElementById('new-car');
  const faulty = form && form.querySelector('[aria-invalid=true]');
  const warning = form && form.querySelector('[role=alert] a, [role=alert] input');
  const searched = box && box.value !== '' && hits().length === 0;
  const owner = form && form.querySelector('input[type=hidden][name=customerId]');
  const empty = form && Array.from(form.querySelectorAll('.grid input')).find(i => i.value === '');
  const first = faulty || warning || (searched || owner ? empty : null);
  if (first) {
    first.focus();
  }
})();
