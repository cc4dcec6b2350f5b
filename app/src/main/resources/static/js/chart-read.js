// The values of a drawing's curves where somebody points, touches or moves to by the arrow keys. What the server drew is enough:
// each line says its name and where two values of its scale lie, and so does a bar. Without this file the scales can be read by eye.
(() => {
  'use strict';
  const SVG = 'http://www.w3.org/2000/svg';
  const number = text => parseFloat(text.replace(/\s/g, '').replace('−', '-').replace(',', '.'));

  /** Two marks, "at value", as a way from pixels to values. */
  function scale(low, high) {
    const [a, from] = low.split('|').map(number);
    const [b, to] = high.split('|').map(number);
    return { value: at => from + (at - a) / (b - a) * (to - from), digits: Math.abs(to - from) / Math.abs(b - a) < 0.02 ? 2 : Math.abs(to - from) < 20 ? 1 : 0 };
  }

  const show = (value, digits) => value.toLocaleString(document.documentElement.lang, { minimumFractionDigits: digits, maximumFractionDigits: digits });

  /** By its own name, or by that in the legend beside a stroke that looks the same. */
  function nameOf(svg, line) {
    const alike = Array.from(svg.querySelectorAll('line + text')).find(text =>
      ['stroke', 'stroke-dasharray', 'stroke-width'].every(a => text.previousElementSibling.getAttribute(a) === line.getAttribute(a)));
    return alike ? alike.textContent.trim() : line.dataset.name;
  }

  function lines(svg) {
    return Array.from(svg.querySelectorAll('polyline[data-low][data-high]')).map(line => ({
      name: nameOf(svg, line),
      y: scale(line.dataset.low, line.dataset.high),
      points: line.getAttribute('points').trim().split(/\s+/).map(p => p.split(',').map(Number)),
    }));
  }

  /** Where the line is at x; NaN where it has nothing. */
  function at(points, x) {
    for (let i = 1; i < points.length; i++) {
      const [x0, y0] = points[i - 1];
      const [x1, y1] = points[i];
      if (x >= x0 && x <= x1) {
        return x1 === x0 ? y1 : y0 + (x - x0) / (x1 - x0) * (y1 - y0);
      }
    }
    return NaN;
  }

  function begin(svg) {
    if (svg.dataset.reads || !svg.dataset.low || !svg.dataset.high) {
      return;
    }
    svg.dataset.reads = 'yes';
    const all = lines(svg);
    const across = scale(svg.dataset.low, svg.dataset.high);
    const ends = all.flatMap(line => [line.points[0][0], line.points[line.points.length - 1][0]]);
    if (ends.length === 0) {
      return;
    }
    const left = Math.min(...ends);
    const right = Math.max(...ends);
    const box = document.createElement('div');
    box.className = 'reader';
    const label = document.createElement('label');
    const slider = document.createElement('input');
    const said = document.createElement('output');
    slider.type = 'range';
    slider.min = left;
    slider.max = right;
    slider.step = (right - left) / 200;
    slider.value = left;
    label.append(svg.dataset.read, slider);
    box.append(label, said);
    svg.after(box);
    const mark = document.createElementNS(SVG, 'line');
    const [, top, , height] = svg.getAttribute('viewBox').split(/\s+/).map(Number);
    Object.entries({ y1: top, y2: top + height, stroke: '#b45309', 'stroke-width': 1.5, visibility: 'hidden' }).forEach(([k, v]) => mark.setAttribute(k, v));
    svg.append(mark);

    function read() {
      const x = Number(slider.value);
      mark.setAttribute('x1', x);
      mark.setAttribute('x2', x);
      mark.setAttribute('visibility', 'visible');
      const values = all.map(line => [line.name, at(line.points, x), line.y]).filter(([, y]) => !Number.isNaN(y))
        .map(([name, y, scale]) => name + ' ' + show(scale.value(y), scale.digits));
      const where = show(across.value(x), across.digits) + ' ' + svg.dataset.unit;
      said.textContent = where + ': ' + values.join('; ');
      slider.setAttribute('aria-valuetext', said.textContent);
    }

    slider.addEventListener('input', read);
    const point = event => {
      const matrix = svg.getScreenCTM();
      if (matrix !== null) {
        slider.value = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse()).x;
        read();
      }
    };
    svg.addEventListener('pointermove', point);
    svg.addEventListener('pointerdown', point);
  }

  /** The margin of a duty: how much is in hand or missing where somebody points, and whether that may be. */
  function bar(svg) {
    if (svg.dataset.reads) {
      return;
    }
    svg.dataset.reads = 'yes';
    const across = scale(svg.dataset.low, svg.dataset.high);
    const [at, from, to] = [svg.dataset.at, svg.dataset.from, svg.dataset.to].map(Number);
    const box = document.createElement('div');
    box.className = 'bar-reader';
    const slider = document.createElement('input');
    slider.type = 'range';
    slider.min = 0;
    slider.max = 100;
    slider.step = 0.5;
    slider.setAttribute('aria-label', svg.dataset.bar);
    const said = document.createElement('output');
    said.hidden = true;
    svg.replaceWith(box);
    box.append(svg, slider, said);
    const mark = document.createElementNS(SVG, 'line');
    Object.entries({ class: 'pointed', y1: 0, y2: 22, visibility: 'hidden' }).forEach(([k, v]) => mark.setAttribute(k, v));
    svg.append(mark);

    function read() {
      const x = Number(slider.value);
      const value = across.value(x);
      const here = (value < 0 ? svg.dataset.over : svg.dataset.left).replace('@', show(Math.abs(value), 1));
      said.textContent = Math.abs(x - at) <= 1 ? svg.dataset.expected
        : here + ': ' + (x >= from && x <= to ? svg.dataset.within : svg.dataset.beyond);
      slider.setAttribute('aria-valuetext', said.textContent);
    }

    function rest(resting) {
      said.hidden = resting;
      mark.setAttribute('visibility', resting ? 'hidden' : 'visible');
    }

    function pointed() {
      read();
      mark.setAttribute('x1', slider.value + '%');
      mark.setAttribute('x2', slider.value + '%');
      rest(false);
    }

    slider.value = at;
    read();
    slider.addEventListener('input', pointed);
    slider.addEventListener('focus', pointed);
    slider.addEventListener('blur', () => rest(true));
    slider.addEventListener('pointermove', event => {
      if (event.pointerType === 'mouse') {
        const edge = slider.getBoundingClientRect();
        slider.value = 100 * (event.clientX - edge.left) / edge.width;
        pointed();
      }
    });
    slider.addEventListener('pointerleave', () => rest(document.activeElement !== slider));
  }

  const look = () => {
    document.querySelectorAll('svg[data-read]').forEach(begin);
    document.querySelectorAll('svg[data-bar]').forEach(bar);
  };
  look();
  document.addEventListener('htmx:load', look);
})();
