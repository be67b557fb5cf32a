// Lays what each program shows of each score beside what is written.
// usage: node main.mjs SCORES BROWSER [pictures]   (a folder of .musicxml files, a Chromium). Writes SCORES/shown.tsv with a
// line for each score and program: score, program, version, marks written, missing, at the wrong note, doubled, overlapping, cut
// by an edge, and the places as JSON. With pictures also SCORES/gallery.html, which has each score as each program draws it.
import { chromium } from 'playwright-core';
import fs from 'node:fs';
import path from 'node:path';
import { drawings } from './engrave.mjs';

const here = path.dirname(new URL(import.meta.url).pathname);
const [folder, executablePath, pictures] = process.argv.slice(2);
const programs = ['lilypond', 'musescore', 'verovio', 'osmd', 'alphatab'];
const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];
const blank = '<!doctype html><meta charset="utf-8"><style>#drawing svg{max-width:100%;height:auto}</style><body style="margin:0"><div id="drawing" style="width:1050px"></div>';
const libraries = ['/opensheetmusicdisplay/build/opensheetmusicdisplay.min.js', '/verovio/dist/verovio-toolkit-wasm.js', '/@coderline/alphatab/dist/alphaTab.js'];

// Nothing comes from a network: the page's only host is made up, and its files are those of the modules.
async function openPage(browser) {
  const page = await browser.newPage({ viewport: { width: 1100, height: 1400 } });
  await page.route('**/*', route => {
    const name = decodeURIComponent(new URL(route.request().url()).pathname);
    if (name === '/') return route.fulfill({ contentType: 'text/html', body: blank });
    const file = path.join(here, 'node_modules', name);
    return fs.existsSync(file) ? route.fulfill({ path: file }) : route.fulfill({ status: 404 });
  });
  await page.goto('http://renderers.test/');
  for (const url of libraries) await page.addScriptTag({ url });
  for (const name of ['boxes.js', 'score.js', 'drawings.js', 'browser.js']) await page.addScriptTag({ path: path.join(here, name) });
  return page;
}

// As far down as anything is drawn; a program that failed leaves an empty strip.
async function takePicture(page, file) {
  const height = await page.evaluate(() => Math.ceil(Math.max(40, ...[...place.querySelectorAll('text, path, tspan')].map(each => each.getBoundingClientRect().bottom + scrollY))));
  await page.screenshot({ path: file, fullPage: true, clip: { x: 0, y: 0, width: 1100, height: height + 10 } });
}

// Runs in the page.
async function compare([name, text, files]) {
  const written = readScore(text);
  clear();
  try {
    const shown = await programs[name](text, written, files);
    const ours = new Set(written.marks.filter(mark => mark.ours).map(mark => mark.text));
    shown.texts.forEach(each => { each.ours ??= ours.has(each.text); });
    return { version: shown.version, ...judge(written.marks, shown.marks), overlapping: overlapping(shown.texts), cut: cut(shown.texts) };
  } catch (failure) {
    return { failure: String(failure && failure.stack || failure) };
  }
}

function line(score, program, found) {
  if (found.failure) return [score, program, '', -1, 0, 0, 0, 0, 0, JSON.stringify(found.failure)].join('\t');
  const { version, written, missing, wrong, doubled, overlapping, cut } = found;
  const counts = [missing, wrong, doubled, overlapping, cut].map(each => each.length);
  return [score, program, version, written, ...counts, JSON.stringify({ missing, wrong, doubled, overlapping, cut })].join('\t');
}

const scores = fs.readdirSync(folder).filter(name => name.endsWith('.musicxml')).map(name => name.replace('.musicxml', '')).sort();
const drawn = drawings(folder, scores);
const browser = await chromium.launch({ executablePath, args: flags });
const page = await openPage(browser);
const lines = [];
for (const score of scores) {
  const xml = fs.readFileSync(path.join(folder, score + '.musicxml'), 'utf8');
  for (const program of programs) {
    const files = (drawn[program]?.(score) || []).map(file => fs.readFileSync(file, 'utf8'));
    lines.push(line(score, program, await page.evaluate(compare, [program, xml, files])));
    if (pictures) await takePicture(page, path.join(folder, `${score}.${program}.png`));
  }
}
fs.writeFileSync(path.join(folder, 'shown.tsv'), lines.join('\n') + '\n');
if (pictures) {
  const escape = text => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
  const picture = (score, program) => `<figure><figcaption>${program}</figcaption><img loading="lazy" alt="${escape(score)} in ${program}" src="${encodeURIComponent(`${score}.${program}.png`)}"></figure>`;
  const rows = scores.map(score => `<h2>${escape(score)}</h2>\n<div>${programs.map(program => picture(score, program)).join('\n')}</div>`);
  fs.writeFileSync(path.join(folder, 'gallery.html'), `<!doctype html><html lang="en"><meta charset="utf-8"><title>Gallery of marked tunes</title><style>body{font:1rem serif;margin:1rem}div{display:flex;gap:1rem;overflow-x:auto}figure{margin:0;min-width:32rem}img{width:32rem;border:1px solid #bbb}</style><h1>Gallery of marked tunes</h1>\n${rows.join('\n')}\n`);
}
await browser.close();
