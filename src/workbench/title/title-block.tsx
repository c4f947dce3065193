/**
 * What is always seen: name, size, weight, and whether work goes on.
 */
import { useBench } from "../state/bench.js";
import { say, sayNumber } from "../words/language.js";

export function TitleBlock() {
  const { answers, document } = useBench();
  const working = answers.working.value;
  const report = answers.of.report.value?.value;
  return (
    <>
      <b>{String(document.value.value.name ?? "")}</b>
      {report === undefined ? "" : ` ${sayNumber(Object.values(report.mass)[0], 2)} g`}
      {working === undefined
        ? ""
        : say("work.working", { stage: working.stage, share: Math.round(100 * working.share) })}
      {answers.problems.value.map(({ message }) => (
        <p key={message}>{message}</p>
      ))}
    </>
  );
}
