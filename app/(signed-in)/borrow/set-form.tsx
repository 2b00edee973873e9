/**
 * The question for a set: a plain GET, so that every question has an address. With
 * a script structures are found while they are typed; without one they are typed
 * with commas between.
 */
"use client";

import Link from "next/link";
import { useState } from "react";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { StructureSearch } from "#app/_parts/structure-search.tsx";
import { borrowWords as words } from "#app/_words/en/borrow.ts";
import { catalogueWords } from "#app/_words/en/catalogue.ts";
import styles from "#app/(signed-in)/borrow/borrow.module.css";
import type { SetFields } from "#app/(signed-in)/borrow/read-question.ts";

type Wanted = { id: string; english: string; latin: string };

export function SetForm({
  fields,
  wanted: start,
  most,
}: {
  fields: SetFields;
  wanted: readonly Wanted[];
  /** So many may be asked for at once. */
  most: number;
}) {
  const [wanted, setWanted] = useState(start);
  const add = ({ id, english, latin }: Wanted) =>
    setWanted((before) =>
      before.length >= most || before.some((one) => one.id === id)
        ? before
        : [...before, { id, english, latin }],
    );
  return (
    <search className="no-print">
      <form action="/borrow#set">
        <fieldset>
          <legend>{words.wanted}</legend>
          {wanted.length === 0 ? (
            <p className="quiet">{words.noStructure}</p>
          ) : (
            <ul className={styles.wanted} aria-label={words.wanted}>
              {wanted.map(({ id, english, latin }) => (
                <li key={id}>
                  <input type="hidden" name="shows" value={id} />
                  <span>
                    {english} <i className="quiet">{latin}</i>
                  </span>
                  <button
                    type="button"
                    className="plain"
                    aria-label={words.remove(english)}
                    onClick={() => setWanted((before) => before.filter((one) => one.id !== id))}
                  >
                    {words.removeShort}
                  </button>
                </li>
              ))}
            </ul>
          )}
          <StructureSearch label={words.structure} choose={add} />
          <noscript>
            <TextField label={words.byName} name="names" />
          </noscript>
        </fieldset>
        <FieldGrid>
          <TextField label={words.from} name="from" type="date" defaultValue={fields.from} />
          <TextField
            label={words.until}
            hint={words.untilHint}
            name="until"
            type="date"
            defaultValue={fields.until}
          />
          <SelectField
            label={words.use}
            name="use"
            options={Object.entries(words.uses)}
            defaultValue={fields.use}
          />
          <SelectField
            label={catalogueWords.origin}
            name="origin"
            options={[catalogueWords.human, catalogueWords.animal]}
            empty={catalogueWords.anyOrigin}
            defaultValue={fields.origin}
          />
        </FieldGrid>
        <FormActions>
          <button type="submit">{words.propose}</button>
          <CheckField label={words.sheets} name="sheets" value="yes" defaultChecked={fields.sheets} />
          <Link href="/specimens">{words.catalogue}</Link>
        </FormActions>
      </form>
    </search>
  );
}
