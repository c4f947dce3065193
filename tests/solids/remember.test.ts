import { expect, it } from "vitest";
import { finish, type Pausing } from "../../src/base/pausing.js";
import { remember, rememberMaking } from "../../src/solids/remember.js";

it("works a key out once while nothing else is asked for, and anew after something else was", () => {
  const asked: (string | undefined)[] = [];
  const lengthOf = remember((key?: string) => {
    asked.push(key);
    return { length: key?.length };
  });
  const first = lengthOf("abc");
  expect(lengthOf("abc")).toBe(first);
  expect(lengthOf("ab")).toEqual({ length: 2 });
  expect(lengthOf("abc")).toEqual(first);
  expect(asked).toEqual(["abc", "ab", "abc"]);
});

it("tells no key from any other, and remembers a result that is undefined", () => {
  let runs = 0;
  const nothing = remember((_key?: string): undefined => {
    runs++;
  });
  nothing();
  nothing();
  nothing("");
  nothing(undefined);
  expect(runs).toBe(3);
});

it("compares keys by being the same, not by their values", () => {
  let runs = 0;
  const sum = remember((_key?: { readonly from: number }) => ++runs);
  const key = { from: 0 };
  sum(key);
  sum(key);
  sum({ from: 0 });
  expect(runs).toBe(2);
});

it("takes over what was made in pieces, and makes nothing of it again at once", () => {
  let pieces = 0;
  const making = rememberMaking(function* (key?: string): Pausing<{ readonly key: string | undefined }> {
    for (let i = 0; i < 3; i++) {
      yield `piece ${i}`;
      pieces++;
    }
    return { key };
  });
  const places = [...making("a")];
  expect(places).toEqual(["piece 0", "piece 1", "piece 2"]);
  const made = finish(making("a"));
  expect(made).toEqual({ key: "a" });
  expect(finish(making("a"))).toBe(made);
  expect(pieces).toBe(3);
  // What was left in the middle is not there.
  making("b").next();
  expect(finish(making("b"))).toEqual({ key: "b" });
  expect(pieces).toBe(6);
});
