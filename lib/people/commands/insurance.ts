/** Keeping an institution's insurance. What a loan took over from it stays as it was taken over. */
import { command } from "#lib/people/command.ts";
import { InsuranceInput } from "#lib/people/insurance.ts";
import { authorise } from "#lib/people/permission.ts";
import { toDate } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

export const keepInsurance = command("keepInsurance", InsuranceInput, async (work, input): Promise<Id> => {
  const { transaction, viewer } = work;
  const { id: given, minor, validFrom, validUntil, ...facts } = input;
  authorise(viewer, "keepInsurance", { institutionId: facts.institutionId });
  const data = {
    ...facts,
    territories: [...new Set(facts.territories)],
    amountMinor: BigInt(minor),
    validFrom: toDate(validFrom),
    validUntil: toDate(validUntil),
  };
  if (given === null) {
    if (!(await transaction.institution.findUnique({ where: { id: facts.institutionId } })))
      throw notFound("institution");
    const id = newId();
    await transaction.insurance.create({ data: { id, ...data } });
    return id;
  }
  const { count } = await transaction.insurance.updateMany({
    where: { id: given, institutionId: facts.institutionId },
    data,
  });
  if (count === 0) throw notFound("insurance");
  return given;
});
