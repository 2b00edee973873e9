import { expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";
import { type TravelSheetContent, travelSheetContent } from "#lib/papers/travel-sheet/content.ts";
import { stationsOf, travelSheetDocument } from "#lib/papers/travel-sheet/document.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { someCase, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 3, crates: 2 });
const contentOf = (stageId: string) => travelSheetContent(paperCase, stageId, someHead());
const textOf = (content: TravelSheetContent) =>
  textOfBlocks(
    travelSheetDocument({ content, sha256: "ab".repeat(32), checkAddress: "https://x" }, englishPaper).blocks,
  );

test("each country of the way has its customs in order, a way at home has none", () => {
  const out = contentOf(stageIds.out);
  const customsOf = (content: TravelSheetContent) =>
    stationsOf(content, englishPaper).filter((station) => station.startsWith("Customs"));
  expect(customsOf(out)).toEqual(
    ["Germany", "Denmark", "Sweden", "Norway"].map((name) => `Customs: ${name}`),
  );
  const atHome = { ...out.way, through: [], to: { ...out.way.to, countryCode: "DE" } };
  expect(customsOf({ ...out, way: atHome })).toEqual([]);
});

test("the way home ends at the lender, whose telephone stays the one that is told", () => {
  const home = contentOf(stageIds.home);
  expect(stationsOf(home, englishPaper)).toContain("Arrived: Lending Centre");
  expect(textOf(home)).toContain("Lender, day and night\nLending Centre, +49 555 0111");
});

test("a lender that nobody reaches at night says so, and a sheet from before it was asked names its telephone", () => {
  const { emergency, ...earlier } = contentOf(stageIds.out);
  expect(emergency).toEqual({ phone: "+49 555 0111", hours: "any hour" });
  const inOffice = { ...earlier, emergency: { phone: "+49 555 0100", hours: "office hours" as const } };
  expect(textOf(inOffice)).toContain("Lender, office hours\nLending Centre, +49 555 0100");
  expect(textOf(earlier)).toContain("Lender, day and night\nLending Centre, +49 555 0100");
});

test("without a common band the labels of the crates are named", () => {
  const out = contentOf(stageIds.out);
  expect(textOf(out)).toContain("5 to 30 °C at the crates");
  expect(textOf({ ...out, temperatureC: null })).toContain("the label on each crate");
});
