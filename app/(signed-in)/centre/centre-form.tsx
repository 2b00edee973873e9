/** The settings of the centre as one form. */
"use client";

import Link from "next/link";
import { CheckField, FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { CodesField } from "#app/_parts/record-fields.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { centreWords as words } from "#app/_words/en/centre.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { practiceWords } from "#app/_words/en/practice.ts";
import { saveCentre } from "#app/(signed-in)/centre/actions.ts";
import { practiceDefaults, practiceNames, unitOfPractice } from "#lib/people/practice.ts";
import { CentreInput } from "#lib/people/schema.ts";

/** What is left empty is not set. */
const numberOrNothing = (typed: unknown) =>
  typed === undefined || String(typed).trim() === "" ? undefined : Number(typed);

const textOrNothing = (typed: unknown) =>
  typed === undefined || String(typed).trim() === "" ? undefined : String(typed);

/** No language named is none known. */
function withoutEmpty({ languages, ...settings }: CentreInput): CentreInput {
  return languages && languages.length > 0 ? { ...settings, languages } : settings;
}

export function CentreForm({ start }: { start: CentreInput }) {
  const { form, state, pending, submit, errorOf } = useRecordForm<CentreInput>(
    CentreInput,
    start,
    saveCentre,
    undefined,
    withoutEmpty,
  );
  const { register, control } = form;
  const languages = form.watch("languages") ?? [];
  const languageError =
    errorOf("languages") ??
    languages.map((_language, index) => errorOf(`languages.${index}`)).find((error) => error !== undefined);
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <fieldset>
        <legend>{words.who}</legend>
        <FieldGrid>
          <TextField label={words.name} hint={words.nameHint} {...register("name")} error={errorOf("name")} />
          <TextField label={words.address} {...register("address")} error={errorOf("address")} />
          <TextField label={words.city} {...register("city")} error={errorOf("city")} />
          <TextField
            label={words.country}
            hint={words.countryHint}
            {...register("countryCode")}
            error={errorOf("countryCode")}
          />
          <CodesField
            control={control}
            name="languages"
            label={words.languages}
            hint={words.languagesHint}
            error={languageError}
          />
          <TextField label={words.email} type="email" {...register("email")} error={errorOf("email")} />
          <TextField label={words.phone} type="tel" {...register("phone")} error={errorOf("phone")} />
          <TextField
            label={words.emergencyPhone}
            hint={words.emergencyPhoneHint}
            type="tel"
            {...register("emergencyPhone", { setValueAs: textOrNothing })}
            error={errorOf("emergencyPhone")}
          />
        </FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{words.numbers}</legend>
        <FieldGrid>
          <TextField
            label={words.pattern}
            hint={words.patternHint}
            className="mono"
            autoComplete="off"
            autoCapitalize="none"
            spellCheck={false}
            {...register("accessionPattern", { deps: "accessionExample" })}
            error={errorOf("accessionPattern")}
          />
          <TextField
            label={words.example}
            hint={words.exampleHint}
            className="mono"
            autoComplete="off"
            spellCheck={false}
            {...register("accessionExample")}
            error={errorOf("accessionExample")}
          />
          <TextField
            label={words.currency}
            hint={words.currencyHint}
            autoCapitalize="characters"
            {...register("currency")}
            error={errorOf("currency")}
          />
          <TextField
            label={words.reportMonths}
            hint={words.reportMonthsHint}
            inputMode="numeric"
            {...register("facilityReportMonths", { setValueAs: numberOrNothing })}
            error={errorOf("facilityReportMonths")}
          />
        </FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{practiceWords.title}</legend>
        <p className="quiet small">{practiceWords.about}</p>
        <FieldGrid>
          {practiceNames.map((name) => {
            const { figure, source, standing } = practiceDefaults[name];
            const value = practiceWords.valueOf(figure, unitOfPractice(name), start.currency);
            return (
              <TextField
                key={name}
                label={practiceWords.names[name]}
                hint={practiceWords.hint(value, source, standing)}
                inputMode="numeric"
                {...register(`practice.${name}`, { setValueAs: numberOrNothing })}
                error={errorOf(`practice.${name}`)}
              />
            );
          })}
        </FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{words.openness}</legend>
        <CheckField
          label={words.publicCatalogue}
          hint={words.publicCatalogueHint}
          {...register("publicCatalogue")}
        />
      </fieldset>
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.save}
        </button>
        <Link href="/centre">{fieldWords.cancel}</Link>
      </FormActions>
    </form>
  );
}
