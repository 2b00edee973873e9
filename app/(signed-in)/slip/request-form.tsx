/**
 * The request as a form: what for, where, when, who answers. It may be saved half
 * done; what a submitted request needs is told at its field. Fields that only a
 * show asks for appear with it. The first button saves, so that Enter in a field
 * saves and never submits.
 */
"use client";

import { useRef } from "react";
import {
  CheckField,
  FieldGrid,
  FormActions,
  SelectField,
  TextAreaField,
  TextField,
} from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import type { FormState } from "#app/_parts/form-state.ts";
import { DayField } from "#app/_parts/record-fields.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { keptFactsWords as keptWords } from "#app/_words/en/borrow.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import { formatDate } from "#app/_words/format.ts";
import { CoverFields } from "#app/(signed-in)/slip/cover-fields.tsx";
import { KeptFacts, type KeptOfBorrower } from "#app/(signed-in)/slip/kept-facts.tsx";
import { RequestDraft } from "#lib/loans/inputs.ts";
import {
  audiences,
  displayStyles,
  plannedActivities,
  plannedPictures,
  purposes,
  teachingUses,
} from "#lib/suitability/schema.ts";

type Stated = Pick<RequestDraft, "purpose" | "audience">;

/** Whether somebody comes to look, so that admission and style have to be stated. */
function isShown({ purpose, audience }: Stated): boolean {
  return purpose === "exhibition" || audience === "general public";
}

/** What the form does not ask is not kept from an earlier choice. */
function withoutUnasked(values: RequestDraft): RequestDraft {
  return isShown(values) ? values : { ...values, paidAdmission: false, displayStyle: "didactic" };
}

/** Half done, a slip stays at the venue where it stands; with its purpose its venue is chosen as well. */
function atSomeVenue(values: RequestDraft, keptVenueId: string): RequestDraft {
  return values.venueId === "" && values.purpose === "" ? { ...values, venueId: keptVenueId } : values;
}

export function RequestForm({
  loanId,
  start,
  keptVenueId,
  venues,
  buffers,
  earliest,
  planned,
  currency,
  kept,
  save,
  submit: send,
}: {
  loanId: string;
  start: RequestDraft;
  /** Where the request stands now, chosen or not. */
  keptVenueId: string;
  venues: readonly { id: string; name: string }[];
  buffers: { daysBefore: number; daysAfter: number };
  /** The first day on which what is noted could be delivered. */
  earliest: string;
  /** The first day for which every paper and step has its usual time. */
  planned: string | null;
  /** The currency of the centre, to begin with. */
  currency: string;
  /** What is kept of the borrower, to be confirmed. */
  kept: KeptOfBorrower;
  save: (values: RequestDraft) => Promise<FormState>;
  /** Saves and submits; left out where the request was submitted already. */
  submit?: ((values: RequestDraft) => Promise<FormState>) | undefined;
}) {
  const submits = useRef(false);
  const record = useRecordForm<RequestDraft>(
    RequestDraft,
    start,
    async (values) => await (submits.current && send ? send(values) : save(values)),
    `request ${loanId}`,
    (values) => atSomeVenue(withoutUnasked(values), keptVenueId),
  );
  const { form, state, pending, submit, errorOf } = record;
  const { register, control } = form;
  const [purpose, audience, venueId] = form.watch(["purpose", "audience", "venueId"]);
  return (
    <form
      aria-label={words.request}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const pressed = (event.nativeEvent as SubmitEvent).submitter;
        submits.current = pressed?.getAttribute("value") === "submit";
        submit();
      }}
    >
      <fieldset>
        <legend>{words.about}</legend>
        <TextField
          label={words.titleField}
          hint={words.titleHint}
          {...register("title")}
          error={errorOf("title")}
        />
        <FieldGrid>
          <SelectField
            label={words.purpose}
            options={purposes.map((one) => [one, loanWords.purposes[one]] as const)}
            empty={words.choosePurpose}
            {...register("purpose")}
            error={errorOf("purpose")}
          />
          {purpose === "teaching" && (
            <SelectField
              label={words.teachingUse}
              options={teachingUses.map((use) => [use, loanWords.teachingUses[use]] as const)}
              {...register("teachingUse")}
              error={errorOf("teachingUse")}
            />
          )}
          <SelectField
            label={words.audience}
            options={audiences}
            {...register("audience")}
            error={errorOf("audience")}
          />
          {isShown({ purpose, audience }) && (
            <SelectField
              label={words.displayStyle}
              options={displayStyles}
              {...register("displayStyle")}
              error={errorOf("displayStyle")}
            />
          )}
        </FieldGrid>
        {isShown({ purpose, audience }) && (
          <CheckField label={words.paidAdmission} {...register("paidAdmission")} />
        )}
        <fieldset>
          <legend>{words.pictures}</legend>
          <p className="quiet small">{words.picturesHint}</p>
          <FieldGrid>
            {plannedPictures.map((picture) => (
              <CheckField key={picture} label={picture} value={picture} {...register("pictures")} />
            ))}
          </FieldGrid>
        </fieldset>
        <fieldset>
          <legend>{words.activities}</legend>
          <p className="quiet small">{words.activitiesHint}</p>
          <FieldGrid>
            {plannedActivities.map((activity) => (
              <CheckField
                key={activity}
                label={words.activityNames[activity]}
                value={activity}
                {...register("activities")}
              />
            ))}
          </FieldGrid>
        </fieldset>
      </fieldset>
      <fieldset>
        <legend>{words.when}</legend>
        <p className="quiet small">{words.daysHint(buffers.daysBefore, buffers.daysAfter)}</p>
        <FieldGrid>
          <SelectField
            label={words.venue}
            hint={words.venueHint}
            options={venues.map(({ id, name }) => [id, name] as const)}
            {...(start.venueId === "" ? { empty: words.chooseVenue } : {})}
            {...register("venueId", { onChange: () => form.setValue("factsConfirmed", false) })}
            error={errorOf("venueId")}
          />
          <TextField
            label={words.startsOn}
            hint={
              planned !== null && planned > earliest
                ? `${words.earliest(formatDate(earliest))} ${words.earliestByPlan(formatDate(planned))}`
                : words.earliest(formatDate(earliest))
            }
            type="date"
            {...register("startsOn")}
            error={errorOf("startsOn")}
          />
          <TextField
            label={words.endsOn}
            hint={words.endsOnHint}
            type="date"
            {...register("endsOn")}
            error={errorOf("endsOn")}
          />
          <DayField
            control={control}
            name="opensOn"
            label={keptWords.opensOn}
            hint={keptWords.opensOnHint}
            error={errorOf("opensOn")}
          />
        </FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{keptWords.legend}</legend>
        <p className="quiet small">{keptWords.hint}</p>
        <KeptFacts kept={kept} venueId={venueId} />
        <CheckField
          label={keptWords.confirm}
          hint={keptWords.confirmHint}
          {...register("factsConfirmed")}
          error={errorOf("factsConfirmed")}
        />
      </fieldset>
      <fieldset>
        <legend>{words.contact}</legend>
        <FieldGrid>
          <TextField
            label={words.contactName}
            autoComplete="name"
            {...register("contactName")}
            error={errorOf("contactName")}
          />
          <TextField
            label={words.contactEmail}
            type="email"
            autoComplete="email"
            {...register("contactEmail")}
            error={errorOf("contactEmail")}
          />
          <TextField
            label={words.contactPhone}
            type="tel"
            autoComplete="tel"
            {...register("contactPhone")}
            error={errorOf("contactPhone")}
          />
        </FieldGrid>
      </fieldset>
      <CoverFields
        control={control}
        currency={currency}
        error={errorOf("cover.minor") ?? errorOf("cover.currency") ?? errorOf("cover")}
      />
      <TextAreaField label={words.note} {...register("note")} error={errorOf("note")} />
      {send && (
        <>
          <h3>{words.submitTitle}</h3>
          <ul>
            {words.submitFixed.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" value="save" className={send ? "outline" : undefined} disabled={pending}>
          {words.save}
        </button>
        {send && (
          <button type="submit" value="submit" disabled={pending}>
            {words.submit}
          </button>
        )}
      </FormActions>
    </form>
  );
}
