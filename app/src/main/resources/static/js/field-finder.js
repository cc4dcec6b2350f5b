// "/" on the form of a spec: a field is found by parts of its name, in any order. Without this file Tab leads to every field.
(() => {
  'use strict';
  const MOST = 8;
  const plain = text => text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');

  // Looked up each time: what the server sends after a fault takes the place of the page.
  const byId = id => document.getElementById(id);
  let hits = [];
  let at = 0;

  function fields() {
    return Array.from(document.querySelectorAll('form.spec .field')).flatMap(field => {
      const control = field.querySelector('.typed, .part-choice');
      const label = field.querySelector('label');
      if (control === null || label === null) {
        return [];
      }
      const part = field.closest('details.part');
      const heading = part === null ? '' : part.querySelector('summary > span').textContent.trim();
      const name = label.textContent.replace(/\s+/g, ' ').trim();
      return [{ control, part, name, heading, words: plain(name + ' ' + (control.dataset.group || heading)) }];
    });
  }

  /** Names that begin with what was typed come first, then those that hold it as a word's beginning, then the others. */
  function rank(field, words) {
    const name = plain(field.name);
    return name.startsWith(words.join(' ')) ? 0 : words.every(w => (' ' + field.words).includes(' ' + w)) ? 1 : 2;
  }

  function choose(index) {
    const asked = byId('finder-text');
    const found = byId('finder-list');
    at = Math.max(0, Math.min(index, hits.length - 1));
    Array.from(found.children).forEach((line, i) => line.setAttribute('aria-selected', String(i === at)));
    const line = found.children[at];
    if (line) {
      asked.setAttribute('aria-activedescendant', line.id);
    } else {
      asked.removeAttribute('aria-activedescendant');
    }
  }

  function look() {
    const asked = byId('finder-text');
    const found = byId('finder-list');
    const words = plain(asked.value).split(/\s+/).filter(w => w !== '');
    hits = words.length === 0 ? [] : fields().filter(f => words.every(w => f.words.includes(w)))
      .map((f, i) => [rank(f, words), i, f]).sort((a, b) => a[0] - b[0] || a[1] - b[1]).slice(0, MOST).map(h => h[2]);
    found.replaceChildren(...hits.map((hit, i) => {
      const line = document.createElement('li');
      line.id = 'finder-' + i;
      line.setAttribute('role', 'option');
      line.textContent = hit.heading === '' ? hit.name : hit.name + ' · ' + hit.heading;
      line.addEventListener('click', () => go(hit));
      return line;
    }));
    found.hidden = hits.length === 0;
    asked.setAttribute('aria-expanded', String(hits.length > 0));
    byId('finder-none').hidden = words.length === 0 || hits.length > 0;
    choose(0);
  }

  function go(hit) {
    byId('finder').close();
    if (hit.part !== null) {
      hit.part.open = true;
    }
    hit.control.focus();
    if (hit.control.tagName === 'INPUT') {
      hit.control.select();
    }
  }

  function open() {
    if (byId('finder') === null) {
      return;
    }
    byId('finder-text').value = '';
    look();
    byId('finder').showModal();
    byId('finder-text').focus();
  }

  document.addEventListener('input', event => {
    if (event.target.id === 'finder-text') {
      look();
    }
  });
  document.addEventListener('keydown', event => {
    if (event.target.id !== 'finder-text') {
      return;
    }
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      choose(at + (event.key === 'ArrowDown' ? 1 : -1));
    } else if (event.key === 'Enter') {
      event.preventDefault();
      if (hits[at]) {
        go(hits[at]);
      }
    } else if (event.key === '?' && event.target.value === '') {
      event.preventDefault();
      byId('finder').close();
      document.dispatchEvent(new CustomEvent('headertank:keys'));
    }
  });

  // No value begins with a slash: at the beginning of a field it asks for another field.
  document.addEventListener('beforeinput', event => {
    const field = event.target;
    if (event.data === '/' && field.classList.contains('typed') && (field.selectionStart === 0 || field.value === '')) {
      event.preventDefault();
      open();
    }
  });
  document.addEventListener('keydown', event => {
    const on = document.documentElement.dataset.singleKeys !== 'off';
    const other = on && event.target instanceof Element && !event.target.matches('input[type=text], input[type=search], textarea');
    if (event.key === '/' && byId('finder') !== null && other && !event.isComposing && !event.ctrlKey && !event.metaKey && !event.altKey && !document.querySelector('dialog[open]')) {
      event.preventDefault();
      open();
    }
  });
  document.addEventListener('click', event => {
    if (event.target instanceof Element && event.target.closest('#finder-open')) {
      open();
    }
  });
})();
