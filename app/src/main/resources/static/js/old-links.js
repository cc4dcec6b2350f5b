// Everything of a check once stood on one page: a link to a place on it leads on to the page where that is now. Without this
// file it leads to the link to that page.
(() => {
  'use strict';
  const place = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
  if (place instanceof HTMLAnchorElement && place.closest('.glance') !== null && place.href) {
    location.replace(place.href);
  }
})();
