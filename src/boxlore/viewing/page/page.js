// The narrator's page: follows the keeper's item; a touch, or a cross moved by keys, puts a number on the picture.
"use strict";
const get = (id) => document.getElementById(id);
const stage = get("stage"), picture = get("picture"), spots = get("spots"), cross = get("cross");
const usual = stage.getAttribute("aria-label");
let view = null, said = 0, scale = 1, left = 0, top_ = 0, fit = 1, aim = null, close = false;

const side = () => (view && view.sides.length ? view.sides[view.at] : null);

function layout() {
  const wide = picture.naturalWidth, high = picture.naturalHeight;
  if (!wide) return;
  fit = Math.min(stage.clientWidth / wide, stage.clientHeight / high);
  const shown = fit * scale;
  const room = (size, space) => (size <= space ? [(space - size) / 2, (space - size) / 2] : [space - size, 0]);
  const [l0, l1] = room(wide * shown, stage.clientWidth), [t0, t1] = room(high * shown, stage.clientHeight);
  left = Math.min(Math.max(left, l0), l1);
  top_ = Math.min(Math.max(top_, t0), t1);
  picture.style.width = wide + "px";
  picture.style.transform = `translate(${left}px, ${top_}px) scale(${shown})`;
  for (const spot of spots.children) {
    spot.style.left = left + spot.at[0] * wide * shown + "px";
    spot.style.top = top_ + spot.at[1] * high * shown + "px";
    spot.classList.toggle("below", top_ + spot.at[1] * high * shown < 60);
  }
  cross.hidden = !aim;
  if (aim) {
    cross.style.left = left + aim[0] * wide * shown + "px";
    cross.style.top = top_ + aim[1] * high * shown + "px";
  }
  drawOutlines(wide * shown, high * shown);
  if (scale > 1.5 && !close && side()) { close = true; load("close"); }
}

// outlines of prints on a sheet: [[x, y] of four corners], and which is in hand
let lie = [], hold = [-1, -1], pull = null, told = 0;
const drawing = () => Boolean(view && view.outlines && side());

function takeOutlines() {
  if (pull || !view.outlines) return;
  lie = view.outlines.outlines.map((quad) => quad.map((at) => [...at]));
  hold = [view.outlines.outline, view.outlines.corner];
}

function drawOutlines(wide, high) {
  const sheet = get("outlines"), svg = (name, told) => {
    const part = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const [key, value] of Object.entries(told)) part.setAttribute(key, value);
    sheet.append(part);
    return part;
  };
  sheet.toggleAttribute("hidden", !drawing());
  sheet.replaceChildren();
  if (!drawing()) return;
  lie.forEach((quad, at) => {
    const held = at === hold[0] ? "held" : "", points = quad.map(([x, y]) => [left + x * wide, top_ + y * high]);
    svg("polygon", { points: points.map((point) => point.join()).join(" "), class: held });
    points.forEach(([x, y], corner) => svg("circle", { cx: x, cy: y, r: 11, class: held && (hold[1] === corner || hold[1] < 0) ? "held" : "" }));
    const middle = (axis) => points.reduce((sum, point) => sum + point[axis], 0) / 4;
    svg("text", { x: middle(0), y: middle(1) }).textContent = String(at + 1);
  });
}

function grab(at) {
  const shown = [picture.naturalWidth * fit * scale, picture.naturalHeight * fit * scale];
  let best = 40;
  hold = [-1, -1];
  lie.forEach((quad, outline) => quad.forEach(([x, y], corner) => {
    const apart = Math.hypot((x - at[0]) * shown[0], (y - at[1]) * shown[1]);
    if (apart < best) { best = apart; hold = [outline, corner]; }
  }));
  if (hold[0] < 0) hold = [lie.findLastIndex((quad) => inside(quad, at)), -1];
  layout();
  return hold[0] >= 0;
}

function inside(quad, [x, y]) {
  let crossed = false;
  quad.forEach(([x1, y1], at) => {
    const [x2, y2] = quad[(at + 1) % 4];
    if ((y1 > y) !== (y2 > y) && x < (x2 - x1) * (y - y1) / (y2 - y1) + x1) crossed = !crossed;
  });
  return crossed;
}

function shift(dx, dy, begun) {
  const quad = lie[hold[0]];
  if (!quad) return;
  const held = hold[1] < 0 ? quad : [quad[hold[1]]];
  const within = (by, axis) => Math.min(Math.max(by, -Math.min(...held.map((at) => at[axis]))), 1 - Math.max(...held.map((at) => at[axis])));
  const by = [within(dx, 0), within(dy, 1)];
  for (const at of held) { at[0] += by[0]; at[1] += by[1]; }
  layout();
  tellOutline(begun);
}

function tellOutline(begun) {
  const now = performance.now();
  if (begun && now - told < 60) return;
  told = now;
  sendOutline("put", { outline: hold[0], corner: hold[1], corners: lie[hold[0]].flat(), begun });
}
const sendOutline = (what, more = {}) => drawing() && send("/outline", { side: side().id, do: what, ...more });

function load(size) {
  const here = side();
  if (!here || view.covered) { picture.removeAttribute("src"); picture.hidden = true; return; }
  const wanted = `/picture/${here.id}/${size}`;
  const next = new Image();
  next.onload = () => {
    if (!side() || side().id !== here.id) return;
    picture.src = next.src;
    picture.hidden = false;
    picture.decode().catch(() => {}).then(() => { layout(); document.body.dataset.shown = here.id + "/" + size; });
  };
  next.onerror = () => { if (side() && side().id === here.id && size === "screen") say("{{say: This picture cannot be shown.}}"); };
  next.src = wanted;
}

function mark() {
  const before = new Set([...spots.children].map((spot) => spot.textContent));
  spots.replaceChildren();
  for (const one of side() ? side().spots : []) {
    const spot = document.createElement("span");
    spot.className = before.size && !before.has(String(one.number)) ? "spot new" : "spot";
    spot.textContent = String(one.number);
    spot.at = [one.x, one.y];
    spots.append(spot);
  }
}

function draw(now) {
  const was = side() && { id: side().id, covered: view.covered };
  view = now;
  const here = side();
  const names = (here ? here.spots : []).filter((one) => one.name).map((one) => `${one.number} ${one.name}`).join(", ");
  get("heading").textContent = now.number ? `${now.number}${now.place ? " · " + now.place : ""}` : "{{say: Photographs}}";
  picture.alt = here ? `${here.name}. ${now.caption || "{{say: Nothing is told yet.}}"} ${names}` : "";
  const how = "{{say: Outlines of prints: drag a corner, or the whole. N and P take a corner, arrow keys move it, finer with Shift; A adds an outline, Delete takes it away, Enter takes them all.}}";
  get("caption").textContent = now.outlines ? how : now.caption || "{{say: Nothing is told yet.}}";
  stage.setAttribute("aria-label", now.outlines ? how : usual);
  get("care").hidden = !now.covered;
  get("care-words").textContent = now.care;
  get("message").hidden = !now.message && Boolean(here);
  get("message").textContent = now.message || (now.number ? "{{say: There is no picture of this one.}}" : "{{say: In a moment …}}");
  const other = now.sides.length > 1 ? now.sides[(now.at + 1) % now.sides.length] : null;
  get("side").hidden = !other;
  get("side").textContent = other ? other.name : "";
  mark();
  takeOutlines();
  get("drawing").hidden = !drawing();
  if (!here || !was || was.id !== here.id || was.covered !== now.covered) {
    scale = 1; left = top_ = 0; aim = null; close = false;
    picture.hidden = true;
    load("screen");
  }
  layout();
  document.body.dataset.version = now.version;
}

function zoom(by, x = stage.clientWidth / 2, y = stage.clientHeight / 2) {
  const next = Math.min(Math.max(scale * by, 1), 12), ratio = next / scale;
  left = x - (x - left) * ratio;
  top_ = y - (y - top_) * ratio;
  scale = next;
  layout();
}

function place(x, y) {
  const box = stage.getBoundingClientRect(), shown = fit * scale;
  return [(x - box.left - left) / (picture.naturalWidth * shown), (y - box.top - top_) / (picture.naturalHeight * shown)];
}

async function send(path, told) {
  try {
    const answer = await fetch(path, {
      method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(told) });
    if (!answer.ok) say(await answer.text());
  } catch { say("{{say: The computer does not answer.}}"); }
}

function tap(at) {
  if (drawing() || !side() || view.covered || view.message || at[0] < 0 || at[1] < 0 || at[0] > 1 || at[1] > 1) return;
  send("/tap", { side: side().id, x: at[0], y: at[1] });
}

// fingers and mouse: a short touch marks, a drag moves, two fingers zoom
const fingers = new Map();
let moved = false, apart = 0;
stage.addEventListener("pointerdown", (event) => {
  stage.setPointerCapture(event.pointerId);
  if (!fingers.size) moved = false;
  fingers.set(event.pointerId, { x: event.clientX, y: event.clientY, from: [event.clientX, event.clientY] });
  if (fingers.size > 1) { moved = true; apart = spread(); pull = null; }
  else if (drawing() && grab(place(event.clientX, event.clientY))) pull = { begun: false };
});
stage.addEventListener("pointermove", (event) => {
  const finger = fingers.get(event.pointerId);
  if (!finger) return;
  const dx = event.clientX - finger.x, dy = event.clientY - finger.y;
  if (Math.hypot(event.clientX - finger.from[0], event.clientY - finger.from[1]) > 12) moved = true;
  finger.x = event.clientX; finger.y = event.clientY;
  if (pull && fingers.size === 1) {
    const shown = fit * scale;
    shift(dx / (picture.naturalWidth * shown), dy / (picture.naturalHeight * shown), pull.begun);
    pull.begun = true;
    return;
  }
  if (fingers.size === 1 && moved) { left += dx; top_ += dy; layout(); }
  if (fingers.size === 2) {
    const now = spread(), [a, b] = [...fingers.values()], box = stage.getBoundingClientRect();
    zoom(now / (apart || now), (a.x + b.x) / 2 - box.left, (a.y + b.y) / 2 - box.top);
    apart = now;
  }
});
function lift(event) {
  const finger = fingers.get(event.pointerId);
  fingers.delete(event.pointerId);
  if (pull) {
    if (pull.begun) { told = 0; tellOutline(true); }
    pull = null;
    return;
  }
  if (finger && !moved && event.type === "pointerup") tap(place(event.clientX, event.clientY));
}
stage.addEventListener("pointerup", lift);
stage.addEventListener("pointercancel", lift);
stage.addEventListener("wheel", (event) => {
  event.preventDefault();
  const box = stage.getBoundingClientRect();
  zoom(event.deltaY < 0 ? 1.2 : 1 / 1.2, event.clientX - box.left, event.clientY - box.top);
}, { passive: false });
const spread = () => { const [a, b] = [...fingers.values()]; return Math.hypot(a.x - b.x, a.y - b.y); };

// keys
const STEP = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
document.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.altKey || event.metaKey) return;
  if (event.key === "+" || event.key === "=") zoom(1.4);
  else if (event.key === "-") zoom(1 / 1.4);
  else if (event.key === "b" || event.key === "B") turn();
  else if (event.key === "w" || event.key === "W") words();
  else if (event.target === stage && drawing() && drawKey(event)) event.preventDefault();
  else if (event.target === stage && STEP[event.key]) {
    const [dx, dy] = STEP[event.key], step = (event.shiftKey ? 0.1 : 0.02) / scale;
    aim = aim || place(...centre());
    aim = [Math.min(Math.max(aim[0] + dx * step, 0), 1), Math.min(Math.max(aim[1] + dy * step, 0), 1)];
    follow();
    event.preventDefault();
  } else if (event.target === stage && event.key === "Enter" && aim) { tap(aim); event.preventDefault(); }
  else if (event.key === "Escape") { aim = null; scale = 1; layout(); }
});
function drawKey(event) {
  const step = (event.shiftKey ? 0.002 : 0.02) / scale, way = STEP[event.key];
  if (event.key === "Enter") sendOutline("take");
  else if (event.key === "a" || event.key === "A") sendOutline("add");
  else if (event.key === "Delete" || event.key === "Backspace") sendOutline("remove", { outline: hold[0] });
  else if ("nNpP".includes(event.key)) {
    const corners = 4 * lie.length, by = "nN".includes(event.key) ? 1 : -1;
    if (corners) {
      const next = hold[1] < 0 && by > 0 ? 0 : by; // of a whole outline, its first corner
      const at = (hold[0] < 0 ? (by > 0 ? 0 : -1) : 4 * hold[0] + Math.max(hold[1], 0) + next) + corners;
      hold = [Math.floor((at % corners) / 4), at % 4];
      layout();
    }
  } else if (way && hold[0] >= 0) shift(way[0] * step, way[1] * step, false);
  else return false;
  return true;
}
function centre() {
  const box = stage.getBoundingClientRect();
  return [box.left + box.width / 2, box.top + box.height / 2];
}
function follow() {
  const wide = picture.naturalWidth * fit * scale, high = picture.naturalHeight * fit * scale;
  if (wide > stage.clientWidth) left = Math.min(Math.max(left, 40 - aim[0] * wide), stage.clientWidth - 40 - aim[0] * wide);
  if (high > stage.clientHeight) top_ = Math.min(Math.max(top_, 40 - aim[1] * high), stage.clientHeight - 40 - aim[1] * high);
  layout();
}

function turn() { if (view && view.sides.length > 1) draw({ ...view, at: (view.at + 1) % view.sides.length }); }
function words() {
  const on = get("caption").hidden;
  get("caption").hidden = !on;
  get("words").setAttribute("aria-pressed", String(on));
}
get("side").addEventListener("click", turn);
get("in").addEventListener("click", () => zoom(1.4));
get("out").addEventListener("click", () => zoom(1 / 1.4));
get("words").addEventListener("click", words);
get("uncover").addEventListener("click", () => send("/uncover", { version: view.version }));
get("add").addEventListener("click", () => sendOutline("add"));
get("remove").addEventListener("click", () => sendOutline("remove", { outline: hold[0] }));
get("undo").addEventListener("click", () => sendOutline("undo"));
get("take").addEventListener("click", () => sendOutline("take"));
addEventListener("resize", layout);

// following
let silent = 0;
function say(words) {
  get("state").textContent = words;
  clearTimeout(silent);
  if (words) silent = setTimeout(() => { get("state").textContent = ""; }, 6000);
}
function listen() {
  const stream = new EventSource("/events");
  stream.onopen = () => say("");
  stream.onmessage = (event) => {
    const now = JSON.parse(event.data), same = view && view.number === now.number && said === now.at;
    said = now.at;  // a side turned here stays, until the keeper turns one or puts another item out
    draw(same && now.sides[view.at] ? { ...now, at: view.at } : now);
  };
  stream.onerror = () => {
    get("state").textContent = "{{say: Waiting for the computer …}}";
    clearTimeout(silent);
    if (stream.readyState === EventSource.CLOSED) setTimeout(listen, 2000);
  };
}
listen();
