/**
 * What the casting limits find: each leads to its place, and offers the value that mends it where one does.
 */
import type { Finding } from "../../index.js";
import { useBench } from "../state/bench.js";
import { schemaOf } from "../text/offers.js";
import { sayField } from "../words/fields/say-field.js";
import { language, say } from "../words/language.js";
import { sayText } from "../words/say-text.js";
import { mendOf, placeOfFinding } from "./mends.js";
import { writeNumber } from "./read-number.js";

export function Findings() {
  const check = useBench().answers.of.check.value?.value;
  if (check === undefined) return <p class="caption">{say("finding.none")}</p>;
  const { findings } = check;
  if (findings.length === 0) return <p class="caption">{say("finding.kept")}</p>;
  return (
    <ul class="findings">
      {findings.map((finding) => (
        <FindingLine key={`${finding.rule} ${finding.message}`} finding={finding as Finding} />
      ))}
    </ul>
  );
}

function FindingLine({ finding }: { readonly finding: Finding }) {
  const { answers, document, selected } = useBench();
  const runs = answers.of.beads.value?.value ?? [];
  const place = placeOfFinding(finding, runs);
  const mend = mendOf(finding, document.value.value, runs);
  return (
    <li data-severity={finding.severity}>
      <button type="button" onClick={() => (selected.value = place)}>
        {sayText(finding.message)}
      </button>
      {mend !== undefined && (
        <button type="button" class="finding-mend" onClick={() => document.set(mend.path, mend.value)}>
          {say("finding.mend", {
            name: sayField(schemaOf(mend.path)),
            value: writeNumber(mend.value, language.value),
          })}
        </button>
      )}
    </li>
  );
}
