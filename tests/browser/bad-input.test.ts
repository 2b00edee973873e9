/**
 * Wrong, missing, huge and hostile input through the API: a sentence for each
 * field, an answer that blames the asker and never the program, and nothing changed.
 */
import type { APIRequestContext, APIResponse } from "@playwright/test";
import { expect, open, test } from "#tests/support/browser-page.ts";
import { freshNumber, plainRecord, recordThroughApi } from "#tests/support/browser-specimen.ts";

type Answer = { error: { code: string; message: string; issues: { path: string; message: string }[] } };
type Page = { rows: { id: string }[]; next: string | null };

const good = () => plainRecord(freshNumber());
const as = <Value>(value: unknown) => value as Value;

/** Everything that can be counted from outside. */
async function countEverything(request: APIRequestContext) {
  let specimens = 0;
  let after = "";
  do {
    const { rows, next } = as<Page>(
      await (await request.get(`/api/v1/specimens?size=200&after=${after}`)).json(),
    );
    specimens += rows.length;
    after = next ?? "";
  } while (after !== "");
  const institutions = as<Page>(await (await request.get("/api/v1/institutions")).json()).rows.length;
  const loans = as<Page>(await (await request.get("/api/v1/loans?limit=200")).json()).rows.length;
  return { specimens, institutions, loans };
}

/** Words for a person: a whole sentence, and none of the words of a program. */
function expectSentence(text: string, what: string): void {
  expect(text, what).toMatch(/^[A-Z].*[.!?]$/);
  expect(text, what).not.toMatch(/expected|received|undefined|null|invalid|regex|zod|string|SQL|prisma/i);
}

async function expectRefused(answer: APIResponse, what: string): Promise<Answer["error"]> {
  expect(answer.status(), what).toBeGreaterThanOrEqual(400);
  expect(answer.status(), what).toBeLessThan(500);
  const { error } = as<Answer>(await answer.json());
  expectSentence(error.message, what);
  for (const issue of error.issues) expectSentence(issue.message, `${what}: ${issue.path}`);
  return error;
}

/** The fields that were refused; one may be wrong in two ways. */
const pathsOf = ({ issues }: Answer["error"]) => [...new Set(issues.map(({ path }) => path))].sort();

test("wrong fields of a specimen are each answered with a sentence, and nothing is recorded", async ({
  signedIn,
}) => {
  const { request } = await signedIn("curator");
  const before = await countEverything((await signedIn("registrar")).request);
  const wrong: [what: string, body: unknown, paths: string[]][] = [
    ["a number for a text", { ...good(), title: 7 }, ["title"]],
    ["an object for a text", { ...good(), title: { $ne: "" }, note: ["x"] }, ["title", "note"]],
    ["a text for a number", { ...good(), massKg: "heavy" }, ["massKg"]],
    ["a text for yes or no", { ...good(), human: "yes", publishable: 1 }, ["human", "publishable"]],
    ["a text for a list", { ...good(), hazards: "lead", components: {} }, ["components", "hazards"]],
    ["a text for a size", { ...good(), size: "large" }, ["size"]],
    ["no text in it", { ...good(), title: "   ", accessionNumber: "" }, ["accessionNumber", "title"]],
    ["too long a text", { ...good(), note: "x".repeat(2_001), title: "y".repeat(201) }, ["title", "note"]],
    [
      "numbers beyond the range",
      { ...good(), massKg: -1, preparation: "fluid-preserved", fluidName: "ethanol", fluidPercent: 101 },
      ["fluidPercent", "massKg"],
    ],
    [
      "a number without end",
      { ...good(), size: { lengthMm: 1e308, widthMm: 1, heightMm: 0.5 } },
      ["size.lengthMm", "size.heightMm"],
    ],
    ["words that no list offers", { ...good(), kind: "toaster", side: "top" }, ["kind", "side"]],
    [
      "a day that is none",
      { ...good(), preparedOn: "2026-02-30", acquiredOn: "yesterday" },
      ["preparedOn", "acquiredOn"],
    ],
    ["an id that is none", { ...good(), wholeId: "' OR 1=1 --" }, ["wholeId"]],
    ["an id that nobody has", { ...good(), wholeId: "01900000-0000-7000-8000-000000000000" }, ["wholeId"]],
    [
      "a whole list wrong",
      { ...good(), components: [{ name: "jar", count: 0 }, 7] },
      ["components.0.count", "components.0.detachable", "components.1"],
    ],
    [
      "a list without end",
      { ...good(), hazards: Array(11).fill({ substance: "lead pigment", percent: null, note: "" }) },
      ["hazards"],
    ],
    [
      "facts that contradict each other",
      { ...good(), human: false, ageBand: "60–69" },
      ["scientificName", "ageBand"],
    ],
    [
      "a number that another specimen has",
      { ...good(), accessionNumber: "AN 2019.0142" },
      ["accessionNumber"],
    ],
    ["a number outside the pattern", { ...good(), accessionNumber: "AN 1; DROP TABLE" }, ["accessionNumber"]],
    ["characters that cannot be kept", { ...good(), title: "Arm\0", pose: "\ud83d" }, ["title", "pose"]],
    [
      "a cost of the wrong kind",
      { ...good(), replacementCost: { minor: 1.5, currency: "euro" } },
      [
        "replacementCost.minor",
        "replacementCost.currency",
        "replacementCost.basis",
        "replacementCost.statedOn",
        "replacementCost.statedBy",
      ],
    ],
  ];
  for (const [what, body, paths] of wrong) {
    const error = await expectRefused(await request.post("/api/v1/specimens", { data: body }), what);
    expect(pathsOf(error), what).toEqual([...paths].sort());
  }
  for (const body of [{}, [], null, 7, "text", true]) {
    const error = await expectRefused(
      await request.post("/api/v1/specimens", {
        data: JSON.stringify(body),
        headers: { "content-type": "application/json" },
      }),
      JSON.stringify(body),
    );
    expect(error.issues.length, JSON.stringify(body)).toBeGreaterThan(0);
  }
  const everyField = await expectRefused(
    await request.post("/api/v1/specimens", { data: {} }),
    "nothing at all",
  );
  // what the law asks after may be left out: it then is not known
  const asked = Object.keys(good()).filter((name) => name !== "legal");
  expect(pathsOf(everyField)).toEqual(asked.sort());
  expect(await countEverything((await signedIn("registrar")).request)).toEqual(before);
});

test("what is too large, no JSON, or from elsewhere is refused before it is read", async ({
  signedIn,
  baseURL,
}) => {
  const { request } = await signedIn("curator");
  const before = await countEverything((await signedIn("registrar")).request);
  const post = (text: string | Buffer, headers: Record<string, string> = {}) =>
    request.post("/api/v1/specimens", {
      data: Buffer.from(text),
      headers: { "content-type": "application/json", ...headers },
    });
  const whole = JSON.stringify(good());

  const large = JSON.stringify({ ...good(), note: "x".repeat(1_100_000) });
  expect((await expectRefused(await post(large), "1.1 MB")).code).toBe("api.too-large");
  const nested = `${"[".repeat(400_000)}${"]".repeat(400_000)}`;
  await expectRefused(await post(nested), "brackets 400,000 deep");
  await expectRefused(await post(`{"title":${"[".repeat(100_000)}${"]".repeat(100_000)}}`), "a deep title");
  for (const [what, text] of [
    ["nothing", ""],
    ["half of it", whole.slice(0, -20)],
    ["another format", "<specimen><title>Arm</title></specimen>"],
    ["fields of a form", "title=Arm&kind=organ"],
    ["bytes of no text", Buffer.from([0x7b, 0xff, 0xfe, 0x7d])],
    ["a NUL after it", `${whole}\0`],
  ] as const)
    expect((await expectRefused(await post(text), what)).code, what).toBe("api.not-json");

  for (const origin of [
    "https://elsewhere.example",
    "null",
    `${baseURL}.elsewhere.example`,
    "http://localhost",
  ])
    expect((await expectRefused(await post(whole, { origin }), origin)).code, origin).toBe(
      "api.foreign-origin",
    );
  for (const method of ["DELETE", "PATCH", "PUT"])
    expect((await request.fetch("/api/v1/specimens", { method, data: {} })).status(), method).toBe(405);
  expect(await countEverything((await signedIn("registrar")).request)).toEqual(before);
});

test("a wrong revision changes nothing of the record", async ({ signedIn }) => {
  const { request } = await signedIn("curator");
  const { id, record } = await recordThroughApi(request);
  const read = async () => await (await request.get(`/api/v1/specimens/${id}`)).json();
  const before = await read();
  for (const [what, body, status] of [
    ["without a version", record, 422],
    ["of a version to come", { ...record, version: 2 }, 409],
    ["of no version", { ...record, version: 0 }, 422],
    ["of a version that is a text", { ...record, version: "1" }, 422],
    ["of a version beyond counting", { ...record, version: 1e300 }, 422],
    ["with a wrong field", { ...record, version: 1, kind: "toaster" }, 422],
    ["as a part of itself", { ...record, version: 1, wholeId: id }, 422],
    ["that is nothing", null, 422],
  ] as const) {
    const answer = await request.put(`/api/v1/specimens/${id}`, {
      data: JSON.stringify(body),
      headers: { "content-type": "application/json" },
    });
    expect(answer.status(), what).toBe(status);
    await expectRefused(answer, what);
  }
  for (const other of ["01900000-0000-7000-8000-000000000000", "nothing", "%00", "1e9"]) {
    const answer = await request.put(`/api/v1/specimens/${other}`, { data: { ...record, version: 1 } });
    await expectRefused(answer, other);
  }
  expect(await read()).toEqual(before);
});

test("wrong institutions and loans are answered with a sentence for each field", async ({ signedIn }) => {
  const { request } = await signedIn("registrar");
  const before = await countEverything(request);
  const institution = await expectRefused(
    await request.post("/api/v1/institutions", {
      data: {
        id: "7",
        name: "",
        kind: "bakery",
        countryCode: "Norway",
        languages: ["Norsk"],
        email: "at home",
      },
    }),
    "an institution",
  );
  expect(pathsOf(institution)).toEqual(
    [
      "address",
      "city",
      "countryCode",
      "email",
      "id",
      "kind",
      "languages.0",
      "name",
      "note",
      "phone",
      "standing",
      "verifiedOn",
    ].sort(),
  );
  for (const body of [{}, [], { borrowerId: "x", venueId: 7 }, { borrowerId: null, venueId: "\0" }])
    expect(
      (await expectRefused(await request.post("/api/v1/loans", { data: body }), "a loan")).issues.length,
    ).toBeGreaterThan(0);
  const lecturer = (await signedIn("lecturer")).request;
  await expectRefused(await lecturer.post("/api/v1/loans", { data: { venueId: [] } }), "a lecturer's loan");
  expect(await countEverything(request)).toEqual(before);
});

test("every computation refuses what it cannot compute with, field by field", async ({ signedIn }) => {
  const { request } = await signedIn("conservator");
  type Working = { id: string; input: { properties?: Record<string, unknown>; required?: string[] } };
  const workings = as<Working[]>(await (await request.get("/api/v1/workings")).json());
  expect(workings.length).toBeGreaterThan(10);
  for (const { id, input } of workings) {
    const address = `/api/v1/workings/${id}`;
    const required = input.required ?? [];
    const ofNothing = await request.post(address, { data: {} });
    if (required.length === 0) expect(ofNothing.status(), id).toBe(200);
    else {
      const { issues } = await expectRefused(ofNothing, `${id} of nothing`);
      expect(new Set(issues.map(({ path }) => path.split(".")[0])), id).toEqual(new Set(required));
    }
    const nonsense = Object.fromEntries(
      Object.keys(input.properties ?? {}).map((name) => [name, "\0' OR 1=1"]),
    );
    const wrong = await expectRefused(await request.post(address, { data: nonsense }), `${id} of nonsense`);
    expect(wrong.issues.length, id).toBeGreaterThan(0);
    const endless = Object.fromEntries(Object.keys(input.properties ?? {}).map((name) => [name, -1e308]));
    await expectRefused(await request.post(address, { data: endless }), `${id} of endless numbers`);
  }
  await expectRefused(await request.post("/api/v1/workings/nothing", { data: {} }), "an unknown computation");
});

test("a search that makes no sense is refused with a sentence, or finds nothing", async ({ signedIn }) => {
  const { request } = await signedIn("curator");
  const { next } = as<Page>(await (await request.get("/api/v1/specimens?size=2")).json());
  expect(next).not.toBeNull();
  for (const query of [
    "size=0",
    "size=many",
    "size=1e9",
    "kind=toaster",
    "after=nothing",
    `after=${next}x`,
    "before=%00",
    "freeFrom=2026-01-01",
    "freeFrom=2026-01-02&freeUntil=2026-01-01",
    "freeFrom=today&freeUntil=tomorrow",
    "structureId=%27%20OR%201%3D1",
    "placeId=7",
    `text=${"x".repeat(201)}`,
    "text=%00",
  ])
    await expectRefused(await request.get(`/api/v1/specimens?${query}`), query);
  for (const text of [
    "'; DROP TABLE specimen; --",
    "%' OR '1'='1",
    "\\",
    "<script>alert(1)</script>",
    "🦴🦴🦴",
  ]) {
    const found = await request.get(`/api/v1/specimens?text=${encodeURIComponent(text)}`);
    expect(found.status(), text).toBe(200);
    expect(as<Page>(await found.json()).rows, text).toEqual([]);
    const structures = await request.get(`/api/v1/structures?q=${encodeURIComponent(text)}`);
    expect(structures.status(), text).toBe(200);
  }
});

test("addresses that no link makes are answered without a fault", async ({ signedIn }) => {
  const page = await signedIn("collection manager");
  for (const address of [
    "/specimens?q=a&q=b&kind=x&kind=y",
    "/specimens?q=%00&from=%00&until=%00&after=%00",
    "/specimens?from=2026-13-45&until=x",
    `/specimens?q=${"x".repeat(4_000)}`,
    "/specimens?after=nothing",
    "/go?q=%00&q=x",
    "/go?q=%27%3B%20DROP%20TABLE",
    "/audit?rowKey=%00&actor=%00&tableName=x&after=-1",
    "/audit?rowKey=a&rowKey=b&after=99999999999999999999",
    "/donors?after=%00&after=x&before=%00",
    "/loans?q=%00&phase=x&borrower=%27&after=nothing&overdue=a&overdue=b",
    "/loans/new?specimen=x&borrower=%00",
    "/workings/air?x=%00&temperatureC=hot",
    "/series?x=%00",
    "/specimens/%00",
    "/donors/..%2f..%2fetc",
    "/institutions/01900000-0000-7000-8000-000000000000",
    "/sign-in?to=a&to=b",
  ]) {
    const { status } = { status: (await page.request.get(address)).status() };
    expect(status, address).toBeLessThan(500);
  }
});

test("an address that cannot be decoded names no record", async ({ signedIn, request }) => {
  const page = await signedIn("collection manager");
  for (const wrong of ["%E0%A4%A", "%", "%zz", "%FF", "a%b", "%E0%A4%A/edit"]) {
    for (const place of ["specimens", "loans", "series", "institutions", "venues", "donors", "workings"]) {
      const address = `/${place}/${wrong}`;
      const answer = await page.request.get(address);
      expect(answer.status(), address).toBe(404);
      expect(await answer.text(), address).toContain("There is no such page");
    }
    for (const place of ["specimens", "loans", "institutions"]) {
      const address = `/api/v1/${place}/${wrong}`;
      const answer = await page.request.get(address);
      expect(answer.status(), address).toBe(404);
      if (!wrong.includes("/")) expect((await expectRefused(answer, address)).code).toBe("record.not-found");
    }
    expect((await request.get(`/carry/${wrong}`)).status(), wrong).toBe(404);
    const signedOut = await request.get(`/specimens/${wrong}`);
    expect(signedOut.status(), wrong).toBe(200);
    expect(signedOut.url(), wrong).toContain("/sign-in");
  }
  await page.goto("/specimens/%E0%A4%A");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("There is no such page");
});

test("script and query text in a record is text on every page that shows it", async ({ signedIn }) => {
  const page = await signedIn("curator");
  const title = `<script>alert(1)</script><img src=x onerror=alert(2)>'; DROP TABLE specimen; --`;
  const record = { ...good(), title, note: `</textarea>${title}`, partsAtRisk: "javascript:alert(3)" };
  const dialogs: string[] = [];
  page.on("dialog", async (dialog) => {
    dialogs.push(dialog.message());
    await dialog.dismiss();
  });
  const made = await page.request.post("/api/v1/specimens", { data: record });
  expect(made.status()).toBe(201);
  const { id } = as<{ id: string }>(await made.json());
  await open(page, `/specimens/${id}`);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);
  await open(page, `/specimens/${id}/edit`);
  await expect(page.getByLabel("Title", { exact: true })).toHaveValue(title);
  await expect(page.getByLabel("Note", { exact: true })).toHaveValue(record.note);
  await open(page, `/specimens?q=${encodeURIComponent(record.accessionNumber)}`);
  await expect(page.getByRole("row").filter({ hasText: record.accessionNumber })).toContainText(title);
  await open(page, `/audit?rowKey=${encodeURIComponent(record.accessionNumber)}`);
  expect(dialogs).toEqual([]);
});

test("nobody makes an account of their own", async ({ request, baseURL }) => {
  const answer = await request.post("/api/auth/sign-up/email", {
    data: { email: "somebody@elsewhere.example", password: "long-enough-2026", name: "Somebody" },
    headers: { origin: baseURL ?? "" },
  });
  expect(answer.status()).toBeGreaterThanOrEqual(400);
  expect(answer.status()).toBeLessThan(500);
});
