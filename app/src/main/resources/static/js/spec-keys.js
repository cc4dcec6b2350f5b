// The spec form by keyboard: Enter moves on, one key says where a value comes from, Ctrl+Enter saves. Without this file
// Tab, the lists and the buttons do the same.
(() => {
  'use strict';
  const MARKS = { '=': 'MEASURED', '#': 'DATASHEET', '!': 'ADVERTISED', '?': 'GUESSED' };
  const STOPS = 'input[type=radio], input[type=checkbox], .typed, details.part > summary, #reason';
  const QUIET_MS = 1500;

  const specOf = element => element instanceof Element ? element.closest('form.spec') : null;
  const isTyped = element => specOf(element) !== null && element.classList.contains('typed');

  function say(text) {
    const said = document.getElementById('said');
    if (said && said.textContent !== text) {
      said.textContent = text;
    }
  }

  const fromOf = field => field.closest('.value').querySelector('select.from');

  /** The mark that was set last, and at which field: twice the same there makes it stand for all that follow. */
  let marked = null;

  function setFrom(field, mark) {
    const from = fromOf(field);
    from.value = MARKS[mark];
    from.dataset.said = 'yes';
    from.dispatchEvent(new Event('change', { bubbles: true }));
    say(from.selectedOptions[0].textContent);
    const standing = document.getElementById('standing');
    if (marked !== null && marked.field === field && marked.mark === mark && standing) {
      standing.value = MARKS[mark];
      const label = document.querySelector('label[for=standing]').textContent;
      say(label + ': ' + standing.selectedOptions[0].textContent);
    }
    marked = { field, mark };
  }

  /** A value that is typed over another is not vouched for by what was said of that one; set back to it, it is again. */
  function forget(event) {
    const field = event.target;
    if (!isTyped(field)) {
      return;
    }
    const from = fromOf(field);
    const loaded = Array.from(from.options).find(option => option.defaultSelected);
    const wasEmpty = field.tagName === 'SELECT'
      ? !Array.from(field.options).some(option => option.defaultSelected && option.value !== '')
      : field.defaultValue === '';
    if (from.dataset.said === 'yes' || !loaded || loaded.value === '' || wasEmpty) {
      return;
    }
    const asLoaded = field.tagName === 'SELECT'
      ? Array.from(field.options).some(option => option.selected && option.defaultSelected)
      : field.value === field.defaultValue;
    if (asLoaded) {
      from.value = loaded.value;
    } else if (from.value === loaded.value) {
      from.value = '';
    }
  }

  /** What a person has said once, for every value of which they say nothing else. */
  function stand(event) {
    const standing = document.getElementById('standing');
    if (!standing || standing.value === '' || !isTyped(event.target) || event.target.value === '') {
      return;
    }
    const from = fromOf(event.target);
    if (from.value === '') {
      from.value = standing.value;
    }
  }

  /** One stop for a group of buttons, none inside a folded part. */
  function stops(form, current) {
    const groups = new Set();
    return Array.from(form.querySelectorAll(STOPS)).filter(element => {
      const part = element.closest('details.part');
      const folded = part && !part.open && element.tagName !== 'SUMMARY';
      if (folded || element.getClientRects().length === 0) {
        return false;
      }
      if (element.type !== 'radio' && element.type !== 'checkbox') {
        return true;
      }
      if (groups.has(element.name)) {
        return false;
      }
      const members = Array.from(form.querySelectorAll('[name="' + element.name + '"]'));
      const best = members.includes(current) ? current : members.find(m => m.checked) || members[0];
      if (element === best) {
        groups.add(element.name);
      }
      return element === best;
    });
  }

  function goTo(element) {
    if (element) {
      element.focus();
      if (element.tagName === 'INPUT' && element.type === 'text') {
        element.select();
      }
    }
  }

  function move(form, current, step) {
    const all = stops(form, current);
    goTo(all[all.indexOf(current) + step]);
  }

  function enter(event, form) {
    const element = event.target;
    if (element.tagName === 'SUMMARY' && element.parentElement.classList.contains('part')) {
      event.preventDefault();
      element.parentElement.open = true;
      goTo(element.parentElement.querySelector('.typed'));
    } else if (element.matches('input, select')) {
      event.preventDefault();
      const field = element.classList.contains('from') ? element.closest('.value').querySelector('.typed') : element;
      move(form, field, event.shiftKey ? -1 : 1);
    }
  }

  function arrow(event) {
    const heads = Array.from(document.querySelectorAll('details.part > summary'));
    const at = heads.indexOf(event.target);
    const to = at < 0 ? null : heads[at + (event.key === 'ArrowDown' ? 1 : -1)];
    if (to) {
      event.preventDefault();
      to.focus();
    }
  }

  document.addEventListener('keydown', event => {
    const form = specOf(event.target);
    if (!form || event.isComposing) {
      return;
    }
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      form.requestSubmit(form.querySelector('#finish button[type=submit]'));
    } else if (event.ctrlKey || event.metaKey) {
      return;
    } else if (event.key === 'Enter') {
      enter(event, form);
    } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      arrow(event);
    } else if (event.key === 'Escape') {
      const part = event.target.closest('details.part');
      goTo(part && part.querySelector('summary'));
    } else if (MARKS[event.key] && event.target.tagName === 'SELECT' && isTyped(event.target)) {
      event.preventDefault();
      setFrom(event.target, event.key);
    }
  });

  // Before the preview asks: it sends what stands in the form.
  document.addEventListener('change', event => {
    if (event.target.classList.contains('from')) {
      event.target.dataset.said = 'yes';
    }
  }, true);
  document.addEventListener('input', forget, true);
  document.addEventListener('change', forget, true);
  document.addEventListener('input', stand, true);
  document.addEventListener('change', stand, true);

  const SIZE = /^\s*(\d+(?:[.,]\d+)?)\s*([^\sx×*\d.,]*)\s*[x×*]\s*(\d+(?:[.,]\d+)?)\s*([^\sx×*\d.,]*)\s*[x×*]\s*(\d+(?:[.,]\d+)?)\s*([^\sx×*\d.,]*)\s*$/i;

  /** A size in three parts goes over three fields, while nothing else stands in the others; the server does the same. */
  document.addEventListener('change', event => {
    const first = event.target;
    const three = isTyped(first) && first.dataset.sizes ? SIZE.exec(first.value) : null;
    const fields = three === null ? [] : first.dataset.sizes.split(' ').map(id => document.getElementById(id));
    if (three === null || fields.some(field => field.value !== '')) {
      return;
    }
    [first, ...fields].forEach((field, i) => {
      field.value = (three[2 * i + 1] + ' ' + (three[2 * i + 2] || three[6])).trim();
      fromOf(field).value = fromOf(first).value;
    });
    say([first, ...fields].map(field => field.value).join(', '));
  }, true);

  // What a number was probably meant as, at one press.
  document.addEventListener('click', event => {
    const button = event.target instanceof Element ? event.target.closest('button.meant') : null;
    const field = button && document.getElementById(button.dataset.field);
    if (field) {
      field.value = button.dataset.text;
      field.dispatchEvent(new Event('change', { bubbles: true }));
      goTo(field);
    }
  });

  // By what is put in, not by what is pressed: keyboards on a screen and other layouts work too.
  document.addEventListener('beforeinput', event => {
    if (MARKS[event.data] && isTyped(event.target)) {
      event.preventDefault();
      setFrom(event.target, event.data);
    }
  });

  // A link to a field opens the part that it is folded into.
  document.addEventListener('click', event => {
    const link = event.target instanceof Element ? event.target.closest('#preview a[href^="#"]') : null;
    const field = link && document.getElementById(link.getAttribute('href').slice(1));
    if (field) {
      event.preventDefault();
      const part = field.closest('details.part');
      if (part) {
        part.open = true;
      }
      goTo(field);
    }
  });

  // The verdict is read out once it has changed and typing pauses, in one line.
  let pause = 0;
  let last = '';
  document.addEventListener('htmx:afterSettle', event => {
    if (event.target.id !== 'preview') {
      return;
    }
    clearTimeout(pause);
    pause = setTimeout(() => {
      const bar = document.getElementById('bar');
      const line = bar ? bar.textContent.replace(/\s+/g, ' ').trim() : '';
      if (line !== last) {
        last = line;
        say(line);
      }
    }, QUIET_MS);
  });
})();
