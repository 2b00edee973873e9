/**
 * Runs one act in one transaction. The transaction tells the database who acts
 * and which act it is; triggers write the audit entry for every row that changes,
 * so no act can forget it. What the database refuses comes back as a refusal.
 */
import { database, type Transaction } from "#lib/platform/database.ts";
import { Refusal, type RefusalParameters } from "#lib/platform/refusal.ts";

/** Who changes something: an account, or the program itself. */
export type Actor = { accountId: string };

/** @param act the command's name as it stands in the audit entry */
export async function inTransaction<Result>(
  actor: Actor,
  act: string,
  work: (transaction: Transaction) => Promise<Result>,
): Promise<Result> {
  try {
    return await database().$transaction(
      async (transaction) => {
        await transaction.$executeRaw`SELECT set_config('anatheca.actor', ${actor.accountId}, true), set_config('anatheca.act', ${act}, true)`;
        return await work(transaction);
      },
      { maxWait: 20_000, timeout: 60_000 },
    );
  } catch (error) {
    throw refusalFromDatabase(error) ?? error;
  }
}

/** What a broken constraint means to the person who asked. */
const constraintReasons: Record<string, string> = {
  booking_never_twice: "booking.taken",
  specimen_accession_number_key: "specimen.number-taken",
  specimen_series_id_number_in_series_key: "series.number-taken",
  series_code_key: "series.code-taken",
  loan_line_loan_id_specimen_id_key: "loan.already-on-it",
  institution_name_key: "institution.name-taken",
  venue_institution_id_name_key: "venue.name-taken",
  account_email_key: "account.email-taken",
  auth_user_email_key: "account.email-taken",
  signature_agreement_id_party_key: "agreement.already-signed",
  agreement_loan_id_version_key: "agreement.version-taken",
  custody_event_specimen_id_sequence_key: "custody.broken-chain",
  insurance_institution_id_policy_number_valid_from_key: "insurance.already-kept",
  cover_loan_id_policy_number_starts_at_key: "cover.already-recorded",
  crate_content_crate_id_position_key: "crate.position-taken",
  stage_loan_id_direction_key: "stage.already-planned",
  place_code_key: "place.code-taken",
  consent_one_current: "donor.consent-changed-meanwhile",
};

/** The refusal behind an error of the database, or nothing when it is a bug. */
export function refusalFromDatabase(error: unknown): Refusal | undefined {
  if (error instanceof Refusal) return error;
  const text = describeError(error);
  const raised = /anatheca:([a-z.-]+)/.exec(text);
  if (raised?.[1]) return new Refusal("conflict", raised[1]);
  for (const [constraint, reason] of Object.entries(constraintReasons)) {
    if (text.includes(constraint)) return new Refusal("conflict", reason, { constraint });
  }
  if (/value too long|out of range for type|invalid byte sequence|unsupported Unicode/i.test(text)) {
    return new Refusal("invalid", "input.not-storable");
  }
  if (/40001|40P01|could not serialize|deadlock detected/.test(text))
    return new Refusal("conflict", "record.busy");
  return undefined;
}

/** Everything an error says, its causes and the driver's details included. */
function describeError(error: unknown, depth = 0): string {
  if (!(error instanceof Object) || depth > 4) return String(error);
  const { message, meta, cause, code } = error as {
    message?: string;
    meta?: RefusalParameters;
    cause?: unknown;
    code?: string;
  };
  return [code, message, meta ? JSON.stringify(meta) : "", cause ? describeError(cause, depth + 1) : ""].join(
    "\n",
  );
}
