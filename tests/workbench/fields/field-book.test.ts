// Covers: src/workbench/fields/asked.ts
import { effect } from "@preact/signals";
import { expect, it } from "vitest";
import { asked } from "../../../src/workbench/fields/asked.js";
import { FieldBook } from "../../../src/workbench/fields/field-book.js";

const settled = () => new Promise((resolve) => setTimeout(resolve));

it("asks once for each field, and tells those who look", async () => {
  const questions: string[] = [];
  const book = new FieldBook(async (schema) => {
    questions.push(schema);
    return { own: [], inside: { [schema]: [] } };
  });
  const seen: unknown[] = [];
  const stop = effect(() => void seen.push(Object.keys(book.look("size").value?.inside ?? {})));
  await Promise.all([book.ask("size"), book.ask("size"), book.ask("beads")]);
  expect(questions).toEqual(["size", "beads"]);
  expect(seen).toEqual([[], ["size"]]);
  stop();
});

it("says nothing of a field that is none, and asks anew where the worker died", async () => {
  let asked = 0;
  const refuse = (name: string) => async () => {
    asked++;
    throw Object.assign(new Error("no"), { name });
  };
  const unknown = new FieldBook(refuse("AnnuletError"));
  expect(await unknown.ask("none")).toEqual({ own: [], inside: {} });
  await unknown.ask("none");
  expect(asked).toBe(1);
  const dead = new FieldBook(refuse("Error"));
  await dead.ask("size");
  await dead.ask("size");
  expect(asked).toBe(3);
});

it("keeps answers of the library by name, and asks again what failed", async () => {
  let count = 0;
  const ask = async () => ++count;
  expect(asked("test: count", ask).value).toBeUndefined();
  await settled();
  expect(asked("test: count", ask).value).toBe(1);
  expect(count).toBe(1);
  asked("test: fails", async () => Promise.reject(new Error("no")));
  await settled();
  asked("test: fails", ask);
  await settled();
  expect(asked("test: fails", ask).value).toBe(2);
});
