/**
 * The whole record of a venue as one form. A fact that nobody knows stays empty;
 * humidity is typed as a percentage. The way in is a list in the order of the way.
 */
"use client";

import Link from "next/link";
import { useFieldArray } from "react-hook-form";
import type { z } from "zod";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { DayField, NumberField, YesNoField } from "#app/_parts/record-fields.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { saveVenue } from "#app/(signed-in)/institutions/actions.ts";
import { LicenceRows, PassageRows } from "#app/(signed-in)/institutions/venue-form-rows.tsx";
import { VenueInput, venueKinds } from "#lib/people/schema.ts";

const climate = ["temperatureLowC", "temperatureHighC", "temperatureSwing24hK"] as const;
const humidity = ["humidityLow", "humidityHigh", "humiditySwing24h"] as const;
const light = ["illuminanceLx", "uvMicrowattPerLumen", "hoursOpenPerDay", "daysOpenPerWeek"] as const;
const safety = ["supervisedRoom", "restrictedView", "spillProvision", "fireDetection", "nightGuard"] as const;

/** @param reported whether a facility report states the facts, which then change by the next report alone */
export function VenueForm({
  start,
  back,
  reported = false,
}: {
  start: VenueInput;
  back: string;
  reported?: boolean;
}) {
  const { form, state, pending, submit, errorOf } = useRecordForm<VenueInput>(
    // What is left out has a beginning; the form states all of it.
    VenueInput as z.ZodType<VenueInput, VenueInput>,
    start,
    saveVenue,
    `venue ${start.id ?? start.institutionId}`,
  );
  const { register, control } = form;
  const passages = useFieldArray({ control, name: "passages" });
  const licences = useFieldArray({ control, name: "licences" });
  const figure = (name: (typeof climate | typeof humidity | typeof light)[number], percent = false) => (
    <NumberField
      key={name}
      control={control}
      name={name}
      percent={percent}
      label={words.facts[name]}
      error={errorOf(name)}
    />
  );
  const facts = (
    <>
      <fieldset>
        <legend>{words.climate}</legend>
        <p className="quiet small">{words.climateHint}</p>
        <FieldGrid>{climate.map((name) => figure(name))}</FieldGrid>
        <FieldGrid>{humidity.map((name) => figure(name, true))}</FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{words.light}</legend>
        <FieldGrid>{light.map((name) => figure(name))}</FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{words.safety}</legend>
        <FieldGrid>
          {safety.map((name) => (
            <YesNoField
              key={name}
              control={control}
              name={name}
              label={words.facts[name]}
              error={errorOf(name)}
            />
          ))}
        </FieldGrid>
      </fieldset>
      <fieldset>
        <legend>{words.wayIn}</legend>
        <p className="quiet small">{words.wayInHint}</p>
        <FieldGrid>
          <NumberField
            control={control}
            name="floorLoadKgPerM2"
            label={words.floorLoad}
            error={errorOf("floorLoadKgPerM2")}
          />
        </FieldGrid>
        <PassageRows rows={passages} form={form} errorOf={errorOf} />
      </fieldset>
      <fieldset>
        <legend>{words.licences}</legend>
        <p className="quiet small">{words.licencesHint}</p>
        <LicenceRows rows={licences} form={form} errorOf={errorOf} />
      </fieldset>
    </>
  );
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <p className="quiet small">{fieldWords.keptDraft}</p>
      <fieldset>
        <legend>{words.place}</legend>
        <FieldGrid>
          <TextField label={words.venueName} {...register("name")} error={errorOf("name")} />
          <SelectField
            label={words.venueKind}
            options={venueKinds.map((kind) => [kind, words.placeKinds[kind]] as const)}
            {...register("kind")}
            error={errorOf("kind")}
          />
          <TextField label={words.address} {...register("address")} error={errorOf("address")} />
          <TextField
            label={words.country}
            hint={words.countryHint}
            {...register("countryCode")}
            error={errorOf("countryCode")}
          />
          <TextField
            label={words.subdivision}
            hint={words.subdivisionHint}
            {...register("subdivisionCode", {
              setValueAs: (typed: unknown) =>
                typeof typed === "string" && typed.trim() !== "" ? typed.trim() : null,
            })}
            error={errorOf("subdivisionCode")}
          />
          <TextField label={words.town} {...register("town")} error={errorOf("town")} />
          {!reported && (
            <DayField
              control={control}
              name="reportedOn"
              label={words.reportedOn}
              error={errorOf("reportedOn")}
            />
          )}
        </FieldGrid>
      </fieldset>
      {reported ? <p>{words.factsByReport}</p> : facts}
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.saveVenue}
        </button>
        <Link href={back}>{fieldWords.cancel}</Link>
      </FormActions>
    </form>
  );
}
