import { expect, it } from "vitest";
import { type Note, Notes } from "../../../src/workbench/notes/notes.js";

const note = (name: string, kind: Note["kind"]): Note => ({ name, kind, text: "note.put-away" });

it("keeps trouble until it is over, and news until something else comes", () => {
  const notes = new Notes();
  const names = () => notes.all.value.map(({ name }) => name);
  notes.tell(note("saved", "news"));
  notes.tell(note("storage", "trouble"));
  expect(names()).toEqual(["storage"]);
  notes.tell(note("saved", "news"));
  notes.tell(note("storage", "trouble"));
  expect(names()).toEqual(["storage"]);
  notes.drop("storage");
  notes.drop("storage");
  expect(names()).toEqual([]);
  for (let index = 0; index < 20; index++) notes.tell(note(`trouble ${index}`, "trouble"));
  expect(names()).toHaveLength(6);
  expect(names().at(-1)).toBe("trouble 19");
});
