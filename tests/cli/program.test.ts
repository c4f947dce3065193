// Covers: src/cli/commands/catalogue.ts, src/cli/commands/cautions.ts, src/cli/commands/schema.ts, src/cli/command.ts
// Covers: src/cli/usage.ts, src/cli/version.ts
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { commands } from "../../src/cli/commands/catalogue.js";
import { annulet } from "./support.js";

const { version } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));

describe("the program", () => {
  it("prints the package's version", async () => {
    expect(await annulet(["--version"])).toEqual({ code: 0, out: `${version}\n`, err: "" });
  });

  it.each(commands.map((command) => [command.name, command] as const))(
    "shows help with examples for %s, whose list says what it takes",
    async (name, listed) => {
      const command = await listed.load();
      expect(command.name).toBe(name);
      expect(command.args.map((argument) => argument.name).join(" ")).toBe(listed.takes);
      const { code, out, err } = await annulet([name, "--help"]);
      expect(out.replace(/\s+/g, " ")).toContain(listed.summary);
      expect((await annulet(["help", name])).out).toBe(out);
      expect({ code, err }).toEqual({ code: 0, err: "" });
      expect(command.examples.length).toBeGreaterThan(0);
      for (const { line } of command.examples) {
        expect(line).toMatch(new RegExp(`^annulet ${name}\\b`));
        expect(out).toContain(`$ ${line}`);
      }
    },
  );

  it("lists every command and the exit codes", async () => {
    const { code, out } = await annulet(["--help"]);
    expect(code).toBe(0);
    for (const { name, summary } of commands) {
      expect(out).toContain(`  ${name}`);
      expect(out.replace(/\s+/g, " ")).toContain(summary);
    }
    for (const exit of [0, 1, 2, 3]) expect(out).toMatch(new RegExp(`^  ${exit}  `, "m"));
  });

  const wrong: [string, string[], RegExp][] = [
    ["no command", [], /Usage: annulet/],
    ["an unknown command", ["mkae"], /unknown command 'mkae'[\s\S]*make/],
    ["an unknown option", ["make", "a.json", "--quite"], /unknown option '--quite'[\s\S]*--quiet/],
    ["a missing argument", ["make"], /missing required argument 'design'/],
    ["an argument too many", ["inspect", "a.stl", "b.stl"], /too many arguments/],
    ["an unknown choice", ["make", "a.json", "-o", "a.stl", "--kernel", "magic"], /manifold, bvh/],
    ["no number where one belongs", ["make", "a.json", "-o", "a.stl", "--max-beads", "many"], /not a number/],
  ];
  it.each(wrong)("answers %s with exit code 2 on standard error", async (_, words, complaint) => {
    const { code, out, err } = await annulet(words);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(complaint);
  });

  it("prints the schema as JSON", async () => {
    const { code, out } = await annulet(["schema"]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ type: "object", properties: { size: {}, profile: {} } });
  });
});

describe("annulet cautions", () => {
  it("prints every caution whole, in lines that fit a terminal", async () => {
    const { out } = await annulet(["cautions"]);
    const { out: json } = await annulet(["cautions", "--json"]);
    const cautions: { topic: string; text: string }[] = JSON.parse(json);
    for (const { topic, text } of cautions) {
      expect(out).toContain(`${topic}\n`);
      expect(out.replace(/\s+/g, " ")).toContain(text);
    }
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThan(80);
  });
});
