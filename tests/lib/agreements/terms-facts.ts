/** Facts for tests of terms: a loan of one specimen that nothing is planned for yet. */
import type { TermsFacts, TermsSubject } from "#lib/agreements/terms.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const party = {
  name: "Centre",
  address: "Fjord road 1",
  city: "Port Selwyn",
  countryCode: "NO",
  email: "a@b.example",
  phone: "+47 1",
};

export const aTermsSubject = (said: Parameters<typeof aSpecimenCase>[0] = {}): TermsSubject => ({
  ...aSpecimenCase(said),
  latinTitle: "membrum superius",
  series: null,
  condition: { checkedOn: "2027-02-10", grade: "A" },
});

export const termsFacts = (said: Partial<TermsFacts> = {}): TermsFacts => ({
  request: aRequestFact(),
  loan: { number: "L 2026-031", title: "Winter course", version: 1, drawnUpOn: "2027-01-10" },
  lender: party,
  lenderEmergency: { phone: "+47 1", hours: "any hour" },
  borrower: {
    ...party,
    name: "Faculty",
    contactName: "A. Lecturer",
    contactEmail: "l@b.example",
    contactPhone: "+47 2",
  },
  subjects: [aTermsSubject()],
  facilityReport: null,
  certificates: [],
  crates: [],
  stages: [],
  conditions: [],
  opensOn: null,
  currency: "EUR",
  languages: ["en"],
  parameters: {},
  checks: [],
  costing: null,
  cancellation: null,
  amends: null,
  ...said,
});
