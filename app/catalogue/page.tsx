/**
 * The catalogue for who is not signed in, where the centre has opened it; elsewhere
 * a page that is not there. Pictures of human specimens stand behind the viewer's
 * own choice, and days are told by month only.
 */
import type { Metadata } from "next";
import Link from "next/link";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { publicWords as words } from "#app/_words/en/borrow.ts";
import { catalogueWords } from "#app/_words/en/catalogue.ts";
import { specimenListWords } from "#app/_words/en/specimens.ts";
import { choosePictures } from "#app/catalogue/actions.ts";
import styles from "#app/catalogue/catalogue.module.css";
import { showsHumanPictures } from "#app/catalogue/choice.ts";
import { PublicTable } from "#app/catalogue/public-table.tsx";
import { listRegionsAndSystems, type StructureLabel } from "#lib/anatomy/queries.ts";
import { publicViewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import {
  listPublicSpecies,
  listPublicSpecimens,
  type PublicList,
} from "#lib/specimens/queries/public-catalogue.ts";
import { preparations, uses } from "#lib/specimens/schema.ts";
import { freeMonths, monthsFrom } from "#lib/whereabouts/free-months.ts";
import { freePeriodsOf } from "#lib/whereabouts/queries.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

export const metadata: Metadata = { title: words.title };
export const dynamic = "force-dynamic";

const monthsShown = 24;

const fieldNames = ["q", "preparation", "use", "origin", "region", "system", "species"] as const;
type Fields = Partial<Record<(typeof fieldNames)[number], string>>;

function readFields(search: Search): Fields {
  return Object.fromEntries(
    fieldNames.flatMap((name) => {
      const value = parameterOf(search, name);
      return value === undefined || value === "" ? [] : [[name, value.slice(0, 200)]];
    }),
  );
}

async function readList(fields: Fields, search: Search): Promise<PublicList> {
  const preparation = preparations.find((one) => one === fields.preparation);
  const use = uses.find((one) => one === fields.use);
  const { origin, q, region, system, species } = fields;
  const [after, before] = [parameterOf(search, "after"), parameterOf(search, "before")];
  return await listPublicSpecimens(
    await currentViewer(),
    {
      ...(q ? { text: q } : {}),
      ...(preparation ? { preparation } : {}),
      ...(use ? { use } : {}),
      ...(region ? { regionId: region } : {}),
      ...(system ? { systemId: system } : {}),
      ...(species ? { species } : {}),
      ...(origin === "human" || origin === "animal" ? { human: origin === "human" } : {}),
    },
    after ? { after } : before ? { before } : {},
  );
}

/** Free months of each row; days are not told. */
async function readMonths(list: PublicList, months: readonly Period[]): Promise<Map<string, Period[]>> {
  const [first, last] = [months[0], months.at(-1)];
  if (!first || !last) return new Map();
  const ids = list.rows.map(({ id }) => id);
  const day = today();
  const free = await freePeriodsOf(publicViewer, ids, day, last.endsOn);
  return new Map([...free].map(([id, periods]) => [id, freeMonths(periods, months, day)]));
}

/** Regions or systems by name. */
const named = (groups: readonly StructureLabel[], kind: StructureLabel["kind"]) =>
  groups.filter((one) => one.kind === kind).map(({ id, english }) => [id, english] as const);

function SearchForm({
  fields,
  groups,
  species,
}: {
  fields: Fields;
  groups: readonly StructureLabel[];
  species: readonly string[];
}) {
  return (
    <search className="no-print">
      <form action="/catalogue" key={JSON.stringify(fields)}>
        <TextField label={words.search} name="q" type="search" defaultValue={fields.q} />
        <FieldGrid>
          <SelectField
            label={catalogueWords.preparation}
            name="preparation"
            options={preparations}
            empty={catalogueWords.anyPreparation}
            defaultValue={fields.preparation}
          />
          <SelectField
            label={catalogueWords.use}
            name="use"
            options={uses.map((use) => [use, catalogueWords.useWords[use]] as const)}
            empty={catalogueWords.anyUse}
            defaultValue={fields.use}
          />
          <SelectField
            label={catalogueWords.origin}
            name="origin"
            options={[catalogueWords.human, catalogueWords.animal]}
            empty={catalogueWords.anyOrigin}
            defaultValue={fields.origin}
          />
          <SelectField
            label={specimenListWords.species}
            name="species"
            options={species}
            empty={specimenListWords.anySpecies}
            defaultValue={fields.species}
          />
          <SelectField
            label={specimenListWords.region}
            name="region"
            options={named(groups, "region")}
            empty={specimenListWords.anyRegion}
            defaultValue={fields.region}
          />
          <SelectField
            label={specimenListWords.system}
            name="system"
            options={named(groups, "system")}
            empty={specimenListWords.anySystem}
            defaultValue={fields.system}
          />
        </FieldGrid>
        <FormActions>
          <button type="submit">{words.find}</button>
          {Object.keys(fields).length > 0 && <Link href="/catalogue">{words.clear}</Link>}
        </FormActions>
      </form>
    </search>
  );
}

export default async function PublicCataloguePage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const fields = readFields(search);
  const list = await orNotFound(() => readList(fields, search));
  const months = monthsFrom(today(), monthsShown);
  const window = { from: months[0]?.startsOn ?? today(), until: months.at(-1)?.endsOn ?? today() };
  const showsHuman = await showsHumanPictures();
  const question = new URLSearchParams(fields);
  const addressWith = (key: "after" | "before", value: string) =>
    `/catalogue?${new URLSearchParams([...question, [key, value]])}`;
  const hasHumanPictures = list.rows.some(({ human, hasPicture }) => human && hasPicture);
  return (
    <main className={styles.page}>
      <Masthead
        title={list.centre.name}
        latin={words.title}
        standing={
          <Link className="no-print" href="/sign-in">
            {words.signIn}
          </Link>
        }
      />
      <p>{words.about(list.centre.name)}</p>
      <p>{words.ask(list.centre.email)}</p>
      <SearchForm
        fields={fields}
        groups={await listRegionsAndSystems(publicViewer)}
        species={await listPublicSpecies(await currentViewer())}
      />
      {(hasHumanPictures || showsHuman) && (
        <form
          className={`no-print ${styles.choice}`}
          action={choosePictures.bind(null, !showsHuman, question.toString())}
        >
          <p>{words.choiceAbout}</p>
          <FormActions>
            <button type="submit" className="outline">
              {showsHuman ? words.hidePictures : words.showPictures}
            </button>
          </FormActions>
        </form>
      )}
      <p className="quiet small">{words.monthsAbout}</p>
      <PublicTable
        rows={list.rows}
        months={await readMonths(list, months)}
        window={window}
        showsHuman={showsHuman}
      />
      <Pager
        previous={list.previous && addressWith("before", list.previous)}
        next={list.next && addressWith("after", list.next)}
      />
    </main>
  );
}
