/**
 * A worked example that adds up to the cent, reckoned by hand, and what must hold
 * for every paper: lines add up, order is nothing, no cent is lost, no currency is
 * added to another without a rate.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exchanged, loanCosting, priceOf, totalsOf } from "#lib/costing/costing.ts";
import { draftOfLine } from "#lib/costing/lines.ts";
import { type LineDraft, lineCodes } from "#lib/costing/schema.ts";
import { aCountedLine, aStatedLine } from "#tests/support/money.ts";

const share = (
  code: "cover on the way" | "cover of the stay" | "contingency",
  price: Pick<Extract<LineDraft["price"], { kind: "share" }>, "ofMinor" | "share" | "per" | "times" | "unit">,
  taxPercent: string,
): LineDraft => ({ code, note: "", currency: "EUR", price: { kind: "share", ...price }, taxPercent });

/**
 * Three specimens to an exhibition, 412 km away, two crates of 800 × 600 × 500 mm,
 * replacement cost for cover 24 000.00 EUR, 92 days. By hand:
 *
 *   line                        reckoned                          net EUR   tax
 *   loan fee                    1 × 250.00                         250.00   25
 *   further specimens           1 × 60.00                           60.00   25
 *   preparation                 2.5 h × 58.00                      145.00   25
 *   condition checks            3 h × 58.00                        174.00   25
 *   new crates                  2 × 120.00                         240.00   25
 *   crate volume                0.48 m³ × 640.00                   307.20   25
 *   packing                     4.75 h × 46.35 = 220.1625          220.16   25
 *   transport out               412 km × 1.85                      762.20   12
 *   transport home              1 × 420.00                         420.00   12
 *   courier, days               3 × 180.00                         540.00   25
 *   courier, fare               1 × 189.90                         189.90   12
 *   return and recall           1 × 300.00                         300.00   25
 *   cover on the way            24 000.00 × 0.35 ‰ × 2              16.80    0
 *   cover of the stay           24 000.00 × 0.0041 ‰ × 92 = 9.0528   9.05    0
 *   other, 1 250.00 NOK         at 0.0857 = 107.125                107.13   25
 *   contingency                 5 % of 3 431.44 = 171.572          171.57   25
 *   net                                                          3 913.01
 *   tax 0 %                     of 25.85                             0.00
 *   tax 12 %                    of 1 372.10 = 164.652              164.65
 *   tax 25 %                    of 2 515.06 = 628.765              628.77
 *   total                                                        4 706.43
 */
const example: readonly (readonly [LineDraft, number])[] = [
  [aCountedLine("loan fee", "1", 25_000), 25_000],
  [aCountedLine("further specimens", "1", 6_000), 6_000],
  [aCountedLine("preparation", "2.5", 5_800), 14_500],
  [aCountedLine("condition check", "3", 5_800), 17_400],
  [aCountedLine("new crate", "2", 12_000), 24_000],
  [aCountedLine("crate volume", "0.48", 64_000), 30_720],
  [aCountedLine("packing", "4.75", 4_635), 22_016],
  [aCountedLine("transport out by distance", "412", 185, { taxPercent: "12" }), 76_220],
  [aCountedLine("transport home", "1", 42_000, { taxPercent: "12" }), 42_000],
  [aCountedLine("courier days", "3", 18_000), 54_000],
  [aCountedLine("courier fare", "1", 18_990, { taxPercent: "12" }), 18_990],
  [aCountedLine("return and recall", "1", 30_000), 30_000],
  [
    share(
      "cover on the way",
      { ofMinor: 2_400_000, share: "0.35", per: "mille", times: "2", unit: "transit" },
      "0",
    ),
    1_680,
  ],
  [
    share(
      "cover of the stay",
      { ofMinor: 2_400_000, share: "0.0041", per: "mille", times: "92", unit: "day" },
      "0",
    ),
    905,
  ],
  [aStatedLine("ferry", 125_000, { currency: "NOK" }), 10_713],
  [share("contingency", { ofMinor: 0, share: "5", per: "cent", times: "1", unit: "once" }, "25"), 17_157],
];
const exchange = [{ from: "NOK", to: "EUR", rate: "0.0857", on: "2026-11-20" }];
const drafts = example.map(([line]) => line);

describe("the worked example", () => {
  const totals = totalsOf({ currency: "EUR", lines: drafts, exchange });

  test.each(example.map(([line, net], index) => [line.code, net, index] as const))(
    "%s comes to %i cents",
    (_code, net, index) => {
      expect(totals.lines[index]?.netMinor).toBe(net);
    },
  );

  test("adds up to the cent", () => {
    expect(totals).toMatchObject({
      netMinor: 391_301,
      taxes: [
        { percent: "0", netMinor: 2_585, taxMinor: 0 },
        { percent: "12", netMinor: 137_210, taxMinor: 16_465 },
        { percent: "25", netMinor: 251_506, taxMinor: 62_877 },
      ],
      taxMinor: 79_342,
      totalMinor: 470_643,
    });
  });

  test("reckons a contingency of its expenses, whatever base was given, and not of the fee", () => {
    expect(totals.lines.at(-1)?.price).toMatchObject({ ofMinor: 343_144 });
  });

  test("is explained with a step for each line, each rate of tax and the sums", () => {
    const { output, steps } = loanCosting.explain({ currency: "EUR", lines: drafts, exchange });
    expect(output).toEqual({ netMinor: 391_301, taxMinor: 79_342, totalMinor: 470_643 });
    expect(steps).toHaveLength(example.length + 5);
    expect(steps.find((step) => step.label === "other: ferry")).toMatchObject({
      value: "107.13",
      formula: "as stated, at 0.0857 EUR for 1 NOK on 2026-11-20",
    });
  });

  test("says the same when it is reckoned from its own lines again", () => {
    const again = totalsOf({ currency: "EUR", lines: totals.lines.map(draftOfLine), exchange });
    expect(again).toEqual(totals);
  });
});

describe("currencies", () => {
  test.each([
    // 2.5 × 1 yen is three yen, not two and a half
    ["JPY", "2.5", 1, 3],
    ["BHD", "2.5", 1, 3],
    ["EUR", "0.333", 100, 33],
    ["JPY", "0.333", 100, 33],
  ])("%s: %s × %i minor units is %i", (currency, quantity, rateMinor, minor) => {
    const line = aCountedLine("packing", quantity, rateMinor, { currency });
    expect(priceOf(line.price)).toBe(minor);
  });

  test.each([
    // 1 000 yen at 0.0061 are 6.10 euros
    [1_000, "JPY", "EUR", "0.0061", 610],
    // 6.10 euros at 163.5 are 997.35 yen
    [610, "EUR", "JPY", "163.5", 997],
    // 1.234 dinars at 2.45 are 3.0233 euros
    [1_234, "BHD", "EUR", "2.45", 302],
    // 3.02 euros at 0.408163265 are 1.232653 dinars
    [302, "EUR", "BHD", "0.408163265", 1_233],
    // half a cent goes up
    [1, "EUR", "USD", "0.5", 1],
  ])("%i minor units of %s are brought to %s at %s", (minor, from, to, rate, result) => {
    expect(exchanged(minor, from, to, [{ from, to, rate }])).toBe(result);
  });

  test("are never added without a stated rate, nor by the rate of the other way", () => {
    const lines = [aStatedLine("ferry", 125_000, { currency: "NOK" })];
    const back = [{ from: "EUR", to: "NOK", rate: "11.6" }];
    for (const stated of [[], back])
      expect(() => totalsOf({ currency: "EUR", lines, exchange: stated })).toThrow(
        expect.objectContaining({ reason: "costing.no-rate", parameters: { from: "NOK", to: "EUR" } }),
      );
  });
});

const decimal = fc
  .tuple(fc.integer({ min: 0, max: 5_000 }), fc.integer({ min: 0, max: 999 }))
  .map(([whole, thousandths]) => `${whole}.${String(thousandths).padStart(3, "0")}`.replace(/\.?0+$/, ""));
const taxRate = fc.constantFrom("0", "5.5", "7.7", "8.1", "12", "25");
const line = fc
  .record({
    code: fc.constantFrom(...lineCodes.filter((code) => code !== "contingency")),
    quantity: decimal,
    rateMinor: fc.integer({ min: 0, max: 1_000_000 }),
    taxPercent: taxRate,
    currency: fc.constantFrom("EUR", "JPY", "BHD"),
  })
  .map(
    ({ code, quantity, rateMinor, taxPercent, currency }): LineDraft => ({
      code,
      note: "",
      currency,
      price: { kind: "counted", quantity: quantity === "" ? "0" : quantity, unit: "day", rateMinor },
      taxPercent,
    }),
  );
const contingency = share(
  "contingency",
  { ofMinor: 0, share: "7.5", per: "cent", times: "1", unit: "once" },
  "8.1",
);
const papers = fc.record({
  currency: fc.constantFrom("EUR", "JPY", "BHD"),
  lines: fc.array(line, { minLength: 1, maxLength: 20 }),
  isCautious: fc.boolean(),
});
const everyRate = ["EUR", "JPY", "BHD"].flatMap((from) =>
  ["EUR", "JPY", "BHD"].map((to) => ({ from, to, rate: from === to ? "1" : "1.732050807" })),
);
const reckon = ({
  currency,
  lines,
  isCautious,
}: {
  currency: string;
  lines: LineDraft[];
  isCautious: boolean;
}) => totalsOf({ currency, lines: isCautious ? [...lines, contingency] : lines, exchange: everyRate });

describe("every paper", () => {
  test("adds up: lines to the net, rates of tax to the net, net and tax to the total", () => {
    fc.assert(
      fc.property(papers, (paper) => {
        const { lines, taxes, netMinor, taxMinor, totalMinor } = reckon(paper);
        const sum = (amounts: number[]) => amounts.reduce((a, b) => a + b, 0);
        expect(sum(lines.map((one) => one.netMinor))).toBe(netMinor);
        expect(sum(taxes.map((tax) => tax.netMinor))).toBe(netMinor);
        expect(sum(taxes.map((tax) => tax.taxMinor))).toBe(taxMinor);
        expect(netMinor + taxMinor).toBe(totalMinor);
      }),
    );
  });

  test("comes to the same in whatever order its lines stand", () => {
    fc.assert(
      fc.property(papers, fc.infiniteStream(fc.nat()), (paper, stream) => {
        const { lines: _lines, ...sums } = reckon(paper);
        const shuffled = paper.lines
          .map((one) => [stream.next().value, one] as const)
          .sort(([a], [b]) => a - b)
          .map(([, one]) => one);
        const { lines: _others, ...again } = reckon({ ...paper, lines: shuffled });
        expect(again).toEqual(sums);
      }),
    );
  });

  test("loses or wins at most half a minor unit for each rounding that it states", () => {
    fc.assert(
      fc.property(papers, (paper) => {
        const { lines, taxes } = reckon({ ...paper, isCautious: false });
        for (const { price, priceMinor } of lines)
          if (price.kind === "counted") {
            // in thousandths of a minor unit, exactly
            const [whole = "0", fraction = ""] = price.quantity.split(".");
            const thousandths = BigInt(whole + fraction.padEnd(3, "0")) * BigInt(price.rateMinor);
            const off = BigInt(priceMinor) * 1_000n - thousandths;
            expect(off > -500n && off <= 500n).toBe(true);
          }
        for (const { percent, netMinor, taxMinor } of taxes) {
          const tenths = BigInt(Math.round(Number(percent) * 10)) * BigInt(netMinor);
          const off = BigInt(taxMinor) * 1_000n - tenths;
          expect(off > -500n && off <= 500n).toBe(true);
        }
      }),
    );
  });
});
