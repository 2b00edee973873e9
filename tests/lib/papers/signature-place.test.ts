/** How a signature stands on paper: typed, drawn, by a file, or not yet. */
import { PDFDocument } from "pdf-lib";
import { extractText, getDocumentProxy } from "unpdf";
import { describe, expect, test } from "vitest";
import { agreementDocument } from "#lib/papers/agreement-document.ts";
import { paintAgreement } from "#lib/papers/agreement-paper.ts";
import type { SignaturePlace } from "#lib/papers/blocks.ts";
import { isPicture, pointsOf } from "#lib/papers/drawing.ts";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { drawnName, type PaperSignature, signaturePlace } from "#lib/papers/signature-place.ts";
import { bothSigned, hashOf, someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { plain } from "#tests/lib/papers/block-text.ts";
import { faultsOf } from "#tests/lib/papers/paper-checks.ts";

const terms = someTerms(2);
const strokes = "M60 110L70 60L85 40L95 50M120 90L160 72L420 90";
const fileSha256 = "ab".repeat(32);
const [typed] = bothSigned(terms);
if (typed === undefined) throw new RangeError("Both have signed.");
const ways: Record<PaperSignature["method"], PaperSignature> = {
  typed,
  drawn: { ...typed, method: "drawn", strokes },
  countersigned: { ...typed, method: "countersigned", fileSha256, isElectronic: false },
};
const english = paperWordsIn("en");
const placed = (signature: PaperSignature | undefined, words = english) =>
  signaturePlace({ organisation: "Office", party: "lender", signature }, words);
const factsOf = ({ facts }: SignaturePlace) =>
  facts.map(({ label, value }) => [label, value === null ? null : plain(value)]);

describe("a signature", () => {
  test("that was typed stands as its name, with role, moment and zone, way, consent and the hash of the terms", () => {
    const place = placed(ways.typed);
    expect(place.signedBy).toBe("Čeněk Łuczak");
    expect(factsOf(place).map((row) => row.map((said) => said?.normalize("NFKC")))).toEqual([
      ["Name", "Čeněk Łuczak"],
      ["Role", "Registrar"],
      ["Time", "26 November 2026, 09:15 UTC"],
      ["How signed", "typed name"],
      ["Electronic", "Agreed to sign electronically"],
      ["Terms, SHA-256", hashOf(terms)],
    ]);
  });

  test("that was drawn stands as its lines, which lie inside the figure", () => {
    const { signedBy, drawn } = placed(ways.drawn);
    expect(signedBy).toBeNull();
    if (drawn === undefined || isPicture(drawn.image)) throw new RangeError("It is drawn.");
    expect(drawn.alternative).toBe("Drawn name of Čeněk Łuczak");
    const { width, height, paths } = drawn.image;
    const points = paths.flatMap(({ steps }) => pointsOf(steps));
    expect(points).toHaveLength(7);
    for (const [x, y] of points) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(width);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(height);
    }
  });

  test("that is a file stands as one, with the hash of the file, and is not called electronic", () => {
    const place = placed(ways.countersigned);
    expect(place.signedBy).toBe("countersigned file");
    expect(place.lineLabel).toContain("Signed elsewhere");
    expect(factsOf(place)).toContainEqual(["File, SHA-256", fileSha256]);
    expect(factsOf(place)).toContainEqual(["Electronic", "Not signed electronically in the program"]);
  });

  test("that is not there yet is a line to sign on, with name, role and time to be filled in", () => {
    const place = placed(undefined);
    expect([place.signedBy, place.lineLabel, place.drawn]).toEqual([null, "Signature", undefined]);
    expect(factsOf(place)).toEqual([
      ["Name", null],
      ["Role", null],
      ["Time", null],
    ]);
  });

  test.each(paperLanguages)("is told in %s, each way in its own words", (language) => {
    const said = paperWordsIn(language).signatures;
    const lines = Object.values(ways).map((one) => factsOf(placed(one, paperWordsIn(language)))[3]?.[1]);
    expect(lines).toEqual([said.methods.typed, said.methods.drawn, said.methods.countersigned]);
    expect(new Set(lines).size).toBe(3);
  });
});

test("a name of one dot is still a figure with a size", () => {
  const { widthPt, heightPt } = drawnName("M10 10", "dot");
  expect(widthPt).toBeGreaterThan(0);
  expect(heightPt).toBeGreaterThan(0);
});

test.each(paperLanguages)("whoever signs how, nothing of it is clipped in %s", (language) => {
  const own = someTerms(2, { languages: [language] });
  const sha256 = hashOf(own);
  const signaturesOf = (methods: PaperSignature["method"][]) =>
    methods.map((method, index) => ({
      ...ways[method],
      party: index === 0 ? ("lender" as const) : ("borrower" as const),
      signerRole: "Leiterin der Zentralstelle für Präparateverwaltung und Leihverkehr",
      sha256,
    }));
  for (const methods of [
    ["drawn"],
    ["typed", "drawn"],
    ["drawn", "countersigned"],
    [],
  ] as PaperSignature["method"][][])
    for (const size of paperSizes) {
      const facts = { terms: own, sha256, signatures: signaturesOf(methods) };
      expect(faultsOf(agreementDocument(facts, paperWordsIn(language)), size)).toEqual([]);
    }
});

test("the PDF holds the hash of the file and what a drawn name shows", async () => {
  const signatures = [ways.drawn, { ...ways.countersigned, party: "borrower" as const }];
  const bytes = await paintAgreement({
    terms,
    version: terms.loan.version,
    sha256: hashOf(terms),
    drawnUpAt: "2026-11-25T10:00:00Z",
    signatures,
  });
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(bytes)));
  expect(text.join("").replace(/\s/g, "")).toContain(fileSha256);
  const document = await PDFDocument.load(bytes);
  const alternatives = document.context
    .enumerateIndirectObjects()
    .map(([, object]) => String(object))
    .filter((written) => written.includes("/Figure"));
  expect(alternatives.length).toBe(terms.schedule.length + 1);
});
