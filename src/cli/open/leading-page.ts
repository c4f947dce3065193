/**
 * A page in a file of the user's own that leads on to the workbench's address. The arguments of a program that is started can
 * be read by every user of a machine, and the address holds the token that lets in; what opens a browser is given this file's
 * path instead, which nobody else may read.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export interface LeadingPage {
  readonly path: string;
  /** Takes the file away; a second time does nothing. */
  remove(): void;
}

/** The folder's and the file's permissions: their owner alone. Made so from the first, by the umask or not. */
const OWN = 0o600;

/** @throws Error of the file system */
export function writeLeadingPage(address: string): LeadingPage {
  // Made with 0700.
  const folder = mkdtempSync(join(tmpdir(), "annulet-open-"));
  const path = join(folder, "workbench.html");
  writeFileSync(path, pageTo(address), { mode: OWN, flag: "wx" });
  return { path, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** The address has no sign that HTML would take for another: its token is base64url. */
function pageTo(address: string): string {
  return `<!doctype html>
<meta charset="utf-8">
<meta name="referrer" content="no-referrer">
<meta http-equiv="refresh" content="0; url=${address}">
<title>annulet</title>
<a href="${address}">annulet</a>
`;
}
