/**
 * How the table of a range looks: a sheet of trade drawing, paper and blue-black ink by day, slate and chalk by night, as the
 * workbench has it.
 */
export const SUMMARY_STYLE = `
:root {
  color-scheme: light dark;
  --paper: light-dark(#f3f4f1, #1d242a);
  --raised: light-dark(#fbfbf9, #242c33);
  --ink: light-dark(#14202c, #e9ece6);
  --soft: light-dark(#4a5763, #aeb8be);
  --line: light-dark(#77828b, #7d8991);
  --faint: light-dark(#c3c9cb, #3f4a52);
  --accent: light-dark(#1c6547, #74c9a0);
  --accent-soft: light-dark(#d3e5db, #28443a);
  --chalk: light-dark(#a83226, #f28b7d);
  font: 15px/1.4 ui-sans-serif, system-ui, "Noto Sans", "Liberation Sans", sans-serif;
  color: var(--ink);
  background: var(--paper);
}
* { box-sizing: border-box; }
body { margin: 0; padding: 1.25rem; display: grid; gap: 1rem; min-width: 0; }
header { border: 2px solid var(--ink); background: var(--raised); }
h1 { margin: 0; padding: .6rem .9rem; font-size: 1.45rem; font-weight: 600; overflow-wrap: anywhere; border-bottom: 1px solid var(--ink); }
dl { margin: 0; display: grid; grid-template-columns: repeat(auto-fit, minmax(8.5rem, 1fr)); gap: 1px; background: var(--faint); }
dl div { padding: .35rem .9rem .5rem; background: var(--raised); }
dt { font-size: .75rem; color: var(--soft); }
dd { margin: 0; font-size: 1.1rem; font-variant-numeric: tabular-nums; }
form { display: flex; flex-wrap: wrap; gap: .5rem 1rem; align-items: end; }
label { display: grid; gap: .15rem; font-size: .75rem; color: var(--soft); }
label.check { display: flex; gap: .4rem; align-items: center; min-height: 2rem; font-size: .9rem; }
input, select, button { font: inherit; color: inherit; background: var(--raised); border: 1px solid var(--line); padding: .2rem .5rem; min-height: 2rem; }
input[type="search"] { width: 16rem; max-width: 100%; }
input[type="checkbox"] { min-height: 0; width: 1.1rem; height: 1.1rem; accent-color: var(--accent); }
:focus-visible { outline: 2px solid var(--accent); outline-offset: 1px; }
#count { margin-left: auto; font-variant-numeric: tabular-nums; color: var(--soft); min-height: 2rem; }
.sheet { overflow: auto; max-height: calc(100vh - 4rem); border: 2px solid var(--ink); background: var(--raised); }
table { border-collapse: separate; border-spacing: 0; font-size: .875rem; font-variant-numeric: tabular-nums; min-width: 100%; }
th, td { padding: .3rem .6rem; text-align: left; vertical-align: middle; border-bottom: 1px solid var(--faint); background: var(--raised); }
thead th { position: sticky; top: 0; z-index: 2; padding: 0; border-bottom: 2px solid var(--ink); vertical-align: bottom; }
thead button { width: 100%; border: 0; background: none; padding: .4rem .6rem; text-align: inherit; font-weight: 600; cursor: pointer; line-height: 1.2; }
thead button:hover { background: var(--accent-soft); }
thead span { padding: .4rem .6rem; display: block; font-weight: 600; }
th small { display: block; font-weight: 400; color: var(--soft); }
th[aria-sort="ascending"] button::after { content: " ▲"; color: var(--accent); }
th[aria-sort="descending"] button::after { content: " ▼"; color: var(--accent); }
tbody th { position: sticky; left: 0; z-index: 1; font-weight: 600; border-right: 1px solid var(--faint); min-width: 17rem; max-width: 22rem; overflow-wrap: anywhere; }
thead th:first-child { left: 0; z-index: 3; }
.number { text-align: right; white-space: nowrap; }
.long { min-width: 17rem; font-size: .8rem; color: var(--soft); }
.warned { color: var(--chalk); min-width: 15rem; font-size: .8rem; line-height: 1.3; }
.changed { background: var(--accent-soft); }
.out td, .out th { color: var(--soft); }
.failed .why, .failed th { color: var(--chalk); }
figure { margin: 0; display: grid; grid-template-columns: auto 1fr; gap: .6rem; align-items: center; }
img { width: 84px; height: 63px; object-fit: cover; display: block; background: #fff; border: 1px solid var(--faint); }
a { color: var(--accent); }
figcaption small { display: block; font-weight: 400; }
#more { justify-self: center; padding: .4rem 1.2rem; cursor: pointer; }
[hidden] { display: none !important; }
@media print { .sheet { max-height: none; overflow: visible; } form, #more { display: none; } }
`;
