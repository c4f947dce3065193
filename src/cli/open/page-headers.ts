/**
 * What every answer of the program's server says of how it may be used.
 */

const ALWAYS = {
  "cache-control": "no-store",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "referrer-policy": "no-referrer",
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
} as const;

/** Of what is no page: were it opened as one, nothing in it would run. */
export const DATA_HEADERS = {
  ...ALWAYS,
  "content-security-policy": "default-src 'none'; frame-ancestors 'none'; sandbox",
} as const;

/** Of the page: its own policy, and that nobody may put it into a frame, which only a header can say. */
export function pageHeaders(html: string): Readonly<Record<string, string>> {
  const [, policy] = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html) ?? [];
  if (policy === undefined) throw new Error("the page has no content security policy");
  return {
    ...ALWAYS,
    "content-security-policy": `${policy}; frame-ancestors 'none'`,
    "content-type": "text/html; charset=utf-8",
  };
}

/** The page, told which file it shapes. */
export function pageFor(html: string, design: string | undefined): string {
  if (design === undefined) return html;
  const name = design.replace(/[&<>"']/g, (letter) => `&#${letter.charCodeAt(0)};`);
  // The first one: scripts inside the page may hold such words too.
  return html.replace("<head>", () => `<head>\n<meta name="annulet-design" content="${name}">`);
}
