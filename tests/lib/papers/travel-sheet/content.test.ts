import { expect, test } from "vitest";
import { TravelSheetContent, travelSheetContent } from "#lib/papers/travel-sheet/content.ts";
import { someCase, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 3, crates: 2 });

test("a travel sheet reads back as it was written, and names each specimen with its crate", () => {
  const content = travelSheetContent(paperCase, stageIds.out, someHead());
  expect(TravelSheetContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
  expect(content.specimens.map(({ crate }) => crate)).toEqual(
    paperCase.crates.flatMap(({ code, contents }) => contents.map(() => code)),
  );
  expect(content.contactName).toBe("Bela Registrar");
});

test("the temperatures are those that all bear, and null where they have none in common", () => {
  const [first, ...others] = paperCase.specimens;
  if (!first) throw new RangeError("There is a specimen.");
  const bandOf = (transitC: { low: number; high: number }) =>
    travelSheetContent(
      { ...paperCase, specimens: [{ ...first, transitC }, ...others] },
      stageIds.out,
      someHead(),
    ).temperatureC;
  expect(bandOf({ low: 10, high: 40 })).toEqual({ low: 10, high: 30 });
  expect(bandOf({ low: 31, high: 40 })).toBeNull();
});
