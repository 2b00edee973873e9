/**
 * The parts of an agreement that are said in a few lines: the parties, the loan,
 * the conditions of the decision, crates and stages, cover. Each part is a list of
 * blocks in the language of the words passed in; a part that has nothing to say is
 * said to be empty, so that nobody has to guess whether it was forgotten.
 */
import type { AgreementTerms, Party } from "#lib/agreements/frozen-terms.ts";
import type { Block, TableColumn, Text } from "#lib/papers/blocks.ts";
import { capital, fill, type PaperWords, say } from "#lib/papers/words.ts";
import type { Money } from "#lib/specimens/schema.ts";

/** "12,345.00 EUR", held together at the end of a line. */
export function moneyText(money: Money, words: PaperWords): string {
  return `${words.write.amount(money)}\u00A0${money.currency}`;
}

const present = (texts: readonly string[]) => texts.filter((text) => text.trim() !== "");

function partyLines(party: Party, words: PaperWords): Text[] {
  return [
    [{ text: party.name, emphasis: "strong" }],
    ...present([party.address, party.city, words.write.country(party.countryCode), party.email, party.phone]),
  ];
}

export function partiesBlocks({ lender, borrower }: AgreementTerms, words: PaperWords): Block[] {
  return [
    {
      kind: "columns",
      columns: [
        { heading: words.parties.lender, lines: partyLines(lender, words) },
        {
          heading: words.parties.borrower,
          lines: [
            ...partyLines(borrower, words),
            [{ text: words.parties.contact, emphasis: "small" }],
            ...present([borrower.contactName, borrower.contactEmail, borrower.contactPhone]),
          ],
        },
      ],
    },
  ];
}

export function loanBlocks({ purpose, term, venue }: AgreementTerms, words: PaperWords): Block[] {
  const { loan, write } = words;
  const isTeaching = purpose.purpose === "teaching";
  const pictures = purpose.pictures.map((picture) => say(loan.plannedPictures, picture));
  const activities = purpose.activities.map((activity) => say(loan.plannedActivities, activity));
  const allowed = (listed: string) => (listed === "" ? loan.none : `${capital(listed)}.`);
  const aim = isTeaching
    ? capital(say(loan.teachingUses, purpose.teachingUse))
    : say(loan.purposes, purpose.purpose);
  return [
    {
      kind: "definitions",
      rows: [
        {
          term: loan.purpose,
          paragraphs: [
            `${fill(loan.purposeForAudience, { purpose: aim, audience: say(loan.audiences, purpose.audience) })}.`,
          ],
        },
        { term: loan.manner, paragraphs: [`${say(loan.displayStyles, purpose.displayStyle)}.`] },
        {
          term: loan.admission,
          paragraphs: [purpose.isPaidAdmission ? loan.admissionPaid : loan.admissionFree],
        },
        {
          term: loan.pictures,
          paragraphs: [allowed(write.list(pictures))],
        },
        {
          term: loan.activities,
          paragraphs: [allowed(activities.join(write.semicolon))],
        },
        {
          term: loan.venue,
          paragraphs: present([venue.name, venue.address, write.country(venue.countryCode)]),
        },
        { term: loan.delivery, paragraphs: [`${write.day(term.startsOn)}.`] },
        {
          term: loan.returnBy,
          paragraphs: [fill(loan.returnByMeaning, { day: write.day(term.returnBy) })],
        },
        {
          term: loan.daysAround,
          paragraphs: [
            fill(loan.daysAroundMeaning, {
              before: write.days(term.daysBefore),
              after: write.days(term.daysAfter),
            }),
          ],
        },
      ],
    },
  ];
}

export function conditionsBlocks({ conditions }: AgreementTerms, words: PaperWords): Block[] {
  return [
    {
      kind: "definitions",
      rows: conditions.map(({ office, decidedOn, conditions: said, reference }) => ({
        term: `${say(words.loan.offices, office)}, ${words.write.day(decidedOn)}`,
        paragraphs: present([
          said.trim() === "" ? words.loan.noConditions : said,
          reference.trim() === "" ? "" : fill(words.loan.reference, { reference }),
        ]),
      })),
    },
  ];
}

export function cratesBlock({ crates }: AgreementTerms, words: PaperWords): Block {
  const { transport, write } = words;
  if (crates.length === 0) return { kind: "paragraph", text: transport.noCrates };
  return {
    kind: "table",
    columns: [
      { header: transport.crate, align: "left", width: "fit" },
      { header: transport.contents, align: "left", width: { share: 3 } },
      { header: transport.length, align: "right", width: "fit" },
      { header: transport.width, align: "right", width: "fit" },
      { header: transport.height, align: "right", width: "fit" },
      { header: transport.grossMass, align: "decimal", width: "fit" },
      { header: transport.handling, align: "left", width: { share: 2 } },
    ],
    rows: crates.map((crate) => [
      [{ text: crate.code, emphasis: "code" }],
      {
        paragraphs: [
          [{ text: say(transport.crateKinds, crate.kind), emphasis: "small" }],
          crate.contents.flatMap((accessionNumber, index) => [
            { text: index === 0 ? "" : ", " },
            { text: accessionNumber.replaceAll(" ", "\u00A0"), emphasis: "code" as const },
          ]),
        ],
      },
      write.number(crate.outerLengthMm),
      write.number(crate.outerWidthMm),
      write.number(crate.outerHeightMm),
      write.number(crate.grossMassKg, { least: 0, most: 1 }),
      {
        paragraphs: [
          say(transport.handlingModes, crate.handling),
          say(transport.orientations, crate.orientation),
        ],
      },
    ]),
  };
}

export function stagesBlock({ stages }: AgreementTerms, words: PaperWords): Block {
  const { transport, write } = words;
  if (stages.length === 0) return { kind: "paragraph", text: transport.noStages };
  const crossesCountries = stages.some(({ through }) => through.length > 0);
  const between = (countries: readonly string[]) =>
    countries.length === 0 ? transport.noneBetween : write.list(countries.map(write.country));
  return {
    kind: "table",
    columns: [
      { header: transport.direction, align: "left", width: "fit" },
      { header: transport.carrier, align: "left", width: { share: 1 } },
      ...(crossesCountries
        ? [{ header: transport.through, align: "left", width: { share: 1 } } satisfies TableColumn]
        : []),
      { header: transport.departs, align: "left", width: "fit" },
      { header: transport.arrives, align: "left", width: "fit" },
    ],
    rows: stages.map(({ direction, carrier, through, departsOn, arrivesOn }) => [
      say(transport.directions, direction),
      carrier,
      ...(crossesCountries ? [between(through)] : []),
      write.day(departsOn),
      write.day(arrivesOn),
    ]),
  };
}

export function transportBlocks(terms: AgreementTerms, words: PaperWords): Block[] {
  return [
    { kind: "subheading", text: words.transport.crates },
    cratesBlock(terms, words),
    { kind: "subheading", text: words.transport.stages },
    stagesBlock(terms, words),
  ];
}

export function coverBlocks({ cover }: AgreementTerms, words: PaperWords): Block[] {
  const { cover: said, write } = words;
  return [
    {
      kind: "definitions",
      rows: [
        {
          term: said.needed,
          paragraphs: [cover.needed === null ? said.neededPerRow : moneyText(cover.needed, words)],
        },
        {
          term: said.stated,
          paragraphs: [cover.stated === null ? said.notStated : moneyText(cover.stated, words)],
        },
        ...(cover.certificates.length === 0
          ? [{ term: said.certificate, paragraphs: [said.noCertificate] }]
          : cover.certificates.map((certificate) => ({
              term: said.certificate,
              paragraphs: [
                fill(said.policy, { insurer: certificate.insurer, policyNumber: certificate.policyNumber }),
                fill(said.amount, { amount: moneyText(certificate.amount, words) }),
                fill(said.period, {
                  from: write.moment(certificate.startsAt),
                  to: write.moment(certificate.endsAt),
                }),
                certificate.coversTransit ? said.transit : said.noTransit,
                ...(certificate.coversStay === undefined
                  ? []
                  : [certificate.coversStay ? said.stay : said.noStay]),
                certificate.territories.length === 0
                  ? said.anyTerritory
                  : fill(said.territories, {
                      countries: write.list(certificate.territories.map(write.country)),
                    }),
              ],
            }))),
      ],
    },
  ];
}
