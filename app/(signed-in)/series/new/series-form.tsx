/** The cut, the known levels, and what all sheets have in common. */
"use client";

import Link from "next/link";
import { useFieldArray } from "react-hook-form";
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
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { catalogueWords, seriesWords as words } from "#app/_words/en/catalogue.ts";
import {
  directions,
  embeddings,
  lightClasses,
  planes,
  sexes,
  specimenSides,
  uses,
  vertebralLevels,
} from "#lib/specimens/schema.ts";
import { SeriesRecord } from "#lib/specimens/sheet-template.ts";

const number = {
  setValueAs: (typed: unknown) => (typed === "" || typed === null ? Number.NaN : Number(typed)),
};
const numberOrNull = {
  setValueAs: (typed: unknown) => (typed === "" || typed === null ? null : Number(typed)),
};
const percentOrNull = {
  setValueAs: (typed: unknown) => (typed === "" || typed === null ? null : Number(typed) / 100),
};

/** "17, 58-59" as the numbers it names; what is no number is left for the schema to refuse. */
const numbers = {
  setValueAs: (typed: unknown) =>
    Array.isArray(typed)
      ? typed
      : String(typed)
          .split(/[,;\s]+/)
          .filter(Boolean)
          .flatMap((part) => {
            const [from, to = from] = part.split(/[-–]/).map(Number);
            if (from === undefined || to === undefined || !(to >= from && to - from < 10_000))
              return [Number.NaN];
            return Array.from({ length: to - from + 1 }, (_, index) => from + index);
          }),
};

const newSeries: SeriesRecord = {
  id: null,
  code: "",
  title: "",
  plane: "transverse",
  direction: "head to foot",
  thicknessMm: 3.5,
  sawLossMm: 1,
  startLevelMm: 0,
  firstNumber: 1,
  sheetCount: 40,
  embedding: "epoxy",
  imagedFace: "",
  shrinkageArea: null,
  note: "",
  landmarks: [],
  sheets: {
    numberStem: "",
    digits: 3,
    titleStem: "",
    human: true,
    scientificName: "Homo sapiens",
    sex: "unknown",
    ageBand: null,
    side: "not applicable",
    size: null,
    massKg: null,
    use: "viewing only",
    light: "ordinary",
    replacementCost: null,
    preparedOn: null,
    acquiredOn: null,
    publishable: false,
    missing: [],
  },
};

/** Planes in which a sheet lies at one level of the spine. */
const planesWithLevels: readonly string[] = ["transverse", "oblique"];

/** @param start the series to be put right, without sheets: those that it has keep their records */
export function SeriesForm({
  start = newSeries,
  save,
  back = "/series",
}: {
  start?: SeriesRecord;
  save: (values: SeriesRecord) => Promise<FormState>;
  back?: string;
}) {
  const { form, state, pending, submit, errorOf } = useRecordForm<SeriesRecord>(
    SeriesRecord,
    start,
    save,
    `series ${start.id ?? "new"}`,
  );
  const landmarks = useFieldArray({ control: form.control, name: "landmarks" });
  const { register, watch, getValues } = form;
  const hasLevels = planesWithLevels.includes(watch("plane")) || landmarks.fields.length > 0;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
      noValidate
    >
      <fieldset>
        <legend>{words.cut}</legend>
        <FieldGrid>
          <TextField label={words.code} {...register("code")} error={errorOf("code")} />
          <TextField label={catalogueWords.title} {...register("title")} error={errorOf("title")} />
          <SelectField label={words.plane} options={planes} {...register("plane")} error={errorOf("plane")} />
          <SelectField
            label={words.direction}
            options={directions}
            {...register("direction")}
            error={errorOf("direction")}
          />
          <SelectField
            label={words.embedding}
            options={embeddings}
            {...register("embedding")}
            error={errorOf("embedding")}
          />
          <TextField
            label={words.thicknessMm}
            type="number"
            step="any"
            {...register("thicknessMm", number)}
            error={errorOf("thicknessMm")}
          />
          <TextField
            label={words.sawLossMm}
            type="number"
            step="any"
            {...register("sawLossMm", number)}
            error={errorOf("sawLossMm")}
          />
          <TextField
            label={words.startLevel}
            hint={words.startLevelHint}
            type="number"
            step="any"
            {...register("startLevelMm", number)}
            error={errorOf("startLevelMm")}
          />
          <TextField
            label={words.firstNumber}
            type="number"
            {...register("firstNumber", number)}
            error={errorOf("firstNumber")}
          />
          <TextField
            label={words.sheetCount}
            type="number"
            {...register("sheetCount", number)}
            error={errorOf("sheetCount")}
          />
          <TextField label={words.imagedFace} {...register("imagedFace")} error={errorOf("imagedFace")} />
          <TextField
            label={words.shrinkagePercent}
            type="number"
            step="any"
            {...register("shrinkageArea", percentOrNull)}
            error={errorOf("shrinkageArea")}
          />
        </FieldGrid>
        <TextAreaField label={catalogueWords.note} {...register("note")} error={errorOf("note")} />
      </fieldset>
      <fieldset>
        <legend>{words.landmarks}</legend>
        <p className="quiet">{hasLevels ? words.landmarksAbout : words.landmarksNone}</p>
        {landmarks.fields.map((row, index) => (
          <FieldGrid key={row.id}>
            <TextField
              label={words.sheet}
              type="number"
              {...register(`landmarks.${index}.number`, number)}
              error={errorOf(`landmarks.${index}.number`)}
            />
            <SelectField
              label={words.level}
              options={vertebralLevels}
              empty={words.chooseLevel}
              {...register(`landmarks.${index}.level`)}
              error={errorOf(`landmarks.${index}.level`)}
            />
            <button type="button" className="plain" onClick={() => landmarks.remove(index)}>
              {catalogueWords.remove} {index + 1}
            </button>
          </FieldGrid>
        ))}
        {hasLevels && (
          <button
            type="button"
            className="outline"
            // No level is chosen beforehand; the schema asks for one.
            onClick={() => landmarks.append({ number: getValues("firstNumber"), level: "" })}
          >
            {words.addLandmark}
          </button>
        )}
      </fieldset>
      {start.sheets !== null && (
        <fieldset>
          <legend>{words.commonToSheets}</legend>
          <FieldGrid>
            <TextField
              label={words.numberStem}
              hint={words.numberStemHint}
              {...register("sheets.numberStem")}
              error={errorOf("sheets.numberStem")}
            />
            <TextField
              label={words.digits}
              type="number"
              {...register("sheets.digits", number)}
              error={errorOf("sheets.digits")}
            />
            <TextField
              label={words.titleStem}
              {...register("sheets.titleStem")}
              error={errorOf("sheets.titleStem")}
            />
            <SelectField
              label={catalogueWords.origin}
              options={[
                ["true", catalogueWords.human],
                ["false", catalogueWords.animal],
              ]}
              {...register("sheets.human", { setValueAs: (typed) => typed === true || typed === "true" })}
            />
            <TextField
              label={catalogueWords.species}
              {...register("sheets.scientificName")}
              error={errorOf("sheets.scientificName")}
            />
            <SelectField label={catalogueWords.sex} options={sexes} {...register("sheets.sex")} />
            <SelectField label={catalogueWords.side} options={specimenSides} {...register("sheets.side")} />
            <SelectField
              label={catalogueWords.use}
              options={uses.map((use) => [use, catalogueWords.useWords[use]] as const)}
              {...register("sheets.use")}
            />
            <SelectField
              label={catalogueWords.light}
              options={lightClasses.map((light) => [light, catalogueWords.lightWords[light]] as const)}
              {...register("sheets.light")}
            />
            <TextField
              label={catalogueWords.massKg}
              type="number"
              step="any"
              {...register("sheets.massKg", numberOrNull)}
              error={errorOf("sheets.massKg")}
            />
            <TextField
              label={words.missingNumbers}
              hint={words.missingHint}
              {...register("sheets.missing", numbers)}
              error={errorOf("sheets.missing")}
            />
          </FieldGrid>
          <CheckField label={catalogueWords.publishable} {...register("sheets.publishable")} />
        </fieldset>
      )}
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {catalogueWords.save}
        </button>
        <Link href={back}>{catalogueWords.cancel}</Link>
      </FormActions>
    </form>
  );
}
