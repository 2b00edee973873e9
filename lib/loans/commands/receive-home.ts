/**
 * The return. Crates are looked for as on the way out and rest closed; then every
 * specimen is counted, with its components. Who is not there is missing, and of a
 * series the missing number is named; who is found later is counted in again.
 */

import { arrivedCrates, requireFullCount } from "#lib/loans/arrival.ts";
import { type LineOnLoan, linesIn } from "#lib/loans/at-hand.ts";
import { keepDays } from "#lib/loans/commands/keep-days.ts";
import { moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import {
  cratesUnderWay,
  type Received,
  requireRested,
  writeArrivals,
} from "#lib/loans/commands/receive-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { CountReturnInput, ReceiveInput } from "#lib/loans/inputs.ts";
import { command, type Work } from "#lib/people/command.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { writeCrateEvents } from "#lib/shipments/commands.ts";
import { cratesOf } from "#lib/shipments/queries.ts";
import { writeHandovers, writeMoves } from "#lib/whereabouts/commands.ts";

/**
 * Where crates rest before anything is put back. It is no place that specimens
 * belong to, so their own place stays the last one inside the house.
 */
async function placeOfArrivals({ transaction }: Work): Promise<string> {
  const place = { code: "ARRIVALS", name: "Arrivals, to be checked", kind: "on the way" };
  await transaction.place.createMany({ data: [{ id: newId(), ...place }], skipDuplicates: true });
  return (await transaction.place.findUniqueOrThrow({ where: { code: place.code } })).id;
}

export const receiveHome = command("receiveHome", ReceiveInput, async (work, input): Promise<Received> => {
  const { loanId, crates: looks, ...air } = input;
  const loan = await takeLoan(work, loanId, "receiveHome");
  const underWay = await cratesUnderWay(work, loan, "travelling home");
  if (underWay.length === 0)
    throw new Refusal("conflict", "loan.not-now", { state: loan.state, loan: loan.number });
  const arrived = arrivedCrates(underWay, looks, air, work.now);
  const specimenIds = arrived.flatMap((crate) => crate.specimenIds);
  await writeArrivals(work, loan, "home", arrived);
  const reason = `loan ${loan.number}, back home`;
  await writeHandovers(work, {
    specimenIds,
    toParty: (await centreSettings(work.transaction)).name,
    releasedBy: "carrier",
    receivedBy: work.viewer.name,
    reason,
    loanId: loan.id,
  });
  await writeMoves(work, { specimenIds, placeId: await placeOfArrivals(work), reason });
  const here = new Set(specimenIds);
  await moveLines(
    work,
    linesIn(loan, "travelling home").filter((line) => here.has(line.specimenId)),
    "resting at home",
  );
  await keepDays(work, loan);
  await writeLetters(work, loan.id, "received-home", { count: here.size });
  return arrived.map(({ id, code, notBefore, hours }) => ({ crateId: id, code, notBefore, hours }));
});

export type MissingSpecimen = {
  specimenId: string;
  accessionNumber: string;
  /** Of a sheet, the number in its series. */
  series: { code: string; number: number } | null;
};
export type CountedReturn = {
  missing: MissingSpecimen[];
  incomplete: { accessionNumber: string; components: string }[];
};

async function nameMissing({ transaction }: Work, lines: readonly LineOnLoan[]): Promise<MissingSpecimen[]> {
  const specimens = await transaction.specimen.findMany({
    where: { id: { in: lines.map((line) => line.specimenId) } },
    select: { id: true, accessionNumber: true, numberInSeries: true, series: { select: { code: true } } },
    orderBy: [{ seriesId: "asc" }, { numberInSeries: "asc" }, { accessionNumber: "asc" }],
  });
  return specimens.map(({ id, accessionNumber, numberInSeries, series }) => ({
    specimenId: id,
    accessionNumber,
    series: series === null || numberInSeries === null ? null : { code: series.code, number: numberInSeries },
  }));
}

export const countReturn = command(
  "countReturn",
  CountReturnInput,
  async (work, input): Promise<CountedReturn> => {
    const loan = await takeLoan(work, input.loanId, "countReturn");
    const crates = await cratesOf(work.transaction, loan.id);
    const counted = new Set(input.counts.map((one) => one.specimenId));
    const opening = crates.filter(
      (crate) =>
        crate.state === "resting closed" && crate.contents.some((one) => counted.has(one.specimenId)),
    );
    const inside = new Set(opening.flatMap((crate) => crate.contents.map((one) => one.specimenId)));
    const resting = linesIn(loan, "resting at home").filter((line) => inside.has(line.specimenId));
    const lost = linesIn(loan, "missing");
    const found = lost.filter((line) =>
      input.counts.some((one) => one.specimenId === line.specimenId && one.present),
    );
    if (resting.length === 0 && found.length === 0)
      throw new Refusal("conflict", "loan.nothing-to-count", { loan: loan.number, state: loan.state });
    for (const crate of opening) await requireRested(work, crate);
    const counts = input.counts.filter(
      (one) => one.present || !lost.some((line) => line.specimenId === one.specimenId),
    );
    requireFullCount([...resting, ...found], counts);

    const words = new Map(
      counts.map(({ specimenId, remark, missingComponents }) => {
        const apart = missingComponents.map(({ name, missing }) => `${missing} × ${name}`).join(", ");
        return [
          specimenId,
          [apart === "" ? "" : `missing: ${apart}`, remark].filter(Boolean).join("; ").slice(0, 500),
        ];
      }),
    );
    const events = crates.flatMap((crate) => {
      const here = counts.filter((one) =>
        crate.contents.some(({ specimenId }) => specimenId === one.specimenId),
      );
      return here.length === 0
        ? []
        : [
            {
              crateId: crate.id,
              kind: "opened" as const,
              counts: here.map(({ specimenId, present }) => ({
                specimenId,
                present,
                remark: words.get(specimenId) ?? "",
              })),
            },
          ];
    });
    await writeCrateEvents(work, events);
    await moveLines(work, found, "resting at home");
    if (found.length > 0) await comeHome(work, loan.id, loan.number, found);
    const absent = resting.filter(
      (line) => !counts.find((one) => one.specimenId === line.specimenId)?.present,
    );
    await moveLines(work, absent, "missing");
    const incomplete = [...resting, ...found].flatMap((line) => {
      const apart = counts.find((one) => one.specimenId === line.specimenId)?.missingComponents ?? [];
      return apart.length === 0
        ? []
        : [
            {
              accessionNumber: line.accessionNumber,
              components: apart.map(({ name, missing }) => `${missing} × ${name}`).join(", "),
            },
          ];
    });
    const lacking = absent.length + incomplete.length;
    if (lacking > 0) await writeLetters(work, loan.id, "missing-home", { count: lacking });
    return { missing: await nameMissing(work, absent), incomplete };
  },
);

/** What was missing and is found is in the house again. */
async function comeHome(
  work: Work,
  loanId: string,
  number: string,
  lines: readonly LineOnLoan[],
): Promise<void> {
  const specimenIds = lines.map((line) => line.specimenId);
  const reason = `loan ${number}, found`;
  await writeHandovers(work, {
    specimenIds,
    toParty: (await centreSettings(work.transaction)).name,
    releasedBy: "",
    receivedBy: work.viewer.name,
    reason,
    loanId,
  });
  await writeMoves(work, { specimenIds, placeId: await placeOfArrivals(work), reason });
}
