/**
 * The annexes A to M of an agreement, each under its letter. What an annex holds is
 * in the terms, so that it is hashed and signed with them; an annex that does not
 * apply is left out and keeps its letter. Nothing here tells who a donor was.
 */
import type { ParameterName } from "#lib/agreements/clauses/parameters.ts";
import type { CurrentTerms } from "#lib/agreements/frozen-terms.ts";
import type { AnnexMark, Notices, PaperOnRecord } from "#lib/agreements/terms-annexes.ts";
import { amendmentBlocks } from "#lib/papers/agreement-amendment.ts";
import { clauseLanguageOf, parameterLabel, parameterText } from "#lib/papers/agreement-clauses.ts";
import { consentBlocks } from "#lib/papers/agreement-consent.ts";
import { limitsBlocks } from "#lib/papers/agreement-limits.ts";
import { coverBlocks, cratesBlock, moneyText, stagesBlock } from "#lib/papers/agreement-parts.ts";
import { scheduleBlocks } from "#lib/papers/agreement-schedule.ts";
import type { Block, Cell, TableColumn } from "#lib/papers/blocks.ts";
import type { SchedulePictures } from "#lib/papers/schedule-pictures.ts";
import { inBoth } from "#lib/papers/two-languages.ts";
import { capital, fill, type PaperWords, say } from "#lib/papers/words.ts";

const left = (header: string, share: number): TableColumn => ({ header, align: "left", width: { share } });
const fitting = (header: string): TableColumn => ({ header, align: "left", width: "fit" });
const right = (header: string): TableColumn => ({ header, align: "right", width: "fit" });
const code = (text: string): Cell => [{ text, emphasis: "code" }];

/** Parameters of the clauses that apply, each with what is set. */
function parameterRows(names: readonly ParameterName[], terms: CurrentTerms) {
  const language = clauseLanguageOf(terms);
  const known = new Map(
    terms.clauses.flatMap(({ parameters }) => parameters.map(({ name, value }) => [name, value] as const)),
  );
  return names.flatMap((name) => {
    const value = known.get(name);
    return value === undefined
      ? []
      : [{ term: parameterLabel(name, language), paragraphs: [parameterText(name, value, language)] }];
  });
}

function definitions(names: readonly ParameterName[], terms: CurrentTerms): Block[] {
  const rows = parameterRows(names, terms);
  return rows.length === 0 ? [] : [{ kind: "definitions", rows }];
}

function checksBlocks({ annexes }: CurrentTerms, words: PaperWords): Block[] {
  const said = words.annexes.checks;
  if (annexes.checks.length === 0) return [{ kind: "paragraph", text: said.none }];
  return [
    { kind: "paragraph", text: said.lead, isLead: true },
    {
      kind: "table",
      columns: [
        fitting(said.number),
        fitting(said.occasion),
        fitting(said.checkedOn),
        fitting(said.grade),
        left(said.hash, 1),
      ],
      rows: annexes.checks.map((check) => [
        code(check.accessionNumber),
        say(said.occasions, check.occasion),
        words.write.day(check.checkedOn),
        say(words.schedule.grades, check.grade),
        code(check.sha256),
      ]),
    },
  ];
}

const humidityFacts = ["humidityLow", "humidityHigh", "humiditySwing24h"];

function facilityBlocks({ annexes }: CurrentTerms, words: PaperWords): Block[] {
  const { facility: said, yes, no } = words.annexes;
  const { reportedOn, report, figures, answers } = annexes.facility;
  const { day } = words.write;
  const figure = (fact: string, value: number | null) =>
    value === null
      ? words.annexes.nothing
      : words.write.number(humidityFacts.includes(fact) ? Math.round(value * 1_000) / 10 : value);
  const deviation = (isBeyond: boolean | null): Cell =>
    isBeyond === null ? said.unknown : isBeyond ? [{ text: said.beyond, emphasis: "strong" }] : said.within;
  return [
    {
      kind: "paragraph",
      text: report
        ? fill(said.report, {
            version: report.version,
            day: day(report.reportedOn),
            until: day(report.validUntil),
          })
        : reportedOn === null
          ? said.notReported
          : fill(said.reportedOn, { day: day(reportedOn) }),
      isLead: true,
    },
    {
      kind: "table",
      columns: [left(said.fact, 4), right(said.stated), right(said.limit), left(said.deviation, 2)],
      rows: figures.map(({ fact, stated, limit, isBeyond }) => [
        say(said.facts, fact),
        figure(fact, stated),
        figure(fact, limit),
        deviation(isBeyond),
      ]),
    },
    {
      kind: "definitions",
      rows: answers.map(({ fact, stated }) => ({
        term: say(said.facts, fact),
        paragraphs: [stated === null ? said.unknown : stated ? yes : no],
      })),
    },
  ];
}

const displayNames = [
  "protection",
  "barrierMm",
  "heaviestKg",
  "restrictedRoom",
  "noticePlace",
  "minimumAge",
  "displayApprovalDays",
] as const;

function displayBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const rows = definitions(displayNames, terms);
  return [
    ...limitsBlocks(terms, words),
    ...(rows.length === 0
      ? []
      : [{ kind: "subheading", text: words.annexes.display } satisfies Block, ...rows]),
  ];
}

function itineraryBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const { contacts } = words.annexes;
  return [
    stagesBlock(terms, words),
    { kind: "subheading", text: contacts.heading },
    ...definitions(["lenderEmergency", "borrowerEmergency", "contact", "carriers"], terms),
  ];
}

function paperText({ kind, number, authority, validUntil }: PaperOnRecord, words: PaperWords): string {
  const { evidence } = words.annexes;
  const validity =
    validUntil === null ? evidence.noEnd : fill(evidence.validUntil, { day: words.write.day(validUntil) });
  return capital(fill(evidence.paper, { kind: say(evidence.kinds, kind), number, authority, validity }));
}

function evidenceBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const { evidence: said, nothing } = words.annexes;
  const { evidence, licences } = terms.annexes;
  const consent = (isComplete: boolean | null) =>
    isComplete === null ? said.notAsked : isComplete ? said.complete : said.incomplete;
  const papers = (list: readonly PaperOnRecord[]): Cell =>
    list.length === 0 ? nothing : { paragraphs: list.map((paper) => paperText(paper, words)) };
  return [
    { kind: "paragraph", text: said.lead, isLead: true },
    ...(terms.schedule.some((row) => row.isHuman) ? consentBlocks(terms, words) : []),
    ...(evidence.length === 0
      ? []
      : [
          { kind: "subheading", text: said.heading } satisfies Block,
          {
            kind: "table",
            columns: [
              fitting(words.annexes.checks.number),
              left(said.consent, 4),
              left(said.title, 3),
              left(said.papers, 4),
            ],
            rows: evidence.map((row) => [
              code(row.accessionNumber),
              consent(row.isConsentComplete),
              say(said.titles, row.title),
              papers(row.papers),
            ]),
          } satisfies Block,
        ]),
    {
      kind: "definitions",
      rows: [
        {
          term: said.licences,
          paragraphs: licences.length === 0 ? [nothing] : licences.map((paper) => paperText(paper, words)),
        },
      ],
    },
  ];
}

const bearerNames = [
  "costOfPreparation",
  "costOfPacking",
  "costOfTransport",
  "costOfCover",
  "costOfPermits",
  "costOfCourier",
  "costOfDisplay",
  "feeInstalments",
  "feeDays",
  "paymentDays",
  "deposit",
] as const;

function costsBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const said = words.annexes.costs;
  const { costing } = terms.annexes;
  const quotation: Block[] =
    costing === null
      ? [{ kind: "paragraph", text: said.none }]
      : [
          {
            kind: "paragraph",
            text: fill(said.quotation, {
              version: costing.version,
              day: words.write.day(costing.drawnUpOn),
              total: moneyText(costing.total, words),
            }),
          },
          {
            kind: "definitions",
            rows: [{ term: said.hash, paragraphs: [[{ text: costing.sha256, emphasis: "code" }]] }],
          },
        ];
  return [...quotation, { kind: "subheading", text: said.bearers }, ...definitions(bearerNames, terms)];
}

function handlingBlocks({ schedule }: CurrentTerms, words: PaperWords): Block[] {
  const { handling: said, nothing } = words.annexes;
  return [
    { kind: "paragraph", text: said.lead, isLead: true },
    {
      kind: "table",
      columns: [left(said.specimen, 4), right(said.mass), left(said.use, 3), left(said.hazards, 2)],
      rows: schedule.map((row) => [
        {
          paragraphs: [
            [
              { text: row.accessionNumber, emphasis: "code" },
              { text: ` ${row.title}`, emphasis: "small" },
            ],
          ],
        },
        row.massKg === null ? words.schedule.notStated : words.write.number(row.massKg),
        say(said.uses, row.use),
        row.hazards.length === 0
          ? nothing
          : row.hazards
              .map(({ substance }) => say(words.schedule.hazardSubstances, substance))
              .join(words.write.semicolon),
      ]),
    },
    { kind: "subheading", text: said.instructions },
    ...said.steps.map((text): Block => ({ kind: "paragraph", text })),
  ];
}

function labelsBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const { labels } = words.annexes;
  const { notices } = terms.annexes;
  const ordered = terms.languages.flatMap((language) => notices[language] ?? []);
  const inAll = (pick: keyof Notices) => ordered.map((notice) => notice[pick]);
  const hasHuman = terms.schedule.some((row) => row.isHuman);
  const hasFluid = terms.schedule.some((row) => row.fluid !== null);
  const row = (term: string, paragraphs: string[]) => ({ term, paragraphs });
  const [credit] = parameterRows(["creditLine"], terms);
  return [
    {
      kind: "definitions",
      rows: [
        ...(credit === undefined ? [] : [row(labels.credit, credit.paragraphs)]),
        ...(hasHuman
          ? [row(labels.human, inAll("human")), row(labels.thanks, inAll("acknowledgement"))]
          : []),
        row(labels.pictures, inAll("pictures")),
        row(labels.handling, inAll("handling")),
        ...(hasFluid ? [row(labels.fluid, inAll("fluid"))] : []),
      ],
    },
  ];
}

const LOG_ROWS = 14;

function logBlocks(terms: CurrentTerms, words: PaperWords): Block[] {
  const { log } = words.annexes;
  const [interval] = parameterRows(["loggingMinutes"], terms);
  // a form to write on is not divided
  return [
    {
      kind: "together",
      blocks: [
        {
          kind: "paragraph",
          text: fill(log.lead, { minutes: String(interval?.paragraphs[0] ?? "") }),
          isLead: true,
        },
        {
          kind: "table",
          columns: log.columns.map((header) => left(header, 1)),
          rows: Array.from({ length: LOG_ROWS }, () => log.columns.map(() => "\u00A0")),
        },
      ],
    },
  ];
}

/** @param second the words of the second language of the terms, where they have one */
type Beside = { second?: PaperWords | null; pictures?: SchedulePictures };
type Contents = (terms: CurrentTerms, words: PaperWords, beside: Beside) => Block[];

const contents: Readonly<Record<AnnexMark, Contents>> = {
  A: scheduleBlocks,
  B: checksBlocks,
  C: facilityBlocks,
  D: displayBlocks,
  E: itineraryBlocks,
  F: (terms, words) => [
    cratesBlock(terms, words),
    ...definitions(
      ["packer", "crateLowC", "crateHighC", "crateHumidityLowPercent", "crateHumidityHighPercent"],
      terms,
    ),
  ],
  G: coverBlocks,
  H: evidenceBlocks,
  I: costsBlocks,
  J: handlingBlocks,
  K: labelsBlocks,
  L: logBlocks,
  M: amendmentBlocks,
};

/** The annexes that apply, each under its letter; their headings in both languages of the terms. */
export function annexBlocks(terms: CurrentTerms, words: PaperWords, beside: Beside = {}): Block[] {
  const { second = null } = beside;
  const both = inBoth(words, second);
  const headingOf = (mark: AnnexMark) =>
    both(({ annexes: { heading, titles } }) => fill(heading, { mark, title: titles[mark] }));
  return terms.annexes.applies.flatMap((mark) => [
    { kind: "heading", mark, text: headingOf(mark) } satisfies Block,
    ...contents[mark](terms, words, beside),
  ]);
}
