// What is written in a score: columns (the moments of a staff at which notes begin) and the marks at them.
// A mark: {kind: 'lyric' | 'words' | 'finger', text, staff, column, ours}. Staves are counted through the parts from 0.
const OURS = 'bellowscribe-';

function child(element, name) {
  return [...element.children].find(each => each.tagName === name);
}

function value(element, name, otherwise) {
  const found = child(element, name);
  return found ? found.textContent.trim() : otherwise;
}

// The moments of one measure of one part: notes and directions with their onset in divisions.
function moments(measure, base) {
  const found = [];
  let now = 0;
  let last = 0;
  for (const element of measure.children) {
    const duration = Number(value(element, 'duration', 0));
    if (element.tagName === 'backup') {
      now -= duration;
    } else if (element.tagName === 'forward') {
      now += duration;
    } else if (element.tagName === 'note') {
      const chord = !!child(element, 'chord');
      const onset = chord ? last : now;
      const staff = base + Number(value(element, 'staff', 1)) - 1;
      found.push({ element, staff, onset, grace: !!child(element, 'grace'), rest: !!child(element, 'rest'), chord, voice: value(element, 'voice', '1') });
      last = onset;
      now = chord || child(element, 'grace') ? now : now + duration;
    } else if (element.tagName === 'direction') {
      found.push({ element, staff: base + Number(value(element, 'staff', 1)) - 1, onset: now, direction: true });
    }
  }
  return found;
}

function marksOfNote(note, staff, column) {
  const marks = [];
  for (const lyric of note.element.querySelectorAll(':scope > lyric')) {
    const text = [...lyric.querySelectorAll(':scope > text, :scope > elision')].map(each => each.textContent).join('');
    const ours = (lyric.getAttribute('name') || '').startsWith(OURS);
    marks.push({ kind: 'lyric', text, staff, column, ours, line: lyric.getAttribute('number') });
  }
  for (const finger of note.element.querySelectorAll(':scope > notations > technical > fingering')) {
    marks.push({ kind: 'finger', text: finger.textContent.trim(), staff, column, ours: (finger.getAttribute('id') || finger.parentElement.parentElement.getAttribute('id') || '').startsWith(OURS) });
  }
  return marks;
}

// Returns {columns: [number of columns of each staff], ordinals: Map, grid: Map, marks}. An ordinal 'measure|staff|layer|k'
// names the k-th note group (no grace note, no rest) of a voice in a measure; its value is the column. The grid has for
// 'measure|staff' the onsets of its columns in whole notes, [{onset, column}], and for 'measure' the beat type in force.
function readScore(xml) {
  const score = new DOMParser().parseFromString(xml, 'application/xml').documentElement;
  const marks = [];
  const ordinals = new Map();
  const grid = new Map();
  const columns = [];
  let base = 0;
  for (const part of [...score.children].filter(each => each.tagName === 'part')) {
    const staves = Math.max(1, ...[...part.querySelectorAll('staves')].map(each => Number(each.textContent)));
    for (let staff = base; staff < base + staves; staff++) {
      columns[staff] = 0;
    }
    let divisions = 1;
    let beatType = 4;
    [...part.children].filter(each => each.tagName === 'measure').forEach((measure, index) => {
      divisions = Number(measure.querySelector('divisions')?.textContent || divisions);
      beatType = Number(measure.querySelector('beat-type')?.textContent || beatType);
      grid.set(String(index), beatType);
      readMeasure({ found: moments(measure, base), index, wholeNote: 4 * divisions }, { columns, ordinals, grid, marks });
    });
    base += staves;
  }
  return { columns, ordinals, grid, marks };
}

function readMeasure({ found, index, wholeNote }, { columns, ordinals, grid, marks }) {
  const sounding = found.filter(each => !each.direction && !each.rest && !each.grace);
  const columnOf = new Map();
  for (const staff of new Set(sounding.map(each => each.staff))) {
    const onsets = [...new Set(sounding.filter(each => each.staff === staff).map(each => each.onset))].sort((a, b) => a - b);
    grid.set(index + '|' + staff, onsets.map((onset, i) => ({ onset: onset / wholeNote, column: columns[staff] + i })));
    onsets.forEach(onset => columnOf.set(staff + '|' + onset, columns[staff]++));
  }
  const layers = new Map();
  for (const each of found) {
    if (each.direction) {
      directionMarks(each, sounding, columnOf, marks);
      continue;
    }
    const key = each.staff + '|' + each.voice;
    const voices = [...new Set(found.filter(other => !other.direction && other.staff === each.staff).map(other => other.voice))];
    if (each.rest || each.grace) {
      continue;
    }
    const column = columnOf.get(each.staff + '|' + each.onset);
    if (!each.chord) {
      const k = layers.get(key) || 0;
      layers.set(key, k + 1);
      ordinals.set([index, each.staff, voices.indexOf(each.voice), k].join('|'), column);
    }
    marks.push(...marksOfNote(each, each.staff, column));
  }
}

// The first column of a staff at or after an onset in whole notes of a measure.
function columnAt(written, index, staff, onset) {
  for (let measure = index; written.grid.has(String(measure)); measure++) {
    const found = (written.grid.get(measure + '|' + staff) || []).find(each => measure > index || each.onset >= onset - 1e-3);
    if (found) return found.column;
  }
  return -1;
}

function directionMarks(direction, sounding, columnOf, marks) {
  const after = sounding.filter(each => each.staff === direction.staff && each.onset >= direction.onset).sort((a, b) => a.onset - b.onset)[0];
  const onNote = after && after.onset === direction.onset;
  const column = onNote ? columnOf.get(direction.staff + '|' + after.onset) : -1;
  const ours = (direction.element.getAttribute('id') || '').startsWith(OURS);
  for (const words of direction.element.querySelectorAll('words')) {
    marks.push({ kind: 'words', text: words.textContent.trim(), staff: direction.staff, column, ours });
  }
}
