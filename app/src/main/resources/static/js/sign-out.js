// A counter's computer is shared: whoever signs out leaves no unsaved work of theirs in the browser.
(() => {
  'use strict';
  document.addEventListener('submit', event => {
    const account = event.target.dataset.account;
    if (account === undefined || !event.target.classList.contains('out')) {
      return;
    }
    const mine = Object.keys(localStorage).filter(key => key.startsWith('headertank.draft.' + account + '.'));
    if (mine.length > 0 && !window.confirm(event.target.dataset.unsaved)) {
      event.preventDefault();
      return;
    }
    mine.forEach(key => localStorage.removeItem(key));
  });
})();
