/**
 * One form of a donor as a record. Every scope starts as unknown, which never
 * counts as granted; nothing is taken over from the form before. No draft is kept.
 */
"use client";

import Link from "next/link";
import { useWatch } from "react-hook-form";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { CodesField, DayField, NumberField } from "#app/_parts/record-fields.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { ScopeRows } from "#app/(signed-in)/donors/[code]/consent/new/scope-rows.tsx";
import { saveConsent } from "#app/(signed-in)/donors/actions.ts";
import { audienceLimits, bases, ConsentInput, dispositions, scopes } from "#lib/provenance/schema.ts";

const textOrNull = { setValueAs: (typed: unknown) => (typed === "" || typed === undefined ? null : typed) };

function emptyConsent(donorCode: string): ConsentInput {
  return {
    donorCode,
    basis: "donor in life",
    formVersion: "",
    signedOn: null,
    witnessCount: null,
    evidencePlace: "",
    answers: Object.fromEntries(scopes.map((scope) => [scope, "unknown"])) as ConsentInput["answers"],
    audience: "unknown",
    territoriesAllowed: [],
    territoriesRefused: [],
    validUntil: null,
    reviewDueOn: null,
    nonCommercialOnly: false,
    identifiable: false,
    disposition: "unknown",
    dispositionDueOn: null,
    verifiedBy: null,
    verifiedOn: null,
  };
}

export function ConsentForm({ code }: { code: string }) {
  const { form, state, pending, submit, errorOf } = useRecordForm<ConsentInput>(
    ConsentInput,
    emptyConsent(code),
    saveConsent,
  );
  const { register, control } = form;
  const lists = useWatch({ control, name: ["territoriesAllowed", "territoriesRefused"] });
  const territories = (name: "territoriesAllowed" | "territoriesRefused", codes: readonly string[]) => (
    <CodesField
      control={control}
      name={name}
      capitals
      label={words[name]}
      hint={fieldWords.codesHint}
      error={
        errorOf(name) ??
        codes.map((_code, index) => errorOf(`${name}.${index}`)).find((error) => error !== undefined)
      }
    />
  );
  const day = (
    name: "signedOn" | "validUntil" | "reviewDueOn" | "dispositionDueOn" | "verifiedOn",
    label: string,
  ) => <DayField control={control} name={name} label={label} error={errorOf(name)} />;
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <fieldset>
        <legend>{words.theForm}</legend>
        <FieldGrid>
          <SelectField
            label={words.basis}
            options={bases.map((basis) => [basis, words.bases[basis]] as const)}
            {...register("basis")}
            error={errorOf("basis")}
          />
          {day("signedOn", words.signedOn)}
          <TextField label={words.formVersion} {...register("formVersion")} error={errorOf("formVersion")} />
          <NumberField
            control={control}
            name="witnessCount"
            label={words.witnessCount}
            error={errorOf("witnessCount")}
          />
          <TextField
            label={words.evidencePlace}
            {...register("evidencePlace")}
            error={errorOf("evidencePlace")}
          />
        </FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{words.answersLegend}</legend>
        <p className="quiet small">{words.answersAbout}</p>
        <ScopeRows control={control} />
      </fieldset>
      <fieldset>
        <legend>{words.limits}</legend>
        <FieldGrid>
          <SelectField
            label={words.audience}
            options={audienceLimits.map((limit) => [limit, words.audiences[limit]] as const)}
            {...register("audience")}
            error={errorOf("audience")}
          />
          {territories("territoriesAllowed", lists[0])}
          {territories("territoriesRefused", lists[1])}
          {day("validUntil", words.validUntil)}
          {day("reviewDueOn", words.review)}
          <SelectField
            label={words.disposition}
            options={dispositions.map((each) => [each, words.dispositions[each]] as const)}
            {...register("disposition")}
            error={errorOf("disposition")}
          />
          {day("dispositionDueOn", `${words.disposition}, ${words.dispositionDue}`)}
        </FieldGrid>
        <CheckField label={words.commerce} {...register("nonCommercialOnly")} />
        <CheckField label={words.identifiable} hint={words.identifiableHint} {...register("identifiable")} />
      </fieldset>
      <fieldset>
        <legend>{words.verification}</legend>
        <FieldGrid>
          <TextField
            label={words.verifiedByName}
            {...register("verifiedBy", textOrNull)}
            error={errorOf("verifiedBy")}
          />
          {day("verifiedOn", words.verifiedOn)}
        </FieldGrid>
      </fieldset>
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.saveConsent}
        </button>
        <Link href={`/donors/${code}`}>{fieldWords.cancel}</Link>
      </FormActions>
    </form>
  );
}
