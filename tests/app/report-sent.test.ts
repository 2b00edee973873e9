/** A facility report through its form: what is written to the fields is read from them as the same. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { fieldOfIssue, readReport, typedIn, writeReport } from "#app/(signed-in)/venues/report-sent.ts";
import { facilityQuestions, facilitySections, type Question } from "#lib/people/facility-questions.ts";
import { FacilityAnswers } from "#lib/people/facility-report.ts";

function formOf(typed: Record<string, string>): FormData {
  const fields = new FormData();
  for (const [name, value] of Object.entries(typed)) fields.set(name, value);
  return fields;
}

function answerTo(question: Question): fc.Arbitrary<unknown> {
  switch (question.kind) {
    case "yes or no":
      return fc.boolean();
    case "choice":
      return fc.constantFrom(...question.of);
    case "text":
      return fc.stringMatching(/^[a-z]{1,12}( [a-z]{1,8})?$/);
    case "share":
      return fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100);
    case "number":
      return fc.integer({ min: Math.ceil(question.least), max: Math.floor(question.most) });
  }
}
const everyAnswer = fc.record(
  Object.fromEntries(
    facilitySections.map((section) => [
      section,
      fc.record(
        Object.fromEntries(
          (Object.entries(facilityQuestions[section]) as [string, Question][]).map(([name, question]) => [
            name,
            fc.option(answerTo(question), { nil: null }),
          ]),
        ),
      ),
    ]),
  ),
);
const passages = fc.array(
  fc.record({
    kind: fc.constantFrom("door", "lift", "ramp", "corridor turn"),
    name: fc.stringMatching(/^[a-z]{1,12}$/),
    widthMm: fc.integer({ min: 300, max: 20_000 }),
    heightMm: fc.integer({ min: 300, max: 20_000 }),
    depthMm: fc.option(fc.integer({ min: 300, max: 20_000 }), { nil: null }),
    secondWidthMm: fc.constant(null),
    loadKg: fc.option(fc.integer({ min: 1, max: 5_000 }), { nil: null }),
    slopePercent: fc.option(
      fc.integer({ min: 0, max: 200 }).map((half) => half / 2),
      { nil: null },
    ),
  }),
  { maxLength: 4 },
);

test("every report that is valid comes back from its form as it was", () => {
  fc.assert(
    fc.property(everyAnswer, passages, (said, way) => {
      const parsed = FacilityAnswers.safeParse({ ...said, passages: way } as never);
      fc.pre(parsed.success);
      const { answers } = readReport(formOf(writeReport(parsed.data as FacilityAnswers)));
      expect(FacilityAnswers.parse(answers as never)).toEqual(parsed.data);
    }),
    { numRuns: 60 },
  );
});

test("empty lines and those to be left out are none, and an issue finds the line where it was typed", () => {
  const fields = formOf({
    "passages.0.kind": "door",
    "passages.0.name": "Old door",
    "passages.0.leaveOut": "yes",
    "passages.1.kind": "door",
    "passages.1.name": "",
    "passages.2.kind": "door",
    "passages.2.name": "Yard door",
    "passages.2.widthMm": "1 200",
  });
  const { answers, lines } = readReport(fields);
  expect((answers as FacilityAnswers).passages).toMatchObject([
    { name: "Yard door", widthMm: 1200, heightMm: null },
  ]);
  expect(lines.passages).toEqual([2]);
  expect(fieldOfIssue("answers.passages.0.heightMm", lines)).toBe("passages.2.heightMm");
  expect(fieldOfIssue("answers.climate.humidityHigh", lines)).toBe("climate.humidityHigh");
  expect(fieldOfIssue("reportedOn", lines)).toBe("reportedOn");
});

test("what cannot be read as a number is refused at its field", () => {
  expect(() => readReport(formOf({ "light.illuminanceLx": "bright" }))).toThrow(
    expect.objectContaining({ issues: [expect.objectContaining({ path: "light.illuminanceLx" })] }),
  );
});

test("everything that was typed stands there again, without the framework's own fields", () => {
  expect(typedIn(formOf({ "contact.contactName": "A", $ACTION_ID: "x" }))).toEqual({
    "contact.contactName": "A",
  });
});
