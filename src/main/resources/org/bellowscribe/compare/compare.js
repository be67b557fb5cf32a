// Keeps the choices of the page and saves them as a file. Sends nothing anywhere.
(function () {
  "use strict";
  const form = document.getElementById("choices");
  const judge = document.getElementById("judge");
  const state = document.getElementById("state");
  const seed = document.body.dataset.seed;
  const tunes = Array.from(document.querySelectorAll("section.tune"));
  const key = "two-ways " + seed + " " + document.body.dataset.run;
  let unsaved = false;

  function choice(tune) {
    const chosen = form.querySelector("input[name='" + tune.id + "']:checked");
    return chosen ? chosen.value : "";
  }

  function remark(tune) {
    return form.elements[tune.id + "-remark"].value;
  }

  // As RFC 4180 has it; a text that a spreadsheet would take for a formula begins with an apostrophe.
  function field(text) {
    const safe = /^[=+\-@\t\r]/.test(text) ? "'" + text : text;
    return /[",\r\n]/.test(safe) ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  }

  function csv() {
    const rows = [["judge", "seed", "place", "file", "title", "a", "b", "choice", "remark"]];
    tunes.forEach((tune, i) => {
      const data = tune.dataset;
      rows.push([judge.value, seed, String(i + 1), data.file, data.title, data.a, data.b, choice(tune), remark(tune)]);
    });
    return rows.map((row) => row.map(field).join(",") + "\r\n").join("");
  }

  function tell(words) {
    state.textContent = words;
  }

  function progress() {
    const chosen = tunes.filter((tune) => choice(tune) !== "").length;
    tell(chosen + " of " + tunes.length + " chosen" + (unsaved ? ", not saved as a file yet." : "."));
  }

  // A browser may refuse to keep anything for pages from disk; then only the file keeps it.
  function keep() {
    try {
      const kept = tunes.map((tune) => [choice(tune), remark(tune)]);
      localStorage.setItem(key, JSON.stringify({ judge: judge.value, kept }));
    } catch (e) {
      return;
    }
  }

  function restore() {
    try {
      const before = JSON.parse(localStorage.getItem(key));
      judge.value = before.judge;
      tunes.forEach((tune, i) => {
        const [value, words] = before.kept[i];
        form.elements[tune.id + "-remark"].value = words;
        form.querySelectorAll("input[name='" + tune.id + "']").forEach((input) => {
          input.checked = input.value === value;
        });
      });
    } catch (e) {
      return;
    }
  }

  function changed() {
    unsaved = true;
    keep();
    progress();
  }

  function save() {
    const link = document.createElement("a");
    const file = new Blob([csv()], { type: "text/csv;charset=utf-8" });
    link.href = URL.createObjectURL(file);
    link.download = seed === "" ? "choices.csv" : "choices-" + seed + ".csv";
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
    unsaved = false;
    progress();
  }

  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", changed);
  judge.addEventListener("input", changed);
  document.getElementById("save-button").addEventListener("click", save);
  window.addEventListener("beforeunload", (event) => {
    if (unsaved) {
      event.preventDefault();
    }
  });
  // Scores are engraved as they come near, each once for the width that there is.
  let toolkit = null;
  function engrave(place) {
    const data = window.bellowscribeScores[place.dataset.score];
    if (!toolkit || !data || !bellowscribeEngrave(toolkit, place, data, place.clientWidth)) return;
    for (const step of place.dataset.other.split(" ").filter(Boolean)) {
      const name = place.dataset.score + "n" + step;
      place.querySelectorAll(`[id="${name}"],[id^="${name}-"]`).forEach((note) => note.classList.add("differs"));
    }
  }
  function ready() {
    toolkit = new verovio.toolkit();
    const places = document.querySelectorAll(".engraved");
    const seen = new IntersectionObserver((all) => {
      all.filter((each) => each.isIntersecting).forEach(({ target }) => {
        seen.unobserve(target);
        engrave(target);
      });
    }, { rootMargin: "600px" });
    places.forEach((place) => seen.observe(place));
    window.addEventListener("beforeprint", () => places.forEach((place) => place.querySelector("svg") || engrave(place)));
    document.documentElement.dataset.ready = "yes";
  }
  window.addEventListener("DOMContentLoaded", () => {
    if (!window.verovio) return;
    if (verovio.module.calledRun) ready();
    else verovio.module.onRuntimeInitialized = ready;
  });

  document.getElementById("save").hidden = false;
  restore();
  progress();
})();
