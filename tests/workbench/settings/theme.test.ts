import { expect, test } from "vitest";
import { keepTheme, keptTheme } from "../../../src/workbench/settings/theme.js";

test("a choice that was kept comes again, and what nobody can choose does not", () => {
  const kept = new Map<string, string>();
  const storage = () => ({
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  });
  expect(keptTheme(storage)).toBe("auto");
  keepTheme("dark", storage);
  expect(keptTheme(storage)).toBe("dark");
  for (const key of kept.keys()) kept.set(key, "__proto__");
  expect(keptTheme(storage)).toBe("auto");
});

test("storage that is forbidden is no fault", () => {
  const forbidden = (): never => {
    throw new DOMException("denied", "SecurityError");
  };
  expect(keptTheme(forbidden)).toBe("auto");
  expect(() => keepTheme("dark", forbidden)).not.toThrow();
});
