/**
 * The workbench's page, as it ships beside the program.
 */
import { existsSync, readFileSync } from "node:fs";
import { AnnuletError } from "../index.js";

/** Two folders up from sources and from what is built. */
const PLACE = new URL("../../dist/workbench/workbench.html", import.meta.url);

/**
 * The page's text.
 *
 * @throws AnnuletError `page-missing`
 */
export function readWorkbenchPage(): string {
  if (existsSync(PLACE)) return readFileSync(PLACE, "utf8");
  throw new AnnuletError({
    code: "page-missing",
    message: "The workbench's page does not lie beside the program.",
    hint: "install annulet again; in a checkout npm run build makes it",
  });
}
