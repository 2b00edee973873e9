/** Setting a new version of the fee scale; it begins with the newest there is. */
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable } from "#app/_parts/data-table.tsx";
import { FieldGrid, SelectField, TextField } from "#app/_parts/fields.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { moneyWords, feeWords as words } from "#app/_words/en/money.ts";
import { saveFeeScale } from "#app/(signed-in)/centre/fees/actions.ts";
import { rateNames } from "#app/(signed-in)/centre/fees/scale-tables.tsx";
import { Cell } from "#app/(signed-in)/loans/[id]/money/further-fields.tsx";
import { listFeeScales } from "#lib/costing/queries.ts";
import { type FeeScale, lineCodes, premiumBases } from "#lib/costing/schema.ts";
import { mayDo } from "#lib/people/permission.ts";
import { getCentre } from "#lib/people/queries.ts";
import { today } from "#lib/platform/clock.ts";
import { majorText } from "#lib/platform/money.ts";
import { purposes } from "#lib/suitability/schema.ts";

export const metadata: Metadata = { title: words.edit };

const mostSteps = 6;

function LoanFees({ scale, amount }: { scale: FeeScale | undefined; amount: (minor?: number) => string }) {
  const label = (purpose: (typeof purposes)[number], name: string) =>
    moneyWords.fieldOf(words.purposes[purpose], name);
  return (
    <fieldset>
      <legend>{words.fees}</legend>
      <p className="quiet small">{words.feesAbout}</p>
      <DataTable
        caption={words.fees}
        captionHidden
        rows={purposes}
        rowKey={(purpose) => purpose}
        columns={[
          { key: "purpose", label: words.purpose, cell: (purpose) => words.purposes[purpose] },
          {
            key: "base",
            label: words.base,
            cell: (purpose) => (
              <Cell
                name={`fee-base-${purpose}`}
                label={label(purpose, words.base)}
                value={amount(scale?.loanFees[purpose].baseMinor)}
              />
            ),
          },
          {
            key: "included",
            label: words.included,
            cell: (purpose) => (
              <Cell
                name={`fee-included-${purpose}`}
                label={label(purpose, words.included)}
                value={String(scale?.loanFees[purpose].included ?? 1)}
              />
            ),
          },
          {
            key: "further",
            label: words.further,
            cell: (purpose) => (
              <Cell
                name={`fee-further-${purpose}`}
                label={label(purpose, words.further)}
                value={amount(scale?.loanFees[purpose].furtherMinor)}
              />
            ),
          },
        ]}
      />
    </fieldset>
  );
}

function CoverFields({ scale }: { scale: FeeScale | undefined }) {
  const bases = premiumBases.map((basis) => [basis, words.bases[basis]] as const);
  return (
    <fieldset>
      <legend>{words.cover}</legend>
      <p className="quiet small">{words.coverAbout}</p>
      <FieldGrid>
        <TextField
          label={`${words.transit}: ${words.perMille}`}
          name="transitPerMille"
          inputMode="decimal"
          defaultValue={scale?.cover.transitPerMille}
        />
        <SelectField
          label={`${words.transit}: ${words.basis.toLowerCase()}`}
          name="transitBasis"
          options={bases}
          defaultValue={scale?.cover.transitBasis ?? "transit"}
        />
        <TextField
          label={`${words.stay}: ${words.perMille}`}
          name="stayPerMille"
          inputMode="decimal"
          defaultValue={scale?.cover.stayPerMille}
        />
        <SelectField
          label={`${words.stay}: ${words.basis.toLowerCase()}`}
          name="stayBasis"
          options={bases}
          defaultValue={scale?.cover.stayBasis ?? "day"}
        />
      </FieldGrid>
    </fieldset>
  );
}

function Steps({ scale }: { scale: FeeScale | undefined }) {
  const rows = Array.from({ length: mostSteps }, (_, index) => ({ index, ...scale?.cancellation[index] }));
  return (
    <fieldset>
      <legend>{words.cancellation}</legend>
      <p className="quiet small">{words.cancellationHint}</p>
      <DataTable
        caption={words.cancellation}
        captionHidden
        rows={rows}
        rowKey={(row) => String(row.index)}
        columns={[
          { key: "step", label: words.cancellation, cell: (row) => words.step(row.index + 1) },
          {
            key: "days",
            label: words.daysBefore,
            cell: (row) => (
              <Cell
                name={`step-days-${row.index}`}
                label={moneyWords.fieldOf(words.step(row.index + 1), words.daysBefore)}
                value={row.daysBefore === undefined ? "" : String(row.daysBefore)}
              />
            ),
          },
          {
            key: "share",
            label: words.share,
            cell: (row) => (
              <Cell
                name={`step-share-${row.index}`}
                label={moneyWords.fieldOf(words.step(row.index + 1), words.share)}
                value={row.percent ?? ""}
              />
            ),
          },
        ]}
      />
    </fieldset>
  );
}

export default async function EditFeesPage() {
  const viewer = await requireViewer("/centre/fees/edit");
  if (!mayDo(viewer, "setFeeScale")) notFound();
  const [newest] = await orNotFound(() => listFeeScales(viewer));
  const centre = await orNotFound(() => getCentre(viewer));
  const scale = newest?.scale;
  const currency = scale?.currency ?? centre?.settings.currency ?? "";
  const amount = (minor?: number) => (minor === undefined ? "" : majorText(minor, currency));
  return (
    <PlainPage>
      <Masthead
        title={newest ? words.edit : words.set}
        standing={<Link href="/centre/fees">{words.title}</Link>}
      />
      <p>{words.editAbout}</p>
      <ActForm action={saveFeeScale} label={words.save} button={words.save}>
        <FieldGrid>
          <TextField label={words.validFrom} name="validFrom" type="date" defaultValue={today()} />
          <TextField
            label={words.currency}
            name="currency"
            autoCapitalize="characters"
            defaultValue={currency}
          />
        </FieldGrid>
        <LoanFees scale={scale} amount={amount} />
        <fieldset>
          <legend>{words.rates}</legend>
          <FieldGrid>
            {rateNames.map((name) => (
              <TextField
                key={name}
                label={words.rateNames[name]}
                name={`rate-${name}`}
                inputMode="decimal"
                defaultValue={amount(scale?.rates[name])}
              />
            ))}
          </FieldGrid>
        </fieldset>
        <CoverFields scale={scale} />
        <fieldset>
          <legend>{words.more}</legend>
          <FieldGrid>
            <TextField
              label={words.recallPercent}
              name="recallPercent"
              inputMode="decimal"
              defaultValue={scale?.recall.percent}
            />
            <TextField
              label={words.recallLeast}
              name="recallLeast"
              inputMode="decimal"
              defaultValue={amount(scale?.recall.leastMinor)}
            />
            <TextField
              label={words.contingency}
              name="contingencyPercent"
              inputMode="decimal"
              defaultValue={scale?.contingencyPercent}
            />
            <TextField
              label={words.validDaysField}
              name="validDays"
              inputMode="numeric"
              defaultValue={scale ? String(scale.validDays) : ""}
            />
          </FieldGrid>
        </fieldset>
        <fieldset>
          <legend>{words.tax}</legend>
          <p className="quiet small">{words.taxAbout}</p>
          <FieldGrid>
            {lineCodes.map((code) => (
              <TextField
                key={code}
                label={moneyWords.lines[code]}
                name={`tax-${code}`}
                inputMode="decimal"
                defaultValue={scale?.taxPercent[code]}
              />
            ))}
          </FieldGrid>
        </fieldset>
        <Steps scale={scale} />
      </ActForm>
    </PlainPage>
  );
}
