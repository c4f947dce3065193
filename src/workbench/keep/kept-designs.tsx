/**
 * The designs that the browser keeps, with pictures: opened by a press, put away and brought back.
 */
import { useEffect, useState } from "preact/hooks";
import { useDesk } from "../files/desk.js";
import { language, say } from "../words/language.js";
import type { KeptDesign } from "./kept-design.js";

export function KeptDesigns() {
  const { keep } = useDesk();
  useEffect(() => {
    void keep.refresh();
  }, [keep]);
  const here = keep.list.value.filter(({ deleted }) => deleted === undefined);
  const away = keep.list.value.filter(({ deleted }) => deleted !== undefined);
  if (here.length + away.length === 0) return <p class="caption">{say("keep.none")}</p>;
  return (
    <ul class="kept-list">
      {here.map((design) => (
        <Kept key={design.id} design={design} />
      ))}
      {away.map((design) => (
        <Away key={design.id} design={design} />
      ))}
    </ul>
  );
}

function Kept({ design }: { readonly design: KeptDesign }) {
  const desk = useDesk();
  const { id, at } = design;
  const name = nameOf(design);
  return (
    <li>
      <button
        type="button"
        class="kept"
        aria-current={desk.bench.id.value === id}
        onClick={() => void desk.openKept(id)}
      >
        <KeptPicture design={design} />
        <span>{name}</span>
        <time class="caption" dateTime={new Date(at).toISOString()}>
          {new Date(at).toLocaleString(language.value, { dateStyle: "medium", timeStyle: "short" })}
        </time>
      </button>
      <button type="button" aria-label={say("keep.delete", { name })} onClick={() => void desk.deleteKept(id, name)}>
        ×
      </button>
    </li>
  );
}

function Away({ design }: { readonly design: KeptDesign }) {
  const { keep } = useDesk();
  return (
    <li class="kept-away">
      <span class="caption">{say("keep.deleted", { name: nameOf(design) })}</span>
      <button type="button" onClick={() => void keep.bringBack(design.id)}>
        {say("keep.bring-back")}
      </button>
    </li>
  );
}

/** How long an old picture stays readable once another one is shown, ms. Chosen. */
const LET_GO_AFTER = 10_000;

function KeptPicture({ design: { id, revision } }: { readonly design: KeptDesign }) {
  const { keep } = useDesk();
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let gone = false;
    void keep.picture(id).then((png) => {
      if (png === undefined || gone) return;
      made = URL.createObjectURL(new Blob([png as Uint8Array<ArrayBuffer>], { type: "image/png" }));
      setAddress(made);
    });
    return () => {
      gone = true;
      const old = made;
      // The browser may still be reading it for the picture that is shown.
      if (old !== undefined) setTimeout(() => URL.revokeObjectURL(old), LET_GO_AFTER);
    };
  }, [keep, id, revision]);
  return address === undefined ? <span class="kept-picture" /> : <img class="kept-picture" src={address} alt="" />;
}

function nameOf({ name }: KeptDesign): string {
  return name.trim() === "" ? say("keep.nameless") : name;
}
