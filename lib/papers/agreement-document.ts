/**
 * A loan agreement as a document: its parts in the order in which they prevail
 * (conditions of the decision, schedule with its limits, clauses), framed by the
 * parties and the places for their signatures. Everything comes from the terms,
 * which are what is hashed and signed; only the fingerprint and the signatures are
 * added. The order of the clauses and their words are those of the terms.
 */
import type { AgreementTerms } from "#lib/loans/frozen-terms.ts";
import { consentBlocks } from "#lib/papers/agreement-consent.ts";
import { limitsBlocks } from "#lib/papers/agreement-limits.ts";
import {
  conditionsBlocks,
  coverBlocks,
  loanBlocks,
  partiesBlocks,
  transportBlocks,
} from "#lib/papers/agreement-parts.ts";
import { scheduleBlocks } from "#lib/papers/agreement-schedule.ts";
import type { Block, PaperDocument, SignaturePlace } from "#lib/papers/blocks.ts";
import { fill, type PaperWords } from "#lib/papers/words.ts";

/** One party's signature as it is printed. */
export type PaperSignature = {
  party: "lender" | "borrower";
  signerName: string;
  signerRole: string;
  /** ISO 8601 */
  signedAt: string;
  sha256: string;
};

export type AgreementFacts = {
  terms: AgreementTerms;
  /** SHA-256 of the canonical terms, 64 hexadecimal digits */
  sha256: string;
  signatures: readonly PaperSignature[];
};

function signaturePlace(
  party: PaperSignature["party"],
  { terms, signatures }: AgreementFacts,
  words: PaperWords,
): SignaturePlace {
  const said = words.signatures;
  const signature = signatures.find((candidate) => candidate.party === party);
  return {
    party: party === "lender" ? said.forLender : said.forBorrower,
    organisation: terms[party].name,
    signedBy: signature?.signerName ?? null,
    lineLabel: signature === undefined ? said.signature : said.signedInProgram,
    facts:
      signature === undefined
        ? [
            { label: said.name, value: null },
            { label: said.role, value: null },
            { label: said.time, value: null },
          ]
        : [
            { label: said.name, value: signature.signerName },
            { label: said.role, value: signature.signerRole },
            { label: said.time, value: words.write.moment(signature.signedAt) },
            { label: said.hashShort, value: [{ text: signature.sha256, emphasis: "code" }] },
          ],
  };
}

function signatureBlocks(facts: AgreementFacts, words: PaperWords): Block[] {
  const said = words.signatures;
  return [
    { kind: "paragraph", text: said.statement },
    {
      kind: "definitions",
      rows: [
        { term: said.version, paragraphs: [String(facts.terms.loan.version)] },
        { term: said.hash, paragraphs: [[{ text: facts.sha256, emphasis: "code" }]] },
      ],
    },
    {
      kind: "signatures",
      places: [signaturePlace("lender", facts, words), signaturePlace("borrower", facts, words)],
    },
  ];
}

/** "A", "B" … for the parts; after "Z" comes "AA". */
export function partMark(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : partMark(Math.floor(index / 26) - 1) + letter;
}

type Part = { heading: keyof PaperWords["sections"]; blocks: readonly Block[] };

export function agreementDocument(facts: AgreementFacts, words: PaperWords): PaperDocument {
  const { terms, sha256 } = facts;
  const { agreement } = words;
  const { number, title, version, drawnUpOn } = terms.loan;
  const parts: Part[] = [
    { heading: "parties", blocks: partiesBlocks(terms, words) },
    { heading: "loan", blocks: loanBlocks(terms, words) },
    ...(terms.conditions.length === 0
      ? []
      : [{ heading: "conditions" as const, blocks: conditionsBlocks(terms, words) }]),
    { heading: "schedule", blocks: scheduleBlocks(terms, words) },
    { heading: "limits", blocks: limitsBlocks(terms, words) },
    ...(terms.schedule.some((row) => row.isHuman)
      ? [{ heading: "consent" as const, blocks: consentBlocks(terms, words) }]
      : []),
    { heading: "transport", blocks: transportBlocks(terms, words) },
    { heading: "cover", blocks: coverBlocks(terms, words) },
    {
      heading: "clauses",
      blocks: terms.clauses.map((clause) => ({
        kind: "clause",
        mark: String(clause.number),
        heading: clause.heading,
        text: clause.text,
      })),
    },
  ];
  const blocksOf = ({ heading, blocks }: Part, index: number): Block[] => [
    { kind: "heading", mark: partMark(index), text: words.sections[heading] },
    ...blocks,
  ];
  const contents = parts.flatMap(blocksOf);
  const signing = blocksOf({ heading: "signatures", blocks: signatureBlocks(facts, words) }, parts.length);
  // nobody signs a page that holds nothing but signatures: the last clause goes with them
  const closing: Block = { kind: "together", blocks: [...contents.slice(-1), ...signing] };
  return {
    head: {
      left: `${agreement.name} ${number}`,
      right: fill(agreement.version, { version }),
    },
    foot: {
      left: [{ text: agreement.termsHash }, { text: sha256, emphasis: "code" }],
      pageOf: agreement.pageOf,
    },
    blocks: [
      {
        kind: "title",
        overline: `${agreement.name} ${number}`,
        title,
        lines: [
          fill(agreement.subtitle, { lender: terms.lender.name, borrower: terms.borrower.name }),
          fill(agreement.drawnUp, { version, day: words.write.day(drawnUpOn) }),
        ],
      },
      ...contents.slice(0, -1),
      closing,
    ],
  };
}
