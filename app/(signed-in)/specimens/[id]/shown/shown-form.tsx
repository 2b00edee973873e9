/** The structures of a specimen as rows; a structure is found by any of its names. */
"use client";

import Link from "next/link";
import { useState } from "react";
import { useFieldArray } from "react-hook-form";
import { z } from "zod";
import { FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import type { FormState } from "#app/_parts/form-state.ts";
import { StructureSearch } from "#app/_parts/structure-search.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import styles from "#app/(signed-in)/specimens/[id]/shown/shown-form.module.css";
import { Shown, seenGrades, shownSides, shownStates } from "#lib/specimens/schema.ts";

const ShownRows = z.object({ shown: z.array(Shown).max(600) });
type ShownRows = z.infer<typeof ShownRows>;

export function ShownForm({
  start,
  names,
  save,
  back,
}: {
  start: ShownRows;
  names: Readonly<Record<string, string>>;
  save: (values: ShownRows) => Promise<FormState>;
  back: string;
}) {
  const { form, state, pending, submit, errorOf } = useRecordForm<ShownRows>(ShownRows, start, save);
  const rows = useFieldArray({ control: form.control, name: "shown" });
  const [known, setKnown] = useState(names);
  const { register } = form;

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
      noValidate
    >
      <StructureSearch
        label={words.structureSearch}
        choose={(structure) => {
          setKnown({ ...known, [structure.id]: structure.english });
          rows.append({
            structureId: structure.id,
            side: structure.paired ? "unknown" : "median",
            seen: "fully exposed",
            state: "shown",
            remark: "",
          });
        }}
      />
      <div className="scroll-x">
        <table className={styles.rows}>
          <caption className="visually-hidden">{words.shows}</caption>
          <thead>
            <tr>
              {[words.structure, words.side, words.seen, words.state, words.remark, ""].map((label) => (
                <th key={label} scope="col">
                  {label || <span className="visually-hidden">{words.remove}</span>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.fields.map((row, index) => (
              <tr key={row.id}>
                <th scope="row">{known[row.structureId] ?? row.structureId}</th>
                <td>
                  <SelectField
                    label={words.side}
                    options={shownSides}
                    {...register(`shown.${index}.side`)}
                    error={errorOf(`shown.${index}.side`)}
                  />
                </td>
                <td>
                  <SelectField
                    label={words.seen}
                    options={seenGrades}
                    {...register(`shown.${index}.seen`)}
                    error={errorOf(`shown.${index}.seen`)}
                  />
                </td>
                <td>
                  <SelectField
                    label={words.state}
                    options={shownStates}
                    {...register(`shown.${index}.state`)}
                    error={errorOf(`shown.${index}.state`)}
                  />
                </td>
                <td>
                  <TextField
                    label={words.remark}
                    {...register(`shown.${index}.remark`)}
                    error={errorOf(`shown.${index}.remark`)}
                  />
                </td>
                <td>
                  <button
                    type="button"
                    className="plain"
                    onClick={() => rows.remove(index)}
                    aria-label={`${words.remove}: ${known[row.structureId] ?? row.structureId}`}
                  >
                    {words.remove}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
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
