import { describe, expect, it } from "vitest";
import { ON_DISK } from "../../../src/workbench/files/desk.js";
import { DiskDesign } from "../../../src/workbench/files/disk-design.js";
import { firstDesign, type Session, tabSession } from "../../../src/workbench/files/first-design.js";
import { Keep } from "../../../src/workbench/keep/keep.js";
import type { KeptDesign } from "../../../src/workbench/keep/kept-design.js";
import { memoryStore } from "../keep/memory-store.js";

const NEW: Session = { get: () => null, set: () => undefined };

function kept(...designs: readonly (Partial<KeptDesign> & { readonly id: string })[]) {
  const store = memoryStore();
  for (const design of designs) {
    store.designs.set(design.id, { name: "", text: "{}", at: 0, revision: "1", files: [], ...design });
  }
  return new Keep(store);
}

function onDisk(text: string | undefined) {
  const answer = () =>
    new Response(text ?? null, { status: text === undefined ? 404 : 200, headers: { etag: `"${text}"` } });
  return new DiskDesign("ring.json", async () => answer());
}

describe("the first design", () => {
  it("is the tab's own, else the newest that is kept, else none", async () => {
    const keep = () => kept({ id: "a", at: 1 }, { id: "b", at: 2 }, { id: "c", at: 3, deleted: Date.now() });
    expect((await firstDesign(keep(), undefined, { ...NEW, get: () => "a" }))?.id).toBe("a");
    expect((await firstDesign(keep(), undefined, { ...NEW, get: () => "c" }))?.id).toBe("b");
    expect((await firstDesign(keep(), undefined, NEW))?.id).toBe("b");
    expect(await firstDesign(kept(), undefined, NEW)).toBeUndefined();
  });

  it("is the file on the disk, with what was not saved of it", async () => {
    const fresh = onDisk("theirs");
    expect(await firstDesign(kept(), fresh, NEW)).toEqual({ id: ON_DISK, text: "theirs" });
    expect(fresh.saved.value).toEqual({ text: "theirs", digest: '"theirs"' });

    const unsaved = kept({ id: ON_DISK, text: "mine", base: '"theirs"' });
    const same = onDisk("theirs");
    expect(await firstDesign(unsaved, same, NEW)).toMatchObject({ id: ON_DISK, text: "mine" });
    expect(same.saved.value?.text).toBe("theirs");

    const both = onDisk("theirs, changed");
    expect(await firstDesign(kept({ id: ON_DISK, text: "mine", base: '"theirs"' }), both, NEW)).toMatchObject({
      text: "mine",
    });
    // So saving is refused and both are offered.
    expect(both.saved.value?.digest).toBe('"theirs"');

    const equal = onDisk("mine");
    expect(await firstDesign(kept({ id: ON_DISK, text: "mine", base: '"old"' }), equal, NEW)).toMatchObject({
      text: "mine",
    });
    expect(equal.saved.value?.digest).toBe('"mine"');
    expect(await firstDesign(unsaved, onDisk(undefined), NEW)).toMatchObject({ text: "mine" });
  });

  it("is remembered by the tab where it may", () => {
    const map = new Map<string, string>();
    const storage = {
      getItem: (name: string) => map.get(name) ?? null,
      setItem: (n: string, v: string) => map.set(n, v),
    };
    const session = tabSession(() => storage as unknown as Storage);
    session.set("a");
    expect(session.get()).toBe("a");
    const forbidden = tabSession(() => {
      throw new DOMException("no", "SecurityError");
    });
    forbidden.set("a");
    expect(forbidden.get()).toBeNull();
  });
});
