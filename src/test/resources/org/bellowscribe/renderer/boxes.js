// Boxes of texts in a drawing, and which of them cover each other. Boxes are in CSS pixels of the page.

const place = document.getElementById('drawing');

// The part of a text's box that is inked: em boxes are higher than their letters, and neighbouring lines may share space.
function inked(element) {
  const box = element.getBoundingClientRect();
  const above = box.height * 0.2;
  return { left: box.left, right: box.right, top: box.top + above, bottom: box.bottom - above };
}

// A text as it is drawn: its box, and that of the page or strip beyond which nothing is seen.
function drawnText(element, text, box = inked(element)) {
  let page = element;
  while (page.ownerSVGElement) page = page.ownerSVGElement;
  return { box, text, page: page.getBoundingClientRect() };
}

// Marks of ours that an edge cuts. texts: [{box, text, page, ours}].
function cut(texts) {
  const over = ({ box, page }) => Math.max(page.left - box.left, box.right - page.right, page.top - box.top, box.bottom - page.bottom) > 0.5;
  return texts.filter(each => each.ours && over(each)).map(each => each.text);
}

function cover(one, other) {
  const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return wide > 0.5 && high > 0.5;
}

// How many marks of ours lie under or over another text. texts: [{box, text, ours}].
function overlapping(texts) {
  const found = [];
  const sorted = [...texts].sort((a, b) => a.box.left - b.box.left);
  for (let i = 0; i < sorted.length; i++) {
    for (let j = i + 1; j < sorted.length && sorted[j].box.left < sorted[i].box.right; j++) {
      if ((sorted[i].ours || sorted[j].ours) && cover(sorted[i].box, sorted[j].box)) {
        found.push(sorted[i].text + ' / ' + sorted[j].text);
      }
    }
  }
  return found;
}

// Compares what is written with what a program shows at (staff, column). Words over a rest have no column (-1): they are
// looked for anywhere.
function judge(written, shown) {
  const place = mark => [mark.kind, mark.staff, mark.column, mark.text].join('|');
  const left = new Map();
  shown.forEach(mark => left.set(place(mark), (left.get(place(mark)) || 0) + 1));
  const take = mark => {
    const count = left.get(place(mark)) || 0;
    left.set(place(mark), count - 1);
    return count > 0;
  };
  const lost = written.filter(mark => !take(mark) && mark.ours);
  const spare = new Map();
  for (const [key, count] of left) {
    const kindAndText = key.split('|')[0] + '|' + key.split('|').slice(3).join('|');
    spare.set(kindAndText, (spare.get(kindAndText) || 0) + Math.max(0, count));
  }
  const wrong = [];
  const missing = [];
  for (const mark of lost) {
    const key = mark.kind + '|' + mark.text;
    if (spare.get(key) > 0) {
      spare.set(key, spare.get(key) - 1);
      if (mark.column >= 0) wrong.push(place(mark));
    } else {
      missing.push(place(mark));
    }
  }
  const texts = new Set(written.filter(mark => mark.ours).map(mark => mark.kind + '|' + mark.text));
  const doubled = [...spare].filter(([key, count]) => count > 0 && texts.has(key)).map(([key, count]) => key + ' x' + count);
  return { written: written.filter(mark => mark.ours).length, missing, wrong, doubled };
}
