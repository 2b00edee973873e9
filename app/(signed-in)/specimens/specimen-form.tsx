/**
 * The whole record as one form, for a new specimen and for a revision. Each field
 * is checked by the schema that the server decides with.
 */
"use client";

import Link from "next/link";
import { useFieldArray } from "react-hook-form";
import type { z } from "zod";
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
import { AmountField } from "#app/_parts/record-fields.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { LegalFields } from "#app/(signed-in)/specimens/legal-fields.tsx";
import {
  ComponentRows,
  FormerNumberRows,
  HazardRows,
} from "#app/(signed-in)/specimens/specimen-form-rows.tsx";
import {
  ageBands,
  costBases,
  fluids,
  lightClasses,
  preparations,
  SpecimenInput,
  sexes,
  specimenKinds,
  specimenSides,
  uses,
} from "#lib/specimens/schema.ts";

/** An empty field of a number is "not known", never zero. */
const numberOrNull = {
  setValueAs: (typed: unknown) =>
    typed === "" || typed === null || typed === undefined ? null : Number(typed),
};
const textOrNull = { setValueAs: (typed: unknown) => (typed === "" || typed === undefined ? null : typed) };

/** A size counts only when one of its sides was typed; a cost, when its amount was. */
function tidy(values: SpecimenInput): SpecimenInput {
  const size = (sides: SpecimenInput["size"]) =>
    sides && Object.values(sides).some((side) => side !== null) ? sides : null;
  const cost = values.replacementCost;
  const stated = cost && ((cost.minor ?? null) as number | null) !== null;
  return {
    ...values,
    size: size(values.size),
    mountedSize: size(values.mountedSize),
    replacementCost: stated ? cost : null,
  };
}

export function SpecimenForm({
  start,
  save,
  draftKey,
  back,
  numberHint,
  seesCost = true,
}: {
  start: SpecimenInput;
  save: (values: SpecimenInput) => Promise<FormState>;
  draftKey: string;
  back: string;
  numberHint: string;
  /** Whether the cost that is kept may be read; else it is left out, and what is kept stays. */
  seesCost?: boolean;
}) {
  const record = useRecordForm<SpecimenInput>(
    // What is left out has a beginning; the form states all of it.
    SpecimenInput as z.ZodType<SpecimenInput, SpecimenInput>,
    start,
    save,
    draftKey,
    tidy,
  );
  const { form, state, pending, submit, errorOf } = record;
  const { register, control } = form;
  const components = useFieldArray({ control, name: "components" });
  const formerNumbers = useFieldArray({ control, name: "formerNumbers" });
  const hazards = useFieldArray({ control, name: "hazards" });
  const human = form.watch("human");
  const wet = form.watch("preparation") === "fluid-preserved";

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
      noValidate
    >
      <p className="quiet small">{words.keptDraft}</p>
      <fieldset>
        <legend>{words.identity}</legend>
        <FieldGrid>
          <TextField
            label={words.number}
            hint={numberHint}
            {...register("accessionNumber")}
            error={errorOf("accessionNumber")}
          />
          <TextField label={words.title} {...register("title")} error={errorOf("title")} />
          <TextField label={words.latinTitle} {...register("latinTitle")} error={errorOf("latinTitle")} />
        </FieldGrid>
        <FormerNumberRows rows={formerNumbers} register={register} errorOf={errorOf} />
      </fieldset>
      <fieldset>
        <legend>{words.what}</legend>
        <FieldGrid>
          <SelectField
            label={words.kind}
            options={specimenKinds}
            {...register("kind")}
            error={errorOf("kind")}
          />
          <SelectField
            label={words.preparation}
            options={preparations}
            {...register("preparation")}
            error={errorOf("preparation")}
          />
          {wet && (
            <>
              <SelectField
                label={words.fluid}
                options={fluids}
                empty="–"
                {...register("fluidName", textOrNull)}
                error={errorOf("fluidName")}
              />
              <TextField
                label={words.fluidPercent}
                type="number"
                step="any"
                {...register("fluidPercent", numberOrNull)}
                error={errorOf("fluidPercent")}
              />
            </>
          )}
          <SelectField
            label={words.origin}
            options={[
              ["true", words.human],
              ["false", words.animal],
            ]}
            {...register("human", { setValueAs: (typed) => typed === true || typed === "true" })}
            error={errorOf("human")}
          />
          <TextField
            label={words.species}
            {...register("scientificName")}
            error={errorOf("scientificName")}
          />
          <SelectField
            label={words.side}
            options={specimenSides}
            {...register("side")}
            error={errorOf("side")}
          />
          <SelectField label={words.sex} options={sexes} {...register("sex")} error={errorOf("sex")} />
          {human && (
            <SelectField
              label={words.ageBand}
              options={ageBands}
              empty={words.unknown}
              {...register("ageBand", textOrNull)}
              error={errorOf("ageBand")}
            />
          )}
          <TextField label={words.pose} {...register("pose")} error={errorOf("pose")} />
          <SelectField
            label={words.use}
            options={uses.map((use) => [use, words.useWords[use]] as const)}
            {...register("use")}
            error={errorOf("use")}
          />
          <SelectField
            label={words.light}
            options={lightClasses.map((light) => [light, words.lightWords[light]] as const)}
            {...register("light")}
            error={errorOf("light")}
          />
          <TextField
            label={words.preparedOn}
            type="date"
            {...register("preparedOn", textOrNull)}
            error={errorOf("preparedOn")}
          />
          <TextField
            label={words.acquiredOn}
            type="date"
            {...register("acquiredOn", textOrNull)}
            error={errorOf("acquiredOn")}
          />
        </FieldGrid>
        <HazardRows rows={hazards} register={register} errorOf={errorOf} />
      </fieldset>
      <fieldset>
        <legend>{words.measures}</legend>
        <FieldGrid>
          {(["size", "mountedSize"] as const).map((which) => (
            <fieldset key={which}>
              <legend>{which === "size" ? words.size : words.mountedSize}</legend>
              <TextField
                label={words.length}
                type="number"
                {...register(`${which}.lengthMm`, numberOrNull)}
                error={errorOf(`${which}.lengthMm`)}
              />
              <TextField
                label={words.width}
                type="number"
                {...register(`${which}.widthMm`, numberOrNull)}
                error={errorOf(`${which}.widthMm`)}
              />
              <TextField
                label={words.height}
                type="number"
                {...register(`${which}.heightMm`, numberOrNull)}
                error={errorOf(`${which}.heightMm`)}
              />
            </fieldset>
          ))}
          <fieldset>
            <legend>{words.mass}</legend>
            <TextField
              label={words.massKg}
              type="number"
              step="any"
              {...register("massKg", numberOrNull)}
              error={errorOf("massKg")}
            />
            <TextField
              label={words.mountedMassKg}
              type="number"
              step="any"
              {...register("mountedMassKg", numberOrNull)}
              error={errorOf("mountedMassKg")}
            />
            <CheckField label={words.weighed} {...register("massWeighed")} />
          </fieldset>
        </FieldGrid>
        <TextAreaField
          label={words.partsAtRisk}
          {...register("partsAtRisk")}
          error={errorOf("partsAtRisk")}
        />
        <ComponentRows rows={components} register={register} errorOf={errorOf} />
      </fieldset>
      {seesCost && (
        <fieldset>
          <legend>{words.replacementCost}</legend>
          <FieldGrid>
            <AmountField
              control={control}
              name="replacementCost.minor"
              label={words.costAmount}
              currency={form.watch("replacementCost.currency")}
              error={errorOf("replacementCost.minor")}
            />
            <TextField
              label={words.costCurrency}
              {...register("replacementCost.currency")}
              error={errorOf("replacementCost.currency")}
            />
            <SelectField
              label={words.costBasis}
              options={costBases}
              {...register("replacementCost.basis")}
              error={errorOf("replacementCost.basis")}
            />
            <TextField
              label={words.costOn}
              type="date"
              {...register("replacementCost.statedOn")}
              error={errorOf("replacementCost.statedOn")}
            />
            <TextField
              label={words.costBy}
              {...register("replacementCost.statedBy")}
              error={errorOf("replacementCost.statedBy")}
            />
          </FieldGrid>
        </fieldset>
      )}
      <LegalFields form={form} errorOf={errorOf} isHuman={human} isWet={wet} />
      <TextAreaField label={words.note} {...register("note")} error={errorOf("note")} />
      <CheckField label={words.publishable} {...register("publishable")} />
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.save}
        </button>
        <Link href={back}>{words.cancel}</Link>
      </FormActions>
    </form>
  );
}
