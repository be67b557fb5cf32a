"use strict";
/* The script of all pages of a report; classic, because pages opened from disk may load no modules. */
(() => {
const $ = id => document.getElementById(id);
const all = (what, within = document) => [...within.querySelectorAll(what)];
const make = (name, set = {}) => Object.assign(document.createElement(name), set);

/* A score is engraved into a place for a width in pixels; for paper if that is 0. */
window.bellowscribeEngrave = (toolkit, place, score, room) => {
  const scale = room ? room < 500 ? 34 : 42 : 36;
  toolkit.setOptions({
    pageWidth: room ? Math.max(600, Math.round(room * 100 / scale)) : 2450, pageHeight: room ? 60000 : 3200, adjustPageHeight: true, scale,
    pageMarginLeft: 20, pageMarginRight: 20, pageMarginTop: 30, pageMarginBottom: 30,
    header: "none", footer: "none", breaks: "auto", svgViewBox: true, lyricSize: 4.2, lyricWordSpace: 2.2, spacingLinear: 0.3, spacingNonLinear: 0.58, spacingSystem: room ? 6 : 3
  });
  if (!toolkit.loadZipDataBase64(score)) return false;
  place.innerHTML = "";
  for (let page = 1; page <= toolkit.getPageCount(); page++) {
    const holder = make("div", {className: "page"});
    holder.innerHTML = toolkit.renderToSVG(page);
    place.append(holder);
  }
  all("svg", place).forEach(svg => svg.setAttribute("aria-hidden", "true"));
  return true;
};

/* The index: each table sorted by any column, tunes of all found by their titles. */
function index(tables) {
  const value = (row, i) => row.cells[i].textContent.trim();
  for (const table of tables) {
    const body = table.tBodies[0], rows = [...body.rows];
    all("thead th", table).forEach((th, i) => {
      const button = make("button", {type: "button", textContent: th.textContent});
      button.onclick = () => {
        const down = th.getAttribute("aria-sort") === "ascending";
        all("thead th", table).forEach(other => other.removeAttribute("aria-sort"));
        th.setAttribute("aria-sort", down ? "descending" : "ascending");
        const sign = down ? -1 : 1;
        const by = (a, b) => i ? parseFloat(value(a, i)) - parseFloat(value(b, i)) : value(a, 0).localeCompare(value(b, 0));
        rows.sort((a, b) => sign * by(a, b)).forEach(row => body.append(row));
      };
      th.replaceChildren(button);
    });
  }
  $("find").hidden = false;
  $("sought").oninput = () => {
    const sought = $("sought").value.trim().toLocaleLowerCase(), rows = tables.flatMap(table => [...table.tBodies[0].rows]);
    let hits = 0;
    for (const row of rows) {
      row.hidden = !value(row, 0).toLocaleLowerCase().includes(sought);
      hits += !row.hidden;
    }
    $("hits").textContent = sought ? hits + " of " + rows.length : "";
  };
}

/* A tune: one list of plays, a play being one playing of a step; everything that is shown follows the chosen play. */
function tune(data) {
  const steps = data.steps.map(([measure, onset, length, pull, pitches, buttons, air, left, held], id) =>
    ({id, measure, onset, length, pull, pitches, buttons, air, left, held}));
  let time = 0;
  const plays = data.plays.map((id, k) => {
    const play = {k, step: steps[id], start: time};
    time += steps[id].length;
    play.end = time;
    return play;
  });
  const bars = data.order.map(([measure, pass, first], i) => ({
    i, measure, pass, first, end: i + 1 < data.order.length ? data.order[i + 1][2] : plays.length,
    name: data.measures[measure][0] + (pass ? ", " + pass : "")
  }));
  const barOf = k => bars.find(bar => k >= bar.first && k < bar.end);
  let now = -1, lastNote = null;

  /* What is shown. */
  const rowOf = step => $("s" + step.id);
  const strips = all("figure.strip").map(figure => ({figure, svg: figure.querySelector("svg"), a: +figure.dataset.a, z: +figure.dataset.z}));
  for (const strip of strips) {
    const frame = strip.svg.querySelector(".frame rect"), size = name => +frame.getAttribute(name);
    strip.left = size("x");
    strip.wide = size("width");
    strip.mark = document.createElementNS("http://www.w3.org/2000/svg", "rect");
    for (const [name, v] of [["class", "cursor"], ["y", size("y")], ["height", size("height")], ["width", 0]]) strip.mark.setAttribute(name, v);
    strip.svg.append(strip.mark);
    strip.svg.addEventListener("click", event => {
      const box = strip.svg.getBoundingClientRect();
      const share = ((event.clientX - box.left) * strip.svg.viewBox.baseVal.width / box.width - strip.left) / strip.wide;
      const at = plays[strip.a].start + share * (plays[strip.z - 1].end - plays[strip.a].start);
      let k = strip.a;
      while (k + 1 < strip.z && plays[k + 1].start <= at) k++;
      choose(k);
    });
  }

  function showStrip(play) {
    for (const {mark, a, z, left, wide} of strips) {
      const here = play.k >= a && play.k < z;
      const from = plays[a].start, scale = wide / (plays[z - 1].end - from);
      mark.setAttribute("x", here ? left + (play.start - from) * scale : 0);
      mark.setAttribute("width", here ? Math.max(3, play.step.length * scale) : 0);
    }
  }

  let box = null;
  const notesOf = step => all('[id="n' + step.id + '"],[id^="n' + step.id + '-"]', $("score"));
  function showNote(play, scroll) {
    if (lastNote) all(".sounding", $("score")).forEach(each => each.classList.remove("sounding"));
    lastNote = play.step;
    const notes = notesOf(play.step);
    notes.forEach(each => each.classList.add("sounding"));
    if (!box || !notes.length) {
      if (box) box.hidden = true;
      return;
    }
    const around = $("score").getBoundingClientRect();
    const rects = notes.map(each => each.getBoundingClientRect());
    const left = Math.min(...rects.map(r => r.left)), top = Math.min(...rects.map(r => r.top));
    const right = Math.max(...rects.map(r => r.right)), bottom = Math.max(...rects.map(r => r.bottom));
    box.hidden = false;
    box.style.cssText = `left:${left - around.left - 5}px;top:${top - around.top - 5}px;width:${right - left + 10}px;height:${bottom - top + 10}px`;
    if (scroll && (top < 0 || bottom > innerHeight - 120)) box.scrollIntoView({block: "center"});
  }

  function showKeys(play, strokes) {
    all("[data-key].on").forEach(each => each.classList.remove("on", "pushed", "pulled"));
    const keys = play.step.buttons.map(id => "r" + id).concat(strokes.map(stroke => "l" + stroke[3]));
    for (const key of keys) {
      const row = document.querySelector('[data-key="' + key + '"]');
      if (row) row.classList.add("on", play.step.pull ? "pulled" : "pushed");
    }
  }

  function showRow(play) {
    const before = document.querySelector('#steps [aria-current]');
    if (before) {
      before.removeAttribute("aria-current");
      before.querySelector("a").tabIndex = -1;
    }
    const row = rowOf(play.step);
    row.setAttribute("aria-current", "true");
    row.querySelector("a").tabIndex = 0;
    const list = $("steps").parentElement;
    const top = row.offsetTop - list.offsetTop;
    if (top < list.scrollTop + 30 || top + row.offsetHeight > list.scrollTop + list.clientHeight)
      list.scrollTop = top - list.clientHeight / 2;
  }

  function showWords(play) {
    const bar = barOf(play.k), row = rowOf(play.step);
    const words = row.cells[1].textContent, note = row.cells[0].textContent.split(":")[1];
    $("where").textContent = "Measure " + data.measures[bar.measure][0] + ", note " + note + (bar.pass ? ", " + bar.pass : "") + " · " + row.cells[2].textContent + " open";
    $("what").textContent = words;
    $("line").textContent = row.cells[0].textContent + "  " + words;
    const place = $("place");
    place.value = play.k;
    place.setAttribute("aria-valuetext", "measure " + bar.name + ": " + words);
  }

  function showWhy(play) {
    const found = all(`main [data-step="${play.step.id}"],main [data-measure="${play.step.measure}"]`)
      .filter(each => !each.closest("#why"));
    $("why").replaceChildren(...found.map(each => {
      const copy = make(each.localName === "details" ? "div" : "p");
      for (const node of each.childNodes) if (node.localName !== "summary") copy.append(node.cloneNode(true));
      return copy;
    }));
  }

  function choose(k, scroll) {
    if (k < 0 || k >= plays.length) return;
    const play = plays[now = k];
    showStrip(play);
    showNote(play, scroll);
    showKeys(play, play.step.left);
    showRow(play);
    showWords(play);
    showWhy(play);
    if (player.on && !scroll) player.jump(k);
  }

  /* A step of the score may be played often: the playing that is nearest behind what is chosen now. */
  function chooseStep(id) {
    const ks = plays.filter(play => play.step.id === id).map(play => play.k);
    if (ks.length) choose(ks.find(k => k >= barOf(Math.max(now, 0)).first) ?? ks[ks.length - 1]);
  }

  document.addEventListener("click", event => {
    const link = event.target.closest && event.target.closest('a[href^="#s"],a[href^="#m"]');
    const row = event.target.closest && event.target.closest("#steps tbody tr");
    const key = event.target.closest && event.target.closest("[data-key]");
    if (link && link.dataset.play) {
      choose(+link.dataset.play);
    } else if (link && /^#s\d/.test(link.hash)) {
      chooseStep(+link.hash.slice(2));
    } else if (link && /^#m\d/.test(link.hash)) {
      const step = steps.find(each => each.measure === link.hash.slice(2) - 1);
      if (step) chooseStep(step.id);
    } else if (row) {
      chooseStep(+row.id.slice(1));
      return;
    } else if (key) {
      const uses = play => play.step.buttons.some(id => "r" + id === key.dataset.key) || play.step.left.some(s => "l" + s[3] === key.dataset.key);
      const next = plays.slice(now + 1).concat(plays).find(uses);
      if (next) choose(next.k);
      return;
    } else {
      return;
    }
    event.preventDefault();
  });

  const move = (element, focus) => element.addEventListener("keydown", event => {
    const step = {ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1}[event.key];
    const to = event.key === "Home" ? 0 : event.key === "End" ? plays.length - 1 : step ? now + step : -1;
    if (to < 0 || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    choose(Math.min(to, plays.length - 1));
    if (focus) rowOf(plays[now].step).querySelector("a").focus();
  });

  /* The score, engraved for the width there is. */
  let toolkit = null, width = 0;
  function engrave(paper) {
    const place = $("score"), room = paper === true ? 0 : place.clientWidth;
    if (!toolkit || Math.abs(room - width) < 20) return;
    width = room;
    if (!bellowscribeEngrave(toolkit, place, data.score, room)) throw new Error("no score");
    box = make("div", {className: "box", hidden: true});
    place.append(box);
    if (now >= 0) showNote(plays[now]);
  }
  function ready() {
    try {
      toolkit = new verovio.toolkit();
      engrave();
      new ResizeObserver(() => requestAnimationFrame(engrave)).observe($("score"));
    } catch (e) {
      $("score").textContent = "The score could not be engraved here; the table of marks says the same in words.";
    }
    document.documentElement.dataset.ready = "yes";
  }
  addEventListener("beforeprint", () => engrave(true));
  addEventListener("afterprint", () => engrave());
  addEventListener("DOMContentLoaded", () => {
    if (!window.verovio) return ready();
    if (verovio.module.calledRun) ready(); else verovio.module.onRuntimeInitialized = ready;
  });
  $("score").addEventListener("click", event => {
    const note = event.target.closest("g.note,g.rest,g.mRest,g.chord");
    const named = note && (/^n\d/.test(note.id) ? note : note.querySelector('[id^="n"]'));
    if (named && /^n\d/.test(named.id)) return chooseStep(parseInt(named.id.slice(1), 10));
    /* Beside a note: the nearest of the system. */
    let best = null, least = 60;
    for (const each of all('[id^="n"]', $("score"))) {
      if (!/^n\d/.test(each.id)) continue;
      const r = each.getBoundingClientRect();
      const far = Math.abs((r.left + r.right) / 2 - event.clientX) + Math.abs((r.top + r.bottom) / 2 - event.clientY) / 2;
      if (far < least) [best, least] = [each, far];
    }
    if (best) chooseStep(parseInt(best.id.slice(1), 10));
  });

  /* Sound: two reeds a little apart for each voice of a button, a soft noise for air. */
  const HARMONICS = [0, 1, .72, .55, .42, .3, .24, .17, .13, .1, .08, .06, .05, .04, .03, .025, .02];
  const DETUNE = 3.5;
  const hertz = midi => 440 * 2 ** ((midi - 69) / 12);
  const waves = new WeakMap();
  const waveOf = context => {
    if (!waves.has(context)) {
      const sines = Float32Array.from(HARMONICS);
      waves.set(context, context.createPeriodicWave(new Float32Array(sines.length), sines));
    }
    return waves.get(context);
  };
  function envelope(context, out, at, seconds, loud, attack = .008) {
    const gain = context.createGain(), release = Math.min(.04, seconds / 3);
    gain.gain.setValueAtTime(0, at);
    gain.gain.linearRampToValueAtTime(loud, at + Math.min(attack, seconds / 3));
    gain.gain.setValueAtTime(loud, at + seconds - release);
    gain.gain.linearRampToValueAtTime(0, at + seconds);
    gain.connect(out);
    return gain;
  }
  function reeds(context, out, hz, at, seconds, loud) {
    const gain = envelope(context, out, at, seconds, loud / 2);
    for (const cents of [-DETUNE, DETUNE]) {
      const reed = context.createOscillator();
      reed.setPeriodicWave(waveOf(context));
      reed.frequency.value = hz;
      reed.detune.value = cents;
      reed.connect(gain);
      reed.start(at);
      reed.stop(at + seconds + .01);
    }
  }
  function noise(context, out, at, seconds, loud) {
    const buffer = context.createBuffer(1, context.sampleRate, context.sampleRate), samples = buffer.getChannelData(0);
    for (let i = 0, x = 1; i < samples.length; i++) samples[i] = (x = (x * 16807) % 2147483647) / 1073741823.5 - 1;
    const source = context.createBufferSource(), band = context.createBiquadFilter();
    source.buffer = buffer;
    source.loop = true;
    band.type = "bandpass";
    band.frequency.value = 900;
    band.Q.value = .6;
    source.connect(band).connect(envelope(context, out, at, seconds, loud, .05));
    source.start(at);
    source.stop(at + seconds + .01);
  }
  function click(context, out, at, first) {
    const tick = context.createOscillator();
    tick.frequency.value = first ? 1320 : 880;
    tick.connect(envelope(context, out, at, .05, .25, .002));
    tick.start(at);
    tick.stop(at + .06);
  }

  /* What sounds from one play up to another; times in quarters from the first. */
  function sounds(a, z) {
    const list = [], from = plays[a].start;
    let right = null;
    for (const play of plays.slice(a, z)) {
      const {step} = play, at = play.start - from;
      if (step.held && right && step.pitches.join() === right.pitches.join()) right.length += step.length;
      else if (step.pitches.length) list.push(right = {hand: 1, at, length: step.length, pitches: step.pitches});
      else right = null;
      for (const [offset, length, pitches] of step.left) list.push({hand: 2, at: at + offset, length, pitches});
      if (step.air) list.push({hand: 0, at, length: step.length, air: step.air});
    }
    return list.sort((x, y) => x.at - y.at);
  }
  function sound(context, out, each, at, seconds) {
    if (each.air) return noise(context, out, at, seconds, .03 * each.air);
    /* A repeated note is heard as two. */
    const long = Math.max(.03, seconds - .015);
    if (each.hand === 1)
      for (const pitch of each.pitches) for (const octave of new Set(data.voices))
        reeds(context, out, hertz(pitch + 12 * octave), at, long, .3 / data.voices.length);
    else
      for (const pitch of each.pitches.length > 1 ? each.pitches : [each.pitches[0], each.pitches[0] + 12])
        reeds(context, out, hertz(pitch), at, long, each.pitches.length > 1 ? .07 : .13);
  }

  const quartersASecond = () => data.quarters * $("tempo").value / 6000;
  const player = {
    on: false, context: null,
    range() {
      const [from, to] = [+$("from").value, +$("to").value].sort((x, y) => x - y);
      return [bars[from].first, bars[to].end];
    },
    start() {
      const [a, z] = this.range();
      if (z <= a) return;
      this.context = this.context || new AudioContext();
      this.context.resume();
      this.out = this.context.createGain();
      this.out.gain.value = .8;
      this.out.connect(this.context.destination);
      Object.assign(this, {a, z, list: sounds(a, z), on: true, looped: false});
      this.rate = quartersASecond();
      const k = now >= a && now < z ? now : a;
      /* Asked once: the clock of the sound goes on, in steps of a buffer, while this runs. */
      const soon = this.context.currentTime + .12;
      this.anchor(plays[k].start - plays[a].start, soon + this.countIn(k, soon));
      $("play").textContent = "Pause";
      this.timer = setInterval(() => this.fill(), 60);
      this.fill();
      requestAnimationFrame(() => this.follow());
    },
    /* At the time at, the tune has come to a place, in quarters from the first play. */
    anchor(place, at) {
      Object.assign(this, {place, at, next: this.list.findIndex(each => each.at >= place - 1e-6)});
      if (this.next < 0) this.next = this.list.length;
    },
    timeOf(quarters) {
      return this.at + (quarters - this.place) / this.rate;
    },
    countIn(k, from) {
      if (!$("count").checked) return 0;
      const [, , pulse, full, offset] = data.measures[plays[k].step.measure];
      const beats = Math.max(1, Math.round((full + offset) / pulse)), bar = Math.max(1, Math.round(full / pulse));
      for (let i = 0; i < beats; i++) click(this.context, this.out, from + i * pulse / this.rate, i % bar === 0);
      return beats * pulse / this.rate;
    },
    fill() {
      const until = this.context.currentTime + .5, hands = +$("hands").value, length = plays[this.z - 1].end - plays[this.a].start;
      for (;;) {
        if (this.next < this.list.length) {
          const each = this.list[this.next], at = this.timeOf(each.at);
          if (at > until) return;
          if (!each.hand || hands & each.hand) sound(this.context, this.out, each, Math.max(at, this.context.currentTime), each.length / this.rate);
          this.next++;
        } else if ($("loop").checked) {
          if (this.timeOf(length) > until) return;
          this.at = this.timeOf(length);
          Object.assign(this, {place: 0, next: 0, looped: true});
        } else return;
      }
    },
    position(moment = this.context.currentTime) {
      return this.place + (moment - this.at) * this.rate;
    },
    follow() {
      if (!this.on) return;
      const from = plays[this.a].start, length = plays[this.z - 1].end - from;
      let at = this.position();
      if (at < 0 && this.looped) at += length;
      if (at >= length && !$("loop").checked) return this.stop();
      let k = now >= this.a && now < this.z && plays[now].start - from <= at ? now : this.a;
      while (k + 1 < this.z && plays[k + 1].start - from <= at + 1e-6) k++;
      /* While beats are counted in, the chosen note stays. */
      const begun = at >= this.place - 1e-6;
      if (begun && k !== now) choose(k, true);
      if (begun) {
        const {step, start} = plays[k];
        const heard = step.left.filter(([offset, long]) => start - from + offset <= at && start - from + offset + long > at);
        const which = k + ":" + heard.map(each => each[3]);
        if (which !== this.shown) showKeys(plays[k], heard);
        this.shown = which;
      }
      requestAnimationFrame(() => this.follow());
    },
    jump(k) {
      this.hush();
      if (k < this.a || k >= this.z) return;
      this.anchor(plays[k].start - plays[this.a].start, this.context.currentTime + .05);
      this.fill();
    },
    hush() {
      this.out.gain.setTargetAtTime(0, this.context.currentTime, .01);
      const old = this.out;
      setTimeout(() => old.disconnect(), 200);
      this.out = this.context.createGain();
      this.out.gain.value = .8;
      this.out.connect(this.context.destination);
    },
    stop() {
      if (!this.on) return;
      this.on = false;
      clearInterval(this.timer);
      this.hush();
      $("play").textContent = "Play";
    }
  };

  /* The bar. */
  bars.forEach(bar => [$("from"), $("to")].forEach(select => select.append(make("option", {value: bar.i, textContent: bar.name}))));
  const range = (from, to) => {
    $("from").value = from;
    $("to").value = to;
    if (player.on) {
      player.stop();
      player.start();
    }
  };
  range(0, bars.length - 1);
  $("place").max = plays.length - 1;
  $("place").oninput = () => choose(+$("place").value);
  $("play").onclick = () => player.on ? player.stop() : player.start();
  $("stop").onclick = () => {
    player.stop();
    choose(player.range()[0]);
  };
  $("back").onclick = () => choose(now - 1);
  $("next").onclick = () => choose(now + 1);
  $("this").onclick = () => range(barOf(now).i, barOf(now).i);
  $("all").onclick = () => range(0, bars.length - 1);
  $("from").onchange = $("to").onchange = () => range($("from").value, $("to").value);
  $("tempo").oninput = () => {
    $("percent").textContent = $("tempo").value + " %";
    if (!player.on) return;
    const moment = player.context.currentTime, place = player.position(moment), wait = Math.max(0, player.place - place);
    player.rate = quartersASecond();
    player.at = moment + wait / player.rate;
    player.place = place + wait;
  };
  $("player").onsubmit = event => event.preventDefault();
  all("#steps tbody a").forEach(link => link.tabIndex = -1);
  move($("steps"), true);
  move($("score"), false);
  for (const id of ["sheet", "now", "player"]) $(id).hidden = false;
  document.documentElement.classList.add("live");
  const linked = /^#s(\d+)$/.exec(location.hash);
  choose(0);
  if (linked) chooseStep(+linked[1]);

  /* For measuring: the same sound into memory, and what is played when. */
  window.bellowscribePage = {
    plays, player, choose,
    async render(a, z, hands = 3) {
      const rate = quartersASecond(), seconds = (plays[z - 1].end - plays[a].start) / rate + .2;
      const context = new OfflineAudioContext(1, Math.ceil(seconds * 44100), 44100);
      for (const each of sounds(a, z)) if (each.hand ? hands & each.hand : hands & 4) sound(context, context.destination, each, each.at / rate, each.length / rate);
      return (await context.startRendering()).getChannelData(0);
    }
  };
}

if (window.bellowscribe) tune(window.bellowscribe);
if ($("tunes")) index(all("table", $("tunes")));
})();
