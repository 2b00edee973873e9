/**
 * What loans of the scenario were quoted, how the borrowers answered, and what a
 * closed one came to. A quotation begins with the scale; what is named here differs.
 */
import type { CountedCode, LineCode, quotationAnswers } from "#lib/costing/schema.ts";
import type { Day } from "#seed/scenario/shape.ts";

export type ScenarioQuotation = {
  day: Day;
  /** Days on which it can be accepted. */
  validDays: number;
  /** Quantities that the loan does not say by itself. */
  quantities: Partial<Record<CountedCode, string>>;
  others?: { note: string; minor: number; currency: string; taxPercent: string }[];
  exchange?: { from: string; rate: string; quotedOn: Day }[];
  note?: string;
  answered?: { day: Day; outcome: (typeof quotationAnswers)[number]; remark?: string };
};

/** "all" is what is open on that day, in either direction. */
export type ScenarioPayment = { day: Day; minor: number | "all"; reference: string };

export type ScenarioMoney = {
  /** Hours of the conservator before it leaves, which the quotation counts. */
  treatment?: { day: Day; specimen: string; hours: string; work: string }[];
  quotations: ScenarioQuotation[];
  paid?: ScenarioPayment[];
  /** What lines came to that did not come to what was quoted. */
  stated?: { day: Day; actual: Partial<Record<LineCode, number>>; note: string };
};

/** By the key of the loan. */
export const loanMoney: Readonly<Record<string, ScenarioMoney>> = {
  "closed exhibition": {
    quotations: [
      {
        day: -584,
        validDays: 30,
        quantities: {
          preparation: "2.5",
          "condition check": "4",
          packing: "6",
          "transport out by distance": "318",
          "transport out": "0",
          "transport home by distance": "318",
          "transport home": "0",
          "courier days": "2",
          installation: "3.5",
        },
        others: [{ note: "Ferry, both ways", minor: 284_500, currency: "SEK", taxPercent: "0" }],
        exchange: [{ from: "SEK", rate: "0.0893", quotedOn: -585 }],
        answered: { day: -579, outcome: "accepted" },
      },
    ],
    paid: [
      { day: -530, minor: "all", reference: "Bank line 11 204" },
      { day: -398, minor: "all", reference: "Bank line 14 870" },
    ],
    stated: {
      day: -402,
      actual: { packing: 29_870, "return and recall": 0, contingency: 0, installation: 23_200 },
      note: "Nothing was called back, so what was held ready for a recall is not asked for.",
    },
  },
  agreed: {
    quotations: [
      {
        day: -56,
        validDays: 21,
        quantities: { mount: "2", packing: "4", "courier days": "3" },
        answered: {
          day: -53,
          outcome: "refused",
          remark: "Our own stands fit both specimens; please quote without mounts and with one courier day.",
        },
      },
      {
        day: -51,
        validDays: 21,
        quantities: { packing: "4", "courier days": "1" },
        note: "Without mounts, as asked.",
        answered: { day: -47, outcome: "accepted" },
      },
    ],
  },
  accepted: {
    quotations: [{ day: -21, validDays: 14, quantities: { packing: "3", "courier days": "1" } }],
  },
  packed: {
    treatment: [
      {
        day: -46,
        specimen: "AN 2017.0012",
        hours: "1.25",
        work: "Take dust off the bronchi; tighten the lock of the stand.",
      },
      { day: -46, specimen: "AN 2015.0081", hours: "0.25", work: "Renew the number on the mount." },
    ],
    quotations: [
      {
        day: -44,
        validDays: 30,
        quantities: { packing: "5", installation: "2", "courier days": "2" },
        answered: { day: -39, outcome: "accepted" },
      },
    ],
    paid: [{ day: -17, minor: "all", reference: "Bank line 20 311" }],
  },
  "sheets at venue": {
    quotations: [
      {
        day: -97,
        validDays: 30,
        quantities: { packing: "4", "courier days": "1" },
        answered: { day: -95, outcome: "accepted" },
      },
    ],
    paid: [{ day: -60, minor: "all", reference: "Bank line 19 058" }],
  },
  overdue: {
    quotations: [
      {
        day: -210,
        validDays: 30,
        quantities: { packing: "2.5", "courier days": "1" },
        answered: { day: -206, outcome: "accepted" },
      },
    ],
    paid: [{ day: -160, minor: "all", reference: "Bank line 16 702" }],
  },
  "called off": {
    quotations: [
      {
        day: -196,
        validDays: 30,
        quantities: { packing: "3", "courier days": "1" },
        answered: { day: -190, outcome: "accepted" },
      },
    ],
  },
};
