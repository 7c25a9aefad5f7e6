"use strict";
// Search and the enlarged view. Everything on these pages also works without this file.
(() => {
  const folded = (words) => words.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

  const search = document.getElementById("search");
  const data = window.boxlorePages;
  if (search && data) {
    const [input, found, hits] = ["words", "found", "hits"].map((id) => document.getElementById(id));
    const groups = document.querySelectorAll(".group, main > .steps");
    const MOST = 60;
    const card = (one) => {
      const item = document.createElement("li");
      const link = item.appendChild(document.createElement("a"));
      link.href = `photo/${one.n}.html`;
      if (one.p) {
        const image = link.appendChild(document.createElement("img"));
        image.src = one.p;
        image.alt = "";
      }
      for (const [name, words] of [["name", one.t], ["when", one.w]]) {
        const line = link.appendChild(document.createElement("span"));
        line.className = name;
        line.dir = "auto";
        line.textContent = words;
      }
      return item;
    };
    const look = () => {
      const wanted = folded(input.value).split(/\s+/).filter(Boolean);
      const kept = wanted.length ? data.filter((one) => wanted.every((word) => one.f.includes(word))) : [];
      hits.replaceChildren(...kept.slice(0, MOST).map(card));
      for (const group of groups) group.hidden = wanted.length > 0;
      const more = kept.length > MOST ? `, the first ${MOST} shown` : "";
      found.textContent = wanted.length ? `${kept.length} found${more}` : "";
    };
    search.hidden = false;
    input.addEventListener("input", look);
    if (input.value) look();
  }

  const button = (words) => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = words;
    return made;
  };
  for (const link of document.querySelectorAll(".enlarge")) {
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey || !window.HTMLDialogElement) return;
      event.preventDefault();
      const shown = link.closest("p").previousElementSibling.querySelector("img");
      const dialog = document.body.appendChild(document.createElement("dialog"));
      dialog.setAttribute("aria-label", "Enlarged picture");
      const bar = dialog.appendChild(document.createElement("div"));
      bar.className = "bar";
      const close = bar.appendChild(button("Close"));
      const size = bar.appendChild(button("Full size"));
      const view = dialog.appendChild(document.createElement("div"));
      view.className = "view";
      view.tabIndex = 0;
      view.setAttribute("role", "region");
      view.setAttribute("aria-label", "Picture; the arrow keys move it");
      const image = view.appendChild(document.createElement("img"));
      image.src = link.href;
      image.alt = shown ? shown.alt : "";
      close.addEventListener("click", () => dialog.close());
      size.addEventListener("click", () => {
        size.textContent = dialog.classList.toggle("natural") ? "Fit the window" : "Full size";
      });
      dialog.addEventListener("close", () => { dialog.remove(); link.focus(); });
      dialog.showModal();
    });
  }
})();
