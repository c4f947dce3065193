/**
 * The control that a field needs, by the ways in which it can be given.
 */
import { ChoiceField, chosenWay, SwitchField } from "./choice-field.js";
import type { ControlProps } from "./control-props.js";
import type { FieldProps } from "./field-control.js";
import { FieldRow } from "./field-row.js";
import { GemField } from "./gem-field.js";
import { ListField } from "./list-field.js";
import { MapField } from "./map-field.js";
import { MetalField } from "./metal-field.js";
import { MotifField } from "./motif-field.js";
import { NumberField } from "./number-field.js";
import { PartField } from "./part-field.js";
import { SectionForms } from "./section-forms.js";
import { SizeField } from "./size-field.js";
import { StoneSizeField } from "./stone-size-field.js";
import { ListTextField, TextField } from "./text-field.js";
import { useValue } from "./use-fields.js";
import { type Way, waysOf } from "./ways.js";
import { WrittenField } from "./written-field.js";

export function Field({ place, reference }: FieldProps) {
  if (reference === undefined) return null;
  const { schema } = place;
  const ways = waysOf(reference);
  if (schema === "size") return <SizeField place={place} reference={reference} />;
  if (/(^|\.)motif$/.test(schema)) return <MotifField place={place} />;
  if (schema === "profile.outside" || schema === "profile.bore") {
    return <SectionForms place={place} reference={reference} ways={ways} />;
  }
  if (ways.some(({ kind }) => kind === "objects")) return <ListField place={place} reference={reference} />;
  if (reference.fields.some(({ name }) => name === "*")) return <MapField place={place} reference={reference} />;
  if (ways.some(({ kind }) => kind === "object")) return <PartField place={place} reference={reference} ways={ways} />;
  return (
    <FieldRow place={place} reference={reference}>
      {(control) => <OwnControl {...control} ways={ways} />}
    </FieldRow>
  );
}

interface PlainProps extends ControlProps {
  readonly ways: readonly Way[];
}

/** Metal and gems by their names, a stone's size with its weight; any other field as its ways are. */
function OwnControl({ ways, ...control }: PlainProps) {
  const [way] = ways;
  switch (control.place.schema) {
    case "material":
      return <MetalField {...control} />;
    case "stones.gem":
      return <GemField {...control} />;
    case "stones.size":
      return way.kind === "number" ? <StoneSizeField way={way} {...control} /> : null;
    default:
      return <PlainControl {...control} ways={ways} />;
  }
}

/** Fields whose text is drawn, not written. */
const DRAWN = /(^|\.)path$/;

function PlainControl({ ways, ...control }: PlainProps) {
  if (DRAWN.test(control.place.schema)) return <WrittenField {...control} />;
  const [first] = ways;
  if (ways.length === 1 || first.kind === "text") return <OneWay way={first} {...control} />;
  return <SeveralWays ways={ways} {...control} />;
}

/** A choice, and the control of the way that is chosen where it needs one. */
function SeveralWays({ ways, ...control }: PlainProps) {
  const value = useValue(control.place);
  const way = ways[chosenWay(value, control.reference.default, ways)];
  const isPlain = way === undefined || way.kind === "word" || way.kind === "object";
  const own = { ...control, id: `${control.id}-own` };
  return (
    <span class="field-ways">
      <ChoiceField ways={ways} {...control} />
      {!isPlain && <OneWay way={way} {...own} />}
    </span>
  );
}

function OneWay({ way, ...control }: ControlProps & { readonly way: Way }) {
  switch (way.kind) {
    case "number":
      return <NumberField way={way} {...control} />;
    case "text":
      return <TextField {...control} />;
    case "switch":
      return <SwitchField {...control} />;
    case "word":
      return <ChoiceField ways={[way]} {...control} />;
    case "pair":
    case "numbers":
    case "texts":
      return <ListTextField way={way} {...control} />;
    default:
      return <WrittenField {...control} />;
  }
}
