/** A record as it is kept: its curves, and one judgement for the default and for each loan with specimens. */
import { expect, test } from "vitest";
import { readLoggerFile } from "#lib/environment/logger-file.ts";
import { FileClimateRecordInput, judgedRecord } from "#lib/loans/climate-record.ts";

const said = { utcOffsetMinutes: null, dateOrder: null };
const file = readLoggerFile("time,RH %\n2026-01-01T00:00Z,48\n2026-01-01T20:00Z,57\n", said);
const teeth = {
  kind: "skeleton or bone",
  preparation: "mounted skeleton",
  fluidName: null,
  hasTeeth: true,
  light: "ordinary",
  partsAtRisk: "",
} as const;

test("the strictest specimen of a loan decides, and a loan without specimens is not judged", () => {
  const judged = judgedRecord(file, [
    { id: "a", number: "L 1", specimens: [teeth, { ...teeth, hasTeeth: false }] },
    { id: "b", number: "L 2", specimens: [] },
  ]);
  expect(judged.judgements.map(({ loan }) => loan?.number ?? null)).toEqual([null, "L 1"]);
  // Nine percent within a day is clear by default, and too much for teeth.
  const change = judged.judgements.map(
    ({ judgement }) => judgement.lines.find(({ quantity }) => quantity === "humidityChange24h")?.outcome,
  );
  expect(change).toEqual(["clear", "attend"]);
  expect(judged.curves.humidity).toHaveLength(2);
  expect(judged.curves.temperatureC).toEqual([]);
});

test("a file without bytes is refused as none", () => {
  const input = { venueId: "0198c2a0-0000-7000-8000-000000000001", name: "Case 1", ...said };
  for (const content of [new Uint8Array(), "text"]) {
    const { error } = FileClimateRecordInput.safeParse({ ...input, content });
    expect(error?.issues.map(({ message }) => message)).toEqual(["logger.file-missing"]);
  }
});
