/**
 * Puts a design on the workbench and stays until it is ended.
 */
import { loadDesign } from "../design-file.js";
import { type Io, print, say } from "../io.js";
import { type LeadingPage, writeLeadingPage } from "./leading-page.js";
import { serveWorkbench } from "./serve-workbench.js";
import { openerOf, showInBrowser } from "./show-in-browser.js";

/** What is put on the workbench. */
export interface Opened {
  /** Of the design; undefined for an empty start. */
  readonly path: string | undefined;
  /** Whether a browser is opened, where there is a desktop. */
  readonly browser: boolean;
}

/** How long a browser may take to read the page that leads to the address, ms; the file goes then. Chosen. */
const SHOWN_WITHIN = 60_000;

/** Whether other users can read a program's arguments: not on Windows (from memory), whose `start` also takes a quoted path for a title. */
const isReadByOthers = (platform: NodeJS.Platform): boolean => platform !== "win32";

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
  let page: LeadingPage | undefined;
  try {
    print(io, address);
    const opener = browser ? openerOf(process.platform, io.env) : undefined;
    page = opener && isReadByOthers(process.platform) ? writeLeadingPage(address) : undefined;
    const shown = await showInBrowser(page?.path ?? address, opener);
    if (page !== undefined) setTimeout(page.remove, SHOWN_WITHIN).unref();
    say(io, `${shown ? "opened in the browser" : "open this address in a browser"}; Ctrl-C ends it`);
    return await Promise.race([failed, aborted(signal)]);
  } finally {
    page?.remove();
    await close();
  }
}

function aborted(signal: AbortSignal | undefined): Promise<never> {
  return new Promise((_, reject) => {
    if (signal?.aborted) reject(signal.reason);
    signal?.addEventListener("abort", () => reject(signal.reason), { once: true });
  });
}
