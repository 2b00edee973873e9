/** A loan as travelling papers are written from it, of any length and with the longest words. */
import type { CaseCrate, CaseHandover, CaseSpecimen, PaperCase } from "#lib/papers/paper-case.ts";
import { crateSubject } from "#lib/papers/paper-case.ts";
import type { PaperHead } from "#lib/papers/paper-content.ts";
import { someCostings } from "#tests/lib/papers/costing-cases.ts";

export const longGerman =
  "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft für Präparatetransporte";
export const longTitle =
  "Oberflächliche Handwurzelbeugesehnenscheidenpräparation mit Zwischenwirbelscheibenhalterung und Nackenrückenhautnervengeflecht";

export const stageIds = { out: "stage-out", home: "stage-home" } as const;
const crateId = (number: number) => `crate-${number}`;

function specimenAt(index: number, title: string | null): CaseSpecimen {
  const accessionNumber = `AN 2004.${String(index + 1).padStart(4, "0")}`;
  const isHeart = index % 2 === 0;
  return {
    id: `specimen-${index + 1}`,
    accessionNumber,
    title: title ?? (isHeart ? `Heart ${index + 1}, left ventricle opened` : `Liver ${index + 1}`),
    latinTitle: isHeart ? "Cor" : "Hepar",
    kind: "organ",
    components: index % 3 === 0 ? [{ name: "detachable lid", count: 2 }] : [],
    condition: index % 4 === 3 ? null : { checkedOn: "2026-11-20", grade: "B" },
    isLive: true,
    drawing: {
      kind: "organ",
      preparation: "silicone-impregnated",
      species: "Homo sapiens",
      title: isHeart ? "Heart" : "Liver",
      latinTitle: isHeart ? "Cor" : "Hepar",
      side: "none",
      shown: [],
      sheet: null,
      seed: accessionNumber,
    },
    pictureId: null,
    transitC: { low: 5, high: 30 },
    goods: {
      human: true,
      scientificName: "Homo sapiens",
      preparation: "silicone-impregnated",
      fluidName: null,
      hazards: [],
      massKg: 1.25,
      originCountry: index % 2 === 0 ? "DE" : null,
      cost: {
        minor: 250_000 + index * 100,
        currency: "EUR",
        basis: "cost to replace",
        statedOn: "2026-05-04",
      },
    },
    check:
      index % 4 === 3
        ? null
        : {
            occasion: "out",
            checkedOn: "2026-11-20",
            checkedBy: "Cleo Conservator",
            grade: "B",
            findings: [
              {
                term: "structure.hairline",
                place: title === null ? "left ventricle, near the apex" : longTitle,
                extentMm: 12,
                extentPercent: null,
                severity: "minor",
                activity: "stable",
                note: "",
              },
            ],
          },
    ending: {
      state: "closed",
      verdict: "no change",
      remark: "",
      out: { checkedOn: "2026-11-20", grade: "B" },
      home: { checkedOn: "2027-03-05", grade: "B" },
    },
  };
}

export function someCase(
  { specimens, crates, long = false }: { specimens: number; crates: number; long?: boolean },
  said: Partial<PaperCase> = {},
): PaperCase {
  const all = Array.from({ length: specimens }, (_none, index) =>
    specimenAt(index, long ? `${longTitle} ${index + 1}` : null),
  );
  const perCrate = Math.ceil(specimens / crates);
  return {
    loan: {
      number: "L 2026-031",
      title: long ? longTitle : "Winter course",
      state: "closed",
      purpose: "teaching",
      startsOn: "2026-12-05",
      returnBy: "2027-03-01",
      closedOn: "2027-03-08",
      contactName: long ? longGerman : "Bela Registrar",
    },
    house: {
      organisation: long ? longGerman : "Lending Centre",
      place: "",
      address: long ? `${longGerman}straße 7, Neustadt` : "Quay 1, Port Arden",
      countryCode: "DE",
      phone: "+49 555 0100",
    },
    emergency: { phone: "+49 555 0111", hours: "any hour" },
    venue: {
      organisation: long ? `Universitätsklinikum ${longGerman}` : "Port Selwyn Faculty of Medicine",
      place: long ? longTitle : "Dissection room 2",
      address: long ? longTitle : "Harbour Road 4, Port Selwyn",
      countryCode: "NO",
      phone: "+47 555 0199",
    },
    stages: [
      {
        id: stageIds.out,
        direction: "out",
        carrier: long ? longGerman : "Gentle Freight",
        vehicle: "van with air suspension",
        through: ["DK", "SE"],
        departsOn: "2026-12-01",
        arrivesOn: "2026-12-03",
      },
      {
        id: stageIds.home,
        direction: "home",
        carrier: long ? longGerman : "Gentle Freight",
        vehicle: "",
        through: [],
        departsOn: "2027-03-01",
        arrivesOn: "2027-03-03",
      },
    ],
    crates: Array.from(
      { length: crates },
      (_none, index): CaseCrate => ({
        id: crateId(index + 1),
        code: `L 2026-031/${index + 1}`,
        kind: "double-case",
        outer: { lengthMm: 1_240, widthMm: 820, heightMm: 760 },
        grossMassKg: 64.3,
        contentsKg: 18.2,
        innerCaseWallMm: 9,
        cushionMm: 50,
        absorbentMl: index === 0 ? 412.3 : null,
        centreOfGravityHeightMm: 372.4,
        lidLoadKg: index % 2 === 0 ? 118.6 : 0,
        handling: index % 2 === 0 ? "pallet-truck" : "two-persons",
        orientation: "this-side-up",
        sealNumber: `A 00${index + 1}`,
        contents: all.slice(index * perCrate, (index + 1) * perCrate).map(({ id }) => id),
      }),
    ),
    specimens: all,
    handovers: [],
    tariffs: all.slice(1).map(({ id }) => ({
      stageId: stageIds.out,
      specimenId: id,
      countryCode: "NO",
      code: "9705.21.00",
      decidedBy: long ? longGerman : "Harbour Brokers",
      decidedOn: "2026-11-18",
      note: "",
    })),
    costings: someCostings(long),
    ...said,
  };
}

export const someHead = (said: Partial<PaperHead> = {}): PaperHead => ({
  language: "en",
  version: 2,
  issuedAt: "2026-11-25T10:00:00.000Z",
  issuedBy: "Ada Keeper",
  loan: { number: "L 2026-031", title: "Winter course" },
  ...said,
});

export const firstCrate = crateSubject(stageIds.out, crateId(1));
export const secondCrate = crateSubject(stageIds.out, crateId(2));

/** The house hands everything to the carrier, which brings all but the last. */
export function someHandovers({ specimens }: PaperCase): CaseHandover[] {
  const out = { direction: "out" as const };
  return [
    ...specimens.map(({ accessionNumber }) => ({
      ...out,
      at: "2026-12-01T07:30:00.000Z",
      fromParty: "Lending Centre",
      toParty: "Gentle Freight",
      releasedBy: "Ada Keeper",
      receivedBy: "Gentle Freight",
      accessionNumber,
    })),
    ...specimens.slice(0, -1).map(({ accessionNumber }) => ({
      ...out,
      at: "2026-12-03T13:05:00.000Z",
      fromParty: "Gentle Freight",
      toParty: "Port Selwyn Faculty of Medicine",
      releasedBy: "carrier",
      receivedBy: "Bela Registrar",
      accessionNumber,
    })),
  ];
}
