/** The search form: plain GET, so that every search has an address; it leads to where the list begins. */
import Link from "next/link";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { specimenListWords as listWords } from "#app/_words/en/specimens.ts";
import { listAnchor, type SearchFields } from "#app/(signed-in)/specimens/search-fields.ts";
import type { StructureLabel } from "#lib/anatomy/queries.ts";
import { preparations, specimenKinds, uses } from "#lib/specimens/schema.ts";
import type { BufferDays } from "#lib/suitability/period.ts";

/** Regions or systems by name. */
const named = (groups: readonly StructureLabel[], kind: StructureLabel["kind"]) =>
  groups.filter((one) => one.kind === kind).map(({ id, english }) => [id, english] as const);

export function SpecimenSearch({
  fields,
  groups,
  species,
  around,
}: {
  fields: SearchFields;
  /** The regions and systems of the vocabulary. */
  groups: readonly StructureLabel[];
  /** Scientific names of the animals in the catalogue. */
  species: readonly string[];
  /** Days that the centre keeps free around a loan. */
  around: BufferDays;
}) {
  return (
    <search className="no-print">
      {/* Other fields are another form: what was typed into the one before does not stay in it. */}
      <form action={`/specimens#${listAnchor}`} key={JSON.stringify(fields)}>
        <TextField
          label={listWords.search}
          hint={listWords.searchHint}
          name="q"
          type="search"
          defaultValue={fields.q}
        />
        <FieldGrid>
          <SelectField
            label={words.kind}
            name="kind"
            options={specimenKinds}
            empty={words.anyKind}
            defaultValue={fields.kind}
          />
          <SelectField
            label={words.preparation}
            name="preparation"
            options={preparations}
            empty={words.anyPreparation}
            defaultValue={fields.preparation}
          />
          <SelectField
            label={words.use}
            name="use"
            options={uses.map((use) => [use, words.useWords[use]] as const)}
            empty={words.anyUse}
            defaultValue={fields.use}
          />
          <SelectField
            label={words.origin}
            name="origin"
            options={[words.human, words.animal]}
            empty={words.anyOrigin}
            defaultValue={fields.origin}
          />
        </FieldGrid>
        <FieldGrid>
          <SelectField
            label={listWords.region}
            name="region"
            options={named(groups, "region")}
            empty={listWords.anyRegion}
            defaultValue={fields.region}
          />
          <SelectField
            label={listWords.system}
            name="system"
            options={named(groups, "system")}
            empty={listWords.anySystem}
            defaultValue={fields.system}
          />
          <SelectField
            label={listWords.species}
            name="species"
            options={species}
            empty={listWords.anySpecies}
            defaultValue={fields.species}
          />
        </FieldGrid>
        <FieldGrid>
          <TextField label={words.freeFrom} name="from" type="date" defaultValue={fields.from} />
          <TextField label={words.freeUntil} name="until" type="date" defaultValue={fields.until} />
        </FieldGrid>
        <p className="quiet small">{listWords.daysHint(around.small, around.crate, around["whole body"])}</p>
        <FormActions>
          <button type="submit">{words.find}</button>
          <CheckField
            label={listWords.withSheets}
            hint={listWords.withSheetsHint}
            name="sheets"
            value="yes"
            defaultChecked={Boolean(fields.sheets)}
          />
          <Link href="/specimens">{words.clear}</Link>
        </FormActions>
      </form>
    </search>
  );
}
