/**
 * The question for a set: a plain GET, so that every question has an address. With
 * a script structures are found while they are typed; without one they are typed
 * with commas between.
 */
"use client";

import Link from "next/link";
import { useState } from "react";
import fieldStyles from "#app/_parts/fields.module.css";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { StructureSearch } from "#app/_parts/structure-search.tsx";
import { borrowWords as words } from "#app/_words/en/borrow.ts";
import { catalogueWords } from "#app/_words/en/catalogue.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { slipWords } from "#app/_words/en/slip.ts";
import styles from "#app/(signed-in)/borrow/borrow.module.css";
import type { SetFields } from "#app/(signed-in)/borrow/read-question.ts";
import { audiences, purposes } from "#lib/suitability/schema.ts";

type Wanted = { id: string; english: string; latin: string };

export function SetForm({
  fields,
  wanted: start,
  most,
  venues,
  noVenue,
  lacks,
}: {
  fields: SetFields;
  wanted: readonly Wanted[];
  /** So many may be asked for at once. */
  most: number;
  /** Ids of the venues that may be named, with their names. */
  venues: readonly (readonly [id: string, name: string])[];
  /** What stands for none of them; left out where one has to be named. */
  noVenue?: string | undefined;
  /** What a question that was asked did not say. */
  lacks: { wanted: boolean; from: boolean; until: boolean };
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
            <p className={lacks.wanted ? fieldStyles.error : "quiet"}>{words.noStructure}</p>
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
                    onClick={(event) => {
                      // The button goes with its line; who came by the keyboard goes on where one is added.
                      event.currentTarget.form?.querySelector<HTMLElement>("[role=combobox]")?.focus();
                      setWanted((before) => before.filter((one) => one.id !== id));
                    }}
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
        <fieldset>
          <legend>{words.when}</legend>
          <FieldGrid>
            <TextField
              label={words.from}
              name="from"
              type="date"
              defaultValue={fields.from}
              error={lacks.from ? words.lacksFrom : undefined}
            />
            <TextField
              label={words.until}
              hint={words.untilHint}
              name="until"
              type="date"
              defaultValue={fields.until}
              error={lacks.until ? words.lacksUntil : undefined}
            />
            {(venues.length > 0 || noVenue !== undefined) && (
              <SelectField
                label={slipWords.venue}
                name="venue"
                options={venues}
                {...(noVenue === undefined ? {} : { empty: noVenue })}
                defaultValue={fields.venue}
              />
            )}
          </FieldGrid>
        </fieldset>
        <fieldset>
          <legend>{words.whatFor}</legend>
          <p className="quiet small">{words.whatForHint}</p>
          <FieldGrid>
            <SelectField
              label={slipWords.purpose}
              name="purpose"
              options={purposes.map((one) => [one, loanWords.purposes[one]] as const)}
              defaultValue={fields.purpose}
            />
            <SelectField
              label={slipWords.audience}
              name="audience"
              options={audiences}
              defaultValue={fields.audience}
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
          <CheckField label={slipWords.paidAdmission} name="paid" value="yes" defaultChecked={fields.paid} />
          <CheckField label={words.sheets} name="sheets" value="yes" defaultChecked={fields.sheets} />
        </fieldset>
        <FormActions>
          <button type="submit">{words.propose}</button>
          <Link href="/specimens">{words.catalogue}</Link>
        </FormActions>
      </form>
    </search>
  );
}
