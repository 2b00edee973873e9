/** Which photographs stand on an agreement: those that a borrower may see, whoever prints it. */
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import { schedulePicturesOf } from "#lib/papers/queries/schedule-pictures.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { addPicture } from "#lib/specimens/commands/add-picture.ts";
import { aViewer, type Made } from "#tests/support/builders.ts";
import { allScopes } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, type Walked, walk } from "#tests/support/loan-walk.ts";

const refused = Object.fromEntries(
  Object.entries(allScopes("granted")).map(([scope, answer]) => [
    scope,
    scope.startsWith("pictures") ? "refused" : answer,
  ]),
) as ReturnType<typeof allScopes>;

let lending: Lending;
let loan: Walked;
const specimens: Record<string, Made> = {};
let other: Made;

async function pictured(specimen: Made): Promise<Made> {
  const content = await sharp({ create: { width: 900, height: 600, channels: 3, background: "red" } })
    .png()
    .toBuffer();
  await addPicture(programViewer, { specimenId: specimen.id, content });
  return specimen;
}

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  const granted = { answers: allScopes("granted") };
  specimens.allowed = await pictured(await aLendableSpecimen(lending, { title: "Heart" }, granted));
  specimens.refused = await pictured(
    await aLendableSpecimen(lending, { title: "Liver" }, { answers: refused }),
  );
  specimens.plain = await aLendableSpecimen(lending, { title: "Spleen" }, granted);
  other = await pictured(await aLendableSpecimen(lending, { title: "Lung" }, granted));
  loan = await walk(lending, Object.values(specimens), "requested");
});
afterAll(() => setClock());

const picturesFor = async (viewer = lending.registrar) => {
  const numbers = [...Object.values(specimens), other].map(({ accessionNumber }) => accessionNumber);
  return await schedulePicturesOf(viewer, loan.id, numbers);
};

test("a photograph stands only where the donors let a borrower see it, also when the house prints", async () => {
  for (const viewer of [lending.registrar, lending.lecturer]) {
    const pictures = await picturesFor(viewer);
    const has = (name: string) => pictures.get(specimens[name]?.accessionNumber ?? "")?.picture ?? null;
    expect(has("allowed")).toMatchObject({ mime: "image/jpeg", widthPx: 200, heightPx: 133 });
    expect(has("refused")).toBeNull();
    expect(has("plain")).toBeNull();
  }
});

test("every specimen of the loan has its drawing, and no other is told of", async () => {
  const pictures = await picturesFor();
  expect([...pictures.keys()].sort()).toEqual(
    Object.values(specimens)
      .map(({ accessionNumber }) => accessionNumber)
      .sort(),
  );
  expect(pictures.get(specimens.allowed?.accessionNumber ?? "")?.drawing.title).toBe("Heart");
});

test("who may not read the loan's file gets nothing", async () => {
  await expect(
    picturesFor(aViewer("borrower registrar", "01920000-0000-7000-8000-0000000000bb")),
  ).rejects.toThrow();
});
