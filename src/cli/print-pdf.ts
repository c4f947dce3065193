/**
 * Prints a page to PDF with a Chromium that is installed here.
 */
import { execFile } from "node:child_process";
import { accessSync, constants, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";
import { AnnuletError } from "../index.js";

/** Names that it goes by. */
const NAMES = ["chromium", "chromium-browser", "google-chrome", "chrome"];

/** How long a page may take, ms. */
const PATIENCE = 60_000;

/** Headless, without a graphics card, and with nothing fetched: the page needs nothing but itself. */
const FLAGS = [
  "--headless",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-pdf-header-footer",
];

/** Paper, as CSS calls it. */
export type Paper = "a4" | "letter";

/** The program's path; undefined where there is none. */
export function findChromium(path: string = process.env.PATH ?? ""): string | undefined {
  const places = path.split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return places.find((place) => {
    try {
      accessSync(place, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/**
 * The bytes of the PDF that a page prints as.
 *
 * @throws AnnuletError `pdf-printer-missing`, `pdf-not-printed`
 */
export async function printPdf(html: string, paper: Paper): Promise<Uint8Array> {
  const program = requireChromium();
  const folder = mkdtempSync(join(tmpdir(), "annulet-print-"));
  try {
    const [page, output] = [join(folder, "sheet.html"), join(folder, "sheet.pdf")];
    writeFileSync(page, html.replace("</style>", `@page { size: ${paper}; }\n</style>`));
    // Root may not use the sandbox; the page is our own and holds no script.
    const flags = [
      ...FLAGS,
      ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
      `--user-data-dir=${join(folder, "profile")}`,
    ];
    await execute(program, [...flags, `--print-to-pdf=${output}`, pathToFileURL(page).href]);
    return Uint8Array.from(readFileSync(output));
  } catch (cause) {
    throw new AnnuletError(
      {
        code: "pdf-not-printed",
        message: `${program} did not print the sheet: ${cause instanceof Error ? cause.message.split("\n")[0] : String(cause)}.`,
        hint: "write the sheet as .html and print it from a browser",
      },
      { cause },
    );
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
  }
}

/** @throws AnnuletError `pdf-printer-missing` */
export function requireChromium(): string {
  const program = findChromium();
  if (program !== undefined) return program;
  throw new AnnuletError({
    code: "pdf-printer-missing",
    message: "PDF is printed by Chromium, and none is installed here.",
    allowed: `a program of one of these names: ${NAMES.join(", ")}`,
    hint: "write the sheet as .html and print it from a browser at 100 %",
  });
}

function execute(program: string, words: readonly string[]): Promise<void> {
  return new Promise((done, failed) => {
    execFile(program, words, { timeout: PATIENCE }, (error) => (error === null ? done() : failed(error)));
  });
}
