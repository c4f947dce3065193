/**
 * Temporary files that outputs are written to first: how they are called, and how those are found that a run which was
 * killed has left behind.
 */
import { createHash, randomBytes } from "node:crypto";
import { readdirSync, rmSync } from "node:fs";
import { hostname } from "node:os";
import { dirname, join } from "node:path";

/** This machine's part of a name: process numbers of other machines, which may share the folder, mean nothing here. */
const HOST = createHash("sha256").update(hostname()).digest("hex").slice(0, 8);

const NAME = /^\.annulet-([0-9a-f]{8})-(\d+)-[0-9a-f]{8}\.tmp$/;

/** A name nobody has, in the target's folder so that a rename moves no bytes; short, as file systems limit names. */
export function temporaryBeside(file: string): string {
  return join(dirname(file), `.annulet-${HOST}-${process.pid}-${randomBytes(4).toString("hex")}.tmp`);
}

/** Takes temporary files out of a folder whose process on this machine is gone. What cannot be looked at or removed stays. */
export function removeLeftovers(folder: string): void {
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch {
    return;
  }
  for (const name of names) {
    const [, host, pid] = NAME.exec(name) ?? [];
    if (host !== HOST || isRunning(Number(pid))) continue;
    try {
      rmSync(join(folder, name), { force: true });
    } catch {
      // Somebody else's file: it is theirs to remove.
    }
  }
}

/** Whether a process of that number runs; one that may not be asked does. */
function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ESRCH";
  }
}
