/**
 * What published standards, forms and guidance of the trade ask of each paper, item
 * by item, and the words by which it is found on the paper. Sources were read as
 * summaries or copies where the whole was not at hand; only the facts are taken over.
 */
import { describe, expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";
import { facilityPaperDocument } from "#lib/papers/facility-paper/document.ts";
import { type PaperKind, paperKinds } from "#lib/papers/paper-kinds.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { aPaper } from "#tests/lib/papers/facility-paper/facility-cases.ts";
import { documentOf } from "#tests/lib/papers/issued-papers.ts";
import { someCase } from "#tests/lib/papers/paper-cases.ts";

const packing = "Packing lists of the trade, and EN 15946 by its scope: packing for transport";
const marks =
  "ISO 780:2015, marks for handling and storage of packages (list from memory), by the economic commission's guide";
const handOver = "One signature for each change of hands: registrars' practice, common practice, no source";
const specimens = "Society for natural history collections: shipping papers of specimens";
const temporary = "A customs agency's notes on temporary admission: goods known again at re-import";
const carnet = "Notes on carnets for temporary import: closed list, vouchers, twelve months";
const condition = "EN 16095 by its scope: condition recording of movable heritage (items from memory)";
const couriers = "Registrars' couriering guidance, and the shared courier training framework, 2020";
const facility = "Standard facility report forms, 1998 and 2008, and a university's guide to reviewing one";
const closing = "Open procedure standard for collections, loans out: end of a loan";
const costs =
  "Societies' recommendations: body donation is not for profit; quotations, common practice, no source";

type Item = readonly [item: string, source: string, found: RegExp];

const asked: Record<PaperKind, readonly Item[]> = {
  "packing list": [
    ["crate n of N, and its number", packing, /Crate 1 of 1, L 2026-031\/1/],
    ["outer length, width and height", packing, /1,240 × 820 × 760 mm/],
    ["gross, net and tare mass", packing, /Gross 64\.3 kg, contents 18\.2 kg, crate and packing 46\.1 kg/],
    [
      "contents by position, with number, title and components",
      packing,
      /1\s+AN 2004\.0001\s+Heart 1[\s\S]*Components: 2 × detachable lid/,
    ],
    ["inner packing", packing, /Inner packing[\s\S]*Foam on all sides/],
    ["sensors", packing, /Sensors and their numbers/],
    ["seal", packing, /Seal\s+A 001/],
    ["order of opening", packing, /in the order of the positions/],
    ["tools needed", packing, /Tools needed to open/],
    ["photographs of the packing", packing, /Photographs of the packing/],
    ["lifting and centre of gravity", packing, /Lifting[\s\S]*Centre of gravity 372 mm/],
    ["keep upright", packing, /This side up/],
    ["packing again with the same materials", packing, /With the same materials, in the same places/],
  ],
  "crate label": [
    ["loan number and crate n of N", marks, /Crate 1 of 1\s+Loan L 2026-031/],
    ["sender and receiver", marks, /From\s+Lending Centre[\s\S]*To\s+Port Selwyn/],
    ["a telephone day and night", marks, /Telephone, day and night\s+\+49 555 0111/],
    ["gross mass and size", marks, /Gross mass\s+64\.3 kg[\s\S]*Outer size/],
    ["this way up, fragile, keep dry", marks, /This way up[\s\S]*Fragile[\s\S]*Keep dry/],
    ["keep from sunlight and heat", marks, /Keep from sunlight and heat/],
    ["centre of gravity, sling here", marks, /Centre of gravity[\s\S]*Sling here/],
    ["stacking limit", marks, /Stacking limit: at most 118 kg/],
    ["no hand hooks, do not roll", marks, /No hand hooks[\s\S]*Do not roll/],
    ["temperature limits", marks, /Temperature limits: 5 to 30 °C/],
    [
      "opened by authorised staff only, not before a time",
      marks,
      /Open by authorised staff only\s+Do not open before/,
    ],
  ],
  "dispatch note": [
    [
      "from, to, carrier, vehicle",
      handOver,
      /From\s+Lending Centre[\s\S]*To\s+Port Selwyn[\s\S]*Carrier\s+Gentle Freight[\s\S]*Vehicle/,
    ],
    ["driver and number plate", handOver, /Driver[\s\S]*Number plate/],
    ["crates with seals and outer state", handOver, /Seal\s+Outside at hand-over[\s\S]*A 001/],
    [
      "day and time of leaving and arriving",
      handOver,
      /Left at \(day, time\)[\s\S]*Arrived at \(day, time\)/,
    ],
    ["who surrenders and who takes over sign", handOver, /Handed over[\s\S]*Taken over/],
  ],
  "outgoing receipt": [
    [
      "specimens with components, crate and condition",
      handOver,
      /AN 2004\.0001[\s\S]*Components[\s\S]*fair \(B\)/,
    ],
    [
      "each change of hands signed by both, with time",
      handOver,
      /Lending Centre to Gentle Freight[\s\S]*Gentle Freight to Port Selwyn[\s\S]*Time/,
    ],
    ["remarks before signing", handOver, /written here before signing/],
  ],
  "incoming receipt": [
    ["from the borrower to the lender", handOver, /From\s+Port Selwyn[\s\S]*To\s+Lending Centre/],
    [
      "each change of hands signed by both, with time",
      handOver,
      /Port Selwyn Faculty of Medicine to Gentle Freight[\s\S]*Gentle Freight to Lending Centre[\s\S]*Time/,
    ],
    ["remarks before signing", handOver, /written here before signing/],
  ],
  quotation: [
    ["how each amount is reckoned", costs, /How it is reckoned[\s\S]*6\.5 h at 46\.35 EUR/],
    ["tax by rate, and the total", costs, /Totals by tax rate[\s\S]*1,008\.44/],
    ["valid until", costs, /Valid until\s+21 December 2026/],
    [
      "human specimens: recovery of cost, no price",
      costs,
      /no price of the specimens, and no payment is made for human remains/,
    ],
    ["what calling off costs", costs, /If the loan is called off[\s\S]*On the day of dispatch\s+80 %/],
  ],
  "cost statement": [
    ["what was quoted beside what it came to", costs, /quot/i],
    ["tax by rate", costs, /Totals by tax rate/],
    ["human specimens: recovery of cost, no price", costs, /no payment is made for human remains/],
  ],
  "pro-forma invoice": [
    ["shipper, consignee, importer of record", specimens, /Sender[\s\S]*Receiver[\s\S]*Importer of record/],
    [
      "customs and tax numbers",
      specimens,
      /Sender's customs or tax number[\s\S]*Receiver's customs or tax number/,
    ],
    ["temporary, to be returned", temporary, /Temporary export for a loan\. The goods come back/],
    [
      "description clear to a layman, quantity and mass",
      specimens,
      /Organ, human, silicone-impregnated[\s\S]*Net kg|Net kg[\s\S]*Organ, human, silicone-impregnated/,
    ],
    [
      "value for customs with its basis and currency",
      specimens,
      /Value for customs, EUR[\s\S]*Basis of the value/,
    ],
    ["country of origin", specimens, /Origin/],
    ["tariff code with who decided it", specimens, /9705\.21\.00[\s\S]*Decided by[\s\S]*Harbour Brokers/],
    ["a code that nobody decided is said to be so", specimens, /Germany\s+not decided/],
    ["masses and marks of the packages", specimens, /Packages[\s\S]*L 2026-031\/1[\s\S]*64\.3/],
    ["terms of delivery", specimens, /Terms of delivery/],
    [
      "statement on human origin and protected species",
      specimens,
      /Of human origin[\s\S]*Permits under species protection/,
    ],
    ["signature", specimens, /For the sender[\s\S]*Name/],
  ],
  "carnet list": [
    [
      "goods known again without doubt",
      temporary,
      /known again by accession number, components and pictures/,
    ],
    ["number of pieces, mass, value, origin", carnet, /Pieces\s+Net kg\s+Value for customs, EUR\s+Origin/],
    ["closed list", carnet, /nothing is added to the list/],
    ["twelve months at most", carnet, /twelve months at most/],
    ["holder, represented by, vouchers", carnet, /Holder[\s\S]*Represented by[\s\S]*vouchers/],
  ],
  "condition form": [
    [
      "identity, components, crate",
      condition,
      /AN 2004\.0001 \(1 of 3\)[\s\S]*Components: 2 × detachable lid/,
    ],
    ["occasion, place, day, time", condition, /Occasion[\s\S]*Place and room[\s\S]*Day, time/],
    [
      "light and air of the examination",
      condition,
      /Light used[\s\S]*Temperature °C[\s\S]*Relative humidity %/,
    ],
    [
      "alteration with place, extent, severity and activity",
      condition,
      /hairline[\s\S]*near the apex[\s\S]*12 mm, minor, stable/,
    ],
    [
      "compared with the report before",
      condition,
      /At the last check\s+same\s+better\s+worse\s+gone\s+not visible/,
    ],
    ["pictures taken", condition, /Pictures taken/],
    ["both sign, with time", condition, /For the lender[\s\S]*For the borrower[\s\S]*Time/],
  ],
  "travel sheet": [
    ["hand-over times and stations", couriers, /Station\s+Day, time[\s\S]*Collected[\s\S]*Arrived/],
    ["vehicle, crates and seals", couriers, /Vehicle[\s\S]*Seal\s+Seen leaving\s+Seen arriving/],
    ["reading of loggers on the way", couriers, /°C, % RH/],
    [
      "delays, opening, condition, problems, people, expenses",
      couriers,
      /Delays and their cause[\s\S]*Opening[\s\S]*Condition when opened[\s\S]*Problems[\s\S]*People met[\s\S]*Expenses/,
    ],
    ["contacts of both sides", couriers, /Lender, day and night[\s\S]*At the venue/],
    ["the courier signs", couriers, /Courier[\s\S]*Name/],
  ],
  "loan closure": [
    [
      "all specimens back, counted and checked",
      closing,
      /3 of 3 specimens, each counted with its components and checked in/,
    ],
    ["condition at both ends", closing, /Going out[\s\S]*Back home/],
    ["what stays open", closing, /Costs and claims[\s\S]*What goes on/],
    ["the lender signs", closing, /For the lender[\s\S]*Name/],
  ],
};

const everyPaper: readonly Item[] = [
  ["number of the loan", closing, /L 2026-031/],
  [
    "way to see whether it is the valid version",
    "common practice, no source",
    /Whoever holds this paper can see at this address/,
  ],
];

const someLoan = someCase({ specimens: 3, crates: 1 });

describe.each(paperKinds)("%s", (kind) => {
  const text = textOfBlocks(documentOf(kind, someLoan).blocks);
  test.each([...everyPaper, ...asked[kind]])("%s (%s)", (_item, source, found) => {
    expect(source.length).toBeGreaterThan(10);
    expect(text).toMatch(found);
  });
});

test("a label tells nothing of a donor, of what is inside, or of a cost", () => {
  const text = textOfBlocks(documentOf("crate label", someLoan).blocks);
  expect(text).not.toMatch(/human|body|heart|liver|donor|EUR/i);
});

describe("facility report", () => {
  const text = textOfBlocks(facilityPaperDocument(aPaper(), "ab".repeat(32), englishPaper).blocks);
  const sections = [
    ["contacts", /contact/i],
    ["the building", /building/i],
    ["security", /security|guard/i],
    ["fire", /fire/i],
    ["staff who touch specimens", /staff/i],
    ["climate, its system and its record", /climate|humidity/i],
    ["light", /light|lux/i],
    ["cases in which specimens are shown", /case/i],
    ["handling equipment", /handling|pallet/i],
    ["licences with number and expiry", /licence/i],
    ["the way in with the size of each passage", /door[\s\S]*mm/i],
    ["lift and its load", /lift/i],
    ["water above the room", /Water pipes/],
    ["pests", /pest|insect/i],
    ["version, day and until when it counts", /Version 2, reported on 4 May 2026[\s\S]*counts until/],
  ] as const;
  test.each(sections)("speaks of %s", (_item, found) => {
    expect(facility).toContain("facility report");
    expect(text).toMatch(found);
  });
});
