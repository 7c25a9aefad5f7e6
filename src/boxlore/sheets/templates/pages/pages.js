"use strict";
// Search, in which letters with and without accents are one, and the enlarged view. Everything on these pages also works without this file.
(() => {
  const WORDS = window.boxloreWords || {};
  const say = (message, values) =>
    (WORDS[message] || message).replace(/\{(\w+)\}/g, (_, name) => values[name]);
  const plurals = new Intl.PluralRules(document.documentElement.lang || "en");
  const isOne = (count) => plurals.select(count) === "one";
  const LETTERS = { ł: "l", ß: "ss", ø: "o", æ: "ae", œ: "oe", đ: "d", ð: "d", þ: "th", ı: "i", ς: "σ" };
  const folded = (words) =>
    words.toLowerCase().normalize("NFKD").replace(/\p{M}/gu, "").replace(/[łßøæœđðþıς]/g, (letter) => LETTERS[letter]);

  const search = document.getElementById("search");
  if (search && window.boxlorePages) {
    const [input, status, who, hits] = ["words", "found", "who", "hits"].map((id) => document.getElementById(id));
    const groups = document.querySelectorAll(".group, main > .steps");
    const MOST = 60;
    const ready = (rows) => {
      for (const row of rows) row.folded = folded(row.f.join(" ").replace(/[\u2068\u2069]/g, ""));
      return rows;
    };
    let people = ready(window.boxlorePeople || []);
    let photographs = ready(window.boxlorePages);
    const entry = (href, row, parts) => {
      const item = document.createElement("li");
      const link = item.appendChild(document.createElement("a"));
      link.href = href;
      if (row.p) {
        const image = link.appendChild(document.createElement("img"));
        image.src = row.p;
        image.alt = "";
        if (parts.face) image.className = "face";
      }
      const into = parts.face ? link.appendChild(document.createElement("span")) : link;
      for (const [name, words] of [[parts.name, row.t], [parts.under, row.w]]) {
        const line = into.appendChild(document.createElement("span"));
        line.className = name;
        line.dir = "auto";
        line.textContent = words;
      }
      return item;
    };
    const look = () => {
      const terms = folded(input.value).split(/\s+/).filter(Boolean);
      const matching = (rows) => (terms.length ? rows.filter((row) => terms.every((term) => row.folded.includes(term))) : []);
      const named = matching(people);
      const matches = matching(photographs);
      const face = { face: true, name: "line", under: "count" };
      who.replaceChildren(...named.slice(0, 24).map((row) => entry(row.h, row, face)));
      hits.replaceChildren(...matches.slice(0, MOST).map((row) => entry(`photo/${row.n}.html`, row, { name: "name", under: "when" })));
      for (const group of groups) group.hidden = terms.length > 0;
      const count = matches.length;
      const found = isOne(count) ? say("{count} photograph found", { count }) : say("{count} photographs found", { count });
      const rest = count > MOST ? say(", the first {count} shown", { count: MOST }) : "";
      const some = { count: named.length };
      const persons = isOne(named.length) ? say(", {count} person", some) : say(", {count} people", some);
      status.textContent = terms.length ? `${found}${rest}${named.length ? persons : ""}` : "";
    };
    // A large collection's further parts come when somebody begins to search.
    const load = (file, name, parts, take) => {
      for (let part = 2; part <= Number(parts); part += 1) {
        const script = document.head.appendChild(document.createElement("script"));
        script.src = `${file}-${part}.js`;
        script.addEventListener("load", () => {
          take(ready(window[`${name}${part}`]));
          look();
        });
      }
    };
    const loadAll = () => {
      load("search-data", "boxlorePages", search.dataset.photographs, (rows) => { photographs = photographs.concat(rows); });
      load("search-people", "boxlorePeople", search.dataset.people, (rows) => { people = people.concat(rows); });
    };
    search.hidden = false;
    input.addEventListener("input", look);
    input.addEventListener("focus", loadAll, { once: true });
    if (input.value) look();
  }

  const button = (words) => {
    const element = document.createElement("button");
    element.type = "button";
    element.textContent = words;
    return element;
  };
  for (const link of document.querySelectorAll(".enlarge")) {
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey || !window.HTMLDialogElement) return;
      event.preventDefault();
      const shown = link.closest("p").previousElementSibling.querySelector("img");
      const dialog = document.body.appendChild(document.createElement("dialog"));
      dialog.setAttribute("aria-label", say("Enlarged picture"));
      const bar = dialog.appendChild(document.createElement("div"));
      bar.className = "bar";
      const close = bar.appendChild(button(say("Close")));
      const size = bar.appendChild(button(say("Full size")));
      const view = dialog.appendChild(document.createElement("div"));
      view.className = "view";
      view.tabIndex = 0;
      view.setAttribute("role", "region");
      view.setAttribute("aria-label", say("Picture; the arrow keys move it"));
      const image = view.appendChild(document.createElement("img"));
      image.src = link.href;
      image.alt = shown ? shown.alt : "";
      close.addEventListener("click", () => dialog.close());
      size.addEventListener("click", () => {
        size.textContent = dialog.classList.toggle("natural") ? say("Fit the window") : say("Full size");
      });
      dialog.addEventListener("close", () => { dialog.remove(); link.focus(); });
      dialog.showModal();
    });
  }

  // The photographs of this page one after the other, over the whole window.
  const cards = [...document.querySelectorAll("main .gallery:not(#hits) a[data-large]")];
  if (cards.length > 1 && window.HTMLDialogElement) {
    const start = button(say("Show as slides"));
    start.className = "slides";
    const heading = document.querySelector("h1");
    (heading.closest(".top") || heading).after(start);
    start.addEventListener("click", () => {
      let at = 0;
      const dialog = document.body.appendChild(document.createElement("dialog"));
      dialog.setAttribute("aria-label", say("Slides"));
      const bar = dialog.appendChild(document.createElement("div"));
      bar.className = "bar";
      const [close, before, after] = [say("Close"), say("Previous"), say("Next")].map((words) => bar.appendChild(button(words)));
      const said = bar.appendChild(document.createElement("p"));
      said.className = "said";
      said.setAttribute("role", "status");
      const view = dialog.appendChild(document.createElement("div"));
      view.className = "view";
      const image = view.appendChild(document.createElement("img"));
      const show = (step) => {
        at = (at + step + cards.length) % cards.length;
        const [name, when] = ["name", "when"].map((line) => cards[at].querySelector(`.${line}`).textContent);
        image.src = cards[at].dataset.large;
        image.alt = [name, when].filter(Boolean).join(", ");
        said.textContent = say("{number} of {count}: {title}", { number: at + 1, count: cards.length, title: image.alt });
      };
      close.addEventListener("click", () => dialog.close());
      before.addEventListener("click", () => show(-1));
      after.addEventListener("click", () => show(1));
      dialog.addEventListener("keydown", (event) => {
        if (event.key === "ArrowLeft") show(-1);
        if (event.key === "ArrowRight") show(1);
      });
      dialog.addEventListener("close", () => { dialog.remove(); start.focus(); });
      show(0);
      dialog.showModal();
      after.focus();
    });
  }
})();
