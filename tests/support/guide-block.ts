/**
 * Blocks of code of examples/guide/browser.md, for tests that run them as they are written.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const GUIDE = fileURLToPath(new URL("../../examples/guide/browser.md", import.meta.url));

/** The block of JavaScript whose first line is this comment. @throws Error where there is none */
export function guideBlock(title: string): string {
  return blockOf("js", (block) => block.startsWith(`// ${title}\n`), title);
}

/** The block of HTML that holds these words. @throws Error where there is none */
export function guideHtml(words: string): string {
  return blockOf("html", (block) => block.includes(words), words);
}

function blockOf(language: string, isMeant: (block: string) => boolean, what: string): string {
  const [, ...parts] = readFileSync(GUIDE, "utf8").split(`\`\`\`${language}\n`);
  const found = parts.map((part) => part.split("```")[0]).find(isMeant);
  if (found === undefined) throw new Error(`the guide has no block ${what}`);
  return found;
}
