// Covers: src/cli/open/*
import { createHash } from "node:crypto";
import { chmodSync, mkdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { type IncomingHttpHeaders, request } from "node:http";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { serveWorkbench } from "../../../src/cli/open/serve-workbench.js";
import { namesIn, PLAIN, put, tempFolder } from "../support.js";

const HTML = `<html><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'"><script>"<head></head>"</script></head></html>`;

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

interface Asked {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string | Uint8Array;
}

/** One request, whatever its headers; the path is not tidied as URLs are. */
function ask(address: string, path: string, { method = "GET", headers = {}, body }: Asked = {}): Promise<Answer> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, method, headers, agent: false }, (response) => {
      const chunks: Uint8Array[] = [];
      response.on("data", (chunk) => chunks.push(chunk));
      response.on("end", () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(chunks).toString(),
        }),
      );
    });
    sent.on("error", reject);
    sent.end(body);
  });
}

/** A design that is served, with ways to ask for it as its page does. */
async function served(document: object | string = PLAIN) {
  const folder = tempFolder();
  const path = put(folder, "ring.json", document);
  const { address, close } = await serveWorkbench(HTML, path);
  onTestFinished(close);
  const { origin, pathname } = new URL(address);
  const get = (name: string, headers = {}) => ask(address, `${pathname}${name}`, { headers });
  const save = (body: string | Uint8Array, headers: Readonly<Record<string, string>> = {}) =>
    ask(address, `${pathname}design`, { method: "PUT", body, headers: { origin, ...headers } });
  const text = () => readFileSync(path, "utf8");
  return { folder, path, address, origin, base: pathname, get, save, text };
}

const tagOf = (text: string) => `"${createHash("sha256").update(text).digest("hex")}"`;

describe("the program's server", () => {
  it("serves the page with its policy, which no frame may hold, and tells it which file it shapes", async () => {
    const folder = tempFolder();
    const { address, close } = await serveWorkbench(HTML, put(folder, `<b>"ring's.json`, PLAIN));
    onTestFinished(close);
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[\w-]{32}\/$/);
    const { status, headers, body } = await ask(address, new URL(address).pathname);
    expect(status).toBe(200);
    expect(headers["content-security-policy"]).toBe("default-src 'none'; frame-ancestors 'none'");
    expect(headers["x-content-type-options"]).toBe("nosniff");
    const told = '<meta name="annulet-design" content="&#60;b&#62;&#34;ring&#39;s.json">';
    expect(body).toBe(HTML.replace("<head>", `<head>\n${told}`));
    const again = await serveWorkbench(HTML);
    onTestFinished(again.close);
    expect(new URL(again.address).pathname).not.toBe(new URL(address).pathname);
    expect((await ask(again.address, new URL(again.address).pathname)).body).toBe(HTML);
    expect((await ask(again.address, `${new URL(again.address).pathname}design`)).status).toBe(404);
  });

  it("gives the design with its digest, and nothing where the page has it already", async () => {
    const { get, text } = await served();
    const { status, headers, body } = await get("design");
    expect({ status, body, tag: headers.etag }).toEqual({ status: 200, body: text(), tag: tagOf(text()) });
    expect((await get("design", { "if-none-match": tagOf(text()) })).status).toBe(304);
  });

  it("saves into the very file, behind a link too, with its permissions, and leaves nothing beside it", async () => {
    const { folder, path, save, text } = await served();
    const elsewhere = join(folder, "designs");
    mkdirSync(elsewhere);
    const own = put(elsewhere, "own.json", text());
    chmodSync(own, 0o640);
    rmSync(path);
    symlinkSync(own, path);
    const typed = '{ "annulet": 1, half typed';
    const saved = await save(typed, { "if-match": tagOf(text()) });
    expect({ status: saved.status, tag: saved.headers.etag }).toEqual({ status: 204, tag: tagOf(typed) });
    expect(readFileSync(own, "utf8")).toBe(typed);
    expect(statSync(own).mode & 0o777).toBe(0o640);
    expect([namesIn(folder), namesIn(elsewhere)]).toEqual([["designs", "ring.json"], ["own.json"]]);
  });

  it("overwrites nothing that somebody else wrote, and nothing that it was not told of", async () => {
    const { path, save, text } = await served();
    const loaded = tagOf(text());
    writeFileSync(path, "{}");
    const refused = await save("mine", { "if-match": loaded });
    expect({ status: refused.status, tag: refused.headers.etag }).toEqual({ status: 412, tag: tagOf("{}") });
    expect((await save("mine")).status).toBe(428);
    expect((await save("mine", { "if-match": "*" })).status).toBe(428);
    expect((await save("mine", { "if-none-match": "*" })).status).toBe(412);
    expect(text()).toBe("{}");
    rmSync(path);
    const gone = await save("mine", { "if-match": loaded });
    expect({ status: gone.status, tag: gone.headers.etag }).toEqual({ status: 412, tag: undefined });
    expect((await save("mine", { "if-none-match": "*" })).status).toBe(204);
    expect(text()).toBe("mine");
  });

  it("lets one of many win who save at once over the same, and tells the others", async () => {
    const { save, text } = await served();
    const tag = tagOf(text());
    const texts = Array.from({ length: 12 }, (_, i) => `text ${i}`);
    const statuses = await Promise.all(texts.map(async (text) => (await save(text, { "if-match": tag })).status));
    expect(statuses.filter((status) => status === 204)).toHaveLength(1);
    expect(statuses.filter((status) => status === 412)).toHaveLength(texts.length - 1);
    expect(text()).toBe(texts[statuses.indexOf(204)]);
  });

  it("refuses what is too large or no text, and stays", async () => {
    const { address, base, origin, get, save, text } = await served();
    const before = text();
    const tag = tagOf(before);
    const large = new Uint8Array(50e6);
    const dropped = { status: 0 };
    // The server ends the connection while the rest is on its way, so the answer may not be read.
    const answered = await save(large, { "if-match": tag }).catch(() => dropped);
    expect([413, dropped.status]).toContain(answered.status);
    const chunked = { origin, "if-match": tag, "transfer-encoding": "chunked" };
    const streamed = await ask(address, `${base}design`, { method: "PUT", body: large, headers: chunked }).catch(
      () => dropped,
    );
    expect([413, dropped.status]).toContain(streamed.status);
    expect((await save(Uint8Array.of(0xff, 0xfe, 0x00), { "if-match": tag })).status).toBe(400);
    expect(text()).toBe(before);
    expect((await get("design")).status).toBe(200);
  });

  it("hands out art beside the design and what the saved design names, and nothing else", async () => {
    const drawn = { ...PLAIN, pattern: { regions: [{ svg: "leaf.txt", height: 0.2 }] } };
    const { folder, get } = await served(drawn);
    put(folder, "leaf.txt", "<svg/>");
    put(folder, "other.svg", "<svg><script>1</script></svg>");
    put(folder, "secret.env", "secret");
    const outside = tempFolder();
    put(outside, "outside.svg", "secret");
    symlinkSync(join(outside, "outside.svg"), join(folder, "link.svg"));
    const other = await get("files/other.svg");
    expect(other).toMatchObject({ status: 200, body: "<svg><script>1</script></svg>" });
    expect(other.headers).toMatchObject({
      "content-type": "application/octet-stream",
      "content-security-policy": "default-src 'none'; frame-ancestors 'none'; sandbox",
    });
    expect((await get("files/leaf.txt")).status).toBe(200);
    const refused = [
      ["files/secret.env", 403],
      ["files/ring.json", 403],
      ["files/link.svg", 403],
      ["files/missing.svg", 404],
      [`files/${encodeURIComponent(join("..", outside.split("/").at(-1) as string, "outside.svg"))}`, 403],
      [`files/../${outside.split("/").at(-1)}/outside.svg`, 403],
      [`files/${encodeURIComponent(join(outside, "outside.svg"))}`, 403],
      ["files/%E0%A4%A.svg", 400],
      ["files/%00.svg", 403],
      ["ring.json", 404],
      ["../ring.json", 404],
    ] as const;
    for (const [path, status] of refused) expect([path, (await get(path)).status]).toEqual([path, status]);
  });

  it("answers its own page alone", async () => {
    const { address, base, origin, text } = await served();
    const before = text();
    const { host } = new URL(address);
    const good = { method: "PUT", body: "stolen", headers: { origin, "if-match": tagOf(before) } };
    const adding = { ...good, headers: { origin, "if-none-match": "*" } };
    const framed = { "sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate", "sec-fetch-dest": "iframe" };
    const strange: readonly (readonly [string, string, Asked, number])[] = [
      ["another host, as after a change of its name's address", base, { headers: { host: "rings.example" } }, 421],
      ["the machine's other name", base, { headers: { host: host.replace("127.0.0.1", "localhost") } }, 421],
      ["another port", base, { headers: { host: "127.0.0.1:1" } }, 421],
      ["another origin", `${base}design`, { headers: { origin: "https://rings.example" } }, 403],
      ["an origin of nowhere", `${base}design`, { headers: { origin: "null" } }, 403],
      ["another program's page on this machine", `${base}design`, { headers: { origin: "http://127.0.0.1:1" } }, 403],
      ["another site", base, { headers: { "sec-fetch-site": "cross-site" } }, 403],
      ["another port's page", `${base}design`, { headers: { "sec-fetch-site": "same-site" } }, 403],
      ["no token", "/", {}, 404],
      ["no token, for the design", "/design", {}, 404],
      ["a wrong token", `/${"A".repeat(32)}/design`, {}, 404],
      ["half a token", `${base.slice(0, 20)}/`, {}, 404],
      ["the token without its page", base.slice(0, -1), {}, 404],
      ["another method", base, { method: "POST" }, 405],
      ["a question whether it may", `${base}design`, { method: "OPTIONS", headers: { origin } }, 405],
      ["deleting", `${base}design`, { method: "DELETE", headers: { origin } }, 405],
      ["saving the page", base, good, 405],
      ["saving a file over whatever has its name", `${base}files/a.svg`, good, 428],
      ["saving a file that no design names", `${base}files/a.svg`, adding, 403],
      ["saving a file of another kind", `${base}files/ring.json`, adding, 403],
      ["saving a hidden file", `${base}files/.a.svg`, adding, 403],
      ["saving a file elsewhere", `${base}files/${encodeURIComponent("../a.svg")}`, adding, 403],
      ["saving a file from nowhere", `${base}files/a.svg`, { ...adding, headers: { "if-none-match": "*" } }, 403],
      ["a page inside another site's", base, { headers: framed }, 403],
      ["saving from nowhere", `${base}design`, { ...good, headers: { "if-match": tagOf(before) } }, 403],
      ["saving from another site", `${base}design`, { ...good, headers: { ...good.headers, origin: "null" } }, 403],
      ["saving with a wrong token", `/${"A".repeat(32)}/design`, good, 404],
    ];
    for (const [what, path, asked, status] of strange) {
      const answered = await ask(address, path, asked);
      expect([what, answered.status]).toEqual([what, status]);
      expect(answered.body).not.toContain("annulet");
      expect(answered.headers).not.toHaveProperty("access-control-allow-origin");
    }
    expect(text()).toBe(before);
    // A window that was led here, as by the page in a file that annulet open hands to the browser.
    expect((await ask(address, base, { headers: { ...framed, "sec-fetch-dest": "document" } })).status).toBe(200);
  });
});
