// A form that takes a moment says so while it is on its way, and its button rests. Without this file it is sent as ever, and its
// key sees to it that twice is once.
(() => {
  'use strict';

  document.addEventListener('submit', event => {
    const form = event.target;
    if (!(form instanceof HTMLFormElement) || form.dataset.wait === undefined || event.defaultPrevented) {
      return;
    }
    const line = form.querySelector('.wait');
    const said = line.querySelector('[data-text]');
    line.hidden = false;
    said.textContent = said.dataset.text;
    form.setAttribute('aria-busy', 'true');
    // Once the form is on its way: a button that rests is not sent with it.
    setTimeout(() => form.querySelectorAll('button').forEach(button => { button.disabled = true; }));
  });

  // Back again, from the browser's own store of pages.
  window.addEventListener('pageshow', event => {
    if (event.persisted) {
      document.querySelectorAll('form[data-wait]').forEach(form => {
        form.removeAttribute('aria-busy');
        form.querySelector('.wait').hidden = true;
        form.querySelectorAll('button').forEach(button => { button.disabled = false; });
      });
    }
  });
})();
