/**
 * What is to be mended or minded: problems of the document, findings of the rules, warnings. Findings have the numbers of their
 * balloons on the ring.
 */
import { useBench } from "../state/bench.js";
import { pathOf } from "../state/json-text.js";
import { say } from "../words/language.js";
import { sayProblem } from "../words/say-problem.js";
import { sayText } from "../words/say-text.js";

export function FindingCell() {
  const { answers } = useBench();
  const problems = answers.problems.value;
  const findings = answers.of.check.value?.value.findings ?? [];
  const warnings = answers.warnings.value;
  const count = problems.length + findings.length + warnings.length;
  return (
    <details class="title-cell title-findings" data-wrong={problems.length > 0}>
      <summary>
        <span class="caption">{say("title.findings")}</span>
        <span class="figure">{problems.length > 0 ? say("title.problems", { count: problems.length }) : count}</span>
      </summary>
      <div class="title-list">
        {count === 0 ? <p>{say("title.nothing-found")}</p> : null}
        <ProblemList problems={problems} />
        <ol class="balloons">
          {findings.map((finding) => (
            <li key={finding.message}>{sayText(finding.message)}</li>
          ))}
        </ol>
        <ProblemList problems={warnings} />
      </div>
    </details>
  );
}

type SaidBy = Parameters<typeof sayProblem>[0];

function ProblemList({ problems }: { readonly problems: readonly SaidBy[] }) {
  const { selected } = useBench();
  return (
    <ul>
      {problems.map((problem) => {
        const { text, hint } = sayProblem(problem);
        const { path } = problem;
        return (
          <li key={`${path} ${text}`}>
            {text} {hint === undefined ? null : <span class="caption">{hint}</span>}{" "}
            {path === undefined || path === "" ? null : (
              <button
                type="button"
                onClick={() => {
                  selected.value = pathOf(path);
                }}
              >
                {path}
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
