/**
 * What a visitor of the demo can be shown of the rarer ways of a loan: each is in
 * the scenario, as the commands of the screens left it.
 */
import { beforeAll, describe, expect, test } from "vitest";
import { nextClaimEvents } from "#lib/loans/claims.ts";
import { getLoan, type LoanSheet } from "#lib/loans/queries.ts";
import { findViewer } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { getPublicPicture } from "#lib/specimens/queries/public-catalogue.ts";
import { getPicture } from "#lib/specimens/queries.ts";
import { accounts } from "#seed/scenario/accounts.ts";
import { testDatabase } from "#tests/support/database.ts";

let curator: Viewer;

beforeAll(async () => {
  await testDatabase("demo");
  const { id } = await database().account.findUniqueOrThrow({ where: { email: accounts.curator.email } });
  const viewer = await findViewer(id);
  if (!viewer) throw new Error("The curator cannot sign in.");
  curator = viewer;
}, 300_000);

const specimenId = async (accessionNumber: string) =>
  (await database().specimen.findUniqueOrThrow({ where: { accessionNumber }, select: { id: true } })).id;

async function loanCalled(title: string): Promise<LoanSheet> {
  const { id } = await database().loan.findFirstOrThrow({ where: { title } });
  return await getLoan(curator, id);
}

describe("the pictures", () => {
  const choice = { showsHuman: true };

  test("one is open to the public, behind their own choice, as the consent grants it", async () => {
    const id = await specimenId("AN 2013.0047");
    const { content, mediaType } = await getPublicPicture(null, id, choice);
    expect([mediaType, content.byteLength > 20_000]).toEqual(["image/jpeg", true]);
    await expect(getPublicPicture(null, id, { showsHuman: false })).rejects.toMatchObject({
      kind: "not-found",
    });
  });

  test("one is for the house alone: its specimen may be published, its picture not", async () => {
    const id = await specimenId("AN 2012.0201");
    expect((await getPicture(curator, id)).content.byteLength).toBeGreaterThan(20_000);
    expect(await database().specimen.findUnique({ where: { id }, select: { publishable: true } })).toEqual({
      publishable: true,
    });
    await expect(getPublicPicture(null, id, choice)).rejects.toMatchObject({ kind: "not-found" });
  });
});

test("a request of which another specimen stands in for one, and only a part is accepted", async () => {
  const { lines, decisions } = await loanCalled("Head and neck practicals");
  const states = Object.fromEntries(lines.map((line) => [line.accessionNumber, line.state]));
  expect(states).toEqual({
    "AN 2013.0021": "withdrawn",
    "AN 2016.0055": "accepted",
    "AN 2018.0110": "accepted",
    "AN 2022.0013": "declined",
  });
  const standIn = await database().loanLine.findFirstOrThrow({ where: { substituteForId: { not: null } } });
  expect(standIn.specimenId).toBe(await specimenId("AN 2016.0055"));
  expect(decisions.map(({ office, outcome }) => [office, outcome])).toEqual([
    ["curator", "recuse"],
    ["donor officer", "accept"],
    ["curator", "accept"],
  ]);
  expect(new Set(decisions.map(({ decidedBy }) => decidedBy)).size).toBe(3);
});

test("a bar that is set aside on evidence, and is a thing to attend to since", async () => {
  const { findings } = await loanCalled("Trunk and limbs, summer term");
  const pelvis = await specimenId("AN 2020.0078");
  const due = findings.filter(
    ({ fact, specimenId: id }) => fact === "consent.disposition-due" && id === pelvis,
  );
  expect(due.map(({ outcome }) => outcome)).toEqual(["attend"]);
  const [word] = await database().ruleOverride.findMany();
  expect(word).toMatchObject({ rule: "G12", specimenId: pelvis, office: "donor officer" });
  expect(word?.evidence).not.toBe("");
});

test("signatures that were typed, drawn and given on paper, each with what shows it", async () => {
  const signatures = await database().signature.findMany({ include: { file: true } });
  const of = (method: string) => signatures.filter((one) => one.method === method);
  expect(of("typed").length).toBeGreaterThan(10);
  expect(of("drawn").map(({ signerName, party }) => [signerName, party])).toEqual([
    [accounts["kestrel registrar"].name, "borrower"],
  ]);
  expect(of("drawn")[0]?.strokes).toMatch(/^M\d+ \d+L/);
  expect(of("countersigned").length).toBeGreaterThan(0);
  for (const { file } of of("countersigned")) expect(file?.mediaType).toBe("application/pdf");
});

test("a claim that is estimated and not settled yet", async () => {
  const claims = await database().claim.findMany({ include: { events: { orderBy: { sequence: "asc" } } } });
  const [claim] = claims;
  expect(claims).toHaveLength(1);
  expect(claim?.specimenId).toBe(await specimenId("AN 2022.0051"));
  expect(claim?.events.map(({ kind }) => kind)).toEqual(["opened", "notified", "surveyed", "estimated"]);
  expect(Number(claim?.events.at(-1)?.amountMinor)).toBeGreaterThan(0);
  expect(nextClaimEvents("estimated")).toContain("settled");
});
