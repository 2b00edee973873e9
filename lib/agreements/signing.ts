/**
 * What a signature is made of. On screen a name is typed or drawn, and the signer
 * agrees to sign electronically; what was signed elsewhere, on paper or by an
 * outside service, stands by its file. Whether a form of signature suffices where
 * the parties sit is for their own house rules and counsel.
 */
import { z } from "zod";
import { Id } from "#lib/platform/identity.ts";

export const signatureMethods = ["typed", "drawn", "countersigned"] as const;
export type SignatureMethod = (typeof signatureMethods)[number];
export const signingParties = ["lender", "borrower"] as const;

/** Largest file that stands as a signature. */
export const mostSignedBytes = 15_000_000;
/** The box in which a name is drawn; its strokes are kept as whole numbers of it. */
export const strokeBox = { width: 600, height: 160 } as const;
const mostStrokes = 20_000;

const signedFormats = [
  { mediaType: "application/pdf", begins: [0x25, 0x50, 0x44, 0x46, 0x2d] },
  { mediaType: "image/jpeg", begins: [0xff, 0xd8, 0xff] },
  { mediaType: "image/png", begins: [0x89, 0x50, 0x4e, 0x47] },
] as const;

/** The media type by the first bytes; null for anything else than a PDF, a JPEG or a PNG. */
export function signedMediaType(content: Uint8Array): string | null {
  const found = signedFormats.find(({ begins }) => begins.every((byte, at) => content[at] === byte));
  return found?.mediaType ?? null;
}

const text = (most: number) => z.string().trim().max(most);

const shown = {
  agreementId: Id,
  /** The hash of the terms that the signer has before their eyes. */
  sha256: z.string().regex(/^[0-9a-f]{64}$/, "agreement.hash-shape"),
  signerRole: text(120).min(1),
};

/** A signature by whoever is signed in. */
export const SignInput = z.object({
  ...shown,
  /** A drawn name as an SVG path of moves and lines; empty for a typed one. */
  strokes: z
    .string()
    .max(mostStrokes, "agreement.strokes-too-many")
    .regex(/^(?:[ML]\d{1,3} \d{1,3})*$/, "agreement.strokes-shape"),
  /** That the signer agrees to sign electronically. */
  electronic: z.literal(true, { error: "agreement.not-electronic" }),
});
export type SignInput = z.infer<typeof SignInput>;

/** A signature that was given elsewhere, kept with the file that shows it. */
export const CountersignInput = z.object({
  ...shown,
  party: z.enum(signingParties),
  signerName: text(120).min(1),
  content: z
    .instanceof(Uint8Array, { error: "agreement.file-missing" })
    .refine((content) => content.byteLength > 0, "agreement.file-missing")
    .refine((content) => content.byteLength <= mostSignedBytes, "agreement.file-too-large")
    .refine(
      (content) => content.byteLength === 0 || signedMediaType(content) !== null,
      "agreement.file-unknown",
    ),
});
export type CountersignInput = z.infer<typeof CountersignInput>;
