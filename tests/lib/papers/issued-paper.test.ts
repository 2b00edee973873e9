/** Each issued paper as a file: its text read back, its tags, its outline, its code. */
import { extractText, getDocumentProxy } from "unpdf";
import { describe, expect, test } from "vitest";
import { paintIssuedPaper } from "#lib/papers/issued-paper.ts";
import { type PaperKind, paperKinds } from "#lib/papers/paper-kinds.ts";
import { type PaperSize, paperSizes, sheets } from "#lib/papers/sheet.ts";
import { golden } from "#tests/lib/papers/golden-papers.ts";
import { address, frozen, paint } from "#tests/lib/papers/issued-papers.ts";
import { someCase, someHandovers } from "#tests/lib/papers/paper-cases.ts";

const plain = someCase({ specimens: 7, crates: 2 });
const paperCase = { ...plain, handovers: someHandovers(plain) };

const paintings = new Map<string, Promise<Uint8Array>>();
/** The paper of this case, painted once for all tests. */
function painted(kind: PaperKind, size: PaperSize = "a4"): Promise<Uint8Array> {
  const key = `${kind} ${size}`;
  const bytes = paintings.get(key) ?? paint(kind, paperCase, size);
  paintings.set(key, bytes);
  return bytes;
}

/** The reader takes the bytes that it is given, so it gets its own. */
const openPaper = (bytes: Uint8Array) => getDocumentProxy(new Uint8Array(bytes));

async function readPages(bytes: Uint8Array): Promise<string[]> {
  const { text } = await extractText(await openPaper(bytes));
  return text.map((page) => page.normalize("NFKC").replace(/\s+/g, " "));
}

describe.each(paperKinds)("%s", (kind) => {
  test.each(paperSizes)("reads back on %s, page by page", async (size) => {
    const bytes = await painted(kind, size);
    const pages = await readPages(bytes);
    const text = pages.join(" ");
    for (const words of golden[kind]) expect(text).toContain(words.normalize("NFKC"));
    expect(text).toContain(address);
    pages.forEach((page, index) => {
      expect(page).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(page).toContain(frozen(kind, paperCase).sha256);
    });
    const [width, height] = (await (await openPaper(bytes)).getPage(1)).view.slice(2);
    expect([width, height]).toEqual([sheets[size].widthPt, sheets[size].heightPt]);
  });

  test("the same paper gives the same bytes", async () => {
    const [first, second] = await Promise.all([painted(kind), paint(kind, paperCase)]);
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });
});

type Tagged = { role?: string; children?: Tagged[]; alt?: string; type?: string };

const tagsIn = (tree: Tagged): string[] => [
  ...(tree.role === undefined ? [] : [tree.role]),
  ...(tree.children ?? []).flatMap(tagsIn),
];
const withRole = (tree: Tagged, role: string): Tagged[] => [
  ...(tree.role === role ? [tree] : []),
  ...(tree.children ?? []).flatMap((child) => withRole(child, role)),
];

async function treesOf(kind: PaperKind): Promise<Tagged[]> {
  const file = await openPaper(await painted(kind));
  return await Promise.all(
    Array.from(
      { length: file.numPages },
      async (_none, index) => (await (await file.getPage(index + 1)).getStructTree()) as Tagged,
    ),
  );
}

describe("tags, as a reader of the file finds them", () => {
  test.each(paperKinds)("%s says its title, its headings and what its figures show", async (kind) => {
    const trees = await treesOf(kind);
    const tags = trees.flatMap(tagsIn);
    expect(tags.filter((tag) => tag === "H1")).toHaveLength(1);
    expect(tags).toContain("P");
    const figures = trees.flatMap((tree) => withRole(tree, "Figure"));
    expect(figures.length).toBeGreaterThan(0);
    for (const { alt } of figures) expect(alt ?? "").not.toBe("");
    expect(figures.map(({ alt }) => alt)).toContain(`QR code with the address ${address}`);
  });

  test("a table has its headers once, and as many cells in each row as columns", async () => {
    const [tree = {}] = await treesOf("outgoing receipt");
    const [table = {}] = withRole(tree, "Table");
    const rows = withRole(table, "TR").map((row) => withRole(row, "TH").length + withRole(row, "TD").length);
    expect(rows).toEqual(Array.from({ length: 8 }, () => 5));
    expect(withRole(table, "TH")).toHaveLength(5);
  });

  test("the marks of a label say in words what they show", async () => {
    const [tree = {}] = await treesOf("crate label");
    expect(withRole(tree, "Figure").map(({ alt }) => alt)).toEqual(
      expect.arrayContaining(["This way up", "Fragile", "Keep dry", "Temperature limits: 5 to 30 °C"]),
    );
  });

  test("the file is marked as tagged and names its language", async () => {
    const file = await openPaper(await painted("dispatch note"));
    expect(await file.getMarkInfo()).toMatchObject({ Marked: true });
    expect((await file.getMetadata()).info).toMatchObject({
      Language: "en",
      Title: "Dispatch note L 2026-031, Version 2",
    });
  });
});

test("the outline leads to every heading, on its page", async () => {
  const file = await openPaper(await painted("outgoing receipt"));
  const outline = await file.getOutline();
  expect(outline.map(({ title }) => title)).toEqual([
    "A The way",
    "B Specimens",
    "C Crates and seals",
    "D Changes of hands",
  ]);
  expect(outline.at(-1)?.items.map(({ title }) => title)).toHaveLength(3);
  const [page] = (outline[0]?.dest ?? []) as [Parameters<typeof file.getPageIndex>[0]];
  expect(await file.getPageIndex(page)).toBe(0);
});

describe("what goes with strangers names nothing that is inside", () => {
  test.each(["crate label", "dispatch note"] as const)("%s", async (kind) => {
    const text = (await readPages(await painted(kind))).join(" ");
    for (const secret of [
      "AN 2004",
      "Heart",
      "Liver",
      "Cor",
      "Hepar",
      "Winter course",
      "donor",
      "human",
      "EUR",
    ])
      expect(text.toLowerCase().split(/[^\p{L}\d]+/u)).not.toContain(secret.toLowerCase());
    expect(text).not.toContain("AN 2004");
  });
});

test("a content under another fingerprint is not painted", async () => {
  const paper = { ...frozen("crate label", paperCase), sha256: "0".repeat(64) };
  await expect(
    paintIssuedPaper(paper, "a4", { lender: "Lending Centre", pictures: new Map() }),
  ).rejects.toThrow(RangeError);
});
