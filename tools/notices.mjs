/**
 * The notices of what lies in dist/ that others wrote: packages that the build bundled, and what is copied beside them.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { NOTES } from "./bundled-packages.mjs";

/** What `finish-dist.mjs` copies out of packages whose code is not bundled. */
const COPIED = ["@expo-google-fonts/nunito"];

/** Packages that bring no text of their licence: the file in tools/licences/ that has it. */
const WITHOUT_TEXT = { "@bomb.sh/tab": "tab.txt", "@humanwhocodes/momoa": "momoa.txt", saxes: "saxes.txt" };

/** What is compiled into a package's WebAssembly and not named in its own text. */
const COMPILED_IN = { harfbuzzjs: "harfbuzz.txt", "manifold-3d": "manifold-parts.txt" };

/** Licences that let a program be used, changed and sold, whole or in parts, as long as they are told. */
export const PERMISSIVE = ["MIT", "ISC", "Apache-2.0", "BSL-1.0", "0BSD", "Unlicense", "MIT AND OFL-1.1"];

/** Names of files with a licence's text. */
const LICENCE_FILE = /^(licen[cs]e|notice|copying)/i;

/**
 * The page, made from what is installed.
 *
 * @throws Error where nothing is built, a text is missing or a licence is not permissive
 */
export function noticesOf(root) {
  const sections = bundledIn(root).map((name) => sectionOf(root, name));
  return `# Third-party notices

annulet itself is under the MIT licence, see LICENSE. Its files in dist/ also hold, whole or in part, the ${sections.length} packages
below. Made by \`npm run notices\`.

${sections.join("\n")}`;
}

/** Names of all packages that lie in dist/. */
export function bundledIn(root) {
  const notes = readdirSync(join(root, NOTES)).map((file) => JSON.parse(readFileSync(join(root, NOTES, file), "utf8")));
  return [...new Set([...notes.flat(), ...COPIED])].sort();
}

function sectionOf(root, name) {
  const folder = join(root, "node_modules", name);
  const { version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  if (!PERMISSIVE.includes(license)) throw new Error(`${name} is under ${license}, which is not known as permissive`);
  const own = readdirSync(folder).filter((file) => LICENCE_FILE.test(file));
  const texts = own.map((file) => join(folder, file));
  for (const file of [WITHOUT_TEXT[name], COMPILED_IN[name]]) {
    if (file !== undefined) texts.push(join(root, "tools/licences", file));
  }
  if (texts.length === 0) throw new Error(`${name} brings no text of its licence: put it into tools/licences/`);
  const quoted = texts.map((file) => `\`\`\`text\n${plain(readFileSync(file, "utf8"))}\n\`\`\`\n`);
  return `## ${name} ${version}\n\nLicence: ${license}.\n\n${quoted.join("\n")}`;
}

/** Without the ends of other systems' lines and the spaces before them. */
function plain(text) {
  return text
    .replace(/^\uFEFF/, "")
    .replace(/[ \t\r]+$/gm, "")
    .trim();
}
