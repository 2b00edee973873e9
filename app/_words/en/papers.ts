/** Words of issued papers, in English: in a loan's file, and on the page where anyone who holds one checks it. */
import type { PaperKind } from "#lib/papers/paper-kinds.ts";
import type { PaperSize } from "#lib/papers/sheet.ts";
import type { Direction } from "#lib/shipments/schema.ts";

const kinds: Record<PaperKind | "agreement", string> = {
  "packing list": "Packing list",
  "crate label": "Crate label",
  "dispatch note": "Dispatch note",
  "outgoing receipt": "Outgoing receipt",
  "incoming receipt": "Incoming receipt",
  quotation: "Quotation",
  "cost statement": "Cost statement",
  "pro-forma invoice": "Pro-forma invoice",
  "carnet list": "List of goods for a carnet",
  "condition form": "Condition form",
  "travel sheet": "Courier's travel sheet",
  "loan closure": "Closure of the loan",
  agreement: "Loan agreement",
};

const directions: Record<Direction, string> = { out: "way out", home: "way home" };
const sizes: Record<PaperSize, string> = { a4: "A4", letter: "Letter" };

export const papersWords = {
  refusals: {
    "paper.not-now": "This paper cannot be issued now: what it is about is not planned or not drawn up.",
    "paper.unchanged":
      "Nothing has changed since the newest version in this language, so there is nothing to issue anew.",
    "paper.other-format": "This paper was issued in a form that this program does not print.",
  },
  title: "Papers",
  kinds,
  directions,
  sizes,
  about:
    "A paper is frozen when it is issued. What changes later is a new version, and the code on the old one says so. The same paper in another language stands beside it.",
  none: "No paper has been issued.",
  noneYet: "Papers for the way follow once a stage is planned.",
  caption: "Papers in their newest version",
  earlierCaption: "Earlier versions",
  paper: "Paper",
  subject: "For",
  version: "Version",
  issued: "Issued",
  issuedBy: "By",
  read: "PDF",
  readAs: (kind: string, subject: string, version: number, language: string, size: string) =>
    [kind, subject, `version ${version}`, language, size].filter(Boolean).join(", "),
  earlier: (count: number) => (count === 1 ? "1 earlier version" : `${count} earlier versions`),
  issue: "Issue papers",
  which: "Which",
  group: (kind: string, way: string, count: number, perCrate: boolean) =>
    [kind, way, perCrate ? (count === 1 ? "1 crate" : `${count} crates`) : ""].filter(Boolean).join(", "),
  language: "Language",
  languages: { en: "English", de: "German", fr: "French" } as Readonly<Record<string, string>>,
  done: (count: number) => (count === 1 ? "1 paper issued." : `${count} papers issued.`),
  check: {
    title: "Check of a paper",
    valid: (which: string) => `Valid: ${which}.`,
    unsigned: (which: string) => `Drawn up and not signed by both sides yet: ${which}.`,
    notValid: (which: string) => `Not valid any more: ${which}.`,
    /** A version by its number and languages: "version 2, in English and French". */
    which: (version: number, languages: readonly string[]) =>
      languages.length === 0 ? `version ${version}` : `version ${version}, in ${languages.join(" and ")}`,
    beside: (others: string) => `The same is valid beside it: ${others}.`,
    replaced: (others: string) =>
      `What holds now is another one: ${others}. Ask whoever gave you the paper for it.`,
    loan: "Loan",
    languages: "Language",
    hash: "SHA-256",
    compare: "Version, date and SHA-256 are the same on the paper in your hands, or it is not this paper.",
    unknownTitle: "No such paper",
    unknown: "No paper bears this code. Compare it with the code on the paper, letter by letter.",
  },
} as const;
