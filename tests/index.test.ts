/**
 * The package's interface: few names, each with an example that runs.
 */
import { readFileSync } from "node:fs";
import ts from "typescript";
import { describe, expect, it, onTestFinished, vi } from "vitest";
import * as stones from "../src/entries/stones.js";
import * as annulet from "../src/index.js";

/** Most values that the package publishes; chosen: those that users need, half of what there once were. */
const MOST_VALUES = 45;

const SOURCE = new URL("../src/", import.meta.url);

/** A small design with a pattern and beads, for the examples. */
const DOCUMENT = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  tolerance: 0.05,
  profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "channel" } },
  pattern: { regions: [{ path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.4 }] },
  beads: [{ along: "rail", diameter: 0.5 }],
};

/** The docstring of each value that a list of exports has, by name. */
function docstrings(list: string): Map<string, string> {
  const found = new Map<string, string>();
  const index = readFileSync(new URL(list, SOURCE), "utf8");
  for (const [, names, path] of index.matchAll(/^export \{([^}]*)\} from "\.{1,2}\/([^"]+)\.js";/gm)) {
    const text = readFileSync(new URL(`${path}.ts`, SOURCE), "utf8");
    const { statements } = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
    for (const name of names.split(",").map((one) => one.trim())) {
      if (name === "" || name.startsWith("type ")) continue;
      const declared = statements.find((statement) => namesOf(statement).includes(name));
      found.set(
        name,
        declared === undefined
          ? ""
          : ts
              .getJSDocCommentsAndTags(declared)
              .map((doc) => doc.getText())
              .join("\n"),
      );
    }
  }
  return found;
}

function namesOf(statement: ts.Statement): (string | undefined)[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  return ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement) ? [statement.name?.text] : [];
}

/** The code after `@example`, up to the next tag, without the stars. */
function exampleIn(docstring: string): string {
  const [, code = ""] = /@example\n([\s\S]*?)(?=\n \* @|\n \*\/|$)/.exec(docstring) ?? [];
  return code.replaceAll(/^ \* ?/gm, "");
}

const docs = docstrings("index.ts");

describe("the package's interface", () => {
  it("is small, and each name of it is documented", () => {
    expect([...docs.keys()].sort()).toEqual(Object.keys(annulet).sort());
    expect(docs.size).toBeLessThanOrEqual(MOST_VALUES);
  });

  it.each([...docs, ...docstrings("entries/stones.ts")])(
    "%s has a docstring whose example runs",
    async (_, docstring) => {
      const example = exampleIn(docstring);
      expect(example).not.toBe("");
      const log = vi.spyOn(console, "log").mockImplementation(() => undefined);
      onTestFinished(() => log.mockRestore());
      const all = { ...annulet, ...stones };
      const names = Object.keys(all);
      const body = `return (async () => {\n${example}\n})();`;
      const run = new Function(...names, "document", body);
      await run(...Object.values(all), structuredClone(DOCUMENT));
    },
  );
});
