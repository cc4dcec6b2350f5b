// Single keys outside of fields: "/" goes to the search of the page, or to that of the cars where there is none and nothing typed
// could be lost; "?" lists the keys. They can be switched off in that list; without this file the same is reached by Tab.
(() => {
  'use strict';
  const OFF = 'headertank.keys';
  const FORMS = 'form[data-first-field], form.spec, .handover form';
  const TEXT = 'input:not([type=checkbox]):not([type=radio]), textarea, select, [contenteditable]';

  function areOff() {
    try {
      return localStorage.getItem(OFF) === 'off';
    } catch (e) {
      return false;
    }
  }

  /** Other files look here. */
  function tell() {
    document.documentElement.dataset.singleKeys = areOff() ? 'off' : 'on';
  }

  function show() {
    const list = document.getElementById('keys');
    if (list === null || list.open) {
      return;
    }
    const own = document.querySelector('.keys dl');
    document.getElementById('keys-of-page').replaceChildren(...(own === null ? [] : [own.cloneNode(true)]));
    document.getElementById('keys-single').checked = !areOff();
    list.showModal();
  }

  document.addEventListener('click', event => {
    if (event.target instanceof Element && event.target.closest('#keys-open')) {
      show();
    }
  });
  document.addEventListener('headertank:keys', show);

  document.addEventListener('change', event => {
    if (event.target.id !== 'keys-single') {
      return;
    }
    try {
      if (event.target.checked) {
        localStorage.removeItem(OFF);
      } else {
        localStorage.setItem(OFF, 'off');
      }
    } catch (e) {
      // A browser that keeps nothing leaves them on.
    }
    tell();
  });

  document.addEventListener('keydown', event => {
    const busy = event.defaultPrevented || event.isComposing || event.ctrlKey || event.metaKey || event.altKey;
    if (busy || areOff() || !(event.target instanceof Element) || event.target.matches(TEXT) || document.querySelector('dialog[open]')) {
      return;
    }
    const search = document.querySelector('main input[type=search]');
    const cars = document.querySelector('nav a[href$="/cars"]');
    if (event.key === '?') {
      event.preventDefault();
      show();
    } else if (event.key === '/' && search !== null && document.getElementById('finder') === null) {
      event.preventDefault();
      search.focus();
      search.select();
    } else if (event.key === '/' && search === null && cars !== null && document.querySelector(FORMS) === null) {
      event.preventDefault();
      location.assign(cars.href + '#search');
    }
  });

  const asked = location.hash === '#search' && document.querySelector('main input[type=search]');
  if (asked) {
    asked.focus();
  }

  tell();
})();
