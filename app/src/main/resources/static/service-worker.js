// Pages that a technician has opened open again while there is no connection, after a reload too. The server says which pages may
// be kept, and for which account; signing out, and any other account, takes them all away. What is sent is never kept here.
'use strict';

const FILES = 'headertank.files.1';
const PAGES = 'headertank.pages.';
const OFFLINE = 'offline';
const PATIENCE_MS = 8000;
const here = self.registration.scope;
const pathOf = url => url.slice(here.length);

self.addEventListener('install', event => {
  event.waitUntil(
    caches.open(FILES)
      .then(files => fetch(here + OFFLINE, { credentials: 'omit' }).then(page => page.ok && files.put(here + OFFLINE, page)))
      .then(() => self.skipWaiting()));
});

self.addEventListener('activate', event => {
  event.waitUntil(
    caches.keys().then(names => Promise.all(
      names.filter(name => name.startsWith('headertank.files.') && name !== FILES).map(name => caches.delete(name)))));
});

/** Takes away what is kept of customers: everything, or what is kept for other accounts than this one. */
async function forget(except) {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith(PAGES) && name !== except).map(name => caches.delete(name)));
}

/** Keeps an answer that the server allows to keep; an answer to somebody else, or to nobody, takes the others away. */
async function keep(request, answer) {
  const account = answer.headers.get('Headertank-Keep');
  if (account === null) {
    if (request.mode === 'navigate' && pathOf(answer.url).startsWith('login')) {
      await forget('');
    }
    return;
  }
  const name = PAGES + account;
  await forget(name);
  if (answer.ok && !answer.redirected) {
    const headers = new Headers(answer.headers);
    headers.set('Headertank-Kept-At', new Date().toISOString());
    const pages = await caches.open(name);
    await pages.put(request.url, new Response(await answer.blob(), { status: answer.status, headers }));
  }
}

async function kept(url) {
  for (const name of (await caches.keys()).filter(n => n.startsWith(PAGES))) {
    const found = await (await caches.open(name)).match(url);
    if (found) {
      return found;
    }
  }
  return undefined;
}

/** The kept page says of itself since when. */
async function marked(page) {
  const at = page.headers.get('Headertank-Kept-At');
  if (at === null || !(page.headers.get('Content-Type') || '').startsWith('text/html')) {
    return page;
  }
  const html = (await page.text()).replace('<html', '<html data-kept-at="' + at + '"');
  return new Response(html, { headers: { 'Content-Type': 'text/html;charset=UTF-8', 'Content-Security-Policy': page.headers.get('Content-Security-Policy') || "default-src 'self'" } });
}

function inTime(request) {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('no answer')), PATIENCE_MS);
    fetch(request).then(resolve, reject).finally(() => clearTimeout(late));
  });
}

/** The server's page when it answers; else the kept one; else a page that says so. */
async function page(event) {
  const copy = await kept(event.request.url);
  try {
    const answer = copy ? await inTime(event.request) : await fetch(event.request);
    event.waitUntil(keep(event.request, answer.clone()));
    return answer;
  } catch (e) {
    if (copy) {
      return marked(copy);
    }
    const offline = await (await caches.open(FILES)).match(here + OFFLINE);
    return offline || Response.error();
  }
}

/** Files that are the same for everybody: at once from here when the server does not answer. */
async function file(event) {
  const files = await caches.open(FILES);
  try {
    const answer = await fetch(event.request);
    if (answer.ok) {
      event.waitUntil(files.put(event.request.url, answer.clone()));
    }
    return answer;
  } catch (e) {
    const copy = await files.match(event.request.url);
    return copy || Response.error();
  }
}

async function signOut(request) {
  await forget('');
  return fetch(request);
}

self.addEventListener('fetch', event => {
  const request = event.request;
  if (!request.url.startsWith(here)) {
    return;
  }
  const path = pathOf(request.url);
  if (request.method === 'POST' && path === 'logout') {
    event.respondWith(signOut(request));
  } else if (request.method !== 'GET') {
    return;
  } else if (request.mode === 'navigate' || path.startsWith('handover-photos/')) {
    event.respondWith(page(event));
  } else if (/^(css|js|webjars)\//.test(path) || path === 'icon.svg') {
    event.respondWith(file(event));
  }
});

// The page that was open before this file began to work.
self.addEventListener('message', event => {
  if (typeof event.data === 'object' && event.data !== null && typeof event.data.keep === 'string' && event.data.keep.startsWith(here)) {
    event.waitUntil(fetch(event.data.keep).then(answer => keep({ url: event.data.keep, mode: 'navigate' }, answer)).catch(() => {}));
  }
});
