/**
 * What is being worked out, how far it is, and a button that stops it.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Working } from "../engine/answers.js";
import { useBench } from "../state/bench.js";
import { say, sayNumber } from "../words/language.js";
import { sayStage } from "../words/say-stage.js";
import { SlowPart } from "./slow-part.js";

/** How often it is looked how long a part has taken, ms. */
const TICK = 1000;

export function WorkCell() {
  const { answers, document } = useBench();
  const working = answers.working.value;
  const { detail, text } = answers.of.buffers.value ?? {};
  const isLast = text === document.sound.value;
  return (
    <div class="title-cell title-work">
      <span class="caption">{say(detail === undefined ? "title.work" : `title.detail.${detail}`)}</span>
      {working === undefined ? (
        <span class="figure" role="status">
          {say(answers.stopped.value ? "work.stopped" : isLast ? "work.done" : "work.before")}
        </span>
      ) : (
        <AtWork working={working} stop={() => answers.stop()} />
      )}
    </div>
  );
}

function AtWork({ working, stop }: { readonly working: Working; readonly stop: () => void }) {
  const slow = useRef(new SlowPart());
  const [now, tick] = useState(working.since);
  useEffect(() => {
    const timer = setInterval(() => tick(performance.now()), TICK);
    return () => clearInterval(timer);
  }, []);
  const stage = sayStage(working.stage);
  const takesLong = slow.current.at(working.since, working.stage, Math.max(now, working.since));
  const seconds = sayNumber((now - working.since) / TICK, 0);
  return (
    <div class="at-work">
      <progress
        value={working.share}
        max={1}
        aria-label={say("work.working", { stage, share: Math.round(100 * working.share) })}
      />
      <span class="caption">{takesLong === undefined ? stage : say("work.slow", { stage, seconds })}</span>
      <button type="button" onClick={stop}>
        {say("work.stop")}
      </button>
    </div>
  );
}
