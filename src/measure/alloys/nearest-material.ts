/**
 * Which material a name meant that is no symbol: karats, finenesses, metals and colours are read before letters are compared.
 */
import { distance } from "fastest-levenshtein";
import type { Alloy } from "./alloy.js";

/** Parts in a thousand by karats: 9 and 10, 14, 18, 22, 24 are in use. */
const FINENESS: ReadonlyMap<number, number> = new Map([
  [9, 375],
  [10, 417],
  [14, 585],
  [18, 750],
  [22, 916],
  [24, 999],
]);

const KARATS = /(\d{1,2})\s*-?\s*(?:k|kt|ct|carat|karat)\b/;

/** Words of colours and metals with the word that symbols and names have for them. */
const WORDS: Readonly<Record<string, string>> = {
  yellow: "yellow",
  white: "white",
  red: "red",
  rose: "red",
  rosé: "red",
  pink: "red",
  green: "green",
  gold: "gold",
  silver: "silver",
  sterling: "sterling",
  britannia: "britannia",
  platinum: "platinum",
  palladium: "palladium",
  nickel: "nickel",
  ni: "nickel",
  pd: "palladium",
  fine: "fine",
  germanium: "germanium",
};

/** What a name says in so many words. */
interface Said {
  readonly fineness: number | undefined;
  readonly words: readonly string[];
}

/** Longest text that a nearest one is sought for, in characters. */
const LONGEST = 60;

/** What is looked at of a material. */
export type NamedMaterial = Pick<Alloy, "symbol" | "name" | "kind" | "fineness">;

/**
 * The symbol that is nearest to what was written; undefined where nothing is said and more than half the letters differ.
 *
 * A fineness that was written rules out materials of another; then the words count, then the letters.
 */
export function nearestMaterial(written: unknown, alloys: readonly NamedMaterial[]): string | undefined {
  const text = String(written).toLowerCase().slice(0, LONGEST);
  const { fineness, words } = read(text);
  const ofFineness = alloys.filter((alloy) => fineness === undefined || alloy.fineness === fineness);
  const choice = ofFineness.length > 0 ? ofFineness : alloys;
  const ranked = choice.map(({ symbol, name, kind }) => {
    const known = `${symbol} ${name} ${kind}`.toLowerCase();
    return {
      symbol,
      matches: words.filter((word) => known.includes(word)).length,
      letters: lettersApart(text, symbol, name),
    };
  });
  const best = ranked.sort((a, b) => b.matches - a.matches || a.letters - b.letters).at(0);
  if (best === undefined || ofFineness.length < alloys.length || best.matches > 0) return best?.symbol;
  return best.letters > Math.max(text.length, best.symbol.length) / 2 ? undefined : best.symbol;
}

/** By how many letters a text misses a symbol or a name; letters that only change places count as half of one. */
function lettersApart(text: string, symbol: string, name: string): number {
  if (text !== symbol && sorted(text) === sorted(symbol)) return 0.5;
  return Math.min(distance(text, symbol), distance(text, name.toLowerCase()));
}

function sorted(text: string): string {
  return [...text].sort().join("");
}

function read(text: string): Said {
  const karats = KARATS.exec(text);
  const parts = /\d{3}/.exec(text);
  const fineness = karats === null ? Number(parts?.[0] ?? Number.NaN) : FINENESS.get(Number(karats[1]));
  return {
    fineness: Number.isNaN(fineness) ? undefined : fineness,
    words: text.split(/[^a-zé]+|(?<=\d)(?=[a-zé])/).flatMap((word) => WORDS[word] ?? []),
  };
}
