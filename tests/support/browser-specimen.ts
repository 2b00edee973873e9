/** A specimen of its own for a browser test, recorded through the API by whoever is signed in. */
import { type APIRequestContext, expect } from "@playwright/test";
import { nothingKnownInLaw, type SpecimenInput } from "#lib/specimens/schema.ts";

let made = 0;

/** A number that no other specimen has, on a server that was used before as well. */
export function freshNumber(): string {
  made += 1;
  const [, year = "", rest = ""] = /(\d{4})(\d{4})$/.exec(String(Math.floor(Date.now() / 10) + made)) ?? [];
  return `AN ${3000 + (Number(year) % 6000)}.${rest}`;
}

export function plainRecord(accessionNumber: string): SpecimenInput {
  return {
    accessionNumber,
    title: "Shoulder and arm, plain preparation",
    latinTitle: "",
    kind: "body region",
    preparation: "silicone-impregnated",
    fluidName: null,
    fluidPercent: null,
    human: true,
    scientificName: "Homo sapiens",
    sex: "unknown",
    ageBand: null,
    side: "left",
    pose: "",
    size: { lengthMm: 600, widthMm: 200, heightMm: 150 },
    massKg: 2.5,
    mountedSize: null,
    mountedMassKg: null,
    massWeighed: true,
    partsAtRisk: "",
    use: "handling",
    light: "ordinary",
    replacementCost: null,
    preparedOn: null,
    acquiredOn: null,
    publishable: false,
    note: "",
    wholeId: null,
    components: [],
    formerNumbers: [],
    hazards: [],
    legal: nothingKnownInLaw,
  };
}

export async function recordThroughApi(request: APIRequestContext) {
  const record = plainRecord(freshNumber());
  const answer = await request.post("/api/v1/specimens", { data: record });
  expect(answer.status()).toBe(201);
  const { id } = (await answer.json()) as { id: string };
  return { id, record, number: record.accessionNumber, title: record.title };
}
