/**
 * A loan agreement as a document: the parties, the loan, the conditions of the
 * decision, the clauses, the places for the signatures, and then the annexes A to M.
 * Terms of the earlier form keep the order in which they were signed. Everything
 * comes from the terms, which are what is hashed and signed; only the fingerprint and
 * the signatures are added. The words of the clauses are those of the terms. Where
 * the terms have two languages, headings are in both.
 */
import type { AgreementTerms, CurrentTerms, EarlierTerms } from "#lib/agreements/frozen-terms.ts";
import { annexBlocks } from "#lib/papers/agreement-annexes.ts";
import { clausesBlocks, plainClauses } from "#lib/papers/agreement-clauses.ts";
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
import type { Block, PaperDocument } from "#lib/papers/blocks.ts";
import type { SchedulePictures } from "#lib/papers/schedule-pictures.ts";
import { type PaperSignature, signaturePlace } from "#lib/papers/signature-place.ts";
import { inBoth } from "#lib/papers/two-languages.ts";
import { fill, type PaperWords } from "#lib/papers/words.ts";

export type AgreementFacts = {
  terms: AgreementTerms;
  /** SHA-256 of the canonical terms, 64 hexadecimal digits */
  sha256: string;
  signatures: readonly PaperSignature[];
  /** What stands beside the schedule and is no part of the terms; what has none is drawn from its row. */
  pictures?: SchedulePictures;
};

function signatureBlocks(facts: AgreementFacts, words: PaperWords): Block[] {
  const said = words.signatures;
  const placeOf = (party: PaperSignature["party"]) =>
    signaturePlace(
      {
        party,
        organisation: facts.terms[party].name,
        signature: facts.signatures.find((candidate) => candidate.party === party),
      },
      words,
    );
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
      places: [placeOf("lender"), placeOf("borrower")],
    },
  ];
}

/** "A", "B" … for the parts; after "Z" comes "AA". */
export function partMark(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : partMark(Math.floor(index / 26) - 1) + letter;
}

type Part = { heading: keyof PaperWords["sections"]; blocks: readonly Block[] };

const conditionsPart = (terms: AgreementTerms, words: PaperWords): Part[] =>
  terms.conditions.length === 0 ? [] : [{ heading: "conditions", blocks: conditionsBlocks(terms, words) }];

/** The order in which the earlier form was signed; its parts bear the letters. */
function earlierParts(terms: EarlierTerms, words: PaperWords, pictures: SchedulePictures): Part[] {
  return [
    { heading: "parties", blocks: partiesBlocks(terms, words) },
    { heading: "loan", blocks: loanBlocks(terms, words) },
    ...conditionsPart(terms, words),
    { heading: "schedule", blocks: scheduleBlocks(terms, words, { pictures }) },
    { heading: "limits", blocks: limitsBlocks(terms, words) },
    ...(terms.schedule.some((row) => row.isHuman)
      ? [{ heading: "consent" as const, blocks: consentBlocks(terms, words) }]
      : []),
    { heading: "transport", blocks: transportBlocks(terms, words) },
    { heading: "cover", blocks: coverBlocks(terms, words) },
    { heading: "clauses", blocks: plainClauses(terms) },
  ];
}

function currentParts(terms: CurrentTerms, words: PaperWords): Part[] {
  return [
    { heading: "parties", blocks: partiesBlocks(terms, words) },
    { heading: "loan", blocks: loanBlocks(terms, words) },
    ...conditionsPart(terms, words),
    { heading: "clauses", blocks: clausesBlocks(terms, words) },
  ];
}

const romanMarks = ["I", "II", "III", "IV", "V", "VI"] as const;
/** Letters are the annexes' own. */
const romanMark = (index: number): string => romanMarks[index] ?? String(index + 1);

/** @param second the words of the second language of the terms, where they have one */
export function agreementDocument(
  facts: AgreementFacts,
  words: PaperWords,
  second: PaperWords | null = null,
): PaperDocument {
  const { terms, sha256, pictures = new Map() } = facts;
  const { agreement } = words;
  const { number, title, version, drawnUpOn } = terms.loan;
  const isEarlier = terms.format === "loan-agreement-2";
  const parts = isEarlier ? earlierParts(terms, words, pictures) : currentParts(terms, words);
  const both = inBoth(words, second);
  const markOf = isEarlier ? partMark : romanMark;
  const blocksOf = ({ heading, blocks }: Part, index: number): Block[] => [
    { kind: "heading", mark: markOf(index), text: both(({ sections }) => sections[heading]) },
    ...blocks,
  ];
  const contents = parts.flatMap(blocksOf);
  const signing = blocksOf({ heading: "signatures", blocks: signatureBlocks(facts, words) }, parts.length);
  // nobody signs a page that holds nothing but signatures: the last clause goes with them
  const last = contents.at(-1);
  const closing: Block[] =
    last?.kind === "clause"
      ? [...contents.slice(0, -1), { kind: "together", blocks: [last, ...signing] }]
      : [...contents, { kind: "together", blocks: signing }];
  return {
    decimalMark: words.write.decimalMark,
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
        overline: `${both((said) => said.agreement.name)} ${number}`,
        title,
        lines: [
          fill(agreement.subtitle, { lender: terms.lender.name, borrower: terms.borrower.name }),
          fill(agreement.drawnUp, { version, day: words.write.day(drawnUpOn) }),
        ],
      },
      ...closing,
      ...(isEarlier ? [] : annexBlocks(terms, words, { second, pictures })),
    ],
  };
}
