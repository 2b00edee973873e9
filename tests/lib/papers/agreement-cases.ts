/** Agreements for tests of papers: real terms of any number of specimens, drawn up as the office draws them up. */
import type { AgreementTerms, CurrentTerms, TermsCrate } from "#lib/agreements/frozen-terms.ts";
import { agreementTerms, type TermsFacts, type TermsSubject } from "#lib/agreements/terms.ts";
import type { PaperSignature } from "#lib/papers/signature-place.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

/** Letters beyond Latin-1 that a paper has to print: ≥ ° µ č ł Ω Ж. */
export const manyLetters = "Čeněk Łuczak ≥ 18 °C µ Ω Ж";

type Said = NonNullable<Parameters<typeof aSpecimenCase>[0]>;

type Kind = Said["specimen"] & { latinTitle: string };

const kinds: Kind[] = [
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

/** Sheets of one series, as a course borrows them: all alike but for what they cut. */
const sheets: Kind[] = [
  ["Sheet at the arch of the aorta", "Sectio transversalis, arcus aortae"],
  ["Sheet at the bifurcation of the trachea", "Sectio transversalis, bifurcatio tracheae"],
  ["Sheet at the aortic valve", "Sectio transversalis, valva aortae"],
  ["Sheet at the dome of the liver", "Sectio transversalis, hepar"],
].map(([title = "", latinTitle = ""], index) => ({
  title,
  latinTitle,
  kind: "sheet",
  preparation: "epoxy sheet",
  use: "handling",
  size: { lengthMm: 420 + 6 * index, widthMm: 300, heightMm: 4 },
  massKg: 0.62 + 0.045 * index,
  replacementCost: {
    minor: 140_000,
    currency: "EUR",
    basis: "preparation cost",
    statedOn: "2026-05-01",
    statedBy: "Collection manager",
  },
}));

const wholeBody: Kind = {
  title: "Whole body, standing, muscles and great vessels",
  latinTitle: "Corpus humanum, musculi et vasa magna",
  kind: "whole body",
  use: "viewing only",
  size: { lengthMm: 620, widthMm: 480, heightMm: 1720 },
  mountedSize: { lengthMm: 760, widthMm: 760, heightMm: 1860 },
  massKg: 41,
  mountedMassKg: 86,
  components: [
    { name: "steel plinth", count: 1, detachable: true },
    { name: "linen veil", count: 1, detachable: true },
    { name: "sternum with rib cartilages", count: 1, detachable: true },
    { name: "left forearm, by a pin", count: 1, detachable: true },
  ],
  replacementCost: {
    minor: 9_600_000,
    currency: "EUR",
    basis: "preparation cost",
    statedOn: "2026-01-09",
    statedBy: "Collection manager",
  },
};

const jars: Kind[] = [
  ["Heart of a newborn", "Cor neonati", "ethanol", 70],
  ["Larynx, opened from behind", "Larynx", "formaldehyde solution", 4],
  ["Kidney with horseshoe form", "Ren arcuatus", "ethanol", 60],
  ["Stomach with ulcer", "Gaster", "glycerol", null],
].map(([title, latinTitle, fluidName, fluidPercent], index) => ({
  title: String(title),
  latinTitle: String(latinTitle),
  kind: "fluid-preserved specimen",
  preparation: "fluid-preserved",
  fluidName: fluidName as "ethanol",
  fluidPercent: fluidPercent as number | null,
  use: "viewing only",
  light: "sensitive",
  size: { lengthMm: 140 + 20 * index, widthMm: 140, heightMm: 220 + 30 * index },
  massKg: 2.4 + 0.35 * index,
  hazards: [
    { substance: index === 1 ? "formaldehyde" : "alcohol", percent: fluidPercent as number | null, note: "" },
  ],
}));

export function subject(index: number, of: readonly Kind[] = kinds): TermsSubject {
  const { latinTitle, ...specimen } = of[index % of.length] ?? { latinTitle: "" };
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

type Asked = Partial<TermsFacts> & { title?: string; place?: string };

export function someTerms(count: number, said: Asked = {}): CurrentTerms {
  return termsOf(
    Array.from({ length: count }, (_none, index) => subject(index)),
    said,
  );
}

/** A large loan of sheets of one series, all with one set of limits. */
export function sheetTerms(count: number): CurrentTerms {
  return termsOf(
    Array.from({ length: count }, (_none, index) => subject(index, sheets)),
    { title: "Sectional anatomy of the trunk" },
  );
}

/** A whole body among jars, under limits of a house that give the two no air in common. */
export function conflictingTerms(): CurrentTerms {
  const terms = termsOf(
    Array.from({ length: 5 }, (_none, index) => subject(index, [wholeBody, ...jars])),
    { title: "The body in rooms" },
  );
  const [body, ...others] = terms.schedule.map((row) => row.accessionNumber);
  const { limits, sources } = terms.groupLimits;
  const conflicts = others.flatMap((needsAtLeast): CurrentTerms["groupLimits"]["conflicts"] => [
    {
      quantity: "temperatureC",
      needsAtLeast: body ?? "",
      atLeast: 21,
      allowsAtMost: needsAtLeast,
      atMost: 20,
    },
    { quantity: "humidity", needsAtLeast, atLeast: 0.55, allowsAtMost: body ?? "", atMost: 0.525 },
  ]);
  return {
    ...terms,
    groupLimits: { limits: { ...limits, temperatureC: null, humidity: null }, conflicts, sources },
  };
}

export function termsOf(subjects: readonly TermsSubject[], { title, place, ...said }: Asked): CurrentTerms {
  const count = subjects.length;
  const crates = Array.from({ length: Math.ceil(count / 6) }, (_none, index) =>
    crate(index, subjects.slice(index * 6, index * 6 + 6)),
  );
  return agreementTerms({
    request: aRequestFact({ venue: aVenueFact({ countryCode: "IE" }), pictures: ["internal"] }),
    loan: {
      number: "L 2026-031",
      title: title ?? "Winter course in regional anatomy",
      version: 2,
      drawnUpOn: "2026-11-25",
    },
    lender: {
      name: "Lending office for anatomical specimens",
      address: place ?? "Fjord road 1",
      city: "Port Selwyn",
      countryCode: "NO",
      email: "office@lending.example",
      phone: "+47 00 00 01",
    },
    lenderEmergency: { phone: "+47 00 00 09", hours: "any hour" },
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
    facilityReport: { version: 3, reportedOn: "2026-10-15", validUntil: "2028-10-15" },
    certificates: [
      {
        insurer: "Northern mutual cover",
        policyNumber: "NM-77120/4",
        amount: { minor: 90_000_000, currency: "EUR" },
        startsAt: "2027-02-10T06:00:00Z",
        endsAt: "2027-07-20T18:00:00Z",
        coversTransit: true,
        coversStay: true,
        territories: ["NO", "IE", "GB"],
      },
    ],
    crates,
    stages: [
      {
        direction: "out",
        carrier: "Careful carriers",
        through: ["SE", "DK"],
        departsOn: "2027-02-26",
        arrivesOn: "2027-03-01",
      },
      {
        direction: "home",
        carrier: "Careful carriers",
        through: [],
        departsOn: "2027-07-01",
        arrivesOn: "2027-07-04",
      },
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
    opensOn: "2027-03-15",
    currency: "EUR",
    languages: ["en"],
    parameters: {},
    checks: subjects.map(({ specimen }, index) => ({
      accessionNumber: specimen.accessionNumber,
      occasion: "out",
      checkedOn: "2026-11-10",
      grade: "A",
      checkId: `check ${index}`,
      sha256: sha256Hex(specimen.accessionNumber),
    })),
    costing: null,
    cancellation: null,
    amends: null,
    ...said,
  });
}

export const hashOf = (terms: AgreementTerms) => sha256Hex(canonicalText(terms));

const typedName = { method: "typed", strokes: "", fileSha256: null, isElectronic: true } as const;

export function bothSigned(terms: AgreementTerms): PaperSignature[] {
  return [
    {
      party: "lender",
      signerName: "Čeněk Łuczak",
      signerRole: "Registrar",
      signedAt: "2026-11-26T09:15:00Z",
      sha256: hashOf(terms),
      ...typedName,
    },
    {
      party: "borrower",
      signerName: "Aoife Ní Bhriain",
      signerRole: "Registrar of the faculty",
      signedAt: "2026-11-27T14:02:00Z",
      sha256: hashOf(terms),
      ...typedName,
    },
  ];
}
