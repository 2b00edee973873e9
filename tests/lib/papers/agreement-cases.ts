/** Agreements for tests of papers: real terms of any number of specimens, drawn up as the office draws them up. */
import { type AgreementTerms, agreementTerms, type TermsCrate, type TermsSubject } from "#lib/loans/terms.ts";
import type { PaperSignature } from "#lib/papers/agreement-document.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

/** Letters beyond Latin-1 that a paper has to print: ≥ ° µ č ł Ω Ж. */
export const manyLetters = "Čeněk Łuczak ≥ 18 °C µ Ω Ж";

type Said = NonNullable<Parameters<typeof aSpecimenCase>[0]>;

const kinds: (Said["specimen"] & { latinTitle: string })[] = [
  {
    title: "Upper limb, brachial plexus and axillary vessels",
    latinTitle: "Plexus brachialis",
    kind: "body region",
    size: { lengthMm: 780, widthMm: 240, heightMm: 160 },
    massKg: 4.35,
    components: [
      { name: "limb on rod", count: 1, detachable: false },
      { name: "scapula, loose", count: 1, detachable: true },
      { name: "label pin", count: 12, detachable: true },
    ],
  },
  {
    title: "Heart, opened",
    latinTitle: "Cor",
    kind: "organ",
    size: { lengthMm: 130, widthMm: 95, heightMm: 80 },
    mountedSize: { lengthMm: 180, widthMm: 180, heightMm: 210 },
    massKg: 0.412,
    mountedMassKg: 1.2,
    replacementCost: {
      minor: 385_050,
      currency: "EUR",
      basis: "cost to replace",
      statedOn: "2026-03-12",
      statedBy: "Collection manager",
    },
  },
  {
    title: "Fetal skull in fluid",
    latinTitle: "Cranium fetale",
    kind: "fluid-preserved specimen",
    preparation: "fluid-preserved",
    fluidName: "ethanol",
    fluidPercent: 70,
    use: "viewing only",
    light: "sensitive",
    size: { lengthMm: 160, widthMm: 160, heightMm: 240 },
    massKg: 3,
    hazards: [{ substance: "alcohol", percent: 70, note: "" }],
  },
  {
    title: "Transverse section of the trunk at the liver",
    latinTitle: "Sectio transversalis trunci",
    kind: "sheet",
    preparation: "epoxy sheet",
    use: "viewing only",
    size: { lengthMm: 420, widthMm: 300, heightMm: 5 },
    massKg: 0.8,
  },
  {
    title: "Hind limb of a horse",
    latinTitle: "Membrum pelvinum",
    kind: "body region",
    human: false,
    scientificName: "Equus caballus",
    size: { lengthMm: 1420, widthMm: 380, heightMm: 310 },
    massKg: 21.75,
  },
];

function subject(index: number): TermsSubject {
  const { latinTitle, ...specimen } = kinds[index % kinds.length] ?? { latinTitle: "" };
  const isHuman = specimen.human ?? true;
  const consent = aConsentFact(
    index % 3 === 0
      ? {}
      : {
          donorCode: "D-7QX4M",
          answers: allScopes("granted", { "public display, paid": "refused", sampling: "refused" }),
          audience: "professionals only",
          territoriesAllowed: ["NO", "IE"],
        },
  );
  return {
    ...aSpecimenCase({
      specimen: {
        ...specimen,
        accessionNumber: `AN ${2004 + (index % 20)}.${String(100 + index).padStart(4, "0")}`,
      },
      provenance: {
        consents: isHuman ? [consent] : [],
        donorsWithoutConsent: 0,
        permits: [],
        title: {
          status: "owned",
          ownerName: "",
          leaveToLend: false,
          leaveReference: "",
          recordedOn: "2020-01-01",
        },
      },
    }),
    latinTitle,
    series: specimen.kind === "sheet" ? { code: "TR-3", number: 40 + index } : null,
    condition: { checkedOn: "2026-11-10", grade: index % 4 === 3 ? "B" : "A" },
  };
}

const crate = (index: number, subjects: readonly TermsSubject[]): TermsCrate => ({
  code: `C-${String(index + 1).padStart(2, "0")}`,
  kind: index % 2 === 0 ? "double-case" : "full-face-sheet-carrier",
  outerLengthMm: 1180 + 20 * index,
  outerWidthMm: 640,
  outerHeightMm: 560,
  grossMassKg: 38.4 + index,
  handling: index % 2 === 0 ? "two-persons" : "pallet-truck",
  orientation: "this-side-up",
  contents: subjects.map(({ specimen }) => specimen.accessionNumber),
});

export function someTerms(count: number, said: { title?: string; place?: string } = {}): AgreementTerms {
  const subjects = Array.from({ length: count }, (_none, index) => subject(index));
  const crates = Array.from({ length: Math.ceil(count / 6) }, (_none, index) =>
    crate(index, subjects.slice(index * 6, index * 6 + 6)),
  );
  return agreementTerms({
    request: aRequestFact({ venue: aVenueFact({ countryCode: "IE" }), pictures: ["internal"] }),
    loan: {
      number: "L 2026-031",
      title: said.title ?? "Winter course in regional anatomy",
      version: 2,
      drawnUpOn: "2026-11-25",
    },
    lender: {
      name: "Lending office for anatomical specimens",
      address: said.place ?? "Fjord road 1",
      city: "Port Selwyn",
      countryCode: "NO",
      email: "office@lending.example",
      phone: "+47 00 00 01",
    },
    borrower: {
      name: "Faculty of medicine at Carrick",
      address: "North quay 12",
      city: "Carrick",
      countryCode: "IE",
      email: "registry@carrick.example",
      phone: "+353 00 00 02",
      contactName: "A. Lecturer",
      contactEmail: "lecturer@carrick.example",
      contactPhone: "+353 00 00 03",
    },
    subjects,
    certificates: [
      {
        insurer: "Northern mutual cover",
        policyNumber: "NM-77120/4",
        amount: { minor: 90_000_000, currency: "EUR" },
        startsAt: "2027-02-10T06:00:00Z",
        endsAt: "2027-07-20T18:00:00Z",
        coversTransit: true,
        territories: ["NO", "IE", "GB"],
      },
    ],
    crates,
    stages: [
      { direction: "out", carrier: "Careful carriers", departsOn: "2027-02-26", arrivesOn: "2027-03-01" },
      { direction: "home", carrier: "Careful carriers", departsOn: "2027-07-01", arrivesOn: "2027-07-04" },
    ],
    conditions: [
      {
        office: "curator",
        decidedOn: "2026-11-20",
        conditions: "The jars stay in the first room.\nA technician of the lender unpacks the sheets.",
        reference: "",
      },
      {
        office: "oversight body",
        decidedOn: "2026-11-22",
        conditions: "",
        reference: "Minute 14/2026",
      },
    ],
  });
}

export const hashOf = (terms: AgreementTerms) => sha256Hex(canonicalText(terms));

export function bothSigned(terms: AgreementTerms): PaperSignature[] {
  return [
    {
      party: "lender",
      signerName: "Čeněk Łuczak",
      signerRole: "Registrar",
      signedAt: "2026-11-26T09:15:00Z",
      sha256: hashOf(terms),
    },
    {
      party: "borrower",
      signerName: "Aoife Ní Bhriain",
      signerRole: "Registrar of the faculty",
      signedAt: "2026-11-27T14:02:00Z",
      sha256: hashOf(terms),
    },
  ];
}
