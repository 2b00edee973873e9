import { expect, test } from "vitest";
import { figureIn } from "#lib/papers/blocks.ts";
import { isPicture } from "#lib/papers/drawing.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { packingListContent } from "#lib/papers/packing-list/content.ts";
import { packingListDocument } from "#lib/papers/packing-list/document.ts";
import type { Pictures } from "#lib/papers/thumbnail.ts";
import { onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { firstCrate, secondCrate, someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const pictureId = "0198c2a0-0000-7000-8000-000000000001";
const plain = someCase({ specimens: 5, crates: 2 });
const [first, ...others] = plain.specimens;
const paperCase = first ? { ...plain, specimens: [{ ...first, pictureId }, ...others] } : plain;

const blocksOf = (subject: string, pictures: Pictures = new Map()) =>
  packingListDocument(
    {
      content: packingListContent(paperCase, subject, someHead()),
      sha256: "ab".repeat(32),
      checkAddress: "https://x",
    },
    englishPaper,
    pictures,
  ).blocks;

test("a specimen is shown by its picture where there is one, else by its drawing", () => {
  const picture = { mime: "image/jpeg" as const, bytes: new Uint8Array([1]), widthPx: 320, heightPx: 160 };
  const figures = onlyTable(blocksOf(firstCrate, new Map([[pictureId, picture]]))).rows.map(
    (row) => row.map(figureIn).find((figure) => figure !== null) ?? null,
  );
  expect(figures.map((figure) => figure !== null && isPicture(figure.image))).toEqual([true, false, false]);
  expect(figures[0]).toMatchObject({ widthPt: 56, heightPt: 28, alternative: "Picture of AN 2004.0001" });
  const [drawn] = onlyTable(blocksOf(firstCrate)).rows.map((row) => row.map(figureIn).find(Boolean));
  expect(drawn?.alternative).toBe("Schematic drawing of AN 2004.0001");
});

test("absorbent is named for crates that need it only", () => {
  expect(textOfBlocks(blocksOf(firstCrate))).toContain("Absorbent for at least 413 ml.");
  expect(textOfBlocks(blocksOf(secondCrate))).not.toContain("Absorbent");
});

test("gross mass is contents and crate together", () => {
  expect(textOfBlocks(blocksOf(firstCrate))).toContain(
    "Gross 64.3 kg, contents 18.2 kg, crate and packing 46.1 kg.",
  );
});
