/**
 * For Vite: writes a content security policy into a page that holds all of its scripts and styles itself. Each is named by
 * its digest, so nothing else runs, and nothing outside of the page's own origin is reached.
 */
import { createHash } from "node:crypto";

const digest = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

/** What stands between the tags of an element, each. */
const inside = (html, tag) =>
  [...html.matchAll(new RegExp(`<${tag}\\b[^>]*>([\\s\\S]*?)</${tag}>`, "g"))].map(([, text]) => text);

export function withPolicy(html) {
  const policy = [
    "default-src 'none'",
    `script-src ${inside(html, "script").map(digest).join(" ")} 'wasm-unsafe-eval'`,
    `style-src ${inside(html, "style").map(digest).join(" ") || "'none'"}`,
    "worker-src blob:",
    "img-src blob: data:",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return html.replace(/<head>/, `<head>\n<meta http-equiv="Content-Security-Policy" content="${policy}">`);
}

export function pagePolicy() {
  return {
    name: "page-policy",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        for (const file of Object.values(bundle)) {
          if (file.fileName.endsWith(".html")) file.source = withPolicy(String(file.source));
        }
      },
    },
  };
}
