import { describe, expect, test } from "vitest";
import {
  conditionsBlocks,
  coverBlocks,
  loanBlocks,
  moneyText,
  partiesBlocks,
  transportBlocks,
} from "#lib/papers/agreement-parts.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";

const terms = someTerms(2);

test("money has its currency beside it", () => {
  expect(moneyText({ minor: 1_200_050, currency: "EUR" }, words)).toBe("12,000.50\u00A0EUR");
});

test("the parties stand with name, address, country and the contact for the loan", () => {
  const text = textOfBlocks(partiesBlocks(terms, words));
  for (const { name, address, city, email, phone } of [terms.lender, terms.borrower])
    for (const fact of [name, address, city, email, phone]) expect(text).toContain(fact);
  for (const fact of ["Norway", "Ireland", "A. Lecturer", "lecturer@carrick.example", "+353 00 00 03"])
    expect(text).toContain(fact);
});

test("a party without a telephone has no empty line", () => {
  const text = textOfBlocks(partiesBlocks({ ...terms, lender: { ...terms.lender, phone: "" } }, words));
  expect(text).not.toMatch(/\n\s*\n/);
});

describe("the loan", () => {
  test("states purpose, venue and days", () => {
    const text = textOfBlocks(loanBlocks(terms, words));
    for (const fact of [
      "Teaching by viewing, for enrolled students.",
      "Without charge.",
      "Pictures allowed\nFor internal use.",
      "Sampling, casting, scanning and dissection\nNone.",
      "Hall 2\nQuay 4, Port Selwyn\nIreland",
      "1 March 2027.",
      "1 July 2027: the specimens have left the venue by this day.",
      "14 days before delivery and 14 days after the return",
    ])
      expect(text).toContain(fact);
  });

  test("names what may be done with every specimen", () => {
    const purpose = { ...terms.purpose, activities: ["sampling", "casting and scanning"] };
    expect(textOfBlocks(loanBlocks({ ...terms, purpose }, words))).toContain(
      "Sampling, casting, scanning and dissection\nSampling; casting and scanning.",
    );
  });

  test("is said otherwise for an exhibition with paid admission and no pictures", () => {
    const purpose = {
      ...terms.purpose,
      purpose: "exhibition",
      audience: "general public",
      isPaidAdmission: true,
      pictures: [],
    };
    const text = textOfBlocks(loanBlocks({ ...terms, purpose }, words));
    expect(text).toContain("Exhibition, for the general public.");
    expect(text).toContain("Paid.");
    expect(text).toContain("Pictures allowed\nNone.");
  });
});

test("conditions name who set them, when, and the oversight body's paper", () => {
  const text = textOfBlocks(conditionsBlocks(terms, words));
  expect(text).toContain("Curator, 20 November 2026\nThe jars stay in the first room.");
  expect(text).toContain("Oversight body, 22 November 2026\nNo condition.\nReference: Minute 14/2026");
});

describe("packing and transport", () => {
  test("name crates with sizes, mass, handling and contents, and the stages", () => {
    const text = textOfBlocks(transportBlocks(terms, words));
    expect(text).toContain(
      "C-01\tdouble case\nAN 2004.0100, AN 2005.0101\t1,180\t640\t560\t38.4\tTwo persons lift it.\nThis side up.",
    );
    expect(text).toContain("Out\tCareful carriers\tSweden and Denmark\t26 February 2027\t1 March 2027");
    expect(text).toContain("Home\tCareful carriers\t–\t1 July 2027\t4 July 2027");
  });

  test("say nothing of countries between where no stage crosses one", () => {
    const stages = terms.stages.map((stage) => ({ ...stage, through: [] }));
    const text = textOfBlocks(transportBlocks({ ...terms, stages }, words));
    expect(text).not.toContain("Through");
    expect(text).toContain("Out\tCareful carriers\t26 February 2027\t1 March 2027");
  });

  test("say when nothing is planned yet", () => {
    const text = textOfBlocks(transportBlocks({ ...terms, crates: [], stages: [] }, words));
    expect(text).toContain("No crate is named in this version.");
    expect(text).toContain("No stage of the journey is named in this version.");
  });
});

describe("cover", () => {
  test("is what is needed, what is stated, and each certificate", () => {
    const text = textOfBlocks(coverBlocks(terms, words));
    for (const fact of [
      "Cover needed\n15,850.50 EUR",
      "Stated by the borrower\n50,000.00 EUR",
      "Northern mutual cover, policy NM-77120/4",
      "Amount: 900,000.00 EUR",
      "From 10 February 2027, 06:00 UTC to 20 July 2027, 18:00 UTC",
      "Transit is covered.",
      "Countries: Norway, Ireland and United Kingdom",
    ])
      expect(text).toContain(fact);
  });

  test("says what is missing", () => {
    const text = textOfBlocks(
      coverBlocks({ ...terms, cover: { needed: null, stated: null, certificates: [] } }, words),
    );
    expect(text).toContain("As each row of the schedule states.");
    expect(text).toContain("Nothing stated.");
    expect(text).toContain("Nothing leaves without it.");
  });

  test("says that transit is not covered and that no country is named", () => {
    const certificates = terms.cover.certificates.map((certificate) => ({
      ...certificate,
      coversTransit: false,
      territories: [],
    }));
    const text = textOfBlocks(coverBlocks({ ...terms, cover: { ...terms.cover, certificates } }, words));
    expect(text).toContain("Transit is not covered.");
    expect(text).toContain("Countries: not stated.");
  });
});
