import { describe, expect, it } from "vitest";
import { DESIGN_VERSION, UPGRADES, type Upgrade, upgradeDocument } from "../../src/design/versions.js";

describe("versions of the document", () => {
  it("has one upgrade for each version before the newest", () => {
    expect(UPGRADES).toHaveLength(DESIGN_VERSION - 1);
  });

  const rename: Upgrade = ({ breadth, ...rest }) => ({ ...rest, width: breadth });
  const double: Upgrade = (document) => ({ ...document, width: Number(document.width) * 2 });
  const upgrades = [rename, double];

  it("leads an earlier document through each later version, in order", () => {
    const first = { annulet: 1, breadth: 3 };
    expect(upgradeDocument(first, upgrades)).toEqual({ document: { annulet: 3, width: 6 }, readable: true });
    expect(first).toEqual({ annulet: 1, breadth: 3 });
    expect(upgradeDocument({ annulet: 2, width: 3 }, upgrades).document).toEqual({ annulet: 3, width: 6 });
    expect(upgradeDocument({ annulet: 3, width: 3 }, upgrades).document).toEqual({ annulet: 3, width: 3 });
  });

  it("does not judge a later version", () => {
    const { problem, readable } = upgradeDocument({ annulet: 4 }, upgrades);
    expect(readable).toBe(false);
    expect(problem).toMatchObject({ code: "document-version", value: 4, allowed: "a whole number from 1 to 3" });
    expect(problem?.message).toContain("reads versions 1 to 3");
  });

  it.each([0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY, "1", null, true, []])("refuses %j", (annulet) => {
    expect(upgradeDocument({ annulet }).problem).toMatchObject({ code: "document-version", path: "annulet" });
  });
});
