// LilyPond and MuseScore, which draw into files below FOLDER/drawings.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

function run(where, program, ...words) {
  execFileSync(program, words, { cwd: where, stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, QT_QPA_PLATFORM: 'offscreen' } });
}

// LilyPond ends with 1 if one of many scores fails; which one is seen by its missing drawing.
function tolerant(...words) {
  try {
    run(...words);
  } catch (failure) {
    console.error(String(failure.stderr || failure));
  }
}

export function drawings(folder, scores) {
  const into = path.resolve(folder, 'drawings');
  fs.mkdirSync(into, { recursive: true });
  const absolute = score => path.resolve(folder, score + '.musicxml');
  for (const score of scores) {
    const source = path.join(into, score + '.ly');
    tolerant(into, 'musicxml2ly', '-o', source, absolute(score));
    // With links from what is drawn to its place in the source.
    if (fs.existsSync(source)) fs.writeFileSync(source, fs.readFileSync(source, 'utf8').replace('\\pointAndClickOff', ''));
  }
  tolerant(into, 'lilypond', '-l', 'ERROR', '-dbackend=svg', '-djob-count=2', ...scores.map(score => score + '.ly'));
  const job = scores.map(score => ({ in: absolute(score), out: [path.join(into, score + '.saved.musicxml'), path.join(into, score + '.mscore.svg')] }));
  fs.writeFileSync(path.join(into, 'job.json'), JSON.stringify(job));
  tolerant(into, 'mscore3', '-j', 'job.json');
  const pages = start => fs.readdirSync(into).filter(name => name.startsWith(start) && /^(-\d+|)\.svg$/.test(name.slice(start.length))).sort((a, b) => a.length - b.length || (a < b ? -1 : 1)).map(name => path.join(into, name));
  return {
    lilypond: score => [path.join(into, score + '.ly'), ...pages(score)],
    musescore: score => [path.join(into, score + '.saved.musicxml'), ...pages(score + '.mscore')],
  };
}
