/**
 * Whether a mesh file is one that a report was written with: by the digest of its bytes, whatever it is called now.
 */
import { createHash } from "node:crypto";
import { readFile } from "../disk/read-file.js";
import { AnnuletError, type Report } from "../index.js";

/** Largest report, bytes: far above any that `make` writes. */
const MAX_REPORT_BYTES = 20e6;

/**
 * @param bytes of the mesh file
 * @param path of the report that `make` wrote
 * @throws AnnuletError `report-without-files` where the file is no report or names no mesh files; those of `readFile`
 */
export function isReported(bytes: Uint8Array, path: string): boolean {
  const files = filesOf(new TextDecoder().decode(readFile(path, MAX_REPORT_BYTES)));
  if (files === undefined) {
    throw new AnnuletError({
      code: "report-without-files",
      message: `${path} is no report that names the mesh files it was written with.`,
      allowed: "a report that annulet make wrote together with a mesh",
      hint: "annulet make ring.json -o ring.stl --report report.json",
    });
  }
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  return files.some((file) => file?.sha256 === sha256);
}

function filesOf(text: string): Report["files"] {
  try {
    const { files } = JSON.parse(text);
    return Array.isArray(files) ? files : undefined;
  } catch {
    return undefined;
  }
}
