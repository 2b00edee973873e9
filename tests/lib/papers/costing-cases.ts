/** A quotation and the cost statement beside it, with figures that are easy to reckon by hand. */
import { comparedLines } from "#lib/costing/compared.ts";
import { totalsOf } from "#lib/costing/costing.ts";
import type { CostingContent } from "#lib/costing/schema.ts";
import type { CaseCosting } from "#lib/papers/paper-case.ts";
import { aCountedLine, aFeeScale, aStatedLine } from "#tests/support/money.ts";

const longNote =
  "Sondertransportgenehmigungsbearbeitungsgebühr für die Überführung mehrteiliger Präparatetransportkisten".slice(
    0,
    160,
  );

const party = {
  name: "Lending Centre",
  address: "Quay 1",
  city: "Port Arden",
  countryCode: "DE",
  email: "office@example.org",
  phone: "+49 555 0100",
};

function quotation(long: boolean): CostingContent {
  const lines = [
    aCountedLine("loan fee", "1", 25_000),
    aCountedLine("packing", "6.5", 4_635),
    aCountedLine("return and recall", "1", 30_000, { taxPercent: "0" }),
    {
      code: "cover on the way" as const,
      note: "",
      currency: "EUR",
      price: {
        kind: "share" as const,
        ofMinor: 1_200_000,
        share: "0.35",
        per: "mille" as const,
        times: "2",
        unit: "transit" as const,
      },
      taxPercent: "0",
    },
    aStatedLine(long ? longNote : "Ferry", 10_000, { currency: "NOK" }),
    ...(long ? Array.from({ length: 50 }, (_none, index) => aStatedLine(`${longNote} ${index}`, 100)) : []),
  ];
  const exchange = [{ from: "NOK", to: "EUR", rate: "0.0875", on: "2026-11-20" }];
  return {
    format: "costing-1",
    kind: "quotation",
    version: 3,
    loan: {
      number: "L 2026-031",
      title: "Winter course",
      purpose: "teaching",
      startsOn: "2026-12-05",
      returnBy: "2027-03-01",
      specimens: 7,
      venue: "Dissection room 2",
    },
    lender: party,
    borrower: {
      ...party,
      name: long ? longNote : "Port Selwyn Faculty of Medicine",
      countryCode: "NO",
      contactName: "Bela Registrar",
    },
    drawnUpOn: "2026-11-21",
    validUntil: "2026-12-21",
    currency: "EUR",
    minorDigits: 2,
    costRecovery: true,
    rounding: "half-up-line-net-tax-on-sum",
    feeScaleVersion: 4,
    ...totalsOf({ currency: "EUR", lines, exchange }),
    exchange,
    cancellation: aFeeScale().cancellation,
    against: null,
    note: long ? longNote : "",
  };
}

export function someCostings(long = false): CaseCosting[] {
  const quoted = quotation(long);
  const lines = [aCountedLine("loan fee", "1", 25_000), aCountedLine("packing", "8", 4_635)];
  const totals = totalsOf({ currency: "EUR", lines, exchange: [] });
  const stated: CostingContent = {
    ...quoted,
    kind: "cost statement",
    version: 1,
    drawnUpOn: "2027-03-10",
    validUntil: null,
    exchange: [],
    ...totals,
    against: {
      version: quoted.version,
      sha256: "cd".repeat(32),
      totalMinor: quoted.totalMinor,
      lines: comparedLines(quoted.lines, totals.lines),
      differenceMinor: totals.totalMinor - quoted.totalMinor,
    },
  };
  return [
    { content: quoted, sha256: "cd".repeat(32) },
    { content: stated, sha256: "ef".repeat(32) },
  ];
}
