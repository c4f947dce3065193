/**
 * What is always seen, as in the title block of a drawing: name, size, weight, price, findings, and what is worked out.
 */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { useBench } from "../state/bench.js";
import { valueAt } from "../state/json-text.js";
import { say, sayNumber } from "../words/language.js";
import { FindingCell } from "./finding-cell.js";
import { SizeCell } from "./size-cell.js";
import { titleWeight } from "./title-weight.js";
import { WorkCell } from "./work-cell.js";
import "./title.css";

export function TitleBlock() {
  return (
    <div class="title-block">
      <NameCell />
      <SizeCell />
      <WeightCells />
      <StonesCell />
      <FindingCell />
      <WorkCell />
    </div>
  );
}

interface CellProps {
  readonly name: string;
  readonly caption: string;
  readonly children: ComponentChildren;
}

/** One cell with its small caption. */
function Cell({ name, caption, children }: CellProps) {
  return (
    <div class={`title-cell title-${name}`}>
      <span class="caption">{caption}</span>
      {children}
    </div>
  );
}

function NameCell() {
  const { document } = useBench();
  const [typed, type] = useState<string | undefined>(undefined);
  const name = typed ?? String(document.value.value.name ?? "");
  const write = (text: string): void => {
    type(text);
    document.set(["name"], text === "" ? undefined : text, "name");
  };
  const rest = (): void => {
    type(undefined);
    document.rest();
  };
  return (
    <label class="title-cell title-name">
      <span class="caption">{say("title.name")}</span>
      <input
        type="text"
        value={name}
        maxLength={200}
        onInput={(event) => write(event.currentTarget.value)}
        onBlur={rest}
      />
    </label>
  );
}

/** How many stones there are and what they weigh; nothing of a ring without. */
function StonesCell() {
  const report = useBench().answers.of.stones.value?.value.report;
  if (report === undefined) return null;
  return (
    <Cell name="stones" caption={say("title.stones")}>
      <span class="figure">
        {say("title.stonesOf", { count: report.count, carats: sayNumber(report.carats, CARAT_DIGITS) })}
      </span>
    </Cell>
  );
}

/** Decimals of carats in all. */
const CARAT_DIGITS = 2;

function WeightCells() {
  const { answers, document } = useBench();
  const material = String(valueAt(document.value.value, ["material"]) ?? "ag925");
  const { mass } = answers.of.report.value?.value ?? {};
  const weight = titleWeight(material, mass, answers.of.weights.value?.value);
  return (
    <>
      <Cell name="weight" caption={say("title.weight", { material })}>
        <span class="figure">{weight === undefined ? "–" : `${sayNumber(weight.grams, weight.digits)} g`}</span>
      </Cell>
      <Cell name="price" caption={say("title.price")}>
        <span class="figure">
          {weight?.price === undefined ? (
            <span class="caption">{say("title.no-price")}</span>
          ) : (
            `${sayNumber(weight.price.amount, 2)} ${weight.price.currency}`
          )}
        </span>
      </Cell>
    </>
  );
}
