// A counter's computer and a workshop's tablet are shared: whoever signs out leaves no unsaved work of theirs in the browser, and
// no page of a customer.
(() => {
  'use strict';
  const PATIENCE_MS = 2000;

  /** Photos that wait to be sent stand in a store of their own; those of other accounts stay. */
  const dropPhotos = start => new Promise(resolve => {
    if (!('indexedDB' in window)) {
      resolve();
      return;
    }
    const open = indexedDB.open('headertank.handover', 1);
    open.onerror = resolve;
    open.onupgradeneeded = () => open.result.createObjectStore('photos', { keyPath: 'key' });
    open.onsuccess = () => {
      const change = open.result.transaction('photos', 'readwrite');
      const photos = change.objectStore('photos');
      photos.getAll().onsuccess = event =>
        event.target.result.filter(photo => photo.place.startsWith(start)).forEach(photo => photos.delete(photo.key));
      change.oncomplete = resolve;
      change.onerror = resolve;
    };
  });

  const dropPages = async () => {
    if ('caches' in window) {
      const names = (await caches.keys()).filter(name => name.startsWith('headertank.pages.'));
      await Promise.all(names.map(name => caches.delete(name)));
    }
  };

  document.addEventListener('submit', event => {
    const form = event.target;
    const account = form.dataset.account;
    if (account === undefined || !form.classList.contains('out')) {
      return;
    }
    event.preventDefault();
    const own = ['headertank.draft.', 'headertank.handover.'].map(kind => kind + account + '.');
    const mine = Object.keys(localStorage).filter(key => own.some(start => key.startsWith(start)));
    const unsaved = mine.filter(key => !['[]', '{}'].includes(localStorage.getItem(key)));
    if (unsaved.length > 0 && !window.confirm(form.dataset.unsaved)) {
      return;
    }
    document.dispatchEvent(new Event('headertank:signing-out'));
    mine.forEach(key => localStorage.removeItem(key));
    const late = new Promise(resolve => setTimeout(resolve, PATIENCE_MS));
    Promise.race([Promise.allSettled([dropPhotos(own[1]), dropPages()]), late]).then(() => form.submit());
  });
})();
