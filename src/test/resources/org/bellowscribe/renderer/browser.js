// Renderers that draw in a page. Each takes MusicXML and gives {version, marks, texts}: marks as in score.js, as the program
// has them at its notes, and texts with their boxes as they are drawn.
// Texts in letters, not in the signs of a music font; one drawn twice at the same place is one.
function drawnTexts(selector) {
  const texts = new Map();
  for (const element of place.querySelectorAll(selector)) {
    const text = element.textContent.replace(/\s+/g, ' ').trim();
    if (text === '' || /[\uE000-\uF8FF]/.test(text)) continue;
    const box = inked(element);
    texts.set([text, box.left, box.top].join('|'), drawnText(element, text, box));
  }
  return [...texts.values()];
}

// The drawing that is on the page; one program takes more than its elements away.
const drawing = { remove() {} };

function clear() {
  drawing.remove();
  drawing.remove = () => {};
  place.innerHTML = '';
}

programs.verovio = async (xml, written) => {
  let toolkit;
  for (let i = 0; i < 200 && !toolkit; i++) {
    try { toolkit = new verovio.toolkit(); } catch (notYet) { await new Promise(go => setTimeout(go, 50)); }
  }
  toolkit.setOptions({ pageWidth: 2100, pageHeight: 60000, adjustPageHeight: true, scale: 50, breaks: 'auto', footer: 'none' });
  toolkit.loadData(xml);
  place.innerHTML = Array.from({ length: toolkit.getPageCount() }, (_, i) => toolkit.renderToSVG(i + 1)).join('');
  const marks = [];
  const heads = [];
  [...place.querySelectorAll('g.measure')].forEach((measure, index) => {
    [...measure.querySelectorAll(':scope > g.staff')].forEach((staff, s) => {
      [...staff.querySelectorAll(':scope > g.layer')].forEach((layer, l) => {
        let k = 0;
        for (const note of layer.querySelectorAll('g.note, g.chord')) {
          if (note.closest('g.graceGrp') || toolkit.getElementAttr(note.id).grace || note.parentElement.closest('g.chord')) continue;
          const column = written.ordinals.get([index, s, l, k++].join('|'));
          note.querySelectorAll('g.verse').forEach(verse => marks.push({ kind: 'lyric', text: verse.querySelector('text').textContent.replace(/\s+/g, ' ').trim(), staff: s, column }));
          heads.push({ id: note.id, staff: s, column, measure: index });
          note.querySelectorAll('g.note').forEach(inner => heads.push({ id: inner.id, staff: s, column, measure: index }));
        }
      });
    });
    for (const dir of measure.querySelectorAll(':scope > g.dir, :scope > g.tempo, :scope > g.fing')) {
      const attributes = toolkit.getElementAttr(dir.id);
      const start = (attributes.startid || '').replace('#', '');
      const staff = Number((attributes.staff || '1').split(' ')[0]) - 1;
      const text = dir.textContent.replace(/\s+/g, ' ').trim();
      const kind = dir.classList.contains('fing') ? 'finger' : 'words';
      const head = heads.find(each => each.id === start);
      marks.push({ kind, text, staff: head ? head.staff : staff, column: head ? head.column : columnAt(written, index, staff, (Number(attributes.tstamp) - 1) / written.grid.get(String(index))) });
    }
  });
  return { version: toolkit.getVersion().split('-')[0], marks, texts: drawnTexts('text') };
};

programs.osmd = async (xml, written) => {
  const display = new opensheetmusicdisplay.OpenSheetMusicDisplay(place, { backend: 'svg', autoResize: false, drawFingerings: true });
  await display.load(xml);
  display.render();
  const marks = [];
  const columns = [];
  for (const measure of display.graphic.measureList) {
    measure.forEach((staffMeasure, staff) => {
      if (!staffMeasure) return;
      columns[staff] = columns[staff] || 0;
      for (const entry of staffMeasure.staffEntries) {
        const notes = entry.graphicalVoiceEntries.flatMap(each => each.notes).filter(note => !note.sourceNote.isRest() && !note.sourceNote.IsGraceNote);
        if (!notes.length) continue;
        const column = columns[staff]++;
        (entry.lyricsEntries || []).forEach(lyric => marks.push({ kind: 'lyric', text: lyric.graphicalLabel.label.text.trim(), staff, column }));
        notes.forEach(note => note.sourceNote.Fingering && marks.push({ kind: 'finger', text: note.sourceNote.Fingering.value, staff, column }));
      }
    });
  }
  // It makes each word twice, at one and the same place: seen once.
  const words = new Map();
  for (const system of display.graphic.MusicPages.flatMap(page => page.MusicSystems)) {
    system.StaffLines.forEach((line, staff) => {
      for (const expression of line.AbstractExpressions) {
        const start = expression.sourceMultiExpression;
        if (!start || !expression.label || !expression.label.label) continue;
        const at = expression.label.PositionAndShape.AbsolutePosition;
        const column = columnAt(written, start.SourceMeasureParent.measureListIndex, staff, start.Timestamp.RealValue);
        // Several words at one place are drawn as one text, one behind the other.
        const texts = start.EntriesList.map(each => each.label.trim());
        const drawn = expression.label.label.text.trim();
        for (const text of texts.length > 1 && texts.join(' ') === drawn ? texts : [drawn]) {
          words.set([text, at.x, at.y].join('|'), { kind: 'words', text, staff, column });
        }
      }
    });
  }
  marks.push(...words.values());
  return { version: display.Version.split('-')[0], marks, texts: drawnTexts('svg text') };
};

programs.alphatab = async xml => {
  const holder = place.appendChild(document.createElement('div'));
  const api = new alphaTab.AlphaTabApi(holder, { core: { engine: 'svg', useWorkers: false, enableLazyLoading: false, fontDirectory: '/@coderline/alphatab/dist/font/' }, player: { enablePlayer: false }, display: { staveProfile: 'Score' } });
  await new Promise((done, failed) => {
    api.postRenderFinished.on(() => done());
    api.error.on(failed);
    api.load(new TextEncoder().encode(xml), [-1]);
  });
  await new Promise(done => setTimeout(done, 50));
  const marks = [];
  let staff = 0;
  for (const track of api.score.tracks) {
    for (const each of track.staves) {
      let column = 0;
      for (const bar of each.bars) {
        const all = bar.voices.flatMap(voice => voice.beats);
        const beats = all.filter(beat => beat.graceType === 0 && !beat.isRest && beat.notes.length);
        const starts = [...new Set(beats.map(beat => beat.displayStart))].sort((a, b) => a - b);
        for (const beat of beats) {
          const at = column + starts.indexOf(beat.displayStart);
          (beat.lyrics || []).filter(text => text).forEach(text => marks.push({ kind: 'lyric', text: text.trim(), staff, column: at }));
          if (beat.text) marks.push({ kind: 'words', text: beat.text.trim(), staff, column: at });
          beat.notes.filter(note => note.leftHandFinger >= 0 || note.rightHandFinger >= 0).forEach(note => marks.push({ kind: 'finger', text: String(Math.max(note.leftHandFinger, note.rightHandFinger) + 1), staff, column: at }));
        }
        // Words over rests have no note; those over a grace note belong to the note that it leads to.
        for (const beat of all.filter(each => each.text && !beats.includes(each))) {
          const next = beats.find(each => each.voice === beat.voice && each.index > beat.index);
          const isGrace = beat.graceType !== 0 && next;
          marks.push({ kind: 'words', text: beat.text.trim(), staff, column: isGrace ? column + starts.indexOf(next.displayStart) : -1 });
        }
        column += starts.length;
      }
      staff++;
    }
  }
  const texts = drawnTexts('text');
  // Its drawing is to be seen until the next one.
  drawing.remove = () => api.destroy();
  return { version: alphaTab.meta ? alphaTab.meta.version : '', marks, texts };
};
