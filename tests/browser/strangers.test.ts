/**
 * What nobody else's eyes are meant for: signed out, from another institution, by
 * an id that is none, and donors before the administrator. The list of addresses is
 * read from the program, and one without a line in the table below fails.
 */
import type { APIRequestContext, APIResponse, Page } from "@playwright/test";
import type { Role } from "#lib/people/viewer.ts";
import { expect, expectAccessible, open, test } from "#tests/support/browser-page.ts";
import { fill, listRoutes, type Route } from "#tests/support/browser-routes.ts";

/**
 * Who of the house reads an address, and what a borrower of another institution
 * gets there: the page, because everybody signed in has it; the own instead; or
 * the page that is not there.
 */
type Row = { reader: Role; borrower: "open" | "own" | "shut" };
const common = (reader: Role): Row => ({ reader, borrower: "open" });
const own = (reader: Role): Row => ({ reader, borrower: "own" });
const shut = (reader: Role): Row => ({ reader, borrower: "shut" });

const table: Readonly<Record<string, Row>> = {
  "/": common("registrar"),
  "/accounts": shut("administrator"),
  "/accounts/[id]": shut("administrator"),
  "/accounts/new": shut("administrator"),
  "/audit": shut("registrar"),
  "/calendar": common("registrar"),
  "/borrow": common("registrar"),
  "/centre": shut("registrar"),
  "/centre/edit": shut("collection manager"),
  "/centre/fees": shut("registrar"),
  "/centre/fees/edit": shut("collection manager"),
  "/centre/plan": shut("registrar"),
  "/centre/reminders": shut("registrar"),
  "/donors": shut("donor officer"),
  "/donors/[code]": shut("donor officer"),
  "/donors/[code]/consent/new": shut("donor officer"),
  "/go": common("registrar"),
  "/institutions": own("registrar"),
  "/institutions/[id]": shut("registrar"),
  "/institutions/[id]/edit": shut("registrar"),
  "/institutions/[id]/venues/new": shut("registrar"),
  "/institutions/new": shut("registrar"),
  "/mandates": own("registrar"),
  "/letters": own("registrar"),
  "/letters/[id]": shut("registrar"),
  "/loans": own("registrar"),
  "/loans/[id]": shut("registrar"),
  "/loans/[id]/agreement/[version]": shut("registrar"),
  "/loans/[id]/check/[specimenId]": shut("conservator"),
  "/loans/[id]/money": shut("registrar"),
  "/loans/[id]/money/statement": shut("registrar"),
  "/loans/[id]/papers/[paperId]": shut("registrar"),
  "/loans/[id]/recall": shut("registrar"),
  "/loans/[id]/stand-ins/[specimenId]": shut("registrar"),
  "/loans/[id]/signed/[fileId]": shut("registrar"),
  "/loans/[id]/request": shut("registrar"),
  "/loans/new": shut("registrar"),
  "/places": shut("curator"),
  "/places/[id]": shut("curator"),
  "/places/[id]/edit": shut("curator"),
  "/places/new": shut("curator"),
  "/series": common("curator"),
  "/series/[id]": common("curator"),
  "/series/[id]/edit": shut("curator"),
  "/rules": common("curator"),
  "/series/new": shut("curator"),
  "/slip": own("registrar"),
  "/specimens": common("curator"),
  "/specimens/[id]": common("curator"),
  "/specimens/[id]/check": shut("curator"),
  "/specimens/[id]/check/[checkId]": shut("curator"),
  "/specimens/[id]/edit": shut("curator"),
  "/specimens/[id]/picture": shut("curator"),
  "/specimens/[id]/provenance": shut("curator"),
  "/specimens/[id]/shown": shut("curator"),
  "/specimens/new": shut("curator"),
  "/venues/[id]": shut("registrar"),
  "/venues/[id]/edit": shut("registrar"),
  "/venues/[id]/paper": shut("registrar"),
  "/venues/[id]/records/[recordId]": shut("registrar"),
  "/venues/[id]/report": shut("registrar"),
  "/workings": common("curator"),
  "/workings/[id]": common("curator"),
  "/api/v1/institutions": shut("registrar"),
  "/api/v1/institutions/[id]": shut("registrar"),
  "/api/v1/loans": own("registrar"),
  "/api/v1/loans/[id]": shut("registrar"),
  "/api/v1/loans/[id]/suitability": shut("registrar"),
  "/api/v1/specimens": common("curator"),
  "/api/v1/specimens/[id]": common("curator"),
  "/api/v1/structures": common("curator"),
  "/api/v1/workings": common("curator"),
  "/api/v1/workings/[id]": common("curator"),
};
/** Open to who is not signed in: the door, and links that are a secret of their own: a carrier's, a calendar's, a paper's. The catalogue is opened by the centre. */
const outside = [
  "/sign-in",
  "/carry/[token]",
  "/calendar/[file]",
  "/paper/[code]",
  "/catalogue",
  "/catalogue/pictures/[id]",
];

const routes = listRoutes().filter(({ address }) => !outside.includes(address));
const isApi = ({ address }: Route) => address.startsWith("/api/");
const rowOf = ({ address }: Route) => table[address] ?? shut("registrar");

/** Records of the demo scenario that are nothing of the stranger's, by the place where an address names them. */
const recordNames = [
  "specimen",
  "check",
  "series",
  "place",
  "institution",
  "venue",
  "climate",
  "loan",
  "request",
  "quotable",
  "account",
  "donor",
  "letter",
  "paper",
  "signed",
] as const;
type Records = Record<(typeof recordNames)[number], string>;
const unknownId = "01900000-0000-7000-8000-000000000000";
const allBeing = (text: string) => Object.fromEntries(recordNames.map((name) => [name, text])) as Records;
const unknown: Records = { ...allBeing(unknownId), donor: "D-00000" };
/** A page of a loan is there while the loan has come to it. */
function loanFor(address: string, records: Records): string {
  if (address.endsWith("/request")) return records.request;
  return address.endsWith("/money") ? records.quotable : records.loan;
}

function addressWith(address: string, records: Records, working = "air"): string {
  const [, place = ""] = /^\/(?:api\/v1\/)?(\w+)/.exec(address) ?? [];
  const byPlace: Record<string, string> = {
    accounts: records.account,
    institutions: records.institution,
    letters: records.letter,
    loans: loanFor(address, records),
    places: records.place,
    series: records.series,
    specimens: records.specimen,
    venues: records.venue,
    workings: working,
  };
  return fill(address, {
    id: byPlace[place] ?? unknownId,
    code: records.donor,
    version: "1",
    specimenId: records.specimen,
    checkId: records.check,
    recordId: records.climate,
    paperId: records.paper,
    fileId: records.signed,
  });
}

const json = async (answer: APIResponse) => (await answer.json()) as never;

/** The last part of the address behind the first link of a list. */
async function firstOf(page: Page, list: string, table: string): Promise<string> {
  await open(page, list);
  const link = page.getByRole("table", { name: table }).getByRole("rowheader").getByRole("link").first();
  return ((await link.getAttribute("href")) ?? "").split("/").at(-1) ?? "";
}

/** What people of the house ask for, each signed in once. */
function readers(signedIn: (role: Role) => Promise<Page>): (role: Role) => Promise<APIRequestContext> {
  const requests = new Map<Role, APIRequestContext>();
  return async (role) => {
    const request = requests.get(role) ?? (await signedIn(role)).request;
    requests.set(role, request);
    return request;
  };
}

test("every address of the program stands in the table, and nothing else does", () => {
  expect([...new Set(routes.map(({ address }) => address))].sort()).toEqual(Object.keys(table).sort());
});

test("signed out, each page leads to the door and back, each API says to sign in", async ({ request }) => {
  const records = allBeing(unknownId);
  for (const route of routes) {
    const address = addressWith(route.address, records);
    const answer = await request.fetch(address, { method: route.method, maxRedirects: 0 });
    const what = `${route.method} ${address}`;
    if (route.isPage || route.address === "/go") {
      expect(answer.status(), what).toBe(307);
      const target = new URL(answer.headers().location ?? "", answer.url());
      expect(target.pathname, what).toBe("/sign-in");
      expect(target.searchParams.get("to"), what).toBe(route.address === "/go" ? "/go?q=" : address);
    } else {
      expect(answer.status(), what).toBe(401);
      expect((await answer.json()).error, what).toEqual({
        code: "permission.sign-in",
        message: "Please sign in again; what you typed is still here.",
        issues: [],
      });
    }
  }
});

test("signed out, no page sends its content along with the way to the door", async ({
  request,
  signedIn,
}) => {
  const curator = (await signedIn("curator")).request;
  const { rows } = (await json(await curator.get("/api/v1/specimens?text=AN+2019.0142"))) as {
    rows: { id: string; title: string }[];
  };
  const [{ id, title } = { id: "", title: "" }] = rows;
  expect(title).not.toBe("");
  for (const address of [`/specimens/${id}`, "/specimens?q=AN+2019.0142", "/institutions", "/donors"])
    for (const headers of [{}, { RSC: "1" }, { RSC: "1", "Next-Router-Prefetch": "1" }]) {
      const body = await (await request.get(address, { headers, maxRedirects: 0 })).text();
      for (const secret of [title, "Kestrel Bay", "D-"]) expect(body, address).not.toContain(secret);
    }
});

type LoanRow = { id: string; number: string; state: string; borrower: string };

/** Records of one institution, gathered by people who may see them. */
async function recordsOf(
  institution: string,
  signedIn: (role: Role) => Promise<Page>,
): Promise<Records & { number: string }> {
  const registrar = await signedIn("registrar");
  const get = async <Answer>(address: string) =>
    (await (await registrar.request.get(`/api/v1${address}`)).json()) as Answer;
  const institutions = await get<{ rows: { id: string; name: string }[] }>("/institutions");
  const id = institutions.rows.find(({ name }) => name === institution)?.id ?? "";
  const { venues } = await get<{ venues: { id: string }[] }>(`/institutions/${id}`);
  const { rows } = await get<{ rows: LoanRow[] }>("/loans?limit=200");
  const inState = (state: string) =>
    rows.find((row) => row.borrower === institution && row.state === state) ?? { id: "", number: "" };
  const loan = inState("at venue");
  const { lines } = await get<{ lines: { specimenId: string }[] }>(`/loans/${loan.id}`);
  const specimen = lines[0]?.specimenId ?? "";
  await open(registrar, `/venues/${venues[0]?.id}`);
  const recordLink = registrar.locator('a[href*="/records/"]').first();
  const climate = ((await recordLink.getAttribute("href")) ?? "").split("/").at(-1) ?? "";
  await open(registrar, `/loans/${loan.id}`);
  const paperLink = registrar.locator(`a[href^="/loans/${loan.id}/papers/"]`).first();
  const paper = /papers\/([\w-]+)/.exec((await paperLink.getAttribute("href")) ?? "")?.[1] ?? "";
  const signedLink = registrar.locator(`a[href^="/loans/${loan.id}/signed/"]`).first();
  const signed = ((await signedLink.getAttribute("href")) ?? "").split("/").at(-1) ?? "";
  const letterLink = registrar.locator('a[href^="/letters/"]').first();
  const letter = ((await letterLink.getAttribute("href")) ?? "").split("/").at(-1) ?? "";
  const records = {
    paper,
    signed,
    letter,
    institution: id,
    venue: venues[0]?.id ?? "",
    climate,
    loan: loan.id,
    number: loan.number,
    request: inState("requested").id,
    quotable: inState("accepted").id,
    specimen,
    check: await firstOf(await signedIn("curator"), `/specimens/${specimen}`, "All checks"),
    series: await firstOf(registrar, "/series", "Series of sheets"),
    place: await firstOf(registrar, "/places", "Places of the house"),
    donor: await firstOf(await signedIn("donor officer"), "/donors", "Donors by pseudonym"),
    account: await firstOf(await signedIn("administrator"), "/accounts", "Accounts by name"),
  };
  expect(Object.values(records)).not.toContain("");
  return records;
}

test.describe("from another institution", () => {
  let gathered: Promise<Records & { number: string }> | undefined;
  const gather = (signedIn: (role: Role) => Promise<Page>) => {
    gathered ??= recordsOf("Port Selwyn Faculty of Medicine", signedIn);
    return gathered;
  };

  test("the house reads what the stranger is then refused, so that the addresses are right", async ({
    signedIn,
  }) => {
    const records = await gather(signedIn);
    const reader = readers(signedIn);
    const noPicture = "/specimens/[id]/picture";
    for (const route of routes.filter(({ method, address }) => method === "GET" && address !== noPicture)) {
      const address = addressWith(route.address, records);
      const request = await reader(rowOf(route).reader);
      expect((await request.get(address)).status(), address).toBe(200);
    }
  });

  for (const role of ["lecturer", "borrower registrar"] as const)
    test(`a ${role} gets the page that is not there for everything that is not theirs`, async ({
      signedIn,
    }) => {
      const records = await gather(signedIn);
      const page = await signedIn(role, "vesterlunde");
      for (const route of routes) {
        const address = addressWith(route.address, records);
        const what = `${route.method} ${address}`;
        const { borrower } = rowOf(route);
        const writes = route.method !== "GET";
        const answer = await page.request.fetch(address, {
          method: route.method,
          ...(writes ? { data: {} } : {}),
        });
        if (borrower === "own") continue;
        if (borrower === "open" && (!writes || route.address === "/api/v1/workings/[id]")) {
          expect(answer.status(), what).toBe(writes ? 422 : 200);
          continue;
        }
        expect(answer.status(), what).toBe(404);
        if (route.isPage) expect(await answer.text(), what).toContain("There is no such page");
        else if (isApi(route)) expect((await answer.json()).error.code, what).toBe("record.not-found");
      }
      const answer = await page.goto(addressWith("/loans/[id]", records));
      expect(answer?.status()).toBe(404);
      await expect(page.getByRole("heading", { level: 1 })).toHaveText("There is no such page");
      await expectAccessible(page);
    });

  test("a list shows a borrower the own loans and no others", async ({ signedIn }) => {
    const records = await gather(signedIn);
    const page = await signedIn("borrower registrar", "vesterlunde");
    const { rows } = (await json(await page.request.get("/api/v1/loans"))) as { rows: { id: string }[] };
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.map(({ id }) => id)).not.toContain(records.loan);
    await open(page, "/loans");
    await expect(page.getByRole("main")).not.toContainText(records.number);
    const number = encodeURIComponent(records.number);
    await open(page, `/go?q=${number}`);
    await expect(page).toHaveURL(`/specimens?q=${number}`);
    await open(page, "/institutions");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(
      "Vesterlunde School of Veterinary Science",
    );
  });
});

test("what names no record is the page that is not there, for anybody", async ({ signedIn }) => {
  const reader = readers(signedIn);
  for (const [what, records] of [
    ["an id that nobody has", unknown],
    ["what is no id", allBeing("' OR 1=1 --")],
    ["a name that the program's language has", allBeing("__proto__")],
  ] as const)
    for (const route of routes.filter(({ address, method }) => address.includes("[") && method === "GET")) {
      const request = await reader(rowOf(route).reader);
      const address = addressWith(route.address, records, records.specimen);
      const answer = await request.get(address);
      expect(answer.status(), `${what}: ${address}`).toBe(404);
      if (route.isPage) expect(await answer.text(), address).toContain("There is no such page");
    }
});

test("a carrier's link that nobody made is no page", async ({ request }) => {
  for (const token of ["nothing", "a".repeat(400), "%00", "..%2f..", "<script>"])
    expect((await request.get(`/carry/${token}`)).status(), token).toBe(404);
});

test("a code that no paper bears is no paper, whoever asks", async ({ request }) => {
  for (const code of ["nothing", "a".repeat(26), "a".repeat(44), "a".repeat(400), "<script>"]) {
    const answer = await request.get(`/paper/${encodeURIComponent(code)}`);
    expect(answer.status(), code).toBe(404);
    expect(await answer.text(), code).toContain("No such paper");
  }
});

test("an administrator keeps accounts and sees no donor anywhere", async ({ signedIn }) => {
  const officer = await signedIn("donor officer");
  const donor = await firstOf(officer, "/donors", "Donors by pseudonym");
  expect(donor).toMatch(/^D-/);
  await open(officer, `/donors/${donor}`);
  const specimenLink = officer
    .getByRole("table", { name: "Specimens of this donor" })
    .getByRole("link")
    .first();
  const specimen = (await specimenLink.getAttribute("href")) ?? "";
  const page = await signedIn("administrator");
  await open(page, "/accounts");
  await expectAccessible(page);
  await expect(page.getByRole("link", { name: "Donors" })).toHaveCount(0);
  for (const address of ["/donors", `/donors/${donor}`, `/donors/${donor}/consent/new`])
    expect((await page.request.get(address)).status(), address).toBe(404);

  const pseudonym = /\bD-[0-9A-Z]{5}\b/;
  await open(page, specimen);
  await expect(page.getByRole("list", { name: "Consent" })).toHaveCount(0);
  expect(await page.content()).not.toMatch(pseudonym);
  for (const address of ["/", "/audit", `/audit?rowKey=${donor}`, `/go?q=${donor}`]) {
    const body = await (await page.request.get(address)).text();
    expect(body.replaceAll(donor, address.includes(donor) ? "" : donor), address).not.toMatch(pseudonym);
  }
  const answer = await page.request.get(specimen.replace("/specimens", "/api/v1/specimens"));
  expect(await answer.text()).not.toMatch(pseudonym);
});
