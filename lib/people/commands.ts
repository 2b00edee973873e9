/**
 * Keeping the centre's settings, institutions, venues and accounts. An account's password is set by the
 * sign-in library; here stands who the person is in the house.
 */
import { hashPassword } from "better-auth/crypto";
import { command, refuseDaysToCome } from "#lib/people/command.ts";
import { stateWayAndLicences } from "#lib/people/commands/facility.ts";
import { authorise } from "#lib/people/permission.ts";
import { centreKeys, findCentre, venueFactsOf } from "#lib/people/queries.ts";
import {
  AccountWithPassword,
  CentreInput,
  type CentreSettings,
  InstitutionInput,
  type VenueFacts,
  VenueInput,
} from "#lib/people/schema.ts";
import { toDateOrNull } from "#lib/platform/dates.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

/**
 * What the centre says of itself. A name that it gives up is kept: custody is
 * written by name, and what was handed to the house stays in the house.
 */
export const configureCentre = command("configureCentre", CentreInput, async ({ transaction }, settings) => {
  const keep = (key: string, value: CentreSettings | string[]) =>
    transaction.setting.upsert({ where: { key }, create: { key, value }, update: { value } });
  await transaction.$executeRaw`SELECT 1 FROM setting WHERE key = ${centreKeys.settings} FOR UPDATE`;
  const before = await findCentre(transaction);
  await keep(centreKeys.settings, settings);
  if (before === null || before.settings.name === settings.name) return;
  const names = new Set([...before.formerNames, before.settings.name]);
  names.delete(settings.name);
  await keep(centreKeys.formerNames, [...names]);
});

export const keepInstitution = command("keepInstitution", InstitutionInput, async (work, input) => {
  const { transaction } = work;
  const { id: given, verifiedOn, ...facts } = input;
  refuseDaysToCome(work, { verifiedOn });
  const data = { ...facts, verifiedOn: toDateOrNull(verifiedOn) };
  if (given === null) return (await transaction.institution.create({ data: { id: newId(), ...data } })).id;
  const changed = await transaction.institution.updateMany({ where: { id: given }, data });
  if (changed.count === 0) throw notFound("institution");
  return given;
});

/** What a venue is called and where it lies; everything else is a fact that a facility report states. */
const placeOfVenue = ["name", "kind", "address", "countryCode", "subdivisionCode", "town"] as const;

/** Once a venue has a report, its facts change by the next report alone. @throws {Refusal} "venue.facts-by-report" */
function refuseOtherFacts(before: VenueFacts, input: VenueInput): void {
  const stated = (venue: VenueInput) => {
    const { licences, ...facts } = VenueInput.parse({ ...venue, id: before.id });
    for (const name of placeOfVenue) delete (facts as Partial<VenueInput>)[name];
    return canonicalText({ ...facts, licences: licences.map(canonicalText).sort() });
  };
  if (stated(before) !== stated(input)) throw new Refusal("conflict", "venue.facts-by-report");
}

/**
 * Passages and licences are stated together with the venue and replace what was stated before. Facts
 * that a facility report states are not changed here.
 */
export const keepVenue = command("keepVenue", VenueInput, async (work, input) => {
  const { viewer, transaction } = work;
  const { id: given, passages, licences, reportedOn, ...facts } = input;
  authorise(viewer, "keepVenue", { institutionId: facts.institutionId });
  refuseDaysToCome(work, { reportedOn });
  const data = { ...facts, reportedOn: toDateOrNull(reportedOn) };
  const venueId = given ?? newId();
  if (given === null) {
    if (!(await transaction.institution.findUnique({ where: { id: facts.institutionId } })))
      throw notFound("institution");
    await transaction.venue.create({ data: { id: venueId, ...data } });
  } else {
    const before = await transaction.venue.findUnique({ where: { id: given } });
    if (before?.institutionId !== facts.institutionId) throw notFound("venue");
    const kept = await venueFactsOf(transaction, given);
    if (kept.reportServesUntil) refuseOtherFacts(kept, input);
    await transaction.venue.update({ where: { id: given }, data });
  }
  await stateWayAndLicences(transaction, venueId, { passages, licences });
  return venueId;
});

export const keepAccount = command(
  "keepAccount",
  AccountWithPassword,
  async ({ transaction }, { account, password }) => {
    const { id: given, ...facts } = account;
    const id = given ?? newId();
    const person = { name: facts.name, email: facts.email.toLowerCase() };
    if (given === null) {
      await transaction.authUser.create({ data: { id, ...person, emailVerified: true } });
      await transaction.account.create({ data: { id, ...facts, email: person.email } });
    } else {
      const changed = await transaction.account.updateMany({
        where: { id },
        data: { ...facts, email: person.email },
      });
      if (changed.count === 0) throw notFound("account");
      await transaction.authUser.update({ where: { id }, data: person });
    }
    if (!account.active) await transaction.authSession.deleteMany({ where: { userId: id } });
    if (password !== null) {
      await transaction.authSecret.deleteMany({ where: { userId: id, providerId: "credential" } });
      await transaction.authSecret.create({
        data: {
          id: newId(),
          userId: id,
          accountId: id,
          providerId: "credential",
          password: await hashPassword(password),
        },
      });
    }
    return id;
  },
);
