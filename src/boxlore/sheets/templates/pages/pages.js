"use strict";
// Search and the enlarged view. Everything on these pages also works without this file.
(() => {
  const LETTERS = { ł: "l", ß: "ss", ø: "o", æ: "ae", œ: "oe", đ: "d", ð: "d", þ: "th", ı: "i", ς: "σ" };
  const folded = (words) =>
    words.toLowerCase().normalize("NFKD").replace(/\p{M}/gu, "").replace(/[łßøæœđðþıς]/g, (letter) => LETTERS[letter]);

  const search = document.getElementById("search");
  const data = window.boxlorePages;
  if (search && data) {
    for (const photo of data) photo.folded = folded(photo.f.join(" "));
    const [input, status, hits] = ["words", "found", "hits"].map((id) => document.getElementById(id));
    const groups = document.querySelectorAll(".group, main > .steps");
    const MOST = 60;
    const card = (photo) => {
      const item = document.createElement("li");
      const link = item.appendChild(document.createElement("a"));
      link.href = `photo/${photo.n}.html`;
      if (photo.p) {
        const image = link.appendChild(document.createElement("img"));
        image.src = photo.p;
        image.alt = "";
      }
      for (const [name, words] of [["name", photo.t], ["when", photo.w]]) {
        const line = link.appendChild(document.createElement("span"));
        line.className = name;
        line.dir = "auto";
        line.textContent = words;
      }
      return item;
    };
    const look = () => {
      const terms = folded(input.value).split(/\s+/).filter(Boolean);
      const matches = terms.length ? data.filter((photo) => terms.every((term) => photo.folded.includes(term))) : [];
      hits.replaceChildren(...matches.slice(0, MOST).map(card));
      for (const group of groups) group.hidden = terms.length > 0;
      const rest = matches.length > MOST ? `, the first ${MOST} shown` : "";
      status.textContent = terms.length ? `${matches.length} found${rest}` : "";
    };
    search.hidden = false;
    input.addEventListener("input", look);
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
