/**
 * A phrasebook: sentences with blanks in one language beside the same in another. A text that has the form of one is said in
 * the other language, its blanks filled with what stands in the text.
 *
 * `{0}`, `{1}` … are the blanks, in order in the first language, in any order in the other. `{0#}` takes nothing but
 * numbers with their units, `{0!}` nothing but numbers, words in quotes and what is in the book too. What fills a blank is
 * itself looked up, and its numbers get a decimal comma; but in `{0=}`, where a maker's own names stand, a single word stays
 * as it is.
 */

/** Phrase in one language → the same in the other. */
export type Phrases = Readonly<Record<string, string>>;

/** Says a text in the other language; undefined where no phrase has its form. */
export type SayPhrase = (text: string) => string | undefined;

/** Longest text that is looked up, in characters; the library cuts what it shows of strangers' texts far shorter. Chosen. */
const LONGEST = 4000;

/** How deep phrases are looked up within the blanks of others. Chosen: a name in a place in a reason in a sentence, and one more. */
const DEEPEST = 5;

/** A blank: its number, and what alone it takes. */
const BLANK = /\{(\d)([#!=]?)\}/g;

interface Template {
  /** What stands before, between and behind the blanks. */
  readonly fixed: readonly string[];
  /** Of each blank what alone it takes: `#`, `!`, `=`, or nothing for anything. */
  readonly marks: readonly string[];
  readonly said: string;
  /** Characters that are not blank. */
  readonly weight: number;
}

/** Reads phrases once; of several that have a text's form the one with most fixed characters is taken. */
export function openPhrasebook(phrases: Phrases): SayPhrase {
  const whole = new Map<string, string>();
  const templates: Template[] = [];
  for (const [phrase, said] of Object.entries(phrases)) {
    const template = readTemplate(phrase, said);
    if (template.marks.length === 0) whole.set(phrase, said);
    else templates.push(template);
  }
  templates.sort((a, b) => b.weight - a.weight);

  const look = (text: string, depth: number): string | undefined => {
    if (text.length > LONGEST) return undefined;
    const found = whole.get(text);
    if (found !== undefined) return found;
    for (const { fixed, marks, said } of templates) {
      const filled = fillings(fixed, text);
      if (filled === undefined || filled.some((filling, i) => marks[i] === "#" && !isNumeric(filling))) continue;
      const inside = filled.map((filling, i) => {
        const isName = marks[i] === "=" && !filling.includes(" ");
        return depth < DEEPEST && !isName ? look(filling, depth + 1) : undefined;
      });
      if (inside.some((found, i) => marks[i] === "!" && found === undefined && !isPlain(filled[i]))) continue;
      return said.replace(BLANK, (_, i: string) => inside[Number(i)] ?? withComma(filled[Number(i)]));
    }
    return undefined;
  };
  return (text) => look(text, 0);
}

/** A text of numbers and units with a decimal comma instead of the point; any other as it is. */
export function withComma(text: string): string {
  return isNumeric(text) ? text.replaceAll(/(?<=\d)\.(?=\d)/g, ",") : text;
}

/** What is written alike in both languages. */
function isPlain(text: string): boolean {
  return isNumeric(text) || /^["{]/.test(text);
}

/** Numbers with signs, separators and units, and nothing else. */
function isNumeric(text: string): boolean {
  return /\d/.test(text) && /^(?:[\d\s.,;:·×±+<>°%−–-]|mm[²³]?(?![\p{L}])|g\/cm³|[kM]B)+$/u.test(text);
}

function readTemplate(phrase: string, said: string): Template {
  const fixed = phrase.split(/\{\d[#!=]?\}/);
  const marks = [...phrase.matchAll(BLANK)].map(([, , mark]) => mark);
  return { fixed, marks, said, weight: fixed.join("").length };
}

/** What stands in the blanks of a text, each as short as can be; undefined where the text has not the form. */
function fillings(fixed: readonly string[], text: string): string[] | undefined {
  const [first, last] = [fixed[0], fixed[fixed.length - 1]];
  if (!text.startsWith(first) || !text.endsWith(last)) return undefined;
  const end = text.length - last.length;
  const found: string[] = [];
  let at = first.length;
  for (const between of fixed.slice(1, -1)) {
    const next = text.indexOf(between, at + 1);
    if (next < 0 || next + between.length > end) return undefined;
    found.push(text.slice(at, next));
    at = next + between.length;
  }
  if (at >= end) return undefined;
  found.push(text.slice(at, end));
  return found;
}
