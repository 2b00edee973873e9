/** The short forms: donors, title, permit, and taking a permit back. Each gets its act from the page, bound to the specimen. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import {
  CheckField,
  FieldGrid,
  FormActions,
  SelectField,
  TextAreaField,
  TextField,
} from "#app/_parts/fields.tsx";
import { type FormState, issueOf } from "#app/_parts/form-state.ts";
import { writeCodes } from "#app/_parts/typed-codes.ts";
import { specimenProvenanceWords as words } from "#app/_words/en/specimen-provenance.ts";
import { type PermitRecord, permitKinds, type TitleInput, titleStatuses } from "#lib/provenance/schema.ts";

/** The refusal of one code of a list stands at the list. */
function issueOfList(state: FormState, path: string): string | undefined {
  if (state.state !== "refused") return undefined;
  return state.issues.find((issue) => issue.path === path || issue.path.startsWith(`${path}.`))?.message;
}

export function DonorsForm({ action, codes }: { action: FormAction; codes: readonly string[] }) {
  return (
    <ActionForm action={action} label={words.saveDonors} className="no-print">
      {(state) => (
        <>
          <TextField
            label={words.donorCodes}
            hint={words.donorCodesHint}
            name="donorCodes"
            defaultValue={writeCodes(codes)}
            autoComplete="off"
            className="mono"
            error={issueOfList(state, "donorCodes")}
          />
          <FormActions>
            <button type="submit">{words.saveDonors}</button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}

export function TitleForm({
  action,
  title,
  today,
}: {
  action: FormAction;
  title: TitleInput | null;
  today: string;
}) {
  return (
    <ActionForm action={action} label={words.saveTitle} className="no-print">
      {(state) => (
        <>
          <FieldGrid>
            <SelectField
              label={words.status}
              name="status"
              options={titleStatuses.map((status) => [status, words.titleStatuses[status]] as const)}
              defaultValue={title?.status ?? "unknown"}
              error={issueOf(state, "status")}
            />
            <TextField
              label={words.ownerName}
              hint={words.ownerNameHint}
              name="ownerName"
              defaultValue={title?.ownerName}
              error={issueOf(state, "ownerName")}
            />
            <TextField
              label={words.leaveReference}
              name="leaveReference"
              defaultValue={title?.leaveReference}
              error={issueOf(state, "leaveReference")}
            />
            <TextField
              label={words.recordedOn}
              name="recordedOn"
              type="date"
              defaultValue={today}
              required
              error={issueOf(state, "recordedOn")}
            />
          </FieldGrid>
          <CheckField label={words.leaveToLend} name="leaveToLend" defaultChecked={title?.leaveToLend} />
          <FormActions>
            <button type="submit">{words.saveTitle}</button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}

export function PermitForm({ action }: { action: FormAction }) {
  return (
    <ActionForm action={action} label={words.addPermit} className="no-print">
      {(state) => (
        <>
          <FieldGrid>
            <SelectField
              label={words.kind}
              name="kind"
              options={permitKinds.map((kind) => [kind, words.permitKinds[kind]] as const)}
              error={issueOf(state, "kind")}
            />
            <TextField label={words.number} name="number" required error={issueOf(state, "number")} />
            <TextField
              label={words.authority}
              name="authority"
              required
              error={issueOf(state, "authority")}
            />
            <TextField
              label={words.territories}
              hint={words.territoriesHint}
              name="territories"
              autoComplete="off"
              error={issueOfList(state, "territories")}
            />
            <TextField
              label={words.validFrom}
              name="validFrom"
              type="date"
              error={issueOf(state, "validFrom")}
            />
            <TextField
              label={words.validUntil}
              name="validUntil"
              type="date"
              error={issueOf(state, "validUntil")}
            />
          </FieldGrid>
          <FormActions>
            <button type="submit">{words.savePermit}</button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}

export function TakeBackForm({
  action,
  permits,
  today,
}: {
  action: FormAction;
  /** Those that can be taken back. */
  permits: readonly PermitRecord[];
  today: string;
}) {
  return (
    <ActionForm action={action} label={words.takeBack} className="no-print">
      {(state) => (
        <>
          <FieldGrid>
            <SelectField
              label={words.permit}
              name="permitId"
              empty={words.choosePermit}
              options={permits.map(
                ({ id, kind, number }) => [id, words.permitName(words.permitKinds[kind], number)] as const,
              )}
              required
              error={issueOf(state, "permitId")}
            />
            <TextField
              label={words.withdrawnOn}
              name="withdrawnOn"
              type="date"
              defaultValue={today}
              required
              error={issueOf(state, "withdrawnOn")}
            />
          </FieldGrid>
          <TextAreaField
            label={words.withdrawnBecause}
            hint={words.withdrawnBecauseHint}
            name="because"
            maxLength={500}
            required
            error={issueOf(state, "because")}
          />
          <FormActions>
            <button type="submit" className="outline">
              {words.takeBack}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
