// Lets the technician's pages open again without a connection, and says on such a page since when it stands. Where the browser
// cannot (no https, a private window), everything works as long as there is a connection.
(() => {
  'use strict';
  const root = document.documentElement;

  const when = at => new Date(at).toLocaleString(root.lang, { weekday: 'short', hour: '2-digit', minute: '2-digit' });

  function sayKept() {
    const line = document.getElementById('kept');
    if (line !== null && root.dataset.keptAt) {
      line.textContent = line.dataset.text.replace('@', when(root.dataset.keptAt));
      line.hidden = false;
    }
  }

  /** On the page that says there is no connection: what opens all the same. */
  async function listKept() {
    const list = document.getElementById('kept-pages');
    if (list === null || !('caches' in window)) {
      return;
    }
    for (const name of (await caches.keys()).filter(n => n.startsWith('headertank.pages.'))) {
      const pages = await caches.open(name);
      for (const request of await pages.keys()) {
        const answer = await pages.match(request);
        const title = /<title>([^<]*)<\/title>/.exec(await answer.text());
        if (title !== null) {
          const line = document.createElement('li');
          const link = document.createElement('a');
          link.href = request.url;
          link.textContent = new DOMParser().parseFromString(title[1], 'text/html').documentElement.textContent;
          line.append(link);
          list.append(line);
        }
      }
    }
  }

  async function begin() {
    if (!('serviceWorker' in navigator) || root.dataset.keeps === undefined) {
      return;
    }
    await navigator.serviceWorker.register(root.dataset.keeps);
    const ready = await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null) {
      ready.active.postMessage({ keep: location.href.split('#')[0] });
    }
  }

  sayKept();
  listKept();
  begin().catch(() => {});
})();
