/** The money of the scenario: the fee scale, what was quoted and answered, what a closed loan came to. */

import { setFeeScale } from "#lib/costing/commands.ts";
import { openMinorOf } from "#lib/costing/payments.ts";
import type { LineDraft } from "#lib/costing/schema.ts";
import { answerQuotation, drawUpCostStatement, drawUpQuotation } from "#lib/loans/commands/costings.ts";
import { recordPayment } from "#lib/loans/commands/payments.ts";
import { estimateTreatment } from "#lib/loans/commands/treatment.ts";
import { findMoney, findQuotationDraft } from "#lib/loans/queries/costings.ts";
import type { LoanTale } from "#seed/loading/loan-tale.ts";
import type { Timeline } from "#seed/loading/timeline.ts";
import type { World } from "#seed/loading/world.ts";
import { feeScales } from "#seed/scenario/fee-scale.ts";
import { loanMoney, type ScenarioPayment, type ScenarioQuotation } from "#seed/scenario/loan-money.ts";

export function planFeeScales(timeline: Timeline, world: World): void {
  for (const { day, scale } of feeScales)
    timeline.add(day, "settings", () =>
      setFeeScale(world.as("collection manager"), { scale, validFrom: timeline.on(day) }),
    );
}

/** A line of the scale with the quantity of the scenario, where it names one. */
function counted(line: LineDraft, quantities: ScenarioQuotation["quantities"]): LineDraft {
  const quantity = quantities[line.code as keyof typeof quantities];
  if (line.price.kind !== "counted" || quantity === undefined) return line;
  return { ...line, price: { ...line.price, quantity } };
}

async function quote(tale: LoanTale, asked: ScenarioQuotation): Promise<void> {
  const registrar = tale.as("registrar");
  const draft = await findQuotationDraft(registrar, tale.id);
  if (!draft) throw new Error("There is no fee scale on the day of a quotation.");
  const { timeline } = tale;
  const { id, sha256 } = await drawUpQuotation(registrar, {
    loanId: tale.id,
    lines: [
      ...draft.byScale.map((line) => counted(line, asked.quantities)),
      ...(asked.others ?? []).map(
        ({ note, minor, currency, taxPercent }): LineDraft => ({
          code: "other",
          note,
          currency,
          price: { kind: "stated", minor },
          taxPercent,
        }),
      ),
    ],
    exchange: (asked.exchange ?? []).map(({ from, rate, quotedOn }) => ({
      from,
      to: draft.scale.currency,
      rate,
      on: timeline.on(quotedOn),
    })),
    validUntil: timeline.on(asked.day + asked.validDays),
    note: asked.note ?? "",
  });
  tale.quotation = { id, sha256 };
}

async function pay(tale: LoanTale, paid: ScenarioPayment): Promise<void> {
  const registrar = tale.as("registrar");
  const standing = (await findMoney(registrar, tale.id))?.payments;
  const owed = standing?.stated ?? standing?.agreed;
  if (!standing || !owed) throw new Error("A payment follows a quotation that was accepted.");
  const minor = paid.minor === "all" ? openMinorOf(owed, standing.payments) : paid.minor;
  await recordPayment(registrar, {
    loanId: tale.id,
    kind: minor < 0 ? "paid back" : "received",
    amountMinor: Math.abs(minor),
    paidOn: tale.timeline.on(paid.day),
    reference: paid.reference,
    note: "",
  });
}

export function planMoney(tale: LoanTale): void {
  const money = loanMoney[tale.loan.key];
  if (!money) return;
  for (const { day, specimen, hours, work } of money.treatment ?? [])
    tale.at(day, () =>
      estimateTreatment(tale.as("conservator"), {
        loanId: tale.id,
        specimenId: tale.world.specimen(specimen),
        hours,
        work,
      }),
    );
  for (const asked of money.quotations) {
    tale.at(asked.day, () => quote(tale, asked));
    const { answered } = asked;
    if (answered)
      tale.at(answered.day, () =>
        answerQuotation(tale.as(tale.signer), {
          costingId: tale.quotation.id,
          sha256: tale.quotation.sha256,
          outcome: answered.outcome,
          remark: answered.remark ?? "",
        }),
      );
  }
  for (const paid of money.paid ?? []) tale.at(paid.day, () => pay(tale, paid));
  const { stated } = money;
  if (!stated) return;
  tale.at(stated.day, async () => {
    const registrar = tale.as("registrar");
    const content = (await findMoney(registrar, tale.id))?.accepted?.content;
    if (!content) throw new Error("A cost statement follows a quotation that was accepted.");
    await drawUpCostStatement(registrar, {
      loanId: tale.id,
      lines: content.lines.map(({ code, note, taxPercent, netMinor }) => ({
        code,
        note,
        currency: content.currency,
        taxPercent,
        price: { kind: "stated", minor: stated.actual[code] ?? netMinor },
      })),
      exchange: [],
      note: stated.note,
    });
  });
}
