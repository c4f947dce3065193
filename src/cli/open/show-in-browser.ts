/**
 * Opens an address in the browser of whoever sits before this machine.
 */
import { spawn } from "node:child_process";

/** What opens addresses on this kind of desktop; undefined where there seems to be none. */
export function openerOf(
  platform: NodeJS.Platform,
  env: Readonly<Record<string, string | undefined>>,
): readonly [program: string, ...words: string[]] | undefined {
  if (platform === "darwin") return ["open"];
  if (platform === "win32") return ["cmd", "/c", "start"];
  return env.DISPLAY || env.WAYLAND_DISPLAY ? ["xdg-open"] : undefined;
}

/** Whether a program was started that opens it. It goes on by itself. */
export function showInBrowser(address: string, opener: ReturnType<typeof openerOf>): Promise<boolean> {
  if (opener === undefined) return Promise.resolve(false);
  const [program, ...words] = opener;
  return new Promise((done) => {
    const child = spawn(program, [...words, address], { stdio: "ignore", detached: true });
    child.once("error", () => done(false));
    child.once("spawn", () => done(true));
    child.unref();
  });
}
