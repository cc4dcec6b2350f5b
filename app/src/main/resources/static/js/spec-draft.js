// Work that is not saved yet stays in this browser: over a closed tab, a lost connection, an expired session. One draft for
// each account and car; it remembers the revision it began from and the key of its form, so that sending it twice saves once.
(() => {
  'use strict';
  const RETRY_MS = 10000;
  const WRITE_MS = 250;
  let state = null;
  let sent = false;

  const byId = id => document.getElementById(id);
  const draftKey = form => 'headertank.draft.' + form.dataset.draft;

  function stored(form) {
    try {
      return JSON.parse(localStorage.getItem(draftKey(form)));
    } catch (e) {
      return null;
    }
  }

  function read(form) {
    return Array.from(new FormData(form)).filter(([name]) => name !== '_csrf');
  }

  /** What was typed, without the key that each form gets anew. */
  const typed = fields => JSON.stringify(fields.filter(([name]) => name !== 'key'));

  function write(current) {
    if (current !== state || current.paused || !current.form.isConnected) {
      return;
    }
    const fields = read(current.form);
    try {
      if (typed(fields) === current.pristine) {
        localStorage.removeItem(draftKey(current.form));
      } else {
        localStorage.setItem(draftKey(current.form), JSON.stringify({ at: new Date().toISOString(), fields }));
      }
    } catch (e) {
      // A browser that keeps nothing still saves by the button.
    }
  }

  /** What was said of a value that another page showed: it holds as long as the draft has that very value. */
  function vouched(name, kept, fields) {
    const gap = kept.indexOf(' ');
    const value = fields.find(([other]) => other + '.from' === name);
    return gap > 0 && value && value[1].trim() === kept.slice(gap + 1) ? kept.slice(0, gap) : '';
  }

  function put(form, fields) {
    const left = fields.slice();
    for (const control of form.elements) {
      if (!control.name || control.name === '_csrf' || control.type === 'submit') {
        continue;
      }
      if (control.type === 'radio' || control.type === 'checkbox') {
        control.checked = fields.some(([name, value]) => name === control.name && value === control.value);
        continue;
      }
      const at = left.findIndex(([name]) => name === control.name);
      if (at >= 0) {
        const kept = left.splice(at, 1)[0][1];
        control.value = kept;
        if (control.tagName === 'SELECT' && control.selectedIndex < 0) {
          control.value = vouched(control.name, kept, fields);
        }
      }
    }
    form.querySelector('.fields').dispatchEvent(new Event('change', { bubbles: true }));
  }

  function when(at) {
    const date = new Date(at);
    const time = date.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
    return date.toDateString() === new Date().toDateString() ? time : date.toLocaleDateString() + ' ' + time;
  }

  /** @param found whether the draft waits to be put back; else it stands in the form already */
  function showBar(draft, found) {
    const text = byId('draft-text');
    text.textContent = (found ? text.dataset.found : text.dataset.kept).replace('@', when(draft.at));
    byId('draft-keep').hidden = found;
    byId('draft-take').hidden = !found;
    byId('draft-bar').hidden = false;
  }

  function begin(form) {
    const current = { form, pristine: typed(read(form)), paused: false, timer: 0, waiting: 0 };
    form.dataset.ready = 'yes';
    state = current;
    if (sent) {
      sent = false;
      current.pristine = '';
      write(current);
      return;
    }
    const draft = stored(form);
    if (!draft || typed(draft.fields) === current.pristine) {
      return;
    }
    if (form.dataset.started) {
      current.paused = true;
      showBar(draft, true);
    } else {
      put(form, draft.fields);
      showBar(draft, false);
    }
  }

  function look() {
    const form = document.querySelector('form.spec[data-draft]');
    if (form && !form.dataset.ready) {
      begin(form);
    }
  }

  function later(event) {
    const current = state;
    if (current && event.target instanceof Element && current.form.contains(event.target)) {
      clearTimeout(current.timer);
      current.timer = setTimeout(() => write(current), WRITE_MS);
    }
  }

  function drop(form) {
    state.paused = true;
    clearInterval(state.waiting);
    localStorage.removeItem(draftKey(form));
  }

  function send() {
    if (state && state.form.isConnected) {
      state.form.requestSubmit(state.form.querySelector('#finish button[type=submit]'));
    }
  }

  function unsent(text) {
    const box = byId('unsent');
    if (box && (box.hidden || box.textContent !== text)) {
      box.textContent = text;
      box.hidden = false;
      box.scrollIntoView({ block: 'nearest' });
    }
  }

  // Signing out has dropped the draft: nothing writes it again while the page goes away.
  document.addEventListener('headertank:signing-out', () => {
    if (state) {
      state.paused = true;
    }
  });

  document.addEventListener('input', later);
  document.addEventListener('change', later);
  window.addEventListener('pagehide', () => state && write(state));
  document.addEventListener('visibilitychange', () => state && document.hidden && write(state));

  document.addEventListener('click', event => {
    const id = event.target.id;
    if (id === 'draft-keep') {
      byId('draft-bar').hidden = true;
      state.form.querySelector('input, select').focus();
    } else if (id === 'draft-take') {
      put(state.form, stored(state.form).fields);
      state.paused = false;
      byId('draft-bar').hidden = true;
      document.querySelectorAll('#started, #typed-in').forEach(notice => { notice.hidden = true; });
    } else if (id === 'draft-drop') {
      drop(state.form);
      location.assign(location.pathname);
    }
  });

  const saves = event => state !== null && event.detail.elt === state.form;

  document.addEventListener('htmx:beforeRequest', event => {
    if (saves(event)) {
      clearInterval(state.waiting);
      state.paused = false;
      write(state);
    }
  });

  document.addEventListener('htmx:sendError', event => {
    if (saves(event)) {
      unsent(byId('unsent').dataset.offline);
      state.waiting = setInterval(send, RETRY_MS);
    } else if (byId('resting')) {
      byId('resting').hidden = false;
    }
  });

  window.addEventListener('online', () => {
    if (state && state.waiting) {
      send();
    }
  });

  document.addEventListener('htmx:responseError', event => {
    if (saves(event)) {
      unsent(byId('unsent').dataset.refused);
    }
  });

  document.addEventListener('htmx:beforeSwap', event => {
    const answer = event.detail.xhr;
    if (byId('resting')) {
      byId('resting').hidden = true;
    }
    if (!state || event.detail.requestConfig.elt !== state.form) {
      return;
    }
    if (answer.status === 200 && /\/revisions\/\d+$/.test(new URL(answer.responseURL).pathname)) {
      drop(state.form);
    } else if (answer.status === 409 || answer.status === 422) {
      sent = true;
    }
  });

  // Whoever hears the page rather than sees it goes on where the new one begins.
  document.addEventListener('htmx:afterSettle', event => {
    if (event.detail.target === document.body && !document.querySelector('[autofocus]')) {
      byId('content').focus();
    }
  });

  // Not before htmx listens: what is put back must reach the preview.
  document.addEventListener('htmx:load', look);
})();
