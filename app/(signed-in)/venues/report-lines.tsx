/** The lists of a facility report: the narrow points of the way in, and licences. Empty lines are left out. */
"use client";

import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { facilityWords } from "#app/_words/en/facility.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import styles from "#app/(signed-in)/institutions/venue-form.module.css";
import type { FieldReader } from "#app/(signed-in)/venues/field-reader.ts";
import type { ReportList } from "#app/(signed-in)/venues/report-sent.ts";
import { licenceKinds, passageKinds } from "#lib/people/schema.ts";

type Lines = { count: number; reader: FieldReader };

const places = (count: number) => Array.from({ length: count }, (_, at) => at);
const sizes = ["widthMm", "heightMm", "secondWidthMm", "depthMm", "loadKg", "slopePercent"] as const;

/** Nothing is filed by it: the lines come back with everything that was typed. */
function MoreLines({ list }: { list: ReportList }) {
  return (
    <FormActions>
      <button
        type="submit"
        className="outline"
        name="more"
        value={list}
        aria-label={`${facilityWords.moreRows}: ${list === "passages" ? words.wayIn : words.licences}`}
      >
        {facilityWords.moreRows}
      </button>
    </FormActions>
  );
}

function LeaveOut({ name, of, ticked }: { name: string; of: string; ticked: boolean }) {
  return (
    <CheckField label={`${facilityWords.leaveOut}: ${of}`} name={name} value="yes" defaultChecked={ticked} />
  );
}

export function PassageLines({ count, reader: { typedOf, errorOf } }: Lines) {
  return (
    <fieldset>
      <legend>{facilityWords.wayIn}</legend>
      <p className="quiet small">
        {words.wayInHint} {facilityWords.emptyRow}
      </p>
      {places(count).map((at) => {
        const field = (name: string) => `passages.${at}.${name}`;
        const title = `${words.passage} ${at + 1}`;
        return (
          <fieldset key={at} className={styles.row}>
            <legend>{title}</legend>
            <FieldGrid>
              <SelectField
                label={words.kind}
                name={field("kind")}
                options={passageKinds.map((kind) => [kind, words.passageKinds[kind]] as const)}
                defaultValue={typedOf(field("kind")) || "door"}
                error={errorOf(field("kind"))}
              />
              <TextField
                label={words.passageName}
                name={field("name")}
                defaultValue={typedOf(field("name"))}
                error={errorOf(field("name"))}
              />
              {sizes.map((size) => (
                <TextField
                  key={size}
                  label={words[size]}
                  name={field(size)}
                  inputMode="decimal"
                  autoComplete="off"
                  defaultValue={typedOf(field(size))}
                  error={errorOf(field(size))}
                />
              ))}
            </FieldGrid>
            {typedOf(field("name")) !== "" && (
              <LeaveOut name={field("leaveOut")} of={title} ticked={typedOf(field("leaveOut")) !== ""} />
            )}
          </fieldset>
        );
      })}
      <MoreLines list="passages" />
    </fieldset>
  );
}

export function LicenceLines({ count, reader: { typedOf, errorOf } }: Lines) {
  return (
    <fieldset>
      <legend>{facilityWords.licences}</legend>
      <p className="quiet small">
        {words.licencesHint} {facilityWords.emptyRow}
      </p>
      {places(count).map((at) => {
        const field = (name: string) => `licences.${at}.${name}`;
        const title = `${words.licence} ${at + 1}`;
        const text = (name: string, label: string, type = "text") => (
          <TextField
            label={label}
            name={field(name)}
            type={type}
            defaultValue={typedOf(field(name))}
            error={errorOf(field(name))}
          />
        );
        return (
          <fieldset key={at} className={styles.row}>
            <legend>{title}</legend>
            <FieldGrid>
              <SelectField
                label={words.kind}
                name={field("kind")}
                options={licenceKinds.map((kind) => [kind, words.licenceKinds[kind]] as const)}
                defaultValue={typedOf(field("kind")) || "public display"}
                error={errorOf(field("kind"))}
              />
              {text("authority", words.authority)}
              {text("number", words.number)}
              {text("responsiblePerson", facilityWords.responsible)}
              {text("validFrom", words.validFrom, "date")}
              {text("validUntil", words.validUntil, "date")}
            </FieldGrid>
            {typedOf(field("number")) !== "" && (
              <LeaveOut name={field("leaveOut")} of={title} ticked={typedOf(field("leaveOut")) !== ""} />
            )}
          </fieldset>
        );
      })}
      <MoreLines list="licences" />
    </fieldset>
  );
}
