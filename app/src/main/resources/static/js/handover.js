// Keeps what a technician enters until it has arrived: entries wait in localStorage, photos in IndexedDB, and what is only
// typed yet is there again after the page was loaded anew. Without this file the forms are sent as plain forms.
(() => {
  'use strict';
  const page = document.querySelector('.handover[data-check]');
  if (!page) {
    return;
  }
  const text = page.dataset;
  const place = `headertank.handover.${text.account}.${text.check}`;
  const RETRY_MS = 5000;
  const PATIENCE_MS = 20000;
  let sending = false;
  let said = '';

  // ---- what is kept in the browser

  const read = (name, otherwise) => {
    try {
      return JSON.parse(localStorage.getItem(`${place}.${name}`)) ?? otherwise;
    } catch {
      return otherwise;
    }
  };
  const write = (name, value) => {
    try {
      localStorage.setItem(`${place}.${name}`, JSON.stringify(value));
      return true;
    } catch {
      return false;
    }
  };
  const queue = () => read('queue', []);
  const drop = (key) => write('queue', queue().filter((e) => e.key !== key));

  // crypto.randomUUID exists on https only; a shop's own network often is not
  const newKey = () => {
    const b = crypto.getRandomValues(new Uint8Array(16));
    b[6] = (b[6] & 0x0f) | 0x40;
    b[8] = (b[8] & 0x3f) | 0x80;
    const hex = Array.from(b, (x) => x.toString(16).padStart(2, '0')).join('');
    return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
  };

  const photos = () =>
    new Promise((resolve, reject) => {
      const open = indexedDB.open('headertank.handover', 1);
      open.onupgradeneeded = () => open.result.createObjectStore('photos', { keyPath: 'key' });
      open.onsuccess = () => resolve(open.result);
      open.onerror = () => reject(open.error);
    });
  const inPhotos = async (mode, act) => {
    const base = await photos();
    return new Promise((resolve, reject) => {
      const change = base.transaction('photos', mode);
      const asked = act(change.objectStore('photos'));
      change.oncomplete = () => resolve(asked.result);
      change.onerror = () => reject(change.error);
    }).finally(() => base.close());
  };
  const waitingPhotos = async () => {
    try {
      const all = await inPhotos('readonly', (store) => store.getAll());
      return all.filter((p) => p.place === place);
    } catch {
      return [];
    }
  };

  // ---- what the page shows of it

  const named = (form, name) => form.elements.namedItem(name);
  const card = (item) => document.getElementById(`item-${item}`);

  const show = async () => {
    const waiting = [...queue(), ...(await waitingPhotos())];
    const line = page.querySelector('.ho-sending');
    const state = waiting.length > 0 ? said || text.waiting.replace('%n', waiting.length) : line.textContent && text.sent;
    if (line.textContent !== state) {
      line.textContent = state;
    }
    line.classList.toggle('ho-waits', waiting.length > 0);
    page.querySelectorAll('.ho-item').forEach((one) => {
      const note = one.querySelector('.ho-waiting');
      const mine = waiting.some((e) => e.item === one.dataset.item);
      note.hidden = !mine;
      note.textContent = mine ? text.itemWaiting : '';
    });
    page.querySelectorAll('.ho-stage').forEach((stage) => {
      stage.querySelector('.ho-count').textContent = text.stage
        .replace('%open', stage.querySelectorAll('.ho-item[data-open="true"]').length)
        .replace('%all', stage.querySelectorAll('.ho-item').length);
    });
    const all = page.querySelectorAll('.ho-item');
    const count = (which) => [...all].filter((one) => one.dataset[which] === 'true').length;
    const way = document.getElementById('ho-next');
    if (way) {
      way.hidden = count('open') === 0;
    }
    page.querySelector('.ho-progress').textContent = text.progress
      .replace('%open', count('open'))
      .replace('%done', all.length - count('open') - count('leftOut'))
      .replace('%left', count('leftOut'))
      .replace('%all', all.length);
  };

  // ---- the way to the next item that is open, wherever the page stands

  let shown = null;
  const next = () => {
    const open = [...page.querySelectorAll('.ho-item[data-open="true"]')];
    const stage = (one) => one.closest('.ho-stage');
    const top = (one) => (stage(one).open ? one : stage(one)).getBoundingClientRect().top;
    const under = page.querySelector('.ho-bar').getBoundingClientRect().bottom + 48;
    const last = shown && card(shown);
    const inSight = last && stage(last).open && top(last) < window.innerHeight && last.getBoundingClientRect().bottom > under;
    const after = (one) => last.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING;
    return open.find(inSight ? after : (one) => top(one) > under) ?? open[0];
  };
  document.getElementById('ho-next')?.addEventListener('click', (event) => {
    const one = next();
    if (one) {
      event.preventDefault();
      shown = one.dataset.item;
      one.closest('.ho-stage').open = true;
      one.scrollIntoView();
      one.querySelector('.ho-entry input:not([type=hidden]), .ho-entry button')?.focus({ preventScroll: true });
    }
  });

  const putCard = (item, html) => {
    const old = card(item);
    const fresh = new DOMParser().parseFromString(html, 'text/html').querySelector('.ho-item');
    if (!old || !fresh) {
      return null;
    }
    old.replaceWith(fresh);
    return fresh;
  };

  const typed = (form) =>
    Object.fromEntries([...form.elements].filter((f) => /^(value|note|caption)$/.test(f.name)).map((f) => [f.name, f.value]));

  const keepDraft = (item) => {
    const one = card(item);
    const values = Object.assign({}, ...[...one.querySelectorAll('form')].map(typed));
    const drafts = read('drafts', {});
    if (Object.values(values).some((v) => v !== '')) {
      drafts[item] = values;
    } else {
      delete drafts[item];
    }
    write('drafts', drafts);
  };

  const forget = (item, names) => {
    const drafts = read('drafts', {});
    names.forEach((name) => drafts[item] && delete drafts[item][name]);
    write('drafts', drafts);
  };

  const bringBack = (item) => {
    const one = card(item);
    Object.entries(read('drafts', {})[item] ?? {}).forEach(([name, value]) => {
      const field = one?.querySelector(`[name="${name}"]`);
      if (field && value !== '') {
        field.value = value;
        for (let hides = field.closest('details'); hides; hides = hides.parentElement.closest('details')) {
          hides.open = true;
        }
      }
    });
  };

  // ---- sending

  const token = () => page.querySelector('input[name="_csrf"]')?.value ?? '';

  /** 'sent', 'later' when the connection is away, 'stop' when a person has to do something first. */
  const send = async (entry) => {
    const body = new FormData();
    Object.entries(entry.fields).forEach(([name, value]) => body.append(name, value));
    if (entry.blob) {
      body.append('file', entry.blob, entry.name);
    }
    let answer;
    try {
      answer = await fetch(entry.url, {
        method: 'POST',
        body: entry.blob ? body : new URLSearchParams(body),
        headers: { 'X-Handover': '1', 'X-CSRF-TOKEN': token() },
        signal: AbortSignal.timeout(entry.blob ? 6 * PATIENCE_MS : PATIENCE_MS),
      });
    } catch {
      return 'later';
    }
    if (answer.redirected || answer.status === 401 || answer.status === 403) {
      said = text.signIn;
      return 'stop';
    }
    if (answer.status >= 500) {
      return 'later';
    }
    if (answer.ok || answer.status === 422) {
      const names = entry.blob ? ['caption'] : ['value', 'note'];
      if (answer.ok) {
        forget(entry.item, names);
      }
      const fresh = putCard(entry.item, await answer.text());
      bringBack(entry.item);
      if (!answer.ok) {
        fresh?.querySelector('.ho-fault')?.scrollIntoView({ block: 'center' });
      }
      return 'sent';
    }
    const one = card(entry.item)?.querySelector('.ho-help');
    if (one) {
      const fault = document.createElement('span');
      fault.className = 'ho-fault';
      fault.textContent = text.refused;
      one.append(fault);
    }
    return 'sent';
  };

  const flush = async () => {
    if (sending) {
      return;
    }
    sending = true;
    said = '';
    try {
      let state = 'sent';
      for (let entry = queue()[0]; entry && state === 'sent'; entry = queue()[0]) {
        state = await send(entry);
        if (state === 'sent') {
          drop(entry.key);
        }
        await show();
      }
      for (const photo of state === 'sent' ? await waitingPhotos() : []) {
        state = await send(photo);
        if (state !== 'sent') {
          break;
        }
        await inPhotos('readwrite', (store) => store.delete(photo.key));
        await show();
      }
    } finally {
      sending = false;
      await show();
    }
  };

  // ---- what a person does

  /** What has to be said in words and is not yet: asks for it, so that a tap on "fault" leads to the note. */
  const asksForWords = (form, outcome) => {
    const one = card(named(form, 'item').value);
    const ask = { FAULT: text.sayWrong, NOT_APPLICABLE: text.sayWhy, DONE: one.dataset.fault === 'true' && text.sayRight }[outcome];
    const note = named(form, 'note');
    if (!ask || note.value.trim() !== '') {
      return false;
    }
    one.querySelector('.ho-more').open = true;
    const fault = document.createElement('span');
    fault.className = 'ho-fault';
    fault.textContent = ask;
    note.parentElement.querySelector('.ho-help').replaceChildren(fault);
    note.setAttribute('aria-invalid', 'true');
    note.focus();
    return true;
  };

  const enter = (form, outcome) => {
    const item = named(form, 'item').value;
    const key = newKey();
    const fields = { key, item, outcome, note: named(form, 'note').value, value: named(form, 'value')?.value ?? '' };
    const kept = write('queue', [...queue(), { key, item, url: form.action, fields }]);
    if (kept) {
      keepDraft(item);
    }
    return kept;
  };

  const addPhoto = async (form) => {
    const file = named(form, 'file').files[0];
    const item = named(form, 'item').value;
    const key = newKey();
    const fields = { key, item, caption: named(form, 'caption').value };
    await inPhotos('readwrite', (store) =>
      store.put({ key, place, item, url: form.action, fields, blob: file, name: file.name || 'photo' }));
    named(form, 'file').value = '';
  };

  page.addEventListener('submit', async (event) => {
    const form = event.target;
    if (form.matches('.ho-entry')) {
      if (asksForWords(form, event.submitter?.value)) {
        event.preventDefault();
        return;
      }
      if (enter(form, event.submitter?.value)) {
        event.preventDefault();
        await show();
        await flush();
      }
      return;
    }
    const file = form.matches('.ho-photo') ? named(form, 'file').files[0] : null;
    if (!file) {
      return;
    }
    event.preventDefault();
    const help = form.querySelector('.ho-help');
    if (file.size > Number(text.maxBytes)) {
      help.textContent = text.large;
      return;
    }
    try {
      await addPhoto(form);
      await show();
      await flush();
    } catch {
      help.textContent = text.noStore;
    }
  });
  page.addEventListener('input', (event) => {
    const one = event.target.closest('.ho-item');
    if (one) {
      keepDraft(one.dataset.item);
    }
  });
  window.addEventListener('online', flush);
  setInterval(async () => {
    if (queue().length > 0 || (await waitingPhotos()).length > 0) {
      flush();
    }
  }, RETRY_MS);
  Object.keys(read('drafts', {})).forEach(bringBack);
  show().then(flush);
})();
