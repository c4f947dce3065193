/** Questions about paths. */
import { realpathSync } from "node:fs";
import { isAbsolute, relative, sep } from "node:path";

/** Whether a path lies outside a folder. */
export function leaves(folder: string, path: string): boolean {
  const way = relative(folder, path);
  return way === ".." || way.startsWith(`..${sep}`) || isAbsolute(way);
}

/** Whether something is there, links followed. */
export function exists(path: string): boolean {
  try {
    realpathSync(path);
    return true;
  } catch {
    return false;
  }
}
