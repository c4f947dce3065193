/**
 * Writes THIRD-PARTY-NOTICES.md: what lies in dist/ that others wrote, with its licences as the installed packages have
 * them. Reads what the build noted: `npm run notices`.
 */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { noticesOf } from "./notices.mjs";

const ROOT = fileURLToPath(new URL("../", import.meta.url));

writeFileSync(`${ROOT}THIRD-PARTY-NOTICES.md`, noticesOf(ROOT));
