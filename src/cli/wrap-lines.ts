/**
 * Text in lines of a readable length.
 */

/** Characters in a line of text: reads well, and fits the usual terminal of 80. */
const LINE_LENGTH = 76;

/** Breaks text at spaces, each line indented. */
export function wrapLines(text: string, indent = "  "): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && indent.length + line.length + 1 + word.length > LINE_LENGTH) {
      lines.push(indent + line);
      line = "";
    }
    line += line === "" ? word : ` ${word}`;
  }
  return [...lines, indent + line].join("\n");
}
