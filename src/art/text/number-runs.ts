/**
 * Numbers in a text that runs from right to left: they run from left to right, as a whole in their place.
 *
 * The Unicode Bidirectional Algorithm (UAX #9, revision 48) for one line of one direction without letters that run from
 * left to right: rules W1 to W7, N1, N2, I1 and L2 leave numbers at one level above all that lies round them.
 */

/** A span of a text that runs one way. */
export interface TextRun {
  readonly text: string;
  /** Where in the text it begins, UTF-16 units. */
  readonly start: number;
  readonly direction: "ltr" | "rtl";
}

/** Digits that such a text may hold: European and Persian ones (class EN), Arabic ones with their separators (class AN). */
const EUROPEAN = /[0-9\u06f0-\u06f9]/;
const ARABIC = /[\u0660-\u0669\u066b\u066c]/;

/** Signs within and beside numbers: classes ES, CS and ET, as far as they stand on keyboards (from memory). */
const SIGN = /[+\-\u2212]/;
const SEPARATOR = /[,./:\u00a0\u060c]/;
const MARK_OF_NUMBER = /[#$%°€£¥¢‰\u066a]/;

/** Letters of class AL: Arabic, Syriac and Thaana, after which European digits count as Arabic ones (W2). */
const ARABIC_LETTER = /(?=\p{L})[\u0600-\u07bf\u0860-\u08ff\ufb50-\ufdff\ufe70-\ufefc]/u;

/** Marks on the letter before them, which go with it (W1). */
const MARK = /\p{M}/u;

type Kind = "letter" | "european" | "arabic" | "sign" | "separator" | "mark" | "other";

export function isTextDigit(character: string): boolean {
  return EUROPEAN.test(character) || ARABIC.test(character);
}

/** The runs of a right-to-left text as they stand from left to right. */
export function runsFromLeft(text: string): TextRun[] {
  const characters = [...text];
  const numbers = numbersAmong(characters);
  const runs: TextRun[] = [];
  let [start, first] = [0, 0];
  for (let i = 1; i <= characters.length; i++) {
    if (i < characters.length && numbers[i] === numbers[first]) continue;
    const part = characters.slice(first, i).join("");
    runs.push({ text: part, start, direction: numbers[first] ? "ltr" : "rtl" });
    start += part.length;
    first = i;
  }
  return runs.reverse();
}

/** Which characters belong to numbers. */
function numbersAmong(characters: readonly string[]): boolean[] {
  const kinds = kindsOf(characters);
  const before = kinds.map((kind, i): Kind => {
    const [left, right] = [kinds[i - 1], kinds[i + 1]];
    const between = left === right && (left === "european" || left === "arabic");
    // One sign or separator between two numbers (W4).
    if (kind === "separator" && between) return left;
    return kind === "sign" && between && left === "european" ? left : kind;
  });
  const whole = [...before];
  // Marks of numbers in a row beside a European one (W5), from both sides.
  for (let i = 1; i < whole.length; i++) if (whole[i] === "mark" && whole[i - 1] === "european") whole[i] = "european";
  for (let i = whole.length - 2; i >= 0; i--) {
    if (whole[i] === "mark" && whole[i + 1] === "european") whole[i] = "european";
  }
  return whole.map((kind) => kind === "european" || kind === "arabic");
}

function kindsOf(characters: readonly string[]): Kind[] {
  const kinds: Kind[] = [];
  let arabicLast = false;
  for (const character of characters) {
    if (/\p{L}/u.test(character)) arabicLast = ARABIC_LETTER.test(character);
    kinds.push(kindOf(character, arabicLast, kinds[kinds.length - 1] ?? "other"));
  }
  return kinds;
}

function kindOf(character: string, arabicLast: boolean, before: Kind): Kind {
  if (MARK.test(character)) return before;
  if (ARABIC.test(character)) return "arabic";
  if (EUROPEAN.test(character)) return arabicLast ? "arabic" : "european";
  if (SIGN.test(character)) return "sign";
  if (SEPARATOR.test(character)) return "separator";
  if (MARK_OF_NUMBER.test(character)) return "mark";
  return /\p{L}/u.test(character) ? "letter" : "other";
}
