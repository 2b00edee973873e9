/**
 * Every kind of paper that can be issued, in one table: who issues it, what of a loan
 * it is about, how its content is written and read again, how it becomes a document.
 * A new paper is a folder with a content and a document, and one entry here. Pure:
 * what may be issued now follows from the case alone.
 */
import type { z } from "zod";
import type { CostingKind } from "#lib/costing/schema.ts";
import type { PaperDocument } from "#lib/papers/blocks.ts";
import {
  ConditionFormContent,
  conditionFormContent,
  conditionFormSubjects,
} from "#lib/papers/condition-form/content.ts";
import { conditionFormDocument } from "#lib/papers/condition-form/document.ts";
import { CostPaperContent, costPaperContent, costSubjects } from "#lib/papers/cost-paper/content.ts";
import { costPaperDocument } from "#lib/papers/cost-paper/document.ts";
import { CrateLabelContent, crateLabelContent } from "#lib/papers/crate-label/content.ts";
import { crateLabelDocument } from "#lib/papers/crate-label/document.ts";
import {
  CustomsContent,
  type CustomsKind,
  customsContent,
  customsSubjects,
} from "#lib/papers/customs-paper/content.ts";
import { customsDocument } from "#lib/papers/customs-paper/document.ts";
import { DispatchNoteContent, dispatchNoteContent } from "#lib/papers/dispatch-note/content.ts";
import { dispatchNoteDocument } from "#lib/papers/dispatch-note/document.ts";
import { closureSubjects, LoanClosureContent, loanClosureContent } from "#lib/papers/loan-closure/content.ts";
import { loanClosureDocument } from "#lib/papers/loan-closure/document.ts";
import { PackingListContent, packingListContent } from "#lib/papers/packing-list/content.ts";
import { packingListDocument } from "#lib/papers/packing-list/document.ts";
import { crateSubjects, numberedCrates, type PaperCase } from "#lib/papers/paper-case.ts";
import type { Issued, PaperHead } from "#lib/papers/paper-content.ts";
import { ReceiptContent, receiptContent } from "#lib/papers/receipt/content.ts";
import { receiptDocument } from "#lib/papers/receipt/document.ts";
import type { Pictures } from "#lib/papers/thumbnail.ts";
import { TravelSheetContent, travelSheetContent } from "#lib/papers/travel-sheet/content.ts";
import { travelSheetDocument } from "#lib/papers/travel-sheet/document.ts";
import type { PaperWords } from "#lib/papers/words.ts";
import type { Sight } from "#lib/people/permission.ts";
import type { Role } from "#lib/people/viewer.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import type { Direction } from "#lib/shipments/schema.ts";

export const paperKinds = [
  "packing list",
  "crate label",
  "dispatch note",
  "outgoing receipt",
  "incoming receipt",
  "quotation",
  "cost statement",
  "pro-forma invoice",
  "carnet list",
  "condition form",
  "travel sheet",
  "loan closure",
] as const;
export type PaperKind = (typeof paperKinds)[number];

/** What a subject names: the loan itself, a stage, a crate on a stage, a specimen. */
export type PaperAbout = "loan" | "stage" | "crate" | "specimen";

export type KindOfPaper = {
  about: PaperAbout;
  issuedBy: readonly Role[];
  /** Who may read it besides who may read the loan's file. */
  sight: Sight | null;
  /** What it can be issued for now. */
  subjects: (paperCase: PaperCase) => string[];
  content: (paperCase: PaperCase, subject: string, head: PaperHead) => PaperHead;
  /** The stored pictures that it shows. */
  pictureIds: (frozen: string) => string[];
  document: (
    frozen: string,
    issued: Omit<Issued<unknown>, "content">,
    words: PaperWords,
    pictures: Pictures,
  ) => PaperDocument;
};

/** @throws {Refusal} "paper.other-format" for a content that this program does not print */
export function readContent<Content>(schema: z.ZodType<Content>, frozen: string): Content {
  let value: unknown = null;
  try {
    value = JSON.parse(frozen);
  } catch {
    value = null;
  }
  const read = schema.safeParse(value);
  if (!read.success) throw new Refusal("conflict", "paper.other-format");
  return read.data;
}

type Entry<Content extends PaperHead> = Omit<KindOfPaper, "content" | "document" | "sight" | "pictureIds"> & {
  schema: z.ZodType<Content>;
  sight?: Sight;
  content: (paperCase: PaperCase, subject: string, head: PaperHead) => Content;
  pictureIds?: (content: Content) => string[];
  document: (issued: Issued<Content>, words: PaperWords, pictures: Pictures) => PaperDocument;
};

function kindOf<Content extends PaperHead>(entry: Entry<Content>): KindOfPaper {
  const { schema, sight, content, pictureIds, document, ...rest } = entry;
  return {
    ...rest,
    sight: sight ?? null,
    content: (paperCase, subject, head) => schema.parse(content(paperCase, subject, head)),
    pictureIds: (frozen) => pictureIds?.(readContent(schema, frozen)) ?? [],
    document: (frozen, issued, words, pictures) =>
      document({ content: readContent(schema, frozen), ...issued }, words, pictures),
  };
}

const stagesGoing = (direction: Direction) => (paperCase: PaperCase) =>
  paperCase.specimens.some(({ isLive }) => isLive)
    ? paperCase.stages.filter((stage) => stage.direction === direction).map(({ id }) => id)
    : [];

const stagesOfCrates = (paperCase: PaperCase) =>
  numberedCrates(paperCase).length === 0 ? [] : paperCase.stages.map(({ id }) => id);

const receipt = (direction: Direction) =>
  kindOf({
    about: "stage",
    issuedBy: ["registrar"],
    schema: ReceiptContent,
    subjects: stagesGoing(direction),
    content: receiptContent,
    document: receiptDocument,
  });

const costPaper = (kind: CostingKind) =>
  kindOf({
    about: "loan",
    issuedBy: ["registrar"],
    sight: "costings",
    schema: CostPaperContent,
    subjects: costSubjects(kind),
    content: (paperCase, _loan, head) => costPaperContent(paperCase, kind, head),
    document: costPaperDocument,
  });

const customsPaper = (kind: CustomsKind, ways: readonly Direction[]) =>
  kindOf({
    about: "stage",
    issuedBy: ["registrar"],
    sight: "replacementCost",
    schema: CustomsContent,
    subjects: customsSubjects(ways),
    content: (paperCase, stageId, head) => customsContent(kind, paperCase, stageId, head),
    document: customsDocument,
  });

export const kindsOfPaper: Readonly<Record<PaperKind, KindOfPaper>> = {
  "packing list": kindOf({
    about: "crate",
    issuedBy: ["registrar", "curator"],
    schema: PackingListContent,
    subjects: crateSubjects,
    content: packingListContent,
    pictureIds: ({ contents }) => contents.flatMap(({ pictureId }) => pictureId ?? []),
    document: packingListDocument,
  }),
  "crate label": kindOf({
    about: "crate",
    issuedBy: ["registrar", "curator"],
    schema: CrateLabelContent,
    subjects: crateSubjects,
    content: crateLabelContent,
    document: crateLabelDocument,
  }),
  "dispatch note": kindOf({
    about: "stage",
    issuedBy: ["registrar"],
    schema: DispatchNoteContent,
    subjects: stagesOfCrates,
    content: dispatchNoteContent,
    document: dispatchNoteDocument,
  }),
  "outgoing receipt": receipt("out"),
  "incoming receipt": receipt("home"),
  quotation: costPaper("quotation"),
  "cost statement": costPaper("cost statement"),
  "pro-forma invoice": customsPaper("pro-forma invoice", ["out", "home"]),
  "carnet list": customsPaper("carnet list", ["out"]),
  "condition form": kindOf({
    about: "loan",
    issuedBy: ["registrar", "curator"],
    sight: "conditionRecords",
    schema: ConditionFormContent,
    subjects: conditionFormSubjects,
    content: conditionFormContent,
    document: conditionFormDocument,
  }),
  "travel sheet": kindOf({
    about: "stage",
    issuedBy: ["registrar"],
    schema: TravelSheetContent,
    subjects: stagesOfCrates,
    content: travelSheetContent,
    document: travelSheetDocument,
  }),
  "loan closure": kindOf({
    about: "loan",
    issuedBy: ["registrar"],
    sight: "conditionRecords",
    schema: LoanClosureContent,
    subjects: closureSubjects,
    content: loanClosureContent,
    document: loanClosureDocument,
  }),
};

export function isPaperKind(kind: string): kind is PaperKind {
  return (paperKinds as readonly string[]).includes(kind);
}
