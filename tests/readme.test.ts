// Across: what the pages for users show
/**
 * What README.md and the guide show can be done: commands run, designs are made, links and pictures lead somewhere.
 */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it, onTestFinished, vi } from "vitest";
import { commands } from "../src/cli/commands/catalogue.js";
import { build } from "../src/ring/build.js";
import { annulet, put, tempFolder } from "./cli/support.js";

const ROOT = fileURLToPath(new URL("../", import.meta.url));
const GUIDE = readdirSync(join(ROOT, "examples/guide")).map((name) => `examples/guide/${name}`);
const PAGES = ["README.md", "DEVELOPERS.md", ...GUIDE];

/** Most bytes of one picture, and of all small ones together: pages have to open quickly. Chosen. */
const MOST_BYTES = 130_000;
const MOST_BYTES_TOGETHER = 560_000;

/** A design as far as steps put it together. */
type Document = Record<string, unknown>;

/** The steps of the README's first ring, by file name. */
const STEPS = ["1-band", "2-rails", "3-motif", "4-beads"];

function read(path: string): string {
  return readFileSync(join(ROOT, path), "utf8");
}

/** The fenced blocks of one language. */
function blocks(text: string, language: string): string[] {
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\``, "gm"))].map(([, block]) => block);
}

/** A whole document as it is, fields of one in braces. */
function parse(block: string): Document {
  return JSON.parse(block.trimStart().startsWith("{") ? block : `{${block}}`);
}

/** Lines that begin with annulet, in blocks or in code between the words; what follows `&&` counts as a line. */
function commandLines(text: string): string[] {
  const lines = blocks(text, "sh").flatMap((block) => block.split(/\n|&&/));
  const spans = [...text.replace(/^```[\s\S]*?^```/gm, "").matchAll(/`([^`\n]+)`/g)].map(([, span]) => span);
  return [...lines, ...spans]
    .map((line) => line.trim().replace(/\s+#.*$/, ""))
    .filter((line) => /^(npx )?annulet [a-z]/.test(line))
    .map((line) => line.replace(/^(npx )?annulet /, ""));
}

const readme = read("README.md");
const first = blocks(readme, "json").map(parse);

describe("README.md", () => {
  it("builds its first ring up in four steps, which are those in examples/first-ring", () => {
    expect(first).toHaveLength(STEPS.length);
    let design: Document = {};
    STEPS.forEach((step, i) => {
      design = { ...design, ...first[i] };
      expect(JSON.parse(read(`examples/first-ring/${step}.json`)), step).toEqual(design);
    });
  });

  it.each(STEPS)("shows a ring that is closed: %s", async (step) => {
    const { report } = await build(read(`examples/first-ring/${step}.json`), { detail: "draft" });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
  });

  it("shows commands that run", async () => {
    const folder = tempFolder();
    put(folder, "ring.json", read("examples/first-ring/4-beads.json"));
    const place = (word: string) => {
      if (!/^[\w./-]+\.[a-z0-9]+$/.test(word) || /^\d/.test(word)) return word;
      return word.startsWith("examples/") ? join(ROOT, word) : join(folder, word);
    };
    const ran = new Set<string>();
    // Those that write what others read come first.
    const lines = [...new Set(commandLines(readme))].sort(
      (a, b) => Number(b.startsWith("make")) - Number(a.startsWith("make")),
    );
    for (const line of lines) {
      const [name, ...words] = line.split(/\s+/);
      ran.add(name);
      // They go on until they are stopped: their own tests do that.
      if (["watch", "open", "worker"].includes(name)) continue;
      const { code, err } = await annulet([name, ...words.map((word) => (name === "explain" ? word : place(word)))]);
      expect(code, `annulet ${line}: ${err}`).toBe(0);
    }
    expect([...ran].sort()).toEqual(commands.map(({ name }) => name).sort());
  });

  it("shows code that runs", async () => {
    const [block] = blocks(readme, "ts");
    expect(read("examples/quickstart.ts")).toContain(block);
    const log = vi.spyOn(console, "log").mockImplementation(() => undefined);
    onTestFinished(() => log.mockRestore());
    await import("../examples/quickstart.js");
    expect(log).toHaveBeenLastCalledWith(expect.stringMatching(/^\d{5,} bytes$/));
  });

  it("shows every example with its picture", () => {
    const shown = [...readme.matchAll(/\(examples\/pictures\/([a-z-]+)\.png\)<br>\1\]\(examples\/\1\.json\)/g)];
    const designs = readdirSync(join(ROOT, "examples")).filter((name) => /^[a-z]+-[a-z-]+\.json$/.test(name));
    expect(shown.map(([, name]) => `${name}.json`).sort()).toEqual(designs.sort());
  });

  it("is short", () => {
    // Two screens for each of three readers, in bytes; chosen.
    expect(readme.length).toBeLessThan(16_000);
  });
});

describe("the pictures", () => {
  it("are small", () => {
    const small = readdirSync(join(ROOT, "examples/pictures")).map(
      (name) => statSync(join(ROOT, "examples/pictures", name)).size,
    );
    expect(small.reduce((sum, size) => sum + size, 0)).toBeLessThan(MOST_BYTES_TOGETHER);
    for (const step of STEPS)
      expect(statSync(join(ROOT, `examples/first-ring/${step}.png`)).size).toBeLessThan(MOST_BYTES);
    expect(statSync(join(ROOT, "examples/saltmarsh-lattice.png")).size).toBeLessThan(MOST_BYTES);
  });

  it.each([
    ["examples/first-ring/1-band", "step", "examples/first-ring/1-band.png"],
    ["examples/dewline-band", "example", "examples/pictures/dewline-band.png"],
  ])("of %s is what `npm run pictures` takes", async (design, kind, picture) => {
    const { view, sizes } = JSON.parse(read("tools/pictures.json"));
    const output = join(tempFolder(), "again.png");
    const words = ["picture", join(ROOT, `${design}.json`), "-o", output, "--pixels", sizes[kind], ...view];
    expect((await annulet(words)).code).toBe(0);
    expect(readFileSync(output).equals(readFileSync(join(ROOT, picture))), "run npm run pictures").toBe(true);
  });
});

describe.each(PAGES)("%s", (page) => {
  const text = read(page);

  it("has links that lead somewhere", () => {
    for (const [, target] of text.matchAll(/\]\(([^)#]+)[^)]*\)/g)) {
      if (!/^[a-z]+:/.test(target)) expect(existsSync(join(ROOT, dirname(page), target)), target).toBe(true);
    }
  });

  it("names files that are there", () => {
    for (const [, path] of text.matchAll(/`((?:src|examples|tests|tools|benchmarks)\/[\w./-]+\.\w+)`/g)) {
      expect(existsSync(join(ROOT, path)), path).toBe(true);
    }
  });

  it("names commands and options that there are", async () => {
    for (const line of commandLines(text)) {
      const [name, ...words] = line.split(/\s+/);
      const command = await commands.find((one) => one.name === name)?.load();
      expect(command, line).toBeDefined();
      const known = [
        "--help",
        ...(command?.options ?? []).flatMap(({ flags }) => flags.match(/--?[a-z][\w-]*/g) ?? []),
      ];
      for (const word of words) if (/^--?[a-z]/.test(word)) expect(known, line).toContain(word);
    }
  });

  it("shows JSON that is JSON", () => {
    // What is left out by … is not.
    for (const block of blocks(text, "json"))
      if (!block.includes("…")) expect(() => parseAny(block), block).not.toThrow();
  });
});

/** A document, fields of one, or entries of a list. */
function parseAny(block: string): unknown {
  try {
    return parse(block);
  } catch {
    return JSON.parse(`[${block}]`);
  }
}

it("every page of the guide is linked from the README", () => {
  for (const page of GUIDE) expect(readme, basename(page)).toContain(`(${page})`);
});
