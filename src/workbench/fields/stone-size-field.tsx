/**
 * The size of a stone in millimetres, and beside it its weight in carats: each follows from the other.
 */
import { useSignal } from "@preact/signals";
import type { FieldReference } from "../../index.js";
import { useBench } from "../state/bench.js";
import { say, sayNumber } from "../words/language.js";
import { asked } from "./asked.js";
import type { ControlProps } from "./control-props.js";
import { NumberField } from "./number-field.js";
import type { Place } from "./place.js";
import { readNumber } from "./read-number.js";
import { useOwner } from "./use-fields.js";
import type { Way } from "./ways.js";

interface StoneSizeProps extends ControlProps {
  readonly way: Way & { readonly kind: "number" };
  readonly reference: FieldReference;
}

/** Decimals of carats: small stones weigh some thousandths. */
const DIGITS = 3;

export function StoneSizeField(props: StoneSizeProps) {
  const { place, id, describedBy } = props;
  return (
    <>
      <NumberField {...props} />
      <CaratsField {...{ place, id, describedBy }} />
    </>
  );
}

/** The fields of a group that a stone's weight hangs on. */
const OF_STONE = ["cut", "size", "width", "narrow", "gem", "proportions"] as const;

function CaratsField({ place, id, describedBy }: Pick<ControlProps, "id" | "describedBy"> & { readonly place: Place }) {
  const { document, host } = useBench();
  const group = useOwner({ path: place.path.slice(0, -1), schema: "stones" });
  const typed = useSignal<string | undefined>(undefined);
  const { gems } = document.value.value;
  const stone = Object.fromEntries(OF_STONE.flatMap((key) => (group[key] === undefined ? [] : [[key, group[key]]])));
  const sizes = asked(`carats ${JSON.stringify([stone, gems])}`, () =>
    host.peek().library.stoneSizes({ stone, gems }),
  ).value;
  const put = async (text: string): Promise<void> => {
    const read = readNumber(text, { whole: false, limits: { above: 0 } });
    typed.value = undefined;
    if (typeof read !== "object") return;
    // A long stone keeps its shape: its width follows its length.
    const { size: _, width, ...rest } = stone;
    const next = await host.peek().library.stoneSizes({ stone: { ...rest, carats: read.value }, gems });
    if (next === undefined) return;
    const shape = typeof width === "number" && typeof stone.size === "number" ? width / stone.size : undefined;
    const owner = place.path.slice(0, -1);
    document.setAll([
      [place.path, next.size],
      ...(shape === undefined ? [] : [[[...owner, "width"], Math.round(100 * shape * next.size) / 100] as const]),
    ]);
  };
  return (
    <span class="field-number">
      <input
        id={`${id}-carats`}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        aria-label={say("stone.carats")}
        aria-describedby={describedBy}
        value={typed.value ?? (sizes === undefined ? "" : sayNumber(sizes.carats, DIGITS))}
        onInput={(event) => {
          typed.value = event.currentTarget.value;
        }}
        onChange={(event) => void put(event.currentTarget.value)}
        onBlur={() => {
          typed.value = undefined;
        }}
      />
      <span class="field-unit">ct</span>
    </span>
  );
}
