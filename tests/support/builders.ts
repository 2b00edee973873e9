/**
 * Things to test with, each as plain as it can be; a test says only what matters
 * to it. They are made through commands where a command makes them, else directly
 * in a transaction that names who acts.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import type { Work } from "#lib/people/command.ts";
import { giveMandate } from "#lib/people/commands/mandates.ts";
import { configureCentre, keepInstitution, keepVenue } from "#lib/people/commands.ts";
import { type MandateInput, mandateActs } from "#lib/people/mandates.ts";
import type { CentreSettings, InstitutionInput, VenueInput } from "#lib/people/schema.ts";
import { borrowerRoles, programViewer, type Role, type Viewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import { toDate, toDateText } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { inTransaction } from "#lib/platform/transaction.ts";

let made = 0;
/** Different for each thing of a test file. */
function another(): number {
  made += 1;
  return made;
}

/** Somebody with these roles; a borrower belongs to the institution. */
export function aViewer(roles: Role | readonly Role[], institutionId: string | null = null): Viewer {
  const list = typeof roles === "string" ? [roles] : roles;
  const borrows = list.some((role) => (borrowerRoles as readonly Role[]).includes(role));
  const name = `${list.join(" and ")} ${another()}`;
  return {
    accountId: newId(),
    name,
    email: `${made}@example.org`,
    roles: list,
    institutionId: borrows ? institutionId : null,
  };
}

/** The account that a viewer signs in with, for what asks the accounts who somebody is. */
export async function anAccountOf({
  accountId,
  name,
  email,
  roles: held,
  institutionId,
}: Viewer): Promise<void> {
  await inWork(async ({ transaction }) => {
    const person = { name, email: email || `${accountId}@example.org`, emailVerified: true };
    await transaction.authUser.upsert({
      where: { id: accountId },
      create: { id: accountId, ...person },
      update: {},
    });
    await transaction.account.upsert({
      where: { id: accountId },
      create: { id: accountId, name, email: person.email, roles: [...held], institutionId },
      update: {},
    });
  });
}

/** A mandate for every act, of somebody who gets an account for it where none is there. */
export async function aMandate(viewer: Viewer, said: Partial<MandateInput> = {}): Promise<Id> {
  await anAccountOf(viewer);
  return await giveMandate(programViewer, {
    accountId: viewer.accountId,
    acts: [...mandateActs],
    limit: null,
    validFrom: "2020-01-01",
    validUntil: null,
    reference: "Resolution of the board",
    ...said,
  });
}

/** Work outside any command, as the program itself or as somebody. */
export async function inWork<Result>(
  work: (work: Work) => Promise<Result>,
  viewer: Viewer = programViewer,
): Promise<Result> {
  return await inTransaction(viewer, "test", async (transaction) => {
    const moment = now();
    return await work({ viewer, transaction, now: moment, today: toDateText(moment) });
  });
}

export async function aCentre(said: Partial<CentreSettings> = {}): Promise<CentreSettings> {
  const settings: CentreSettings = {
    name: "Centre for Anatomical Loans",
    address: "1 Quiet Street",
    city: "Northmere",
    countryCode: "NO",
    email: "loans@example.org",
    phone: "+47 00 00 00 00",
    accessionPattern: ".+",
    accessionExample: "T 0001",
    currency: "EUR",
    ...said,
  };
  await configureCentre(programViewer, settings);
  return settings;
}

/** An institution that borrows. @returns its id */
export async function aBorrower(said: Partial<InstitutionInput> = {}): Promise<string> {
  return await keepInstitution(programViewer, {
    id: null,
    name: `School of Medicine ${another()}`,
    kind: "medical school",
    countryCode: "DE",
    city: "Southmere",
    address: "2 Quiet Street",
    languages: ["de"],
    email: "loans@example.org",
    phone: "+49 000 000",
    standing: "good",
    verifiedOn: null,
    note: "",
    ...said,
  });
}

/** A venue of a borrower, with nothing known about it. @returns its id */
export async function aVenue(said: Partial<VenueInput> = {}): Promise<string> {
  return await keepVenue(programViewer, {
    id: null,
    institutionId: said.institutionId ?? (await aBorrower()),
    name: `Room ${another()}`,
    kind: "teaching room",
    address: "2 Quiet Street",
    countryCode: "DE",
    temperatureLowC: null,
    temperatureHighC: null,
    temperatureSwing24hK: null,
    humidityLow: null,
    humidityHigh: null,
    humiditySwing24h: null,
    illuminanceLx: null,
    uvMicrowattPerLumen: null,
    hoursOpenPerDay: null,
    daysOpenPerWeek: null,
    supervisedRoom: null,
    restrictedView: null,
    spillProvision: null,
    fireDetection: null,
    nightGuard: null,
    subdivisionCode: null,
    town: "",
    floorLoadKgPerM2: null,
    reportedOn: null,
    passages: [],
    licences: [],
    ...said,
  });
}

export type SpecimenRow = Prisma.SpecimenUncheckedCreateInput;
/** What a test goes on with. */
export type Made = { id: string; accessionNumber: string };

/** One row of the catalogue: a human specimen of which little is known. */
export function aSpecimenRow(said: Partial<SpecimenRow> = {}): SpecimenRow & Made {
  const accessionNumber = said.accessionNumber ?? `T ${String(another()).padStart(4, "0")}`;
  return {
    id: newId(),
    title: "Heart, opened",
    kind: "organ",
    preparation: "silicone-impregnated",
    scientificName: "Homo sapiens",
    human: true,
    sex: "unknown",
    side: "not applicable",
    use: "viewing only",
    searchKey: accessionNumber.toLowerCase(),
    ...said,
    accessionNumber,
  };
}

export async function aSpecimen(said: Partial<SpecimenRow> = {}): Promise<Made> {
  const row = aSpecimenRow(said);
  await inWork(({ transaction }) => transaction.specimen.create({ data: row }));
  return { id: row.id, accessionNumber: row.accessionNumber };
}

/** A series of sheets, each a specimen of its own, in order of their number. */
export async function aSeries(sheetCount: number): Promise<{ id: string; sheets: Made[] }> {
  const id = newId();
  const code = `S ${String(another()).padStart(3, "0")}`;
  const sheets = Array.from({ length: sheetCount }, (_, index) =>
    aSpecimenRow({
      accessionNumber: `${code}.${String(index + 1).padStart(3, "0")}`,
      title: `Trunk, transverse sheet ${index + 1}`,
      kind: "sheet",
      preparation: "epoxy sheet",
      seriesId: id,
      numberInSeries: index + 1,
    }),
  );
  await inWork(async ({ transaction }) => {
    await transaction.series.create({
      data: {
        id,
        code,
        title: "Trunk, transverse",
        plane: "transverse",
        direction: "head to foot",
        thicknessMm: 3,
        sawLossMm: 0.8,
        startLevelMm: 0,
        firstNumber: 1,
        sheetCount,
        embedding: "epoxy",
      },
    });
    await transaction.specimen.createMany({ data: sheets });
  });
  return { id, sheets: sheets.map((sheet) => ({ id: sheet.id, accessionNumber: sheet.accessionNumber })) };
}

/** A loan with a noted line for each specimen, as a borrower's slip leaves it. */
export async function aLoanOf(
  specimens: readonly Made[],
  said: { venueId?: string; startsOn?: string; endsOn?: string } = {},
): Promise<{ id: string; borrowerId: string; lineIds: string[] }> {
  const venueId = said.venueId ?? (await aVenue());
  const lines = specimens.map(({ id: specimenId }) => ({ id: newId(), specimenId, state: "noted" }));
  return await inWork(async ({ transaction, viewer }) => {
    const venue = await transaction.venue.findUniqueOrThrow({ where: { id: venueId } });
    const id = newId();
    await transaction.loan.create({
      data: {
        id,
        number: `L ${another()}`,
        borrowerId: venue.institutionId,
        venueId,
        title: "Autumn course",
        purpose: "teaching",
        teachingUse: "viewing",
        audience: "enrolled students",
        paidAdmission: false,
        displayStyle: "didactic",
        pictures: [],
        startsOn: toDate(said.startsOn ?? "2027-03-01"),
        endsOn: toDate(said.endsOn ?? "2027-07-01"),
        daysBefore: 14,
        daysAfter: 14,
        contactName: "A. Lecturer",
        contactEmail: "lecturer@example.org",
        contactPhone: "+49 000 000",
        createdById: viewer.accountId,
      },
    });
    await transaction.loanLine.createMany({ data: lines.map((line) => ({ ...line, loanId: id })) });
    return { id, borrowerId: venue.institutionId, lineIds: lines.map((line) => line.id) };
  });
}
