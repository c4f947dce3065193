/**
 * What to know before a ring is printed, cast, worn or sold: a list beside the downloads.
 */
import { asked } from "../fields/asked.js";
import { useBench } from "../state/bench.js";
import { say } from "../words/language.js";
import { sayText } from "../words/say-text.js";
import { DropMenu } from "./drop-menu.js";

export function SafetyList() {
  const { host } = useBench();
  const cautions = asked("cautions", async () => host.peek().library.cautions()).value ?? [];
  return (
    <DropMenu label={say("file.safety")}>
      <dl class="safety-list">
        {cautions.map(({ topic, text }) => (
          <div key={topic}>
            <dt>{sayText(topic)}</dt>
            <dd>{sayText(text)}</dd>
          </div>
        ))}
      </dl>
    </DropMenu>
  );
}
