import { expect, it } from "vitest";
import {
  answerText,
  type QueuedTask,
  readAnswer,
  readJob,
  readTask,
  taskText,
} from "../../../../src/range/disk/queue/job-data.js";
import { PLAIN } from "../../../cli/support.js";

const DIGEST = "0f".repeat(32);

const variant = (number: number, more: object) => ({
  number,
  name: `Heron-${number}`,
  source: DIGEST,
  files: { "a.svg": DIGEST, "b.svg": "missing" },
  document: { ...PLAIN, name: `Heron-${number}`, ...more },
});

const TASK: QueuedTask = {
  making: { outputs: ["stl"], piece: "master", pictureWidth: 480 },
  limits: { seconds: 300 },
  variants: [variant(1, { material: "ag925" }), variant(2, { material: "pd950", tolerance: 0.1 })],
  carried: { digests: { "a.svg": DIGEST }, faults: { "b.svg": [{ code: "file-missing", message: "there is none" }] } },
};

it("brings a task as it was, and what its designs share once", () => {
  const text = taskText(TASK);
  expect(readTask(text)).toEqual(TASK);
  expect(text.split('"profile"')).toHaveLength(2);
  expect(text.split('"tolerance"')).toHaveLength(2);
});

it.each([
  ["no JSON", () => "{"],
  ["another version", (task: object) => ({ ...task, version: "9.9.9" })],
  ["an unknown field", (task: object) => ({ ...task, run: "rm" })],
  ["no variants", (task: object) => ({ ...task, variants: [] })],
  ["no time limit", (task: object) => ({ ...task, limits: {} })],
  ["no time", (task: object) => ({ ...task, limits: { seconds: 0 } })],
  ["another output", (task: object) => ({ ...task, making: { ...TASK.making, outputs: ["../x"] } })],
  ["a name out of the folder", (task: object) => renamed(task, "../../etc/x")],
  ["a device's name", (task: object) => renamed(task, "con")],
  ["a file that is no digest", (task: object) => ({ ...task, carried: { digests: { a: "../x" }, faults: {} } })],
])("takes %s for no task", (_, spoil) => {
  const spoilt = spoil(JSON.parse(taskText(TASK)));
  expect(readTask(typeof spoilt === "string" ? spoilt : JSON.stringify(spoilt))).toBeUndefined();
});

function renamed(task: object, name: string): object {
  const { variants } = task as { variants: object[] };
  return { ...task, variants: variants.map((one) => ({ ...one, name })) };
}

it("takes jobs of a safe range with a sealed text alone", () => {
  const job = { range: "heron", place: DIGEST, text: "x", seal: DIGEST };
  expect(readJob(job)).toEqual(job);
  const others = [
    null,
    7,
    "x",
    [],
    {},
    { ...job, range: "../x" },
    { ...job, range: 1 },
    { ...job, seal: "x" },
    { ...job, place: "" },
  ];
  for (const other of [...others, { ...job, more: 1 }, { ...job, text: {} }]) expect(readJob(other)).toBeUndefined();
});

it("takes answers to the variants that were asked for alone", () => {
  const failed = (number: number) => ({ number, kind: "failed", problems: [{ code: "a", message: "b" }] }) as const;
  const text = answerText({ answers: [failed(1), failed(2)] });
  expect(readAnswer(text, [1, 2])).toEqual({ answers: [failed(1), failed(2)] });
  expect(readAnswer(text, [1])).toBeUndefined();
  expect(readAnswer(text, [2, 1])).toBeUndefined();
  expect(readAnswer(answerText({ problems: [{ code: "a", message: "b" }] }), [1])).toHaveProperty("problems");
  for (const other of ["", "{}", '{"answers":[{"number":1,"kind":"made"}]}', '{"problems":[]}']) {
    expect(readAnswer(other, [1])).toBeUndefined();
  }
});
