/** Steps in the making of a specimen. */

import { beforeAll, describe, expect, test } from "vitest";
import { newId } from "#lib/platform/identity.ts";
import { recordPreparationStep } from "#lib/specimens/commands/record-preparation-step.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded } from "#tests/support/specimen-records.ts";
import { issuesOf, refusalOf } from "#tests/support/untouched.ts";

const curator = aViewer("curator");

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre({ accessionPattern: "[A-Z]{2} [^ ]+", accessionExample: "AN 2020.0001" });
}, 120_000);

describe("a step in the making", () => {
  test("is added, open or ended", async () => {
    const { id: specimenId } = await aRecorded();
    await recordPreparationStep(aViewer("conservator"), {
      specimenId,
      step: "fixation",
      startedOn: "2020-01-01",
      endedOn: "2020-01-01",
      note: "",
    });
    await recordPreparationStep(curator, {
      specimenId,
      step: "dehydration",
      startedOn: "2020-02-01",
      endedOn: null,
      note: "cold",
    });
    expect((await getSpecimen(curator, specimenId)).preparationSteps).toMatchObject([
      { step: "fixation", endedOn: "2020-01-01" },
      { step: "dehydration", endedOn: null, note: "cold" },
    ]);
  });

  test("that ends before it starts, or of no specimen, is refused", async () => {
    const { id: specimenId } = await aRecorded();
    const step = { step: "curing" as const, startedOn: "2020-01-02", endedOn: "2020-01-01", note: "" };
    expect(await issuesOf(() => recordPreparationStep(curator, { specimenId, ...step }))).toEqual([
      "endedOn: step.ends-before-start",
    ]);
    expect(
      (await refusalOf(() => recordPreparationStep(curator, { specimenId: newId(), ...step, endedOn: null })))
        .kind,
    ).toBe("not-found");
  });
});
