import { expect, test } from "vitest";
import { crateLabelContent } from "#lib/papers/crate-label/content.ts";
import { crateLabelDocument } from "#lib/papers/crate-label/document.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { firstCrate, someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const document = crateLabelDocument(
  {
    content: crateLabelContent(someCase({ specimens: 5, crates: 2 }), firstCrate, someHead()),
    sha256: "ab".repeat(32),
    checkAddress: "https://x",
  },
  englishPaper,
);

test("a label is given in three sizes that say the same", () => {
  const words = (said: string) => said.split(/\s+/).sort();
  const texts = [document, document.smaller, document.smaller?.smaller].map((one) =>
    words(textOfBlocks(one?.blocks ?? [])),
  );
  expect(texts[0]?.length).toBeGreaterThan(40);
  expect(texts[1]).toEqual(texts[0]);
  expect(texts[2]).toEqual(texts[0]);
  expect(document.smaller?.smaller?.smaller).toBeUndefined();
});

test("every mark stands with its words, the limits with their figures", () => {
  const text = textOfBlocks(document.blocks);
  for (const words of [
    "This way up",
    "Centre of gravity: 372 mm up",
    "Stacking limit: at most 118 kg",
    "Temperature limits: 5 to 30 °C",
  ])
    expect(text).toContain(words);
});

test("a telephone that nobody answers at night says so, on labels of all sizes", () => {
  const content = crateLabelContent(
    {
      ...someCase({ specimens: 2, crates: 1 }),
      emergency: { phone: "+49 555 0100", hours: "office hours" },
    },
    firstCrate,
    someHead(),
  );
  const issued = { content, sha256: "ab".repeat(32), checkAddress: "https://x" };
  const label = crateLabelDocument(issued, englishPaper);
  for (const one of [label, label.smaller, label.smaller?.smaller]) {
    const text = textOfBlocks(one?.blocks ?? []);
    expect(text).toContain("Telephone, office hours");
    expect(text).not.toContain("day and night");
  }
  const { phoneHours: _unsaid, ...earlier } = content;
  expect(textOfBlocks(crateLabelDocument({ ...issued, content: earlier }, englishPaper).blocks)).toContain(
    "Telephone, day and night",
  );
});
