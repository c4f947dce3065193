/**
 * United Kingdom, Ireland, Australia: letters, C = 36.25 + 1.25 n mm with A = 1.
 */
import { readNumberLabel, writeQuarters } from "./number-label.js";
import type { PublishedChart } from "./published-chart.js";
import { scaleSystem } from "./scale.js";

/** Circumference one step below A, mm (Rowlett's dictionary of units, after BS 6820:1987). */
const BELOW_A = 36.25;

/** Growth of the circumference with a letter, mm (same source). */
const LETTER_STEP = 1.25;

/** Place of the letter Z. */
const Z = 26;

/** How far sizes go on past Z, in letter steps: Z+1 to Z+6 (from memory; the formula is continued). */
const PAST_Z = 6;

/** Place of the letter N. */
const N = 14;

/** Charts in use, by the letters that were read of them, mm; straight lines between those. */
const CHARTS: readonly PublishedChart[] = [
  {
    source: "en.wikipedia.org, Ring size, and charts after it",
    entries: [
      [1, 37.8],
      [N, 53.8],
      [Z, 68.5],
    ],
  },
  {
    source: "a UK casting house, designbuildcast.co.uk",
    entries: [
      [1, 37.7],
      [N, 54.35],
      [Z, 69.43],
    ],
  },
];

/** A letter, then what is added to it: `N`, `N½`, `N 1/2`, `N.5`, `Z+1`. */
const LETTER_LABEL = /^([a-z])(?:\s*\+?\s*(\S.*))?$/i;

export const ukSizes = scaleSystem({
  name: "uk",
  title: "UK, Ireland, Australia",
  source:
    "BS 6820:1987 after Rowlett's dictionary of units (one credible source; published charts have up to 0.7 mm more)",
  labels: "A to Z, with quarters: N¼, N 1/2, N.75; past Z: Z+1 to Z+6",
  example: "N½",
  first: 1,
  last: Z + PAST_Z,
  steps: 4,
  read: readLetter,
  write: writeLetter,
  toCircumference: (place) => BELOW_A + LETTER_STEP * place,
  toPlace: (circumference) => (circumference - BELOW_A) / LETTER_STEP,
  charts: CHARTS,
});

function readLetter(label: string | number): number | undefined {
  const match = typeof label === "string" ? LETTER_LABEL.exec(label.trim()) : null;
  if (!match) return undefined;
  const letter = match[1].toUpperCase().charCodeAt(0) - "A".charCodeAt(0) + 1;
  const added = match[2] === undefined ? 0 : readNumberLabel(match[2]);
  if (added === undefined || (letter < Z && added >= 1)) return undefined;
  return letter + added;
}

function writeLetter(place: number): string {
  if (place >= Z + 1) return `Z+${writeQuarters(place - Z)}`;
  const letter = Math.floor(place);
  const fraction = place === letter ? "" : writeQuarters(place - letter);
  return String.fromCharCode("A".charCodeAt(0) + letter - 1) + fraction;
}
