// Programs that draw into files: what their drawings (SVG) and what they saved show, in the form of browser.js.
const programs = {};

function draw(svgs) {
  place.innerHTML = svgs.map(svg => svg.slice(svg.indexOf('<svg'))).join('');
}

// files: the source that musicxml2ly made, and the pages, whose parts link to line and column of that source.
programs.lilypond = async (xml, written, [source, ...pages]) => {
  // It lays out with this font and writes "serif"; another font would move the middles of texts.
  draw(pages.map(page => page.replaceAll('font-family="serif"', 'font-family="C059, serif"')));
  const lines = source.split('\n');
  const lyrics = linesOf(lines, '\\lyricmode');
  const chords = linesOf(lines, '\\chordmode');
  const links = [...place.querySelectorAll('a')].map(link => linked(link, lines)).filter(Boolean);
  const staves = staffLines();
  const heads = headsByStaff(withoutFlags(links.filter(each => isHead(each, lyrics, chords))), staves, written.columns.length);
  const marks = fingers(links).map(link => ({ kind: 'finger', text: link.finger, ...noteBefore(link, heads) }));
  const texts = [];
  for (const link of links.filter(each => each.text !== '')) {
    texts.push(drawnText(link.element, link.text));
    if (lyrics.has(link.line)) {
      const above = staves.filter(staff => staff.top < link.box.top).pop();
      const near = above && nearest(heads.filter(head => head.system === above && !head.grace), centre(link.box));
      marks.push({ kind: 'lyric', text: link.text, staff: near ? near.staff : 0, column: near ? near.column : -1 });
    } else if (!chords.has(link.line)) {
      marks.push({ kind: 'words', text: link.text, ...noteBefore(link, heads) });
    }
  }
  const version = (source.match(/\\version "([^"]+)"/) || [])[1];
  return { version, marks, texts };
};

// Fingers are drawn as signs; which, stands in the source: g4 -2.
function fingers(links) {
  return links.filter(each => each.text === '' && /^[-^_]\s*[1-5]\b/.test(each.source)).map(each => ({ ...each, finger: each.source.match(/[1-5]/)[0] }));
}

// What hangs on a note stands behind it in the source. What hangs on a grace note belongs to the note that it leads to.
function noteBefore(link, heads) {
  const isBefore = (one, other) => one.line < other.line || (one.line === other.line && one.at < other.at);
  const note = heads.filter(head => isBefore(head, link)).reduce((last, head) => (!last || isBefore(last, head) ? head : last), undefined);
  return { staff: note ? note.staff : 0, column: note ? note.column : -1 };
}

function linked(link, lines) {
  const place = (link.getAttribute('xlink:href') || link.href.baseVal || '').match(/:(\d+):(\d+):\d+$/);
  if (!place) return undefined;
  const line = Number(place[1]);
  const at = Number(place[2]);
  // Heads of one chord stand between the same brackets; those in texts do not count.
  const bare = lines[line - 1].replace(/"[^"]*"?/g, each => each.replace(/[<>]/g, ' '));
  const open = bare.lastIndexOf('<', at);
  const chord = line + ':' + (open >= 0 && !bare.slice(open, at).includes('>') ? open : at);
  return { element: link, line, at, chord, source: lines[line - 1].slice(at), text: link.textContent.replace(/\s+/g, ' ').trim(), box: link.getBoundingClientRect() };
}

// The numbers of the lines inside blocks that begin with a mode.
function linesOf(lines, mode) {
  const found = new Set();
  let open = false;
  lines.forEach((text, index) => {
    if (/^\w+ =/.test(text)) open = text.includes(mode);
    if (/^\\score/.test(text)) open = false;
    if (open) found.add(index + 1);
  });
  return found;
}

function isHead(link, lyrics, chords) {
  return link.text === '' && !lyrics.has(link.line) && !chords.has(link.line) && link.element.querySelector('path')
    && /^[a-g](isis|eses|is|es|s)?[',]*[!?]?(\d|\s|>|$)/.test(link.source);
}

// A staff is five lines at equal distances; the brackets of endings are lines too.
function staffLines() {
  const wide = [...place.querySelectorAll('line')].map(line => line.getBoundingClientRect()).filter(box => box.width > 100);
  const tops = [...new Set(wide.map(box => Math.round(box.top * 10) / 10))].sort((a, b) => a - b);
  const staves = [];
  for (let i = 0; i + 4 < tops.length; i++) {
    const gap = tops[i + 1] - tops[i];
    if ([1, 2, 3].every(k => Math.abs(tops[i + k + 1] - tops[i + k] - gap) < 0.4)) {
      staves.push({ top: tops[i], bottom: tops[i + 4] });
      i += 4;
    }
  }
  return staves;
}

// A note's flag links to its source as the head does, but is higher.
function withoutFlags(links) {
  const heads = new Map();
  for (const each of links) {
    const key = each.line + ':' + each.at;
    if (!heads.has(key) || each.box.height < heads.get(key).box.height) heads.set(key, each);
  }
  return [...heads.values()];
}

// Heads with their columns, counted through the systems; small heads are grace notes.
function headsByStaff(links, staves, count) {
  const widths = links.map(each => each.box.width).sort((a, b) => a - b);
  const usual = widths[Math.floor(widths.length / 2)];
  const columns = Array.from({ length: count }, () => 0);
  const found = [];
  staves.forEach((system, index) => {
    const near = links.filter(each => nearestStaff(staves, each.box) === system).sort((a, b) => a.box.left - b.box.left);
    let last;
    const chords = new Set();
    for (const each of near) {
      const grace = each.box.width <= usual * 0.85;
      if (!grace && !chords.has(each.chord) && (last === undefined || each.box.left - last > usual * 0.7)) columns[index % count]++;
      chords.add(each.chord);
      last = grace ? last : each.box.left;
      found.push({ ...each, grace, system, staff: index % count, column: columns[index % count] - (grace ? 0 : 1) });
    }
  });
  return found;
}

function nearestStaff(staves, box) {
  const middle = (box.top + box.bottom) / 2;
  const away = staff => Math.max(staff.top - middle, middle - staff.bottom, 0);
  return staves.reduce((best, each) => (!best || away(each) < away(best) ? each : best), undefined);
}

function centre(box) {
  return (box.left + box.right) / 2;
}

function nearest(heads, x) {
  return heads.reduce((best, each) => (!best || Math.abs(centre(each.box) - x) < Math.abs(centre(best.box) - x) ? each : best), undefined);
}

// files: the score as MuseScore saved it, and its pages, whose parts have classes.
programs.musescore = async (xml, written, [saved, ...pages]) => {
  draw(pages);
  const marks = readScore(saved).marks;
  const texts = [...place.querySelectorAll('.Lyrics, .StaffText, .Fingering, .Harmony, .Tempo, .Expression')]
    .map(each => ({ ...drawnText(each, each.classList[0], each.getBoundingClientRect()), ours: !each.matches('.Harmony, .Tempo') }));
  const drawn = texts.filter(each => each.text === 'Lyrics').length;
  const kept = marks.filter(mark => mark.kind === 'lyric').length;
  if (drawn !== kept) throw new Error(drawn + ' lyrics are drawn, ' + kept + ' are saved');
  return { version: (saved.match(/<software>([^<]+)</) || [])[1], marks, texts };
};
