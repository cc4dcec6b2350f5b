// Where a word that the page explains at its foot stands first, it leads to its place in the glossary. Without this file the foot does.
(() => {
  'use strict';
  const main = document.getElementById('content');
  const words = [...document.querySelectorAll('.words dt[data-shown]')]
    .map((dt) => ({ shown: dt.dataset.shown, link: dt.querySelector('a.term') }))
    .sort((a, b) => b.shown.length - a.shown.length);
  /** What is a link or a control already, or a name that somebody gave; forms, whose fields say what they mean; what is worked on in gloves. */
  const NOT_IN = 'a, button, summary, svg, h1, code, form, dialog, .handover, .hash, .plate, .only-heard, .keep-lines, [hidden]';

  /** The texts of the page; what is left out is not even entered, for a form has thousands. */
  const texts = () => {
    const walk = document.createTreeWalker(main, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT, (node) => {
      if (node.nodeType === Node.TEXT_NODE) {
        return NodeFilter.FILTER_ACCEPT;
      }
      return node.matches(NOT_IN) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_SKIP;
    });
    const all = [];
    while (walk.nextNode()) {
      all.push(walk.currentNode);
    }
    return all;
  };

  /** A whole word, written large or small; "Run, sideways" is the name of a point and no run. */
  const pattern = (shown, flags) => {
    const rest = shown.slice(1).replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s/g, '\\s');
    const first = shown[0];
    const end = shown.includes(' ') ? '' : ',';
    return new RegExp(`(?<![\\p{L}\\p{N}-])[${first.toLowerCase()}${first.toUpperCase()}]${rest}(?![\\p{L}\\p{N}${end}-])`, flags);
  };
  /** A text without the longer words of which a word is a part: "GO with conditions" is no "GO". */
  const without = (data, longer) => longer.reduce((left, word) => left.replace(pattern(word.shown, 'gu'), (all) => '_'.repeat(all.length)), data);

  const lead = () => {
    const left = words.filter((word) => main.querySelector(`a.term[href="${word.link.getAttribute('href')}"]`) === null);
    if (left.length === 0 || main.closest(NOT_IN) !== null) {
      return;
    }
    const all = texts();
    for (const word of left) {
      const seen = pattern(word.shown, 'u');
      const longer = words.filter((one) => one !== word && one.shown.toLowerCase().includes(word.shown.toLowerCase()));
      const at = all.findIndex((one) => seen.test(one.data) && seen.test(without(one.data, longer)));
      if (at >= 0) {
        const text = all[at];
        const found = without(text.data, longer).match(seen);
        const place = text.splitText(found.index);
        all.splice(at, 1, text, place.splitText(found[0].length));
        const link = document.createElement('a');
        link.className = 'term';
        link.href = word.link.getAttribute('href');
        place.replaceWith(link);
        link.append(place);
      }
    }
  };
  lead();
  document.body.addEventListener('htmx:afterSettle', (event) => {
    if (event.target.closest?.(NOT_IN) === null) {
      lead();
    }
  });
})();
