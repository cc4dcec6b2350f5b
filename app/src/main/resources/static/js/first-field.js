// A form that is the reason for its page has the focus in its first field, or in the first one that is faulty. Without this
// file the first Tab after the link past the head leads there. What the summary of faults names is found by its id, else by its
// name.
(() => {
  'use strict';
  const FIELDS = 'input:not([type=hidden]), select, textarea';

  function begin() {
    const wrong = document.querySelector('.error-summary') && document.querySelector('main [aria-invalid=true]');
    if (wrong) {
      for (let hides = wrong.closest('details'); hides; hides = hides.parentElement.closest('details')) {
        hides.open = true;
      }
      (wrong.matches('fieldset') ? wrong.querySelector(FIELDS) || wrong : wrong).focus();
      return;
    }
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

  document.addEventListener('click', event => {
    const link = event.target.closest('.error-summary a[data-field]');
    const name = link && link.dataset.field;
    const field = link && (document.getElementById(name) || document.getElementsByName(name)[0]);
    if (field) {
      event.preventDefault();
      (field.matches('fieldset') ? field.querySelector(FIELDS) || field : field).focus();
    }
  });
  begin();
})();
