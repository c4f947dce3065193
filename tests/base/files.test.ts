import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { type FileSource, loadFile } from "../../src/base/files.js";

const file = { name: "a.svg", where: "pattern.regions[0].svg", kind: "svg", hint: "hand it over" };
const load = (files: FileSource, read: (content: string | Uint8Array) => unknown = (content) => content) =>
  loadFile(file, files, read);
const failure = async (files: FileSource, read?: (content: string | Uint8Array) => unknown) => {
  const error = await load(files, read).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  if (!(error instanceof AnnuletError)) throw new Error("no AnnuletError was thrown", { cause: error });
  return error;
};

describe("a file that a design names", () => {
  it("comes from a list or a function, at once or later, through its reader; an empty one is one", async () => {
    expect(await load({ "a.svg": "text" }, (content) => `read ${content}`)).toBe("read text");
    expect(await load((name) => `text of ${name}`)).toBe("text of a.svg");
    expect(await load(async () => new Uint8Array([7]))).toEqual(new Uint8Array([7]));
    expect(await load({ "a.svg": "" })).toBe("");
  });

  it("that is missing is told with its place and with the first 20 names that there are", async () => {
    const many = Object.fromEntries(Array.from({ length: 25 }, (_, i) => [`${i}.png`, ""]));
    const error = await failure(many);
    expect(error).toMatchObject({ code: "svg-file-missing", path: file.where, value: "a.svg", hint: file.hint });
    expect(error.allowed?.split(", ")).toHaveLength(20);
    expect((await failure({})).allowed).toBeUndefined();
    expect((await failure(() => undefined)).allowed).toBeUndefined();
  });

  it("is not taken from what every object has", async () => {
    const error = await loadFile({ ...file, name: "toString" }, {}, () => "read").catch((thrown: unknown) => thrown);
    expect(error).toMatchObject({ code: "svg-file-missing" });
  });

  it("that cannot be read says why, be it the source or the reader", async () => {
    const cause = new Error("the disk is gone");
    const broken = () => {
      throw cause;
    };
    expect(await failure(broken)).toMatchObject({ code: "svg-file-unreadable", path: file.where, cause });
    expect((await failure({ "a.svg": "" }, broken)).message).toContain("the disk is gone");
  });

  it("adds its place to what the reader says, where that has none", async () => {
    const problems = [
      { code: "a", message: "without" },
      { code: "b", message: "with", path: "elsewhere" },
    ];
    const error = await failure({ "a.svg": "" }, () => {
      throw new AnnuletError(problems);
    });
    expect(error.problems.map(({ code, path }) => [code, path])).toEqual([
      ["a", file.where],
      ["b", "elsewhere"],
    ]);
  });
});
