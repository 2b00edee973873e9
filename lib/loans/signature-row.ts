/** One party's signature as pages and papers read it: what was signed, by whom, when and how. Pure. */
import type { SignatureMethod } from "#lib/agreements/signing.ts";

export type SignatureRow = {
  party: string;
  signerName: string;
  signerRole: string;
  signedAt: string;
  method: SignatureMethod;
  /** A drawn name, as the path of an SVG. */
  strokes: string;
  /** The file that stands as the signature, where it was signed elsewhere. */
  file: { id: string; sha256: string } | null;
  /** Whether the signer agreed to sign electronically. */
  electronic: boolean;
};

/** What is kept of it, as the database gives it. */
type Kept = Omit<SignatureRow, "signedAt" | "method"> & { signedAt: Date; method: string };

export function toSignature(kept: Kept): SignatureRow {
  const { party, signerName, signerRole, signedAt, method, strokes, file, electronic } = kept;
  return {
    party,
    signerName,
    signerRole,
    signedAt: signedAt.toISOString(),
    method: method as SignatureMethod,
    strokes,
    file,
    electronic,
  };
}
