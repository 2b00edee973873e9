/** The lists inside the record's form: components, other numbers, hazards. */
"use client";

import type { FieldPath, UseFieldArrayReturn, UseFormRegister } from "react-hook-form";
import { CheckField, FieldGrid, SelectField, TextField } from "#app/_parts/fields.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { formerNumberKinds, hazardSubstances, type SpecimenInput } from "#lib/specimens/schema.ts";

type Rows<Name extends "components" | "formerNumbers" | "hazards"> = {
  rows: UseFieldArrayReturn<SpecimenInput, Name>;
  register: UseFormRegister<SpecimenInput>;
  errorOf: (path: FieldPath<SpecimenInput>) => string | undefined;
};

function RemoveButton({ what, onClick }: { what: string; onClick: () => void }) {
  return (
    <button type="button" className="plain" onClick={onClick} aria-label={`${words.remove}: ${what}`}>
      {words.remove}
    </button>
  );
}

export function ComponentRows({ rows, register, errorOf }: Rows<"components">) {
  return (
    <section aria-label={words.components}>
      {rows.fields.map((row, index) => (
        <FieldGrid key={row.id}>
          <TextField
            label={words.component}
            {...register(`components.${index}.name`)}
            error={errorOf(`components.${index}.name`)}
          />
          <TextField
            label={words.count}
            type="number"
            {...register(`components.${index}.count`, { valueAsNumber: true })}
            error={errorOf(`components.${index}.count`)}
          />
          <CheckField label={words.detachable} {...register(`components.${index}.detachable`)} />
          <RemoveButton what={`${words.component} ${index + 1}`} onClick={() => rows.remove(index)} />
        </FieldGrid>
      ))}
      <button
        type="button"
        className="outline"
        onClick={() => rows.append({ name: "", count: 1, detachable: false })}
      >
        {words.addComponent}
      </button>
    </section>
  );
}

export function FormerNumberRows({ rows, register, errorOf }: Rows<"formerNumbers">) {
  return (
    <section aria-label={words.formerNumbers}>
      {rows.fields.map((row, index) => (
        <FieldGrid key={row.id}>
          <TextField
            label={words.formerNumber}
            {...register(`formerNumbers.${index}.number`)}
            error={errorOf(`formerNumbers.${index}.number`)}
          />
          <SelectField
            label={words.formerKind}
            options={formerNumberKinds}
            {...register(`formerNumbers.${index}.kind`)}
            error={errorOf(`formerNumbers.${index}.kind`)}
          />
          <TextField
            label={words.markedOn}
            {...register(`formerNumbers.${index}.markedOn`)}
            error={errorOf(`formerNumbers.${index}.markedOn`)}
          />
          <RemoveButton what={`${words.formerNumber} ${index + 1}`} onClick={() => rows.remove(index)} />
        </FieldGrid>
      ))}
      <button
        type="button"
        className="outline"
        onClick={() => rows.append({ number: "", kind: "department", markedOn: "" })}
      >
        {words.addFormerNumber}
      </button>
    </section>
  );
}

export function HazardRows({ rows, register, errorOf }: Rows<"hazards">) {
  return (
    <section aria-label={words.hazards}>
      {rows.fields.map((row, index) => (
        <FieldGrid key={row.id}>
          <SelectField
            label={words.hazard}
            options={hazardSubstances}
            {...register(`hazards.${index}.substance`)}
            error={errorOf(`hazards.${index}.substance`)}
          />
          <TextField
            label={words.hazardPercent}
            type="number"
            step="any"
            {...register(`hazards.${index}.percent`, {
              setValueAs: (typed) => (typed === "" || typed === null ? null : Number(typed)),
            })}
            error={errorOf(`hazards.${index}.percent`)}
          />
          <TextField
            label={words.note}
            {...register(`hazards.${index}.note`)}
            error={errorOf(`hazards.${index}.note`)}
          />
          <RemoveButton what={`${words.hazard} ${index + 1}`} onClick={() => rows.remove(index)} />
        </FieldGrid>
      ))}
      <button
        type="button"
        className="outline"
        onClick={() => rows.append({ substance: "formaldehyde", percent: null, note: "" })}
      >
        {words.addHazard}
      </button>
    </section>
  );
}
