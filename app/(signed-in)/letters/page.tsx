/** Letters by mail, the newest first: all of them for who keeps the post, the own ones for everybody else. */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { FieldGrid, FormActions, SelectField } from "#app/_parts/fields.tsx";
import { pageLinks, parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { letterPages as words } from "#app/_words/en/letters.ts";
import { LetterTable } from "#app/(signed-in)/letters/letter-table.tsx";
import { listLetters } from "#lib/desk/queries/letters.ts";
import { letterStates } from "#lib/platform/mail.ts";

export const metadata: Metadata = { title: words.title };

export default async function LettersPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/letters", search));
  const state = letterStates.find((one) => one === parameterOf(search, "state")) ?? null;
  const { rows, next, all, hasServer } = await orNotFound(() =>
    listLetters(viewer, { state }, { after: parameterOf(search, "after") ?? null }),
  );
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <p>{all ? words.aboutAll : words.aboutOwn}</p>
      {all && !hasServer && <p className="quiet">{words.noServer}</p>}
      <search className="no-print">
        <form action="/letters" aria-label={words.filter} key={state ?? "any"}>
          <FieldGrid>
            <SelectField
              label={words.state}
              name="state"
              options={letterStates.map((one) => [one, words.states[one]] as const)}
              empty={words.any}
              defaultValue={state ?? ""}
            />
          </FieldGrid>
          <FormActions>
            <button type="submit">{words.find}</button>
          </FormActions>
        </form>
      </search>
      <h2 className="visually-hidden">{words.caption}</h2>
      <LetterTable
        rows={rows}
        empty={
          <EmptyState action={state !== null && <Link href="/letters">{words.back}</Link>}>
            {state === null ? words.none : words.noneFound}
          </EmptyState>
        }
      />
      <Pager {...pageLinks("/letters", search, next)} />
    </PlainPage>
  );
}
