/**
 * The workbench's page and the page of one ring, as they ship beside the program.
 */
import { existsSync, readFileSync } from "node:fs";
import { AnnuletError } from "../index.js";

/** Two folders up from sources and from what is built. */
const FOLDER = new URL("../../dist/workbench/", import.meta.url);

/** The workbench's page. @throws AnnuletError `page-missing` */
export function readWorkbenchPage(): string {
  return readPage("workbench.html", "The workbench's page does not lie beside the program.");
}

/** The page of one ring, without a ring. @throws AnnuletError `page-missing` */
export function readOneRingPage(): string {
  return readPage("one-ring.html", "The page of one ring does not lie beside the program.");
}

function readPage(file: string, message: string): string {
  const place = new URL(file, FOLDER);
  if (existsSync(place)) return readFileSync(place, "utf8");
  throw new AnnuletError({
    code: "page-missing",
    message,
    hint: "install annulet again; in a checkout npm run build makes it",
  });
}
