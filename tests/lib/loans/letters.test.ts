/** Who is written to on a loan, and that a letter can say nothing of a donor. */
import { describe, expect, test } from "vitest";
import { letters } from "#app/_words/en/letters.ts";
import { letterText } from "#app/_words/letter-text.ts";
import { hasSentence } from "#app/_words/sentences.ts";
import {
  addressees,
  factsOfEvery,
  type LetterFactsGiven,
  type LoanPeople,
  letterCode,
  letterEvents,
  letterFactNames,
  letterFacts,
  letterPlan,
  recipientsOf,
} from "#lib/loans/letters.ts";

const people: LoanPeople = {
  contactEmail: "Lecturer@school.example",
  institutionEmail: "office@school.example",
  institutionLanguages: ["de"],
  centreLanguages: ["en"],
  askerId: "lecturer",
  borrowerId: "school",
  accounts: [
    { id: "lecturer", email: "lecturer@school.example", roles: ["lecturer"], institutionId: "school" },
    { id: "other lecturer", email: "other@school.example", roles: ["lecturer"], institutionId: "school" },
    { id: "keeper", email: "keeper@school.example", roles: ["borrower registrar"], institutionId: "school" },
    { id: "stranger", email: "x@other.example", roles: ["borrower registrar"], institutionId: "other" },
    { id: "registrar", email: "registrar@house.example", roles: ["registrar"], institutionId: null },
    { id: "curator", email: "curator@house.example", roles: ["curator"], institutionId: null },
    { id: "officer", email: "officer@house.example", roles: ["donor officer"], institutionId: null },
  ],
};
const addressesOf = (event: Parameters<typeof recipientsOf>[0], actor = "nobody") =>
  recipientsOf(event, people, actor)
    .map(({ address }) => address.toLowerCase())
    .sort();

test("a request goes to the house, and to who asked for it, once", () => {
  expect(addressesOf("submitted")).toEqual([
    "curator@house.example",
    "lecturer@school.example",
    "registrar@house.example",
  ]);
  expect(addressesOf("submitted", "lecturer")).toEqual(["curator@house.example", "registrar@house.example"]);
});

test("the contact is known by the account of that address", () => {
  expect(recipientsOf("reminder-ahead", people, "nobody")).toEqual([
    { accountId: "lecturer", address: "Lecturer@school.example", languages: ["de"] },
  ]);
});

test("the donor office is written to where its word is needed, and nobody else is", () => {
  expect(addressesOf("donor-office-asked")).toEqual(["officer@house.example"]);
  for (const event of letterEvents.filter((one) => one !== "donor-office-asked"))
    expect(addressesOf(event), event).not.toContain("officer@house.example");
});

test("reminders climb from the contact to the institution", () => {
  expect(addressesOf("reminder-today")).toEqual(["keeper@school.example", "lecturer@school.example"]);
  expect(addressesOf("reminder-last")).toEqual([
    "keeper@school.example",
    "lecturer@school.example",
    "office@school.example",
    "registrar@house.example",
  ]);
});

test("nobody of another institution, and no other lecturer, is ever written to", () => {
  for (const event of letterEvents) {
    expect(addressesOf(event), event).not.toContain("x@other.example");
    expect(addressesOf(event), event).not.toContain("other@school.example");
  }
});

test("every addressee is somebody in some letter, and an empty address is nobody", () => {
  const used = new Set(Object.values(letterPlan).flatMap(({ to }): readonly string[] => to));
  expect([...used].sort()).toEqual([...addressees].sort());
  expect(recipientsOf("reminder-ahead", { ...people, contactEmail: " ", askerId: "none" }, "nobody")).toEqual(
    [],
  );
});

/** Facts that no letter may hold, beside all it may. */
const everything = {
  loan: "L 2027-001",
  title: "Autumn course",
  borrower: "School of Medicine",
  centre: "Centre",
  startsOn: "2027-03-01",
  endsOn: "2027-07-01",
  count: 2,
  version: 3,
  days: 14,
  neededFrom: "2027-08-01",
  returnBy: "2027-05-01",
  claim: "L 2026-001 C1",
  coverEndsOn: "2027-02-01",
  askedUntil: "2027-09-01",
} satisfies Required<LetterFactsGiven>;
const secrets = {
  donorCode: "D-7F3K",
  sex: "female",
  ageBand: "80 to 89",
  consent: "granted",
  specimen: "AN 1",
};

describe.each(letterEvents)("the letter %s", (event) => {
  const facts = letterFacts(event, { ...everything, ...secrets } as LetterFactsGiven);
  const code = letterCode(event);

  test("is told nothing but its own facts of the loan", () => {
    const plan: { to: readonly string[]; says?: readonly string[] } = letterPlan[event];
    expect(Object.keys(facts).sort()).toEqual([...factsOfEvery, ...(plan.says ?? [])].sort());
    expect(letterFactNames).toEqual(expect.arrayContaining(Object.keys(facts)));
    for (const secret of Object.values(secrets)) expect(JSON.stringify(facts)).not.toContain(secret);
  });

  test("has a subject and a text that say all they are told to, and nothing of a donor", () => {
    expect(hasSentence(`${code}.subject`) && hasSentence(`${code}.text`)).toBe(true);
    const { subject, text } = letterText(code, facts, "https://loans.example/loans/1");
    expect(`${subject} ${text}`).not.toMatch(/[{}[\]]|undefined|–/);
    expect(text).toContain("https://loans.example/loans/1");
    const said = `${letters[event].subject} ${letters[event].text}`;
    const named = [...said.matchAll(/[{[](\w+)[:}]/g)].map((match) => match[1]);
    expect(Object.keys(facts)).toEqual(expect.arrayContaining(named));
    if (event !== "donor-office-asked")
      expect(said).not.toMatch(/\b(donors?|consent|sex|age band|died|body|bodies)\b/i);
  });
});

test("a letter without a fact it may do without leaves its sentence out", () => {
  const without = letterFacts("reminder-today", { ...everything, neededFrom: null });
  expect(letterText("letter.reminder-today", without, null).text).not.toContain("Somebody else");
  const withIt = letterFacts("reminder-today", everything);
  expect(letterText("letter.reminder-today", withIt, null).text).toContain("1 August 2027");
});

test("a title cannot break the head of a mail", () => {
  const facts = letterFacts("closed", { ...everything, loan: "L 1\r\nBcc: somebody@else.example" });
  expect(letterText("letter.closed", facts, null).subject).not.toMatch(/[\r\n]/);
});
