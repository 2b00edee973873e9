import { expect, test } from "vitest";
import { type CustomsContent, type CustomsKind, customsContent } from "#lib/papers/customs-paper/content.ts";
import { customsDocument } from "#lib/papers/customs-paper/document.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { someCase, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 3, crates: 1 });
const issuedOf = (kind: CustomsKind, said: Partial<CustomsContent> = {}) => ({
  content: { ...customsContent(kind, paperCase, stageIds.out, someHead()), ...said },
  sha256: "ab".repeat(32),
  checkAddress: "https://x",
});
const textOf = (kind: CustomsKind, said: Partial<CustomsContent> = {}) =>
  textOfBlocks(customsDocument(issuedOf(kind, said), englishPaper).blocks);
const { goods } = issuedOf("pro-forma invoice").content;

test("what is missing is said at the top, and nothing is said where nothing is missing", () => {
  expect(textOf("pro-forma invoice")).toContain("Not complete. Without a tariff code at both ends: 3.");
  expect(textOf("pro-forma invoice")).not.toContain("Without a value");
  expect(textOf("pro-forma invoice", { undecided: [] })).not.toContain("Not complete");
  expect(textOf("carnet list")).not.toContain("Not complete");
});

test("values of two currencies are never added", () => {
  const [first, second, third] = goods;
  if (!first || !second?.value || !third) throw new RangeError("There are three.");
  const mixed = [
    first,
    { ...second, value: { ...second.value, currency: "NOK" } },
    { ...third, value: null },
  ];
  const { total, rows } = onlyTable(
    customsDocument(issuedOf("pro-forma invoice", { goods: mixed }), englishPaper).blocks,
  );
  expect(rows.map((row) => row[4])).toEqual(["2,500.00\u00A0EUR", "2,501.00\u00A0NOK", "–"]);
  expect(total?.[4]).toEqual({ paragraphs: ["2,500.00\u00A0EUR", "2,501.00\u00A0NOK"] });
  expect(total?.[1]).toContain("at least");
});

test("a sum of masses is given only where each is known", () => {
  const total = (massKg: number | null) =>
    onlyTable(
      customsDocument(
        issuedOf("carnet list", {
          goods: goods.map((one, index) => (index === 0 ? { ...one, massKg } : one)),
        }),
        englishPaper,
      ).blocks,
    ).total?.[3];
  expect(total(0.125)).toBe("2.625");
  expect(total(null)).toBe("");
});

test("human origin and fluids are said by number, and only where there are any", () => {
  const wet = goods.map((one, index) =>
    index === 1
      ? {
          ...one,
          human: false,
          scientificName: "Canis lupus",
          fluidName: "ethanol",
          hazards: ["formaldehyde"],
        }
      : one,
  );
  const text = textOf("pro-forma invoice", { goods: wet });
  expect(text).toContain("Nos. 1, 3: preserved anatomical specimens of human origin");
  expect(text).toContain("Nos. 2: in ethanol, formaldehyde.");
  expect(text).toContain("Organ, of an animal, Canis lupus");
  expect(textOf("pro-forma invoice")).not.toContain("dangerous goods");
});

test("the way home is a return, and parts without content leave no gap in the letters", () => {
  const home = customsContent("pro-forma invoice", { ...paperCase, crates: [] }, stageIds.home, someHead());
  const text = textOf("pro-forma invoice", home);
  expect(text).toContain("Return of goods that were lent");
  expect(text).not.toContain("Packages");
  expect(text).toContain("D To be written by hand");
  expect(text).toContain("For the sender\nPort Selwyn Faculty of Medicine");
});

test("a carnet's list says that it is closed and lives twelve months, and leaves customs codes away", () => {
  const text = textOf("carnet list");
  expect(text).toContain("nothing is added to the list");
  expect(text).toContain("twelve months at most");
  expect(text).not.toContain("9705");
});
