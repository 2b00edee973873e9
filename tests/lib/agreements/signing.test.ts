/** What may stand as a signature: strokes of a drawn name, and the files that are known. */
import { describe, expect, test } from "vitest";
import { CountersignInput, mostSignedBytes, SignInput, signedMediaType } from "#lib/agreements/signing.ts";

const shown = {
  agreementId: "0199f0c0-0000-7000-8000-000000000000",
  sha256: "a".repeat(64),
  signerRole: "Head",
};
const faults = (
  schema: { safeParse: (value: unknown) => { error?: { issues: { message: string }[] } } },
  value: unknown,
) => schema.safeParse(value).error?.issues.map(({ message }) => message) ?? [];

describe("a signature on screen", () => {
  test.each(["", "M0 0L600 160", "M12 34L56 78L90 12M1 1L2 2"])("takes the strokes “%s”", (strokes) => {
    expect(faults(SignInput, { ...shown, strokes, electronic: true })).toEqual([]);
  });

  test.each(["M0,0", "M0 0Z", "m0 0", 'M0 0"/><script>', "M1000 0"])(
    "refuses the strokes “%s”",
    (strokes) => {
      expect(faults(SignInput, { ...shown, strokes, electronic: true })).toEqual(["agreement.strokes-shape"]);
    },
  );

  test("needs the word that it is meant to be electronic", () => {
    expect(faults(SignInput, { ...shown, strokes: "", electronic: false })).toEqual([
      "agreement.not-electronic",
    ]);
  });
});

describe("a file that stands as a signature", () => {
  const bytes = (...first: number[]) => new Uint8Array([...first, ...new Array(20).fill(0)]);
  const pdf = bytes(0x25, 0x50, 0x44, 0x46, 0x2d);
  const input = (content: Uint8Array) => ({ ...shown, party: "lender", signerName: "Somebody", content });

  test.each([
    ["a PDF", pdf, "application/pdf"],
    ["a JPEG", bytes(0xff, 0xd8, 0xff), "image/jpeg"],
    ["a PNG", bytes(0x89, 0x50, 0x4e, 0x47), "image/png"],
    ["a page of the web", new TextEncoder().encode("<html>"), null],
    ["nothing", new Uint8Array(), null],
  ])("is known by its first bytes: %s", (_what, content, mediaType) => {
    expect(signedMediaType(content)).toBe(mediaType);
  });

  test("is refused when it is missing, too large or of another kind", () => {
    expect(faults(CountersignInput, input(pdf))).toEqual([]);
    expect(faults(CountersignInput, input(new Uint8Array()))).toContain("agreement.file-missing");
    expect(faults(CountersignInput, input(new TextEncoder().encode("<html>")))).toEqual([
      "agreement.file-unknown",
    ]);
    const large = new Uint8Array(mostSignedBytes + 1);
    large.set(pdf);
    expect(faults(CountersignInput, input(large))).toEqual(["agreement.file-too-large"]);
  });
});
