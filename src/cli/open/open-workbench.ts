/**
 * Puts a design on the workbench and stays until it is ended.
 */
import { loadDesign } from "../design-file.js";
import { type Io, print, say } from "../io.js";
import { serveWorkbench } from "./serve-workbench.js";
import { openerOf, showInBrowser } from "./show-in-browser.js";

/** What is put on the workbench. */
export interface Opened {
  /** Of the design; undefined for an empty start. */
  readonly path: string | undefined;
  /** Whether a browser is opened, where there is a desktop. */
  readonly browser: boolean;
}

/**
 * Serves the page until the signal comes.
 *
 * @param html the page
 * @throws AnnuletError as `loadDesign`; Interrupted; the signal's reason
 */
export async function openWorkbench(
  html: string,
  { path, browser }: Opened,
  io: Io,
  signal?: AbortSignal,
): Promise<never> {
  if (path !== undefined) await loadDesign(path, io, {});
  const { address, close, failed } = await serveWorkbench(html, path);
  try {
    print(io, address);
    const shown = browser && (await showInBrowser(address, openerOf(process.platform, io.env)));
    say(io, `${shown ? "opened in the browser" : "open this address in a browser"}; Ctrl-C ends it`);
    return await Promise.race([failed, aborted(signal)]);
  } finally {
    await close();
  }
}

function aborted(signal: AbortSignal | undefined): Promise<never> {
  return new Promise((_, reject) => {
    if (signal?.aborted) reject(signal.reason);
    signal?.addEventListener("abort", () => reject(signal.reason), { once: true });
  });
}
