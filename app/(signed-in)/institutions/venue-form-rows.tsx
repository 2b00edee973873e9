/** The lists inside the venue's form: the narrow points of the way in, and licences. */
"use client";

import type { FieldPath, UseFieldArrayReturn, UseFormReturn } from "react-hook-form";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { DayField, NumberField } from "#app/_parts/record-fields.tsx";
import { fieldWords } from "#app/_words/en/fields.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import styles from "#app/(signed-in)/institutions/venue-form.module.css";
import { licenceKinds, passageKinds, type VenueInput } from "#lib/people/schema.ts";

type Rows<Name extends "passages" | "licences"> = {
  rows: UseFieldArrayReturn<VenueInput, Name>;
  form: UseFormReturn<VenueInput>;
  errorOf: (path: FieldPath<VenueInput>) => string | undefined;
};

export function PassageRows({ rows, form, errorOf }: Rows<"passages">) {
  const { register, control } = form;
  const kinds = form.watch("passages").map(({ kind }) => kind);
  return (
    <>
      {rows.fields.map((row, index) => {
        const title = `${words.passage} ${index + 1}`;
        const kind = kinds[index];
        const path = <Name extends string>(name: Name) => `passages.${index}.${name}` as const;
        return (
          <fieldset key={row.id} className={styles.row}>
            <legend>{title}</legend>
            <FieldGrid>
              <SelectField
                label={words.kind}
                options={passageKinds.map((each) => [each, words.passageKinds[each]] as const)}
                {...register(path("kind"))}
                error={errorOf(path("kind"))}
              />
              <TextField
                label={words.passageName}
                {...register(path("name"))}
                error={errorOf(path("name"))}
              />
              <NumberField
                control={control}
                name={path("widthMm")}
                label={words.widthMm}
                error={errorOf(path("widthMm"))}
              />
              <NumberField
                control={control}
                name={path("heightMm")}
                label={words.heightMm}
                error={errorOf(path("heightMm"))}
              />
              {kind === "corridor turn" && (
                <NumberField
                  control={control}
                  name={path("secondWidthMm")}
                  label={words.secondWidthMm}
                  error={errorOf(path("secondWidthMm"))}
                />
              )}
              {kind === "lift" && (
                <NumberField
                  control={control}
                  name={path("depthMm")}
                  label={words.depthMm}
                  error={errorOf(path("depthMm"))}
                />
              )}
              {(kind === "lift" || kind === "ramp") && (
                <NumberField
                  control={control}
                  name={path("loadKg")}
                  label={words.loadKg}
                  error={errorOf(path("loadKg"))}
                />
              )}
              {kind === "ramp" && (
                <NumberField
                  control={control}
                  name={path("slopePercent")}
                  label={words.slopePercent}
                  error={errorOf(path("slopePercent"))}
                />
              )}
            </FieldGrid>
            <FormActions>
              {index > 0 && (
                <button
                  type="button"
                  className="plain"
                  aria-label={`${words.moveUp}: ${title}`}
                  onClick={() => rows.move(index, index - 1)}
                >
                  {words.moveUp}
                </button>
              )}
              <button
                type="button"
                className="plain"
                aria-label={`${fieldWords.remove}: ${title}`}
                onClick={() => rows.remove(index)}
              >
                {fieldWords.remove}
              </button>
            </FormActions>
          </fieldset>
        );
      })}
      {rows.fields.length === 0 && <p className="quiet">{words.noPassage}</p>}
      <button
        type="button"
        className="outline"
        onClick={() =>
          rows.append({
            kind: "door",
            name: "",
            // A size that was not typed is refused by name; nought is no size of a door.
            widthMm: null as unknown as number,
            heightMm: null as unknown as number,
            depthMm: null,
            secondWidthMm: null,
            loadKg: null,
            slopePercent: null,
          })
        }
      >
        {words.addPassage}
      </button>
    </>
  );
}

export function LicenceRows({ rows, form, errorOf }: Rows<"licences">) {
  const { register, control } = form;
  return (
    <>
      {rows.fields.map((row, index) => {
        const title = `${words.licence} ${index + 1}`;
        const path = <Name extends string>(name: Name) => `licences.${index}.${name}` as const;
        return (
          <fieldset key={row.id} className={styles.row}>
            <legend>{title}</legend>
            <FieldGrid>
              <SelectField
                label={words.kind}
                options={licenceKinds.map((kind) => [kind, words.licenceKinds[kind]] as const)}
                {...register(path("kind"))}
                error={errorOf(path("kind"))}
              />
              <TextField
                label={words.authority}
                {...register(path("authority"))}
                error={errorOf(path("authority"))}
              />
              <TextField label={words.number} {...register(path("number"))} error={errorOf(path("number"))} />
              <DayField
                control={control}
                name={path("validFrom")}
                label={words.validFrom}
                error={errorOf(path("validFrom"))}
              />
              <DayField
                control={control}
                name={path("validUntil")}
                label={words.validUntil}
                error={errorOf(path("validUntil"))}
              />
            </FieldGrid>
            <FormActions>
              <button
                type="button"
                className="plain"
                aria-label={`${fieldWords.remove}: ${title}`}
                onClick={() => rows.remove(index)}
              >
                {fieldWords.remove}
              </button>
            </FormActions>
          </fieldset>
        );
      })}
      {rows.fields.length === 0 && <p className="quiet">{words.noLicence}</p>}
      <button
        type="button"
        className="outline"
        onClick={() =>
          rows.append({
            kind: "public display",
            authority: "",
            number: "",
            validFrom: null,
            validUntil: null,
          })
        }
      >
        {words.addLicence}
      </button>
    </>
  );
}
