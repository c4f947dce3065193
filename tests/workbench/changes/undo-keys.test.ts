import { expect, it } from "vitest";
import { followUndoKeys, wayOfKey } from "../../../src/workbench/changes/undo-keys.js";
import { DesignDocument } from "../../../src/workbench/state/document.js";

const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

it("knows the keys of undo and redo, and no others", () => {
  expect(wayOfKey({ ...none, key: "z", ctrlKey: true })).toBe("undo");
  expect(wayOfKey({ ...none, key: "z", metaKey: true })).toBe("undo");
  expect(wayOfKey({ ...none, key: "Z", ctrlKey: true, shiftKey: true })).toBe("redo");
  expect(wayOfKey({ ...none, key: "y", ctrlKey: true })).toBe("redo");
  expect(wayOfKey({ ...none, key: "z" })).toBeUndefined();
  expect(wayOfKey({ ...none, key: "z", ctrlKey: true, altKey: true })).toBeUndefined();
});

it("goes through the document's list, and hears nothing once it has ended", () => {
  const heard = new Map<string, (event: never) => void>();
  const page = {
    addEventListener: (name: string, hear: (event: never) => void) => heard.set(name, hear),
    removeEventListener: (name: string) => heard.delete(name),
  };
  const document = new DesignDocument('{"a": 1}');
  document.set(["a"], 2);
  const end = followUndoKeys(page as never, document);
  let held = 0;
  const event = { ...none, key: "z", ctrlKey: true, preventDefault: () => held++, stopPropagation: () => held++ };
  heard.get("keydown")?.(event as never);
  expect(document.value.value).toEqual({ a: 1 });
  expect(held).toBe(2);
  end();
  expect(heard.size).toBe(0);
});
