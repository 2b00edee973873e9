/** The part of the specimen's form on origin and law; each fact may stay unknown. */
"use client";

import type { UseFormReturn } from "react-hook-form";
import { FieldGrid, SelectField, TextField } from "#app/_parts/fields.tsx";
import { DayField, NumberField, YesNoField } from "#app/_parts/record-fields.tsx";
import { legalFactsWords as words } from "#app/_words/en/legal-facts.ts";
import { deathPeriods, madePeriods, type SpecimenInput, speciesAppendices } from "#lib/specimens/schema.ts";

const textOrNull = {
  setValueAs: (typed: unknown) => (typeof typed === "string" && typed.trim() !== "" ? typed.trim() : null),
};

type Path = Parameters<UseFormReturn<SpecimenInput>["register"]>[0];

export function LegalFields({
  form: { register, control },
  errorOf,
  isHuman,
  isWet,
}: {
  form: UseFormReturn<SpecimenInput>;
  errorOf: (path: Path) => string | undefined;
  isHuman: boolean;
  isWet: boolean;
}) {
  const yesNo = (
    name: "containsCells" | "wholeBody" | "imported" | "deathPapers" | "anatomicalExamination",
  ) => (
    <YesNoField
      control={control}
      name={`legal.${name}`}
      label={words[name]}
      error={errorOf(`legal.${name}`)}
    />
  );
  return (
    <fieldset>
      <legend>{words.legend}</legend>
      <p className="quiet small">{words.hint}</p>
      <FieldGrid>
        {yesNo("containsCells")}
        <TextField
          label={words.originCountry}
          hint={words.originCountryHint}
          {...register("legal.originCountry", textOrNull)}
          error={errorOf("legal.originCountry")}
        />
        {yesNo("imported")}
        <DayField
          control={control}
          name="legal.heldSince"
          label={words.heldSince}
          error={errorOf("legal.heldSince")}
        />
        <SelectField
          label={words.madePeriod}
          options={madePeriods}
          empty={words.unknown}
          {...register("legal.madePeriod", textOrNull)}
          error={errorOf("legal.madePeriod")}
        />
        {isHuman ? (
          <>
            {yesNo("wholeBody")}
            <SelectField
              label={words.deathPeriod}
              options={deathPeriods}
              empty={words.unknown}
              {...register("legal.deathPeriod", textOrNull)}
              error={errorOf("legal.deathPeriod")}
            />
            {yesNo("deathPapers")}
            {yesNo("anatomicalExamination")}
          </>
        ) : (
          <SelectField
            label={words.speciesAppendix}
            options={speciesAppendices}
            empty={words.unknown}
            {...register("legal.speciesAppendix", textOrNull)}
            error={errorOf("legal.speciesAppendix")}
          />
        )}
        {isWet && (
          <NumberField
            control={control}
            name="legal.freeFluidMl"
            label={words.freeFluidMl}
            error={errorOf("legal.freeFluidMl")}
          />
        )}
      </FieldGrid>
    </fieldset>
  );
}
