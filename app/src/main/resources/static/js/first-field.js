// A form that is the reason for its page has the focus in its first field, or in the first one that is faulty. Without this
// file the first Tab after the link past the head leads there.
(() => {
  'use strict';
  const FIELDS = 'input:not([type=hidden]), select, textarea';

  function begin() {
    const form = document.querySelector('form[data-first-field]');
    const taken = document.activeElement !== null && document.activeElement !== document.body;
    if (form === null || taken || document.querySelector('[autofocus]') !== null) {
      return;
    }
    const faulty = form.querySelector('[aria-invalid=true]');
    const first = faulty || Array.from(form.querySelectorAll(FIELDS)).find(field => field.getClientRects().length > 0);
    if (first) {
      first.focus({ preventScroll: faulty === null });
    }
  }

  begin();
})();
