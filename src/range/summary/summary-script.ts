/**
 * What the table of a range runs: sorts, filters, and shows rows by portions. Plain JavaScript of browsers; texts are put in as texts.
 */
export const SUMMARY_SCRIPT = `
"use strict";
const { columns, axes, rows } = JSON.parse(document.getElementById("range").textContent);
const AT_ONCE = 150;
const collator = new Intl.Collator(undefined, { numeric: true });
const byId = (id) => document.getElementById(id);
const make = (tag, properties, ...inner) => {
  const element = Object.assign(document.createElement(tag), properties);
  element.append(...inner);
  return element;
};
const state = { key: -1, down: false, shown: AT_ONCE };
const shows = (value, decimals) => {
  if (value === null) return "";
  if (typeof value === "string" || decimals === undefined) return String(value);
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
};
const heads = columns.map(({ head, unit, number }, i) => {
  const button = make("button", { type: "button" }, head, ...(unit ? [make("small", {}, unit)] : []));
  button.addEventListener("click", () => {
    state.down = state.key === i ? !state.down : false;
    state.key = i;
    draw();
  });
  return make("th", { scope: "col", className: number ? "number" : "" }, button);
});
byId("heads").append(...heads);
const filters = axes.map((axis) => {
  const at = columns.findIndex(({ key }) => key === axis.key);
  const values = [...new Set(rows.map(({ cells }) => cells[at]))].sort(collator.compare);
  const select = make("select", {}, make("option", { value: "" }, "all"), ...values.map((value) => make("option", { value }, value || "\\u2013")));
  select.addEventListener("change", restart);
  byId("filters").insertBefore(make("label", {}, axis.head, select), byId("status").parentElement);
  return { at, select };
});
for (const id of ["search", "status", "warned"]) byId(id).addEventListener("input", restart);
byId("filters").addEventListener("submit", (event) => event.preventDefault());
byId("more").addEventListener("click", () => {
  state.shown += AT_ONCE;
  draw();
});
function restart() {
  state.shown = AT_ONCE;
  draw();
}
function chosen() {
  const words = byId("search").value.toLowerCase().split(/\\s+/).filter(Boolean);
  const status = byId("status").value;
  const warned = byId("warned").checked;
  const kept = rows.filter((row) =>
    (status === "" || row.status === status) &&
    (!warned || row.warned) &&
    filters.every(({ at, select }) => select.selectedIndex === 0 || row.cells[at] === select.value) &&
    words.every((word) => row.text.includes(word)),
  );
  if (state.key < 0) return kept;
  const sign = state.down ? -1 : 1;
  const of = ({ cells }) => cells[state.key];
  return kept.sort((a, b) => {
    const [one, other] = [of(a), of(b)];
    if (one === other) return a.number - b.number;
    if (one === null || one === "") return 1;
    if (other === null || other === "") return -1;
    return sign * (typeof one === "number" && typeof other === "number" ? one - other : collator.compare(one, other));
  });
}
for (const row of rows) row.text = row.cells.map((cell) => cell ?? "").join(" ").toLowerCase();
function rowElement(row) {
  const name = make("figcaption", {}, row.cells[0]);
  if (row.files.length > 0) {
    const links = row.files.flatMap(({ path, ending }, i) => [i === 0 ? "" : " \\u00b7 ", make("a", { href: path }, ending)]);
    name.append(make("small", {}, ...links));
  }
  const figure = make("figure", {});
  if (row.picture) {
    const image = make("img", { src: row.picture, alt: "", loading: "lazy", width: 84, height: 63 });
    figure.append(make("a", { href: row.picture, ariaLabel: "picture of " + row.cells[0] }, image));
  }
  figure.append(name);
  const cells = columns.slice(1).map(({ number, decimals, look }, i) => {
    const value = row.cells[i + 1];
    return make("td", { className: number ? "number" : value ? look : "" }, shows(value, decimals));
  });
  return make("tr", { className: row.status === "made" ? "" : row.status === "failed" ? "failed" : "out" }, make("th", { scope: "row" }, figure), ...cells);
}
function draw() {
  const all = chosen();
  byId("rows").replaceChildren(...all.slice(0, state.shown).map(rowElement));
  byId("count").textContent = all.length + " of " + rows.length;
  byId("more").hidden = all.length <= state.shown;
  heads.forEach((head, i) => {
    if (state.key === i) head.ariaSort = state.down ? "descending" : "ascending";
    else head.removeAttribute("aria-sort");
  });
}
draw();
`;
