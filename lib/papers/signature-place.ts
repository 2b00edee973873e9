/**
 * How a party's signature stands on an agreement: the typed name, the drawn name as
 * lines, or that a countersigned file stands for it, with its hash; below it who
 * signed, as what, when, how, under which terms, and whether electronically. A party
 * that has not signed has a line to sign on by hand. Nothing is decided here: what is
 * printed is what the signature's record says.
 */
import { type SignatureMethod, strokeBox } from "#lib/agreements/signing.ts";
import type { SignaturePlace } from "#lib/papers/blocks.ts";
import { type Figure, figureOf, pointsOf, readPath } from "#lib/papers/drawing.ts";
import { fill, type PaperWords } from "#lib/papers/words.ts";

/** One party's signature as it is printed. */
export type PaperSignature = {
  party: "lender" | "borrower";
  signerName: string;
  signerRole: string;
  /** ISO 8601 */
  signedAt: string;
  /** of the terms */
  sha256: string;
  method: SignatureMethod;
  /** A drawn name as the path of an SVG in the box that it was drawn in; empty for any other. */
  strokes: string;
  /** of the file that stands as the signature, where it was signed elsewhere */
  fileSha256: string | null;
  /** Whether the signer agreed to sign electronically. */
  isElectronic: boolean;
};

const drawnHeightPt = 40;
/** In units of the box; about 0.7 pt on paper. */
const penWidth = 2.8;
const marginPt = 3;

/** The strokes as lines, cut to what was drawn, so that a small name does not float above its line. */
export function drawnName(strokes: string, alternative: string): Figure {
  const steps = readPath(strokes);
  const points = pointsOf(steps);
  const margin = (marginPt * strokeBox.height) / drawnHeightPt;
  const ends = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const;
  const [left, right] = ends(points.map(([x]) => x));
  const [top, bottom] = ends(points.map(([, y]) => y));
  const scale = drawnHeightPt / strokeBox.height;
  const moved = steps.map((step) =>
    step[0] === "M" || step[0] === "L"
      ? ([step[0], step[1] - left + margin, step[2] - top + margin] as const)
      : step,
  );
  const drawing = {
    width: right - left + 2 * margin,
    height: bottom - top + 2 * margin,
    paths: [{ steps: moved, stroke: { ink: "ink" as const, width: penWidth, isRound: true } }],
  };
  return figureOf(drawing, drawing.height * scale, alternative);
}

type Signing = {
  organisation: string;
  party: PaperSignature["party"];
  signature: PaperSignature | undefined;
};

/** What stands on the line. */
function onLine(signature: PaperSignature, words: PaperWords): Pick<SignaturePlace, "signedBy" | "drawn"> {
  const said = words.signatures;
  const { method, signerName, strokes } = signature;
  if (method === "countersigned") return { signedBy: said.methods.countersigned };
  if (method === "typed" || strokes === "") return { signedBy: signerName };
  return { signedBy: null, drawn: drawnName(strokes, fill(said.drawnBy, { name: signerName })) };
}

export function signaturePlace(
  { organisation, party, signature }: Signing,
  words: PaperWords,
): SignaturePlace {
  const said = words.signatures;
  const place = { party: party === "lender" ? said.forLender : said.forBorrower, organisation };
  if (signature === undefined)
    return {
      ...place,
      signedBy: null,
      lineLabel: said.signature,
      facts: [said.name, said.role, said.time].map((label) => ({ label, value: null })),
    };
  const { method, signerName, signerRole, signedAt, sha256, fileSha256, isElectronic } = signature;
  const hash = (label: string, value: string) => ({
    label,
    value: [{ text: value, emphasis: "code" as const }],
  });
  return {
    ...place,
    ...onLine(signature, words),
    lineLabel: method === "countersigned" ? said.signedElsewhere : said.signedInProgram,
    facts: [
      { label: said.name, value: signerName },
      { label: said.role, value: signerRole },
      { label: said.time, value: words.write.moment(signedAt) },
      { label: said.method, value: said.methods[method] },
      { label: said.electronic, value: isElectronic ? said.electronicAgreed : said.notElectronic },
      hash(said.termsHash, sha256),
      ...(fileSha256 === null ? [] : [hash(said.fileHash, fileSha256)]),
    ],
  };
}
