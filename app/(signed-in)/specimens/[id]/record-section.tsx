/** What the specimen is: the plate and the facts beside it. */
import Link from "next/link";
import type { ReactNode } from "react";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Money, Quantity, SizeText, Unknown } from "#app/_parts/figures.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { SpecimenPlate } from "#app/_parts/specimen-plate.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { CostReview } from "#app/(signed-in)/specimens/[id]/cost-review.tsx";
import { LegalFactsList } from "#app/(signed-in)/specimens/[id]/legal-facts-list.tsx";
import { PictureForm, StepForm } from "#app/(signed-in)/specimens/[id]/record-forms.tsx";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import type { SpecimenSheet } from "#lib/specimens/queries.ts";
import { sizeWithThickness } from "#lib/specimens/sheet-size.ts";

const joined = (parts: readonly (string | null | undefined | false)[]): ReactNode =>
  parts.filter(Boolean).join(", ") || <Unknown />;

export function RecordSection({ viewer, specimen }: { viewer: Viewer; specimen: SpecimenSheet }) {
  const { series, whole } = specimen;
  return (
    <Section
      id="record"
      title={words.record}
      margin={
        <>
          <MarginNote
            outcome={specimen.massWeighed ? "clear" : "attend"}
            title={specimen.massWeighed ? words.massWeighed : words.massEstimated}
          />
          {specimen.hazards.length > 0 && (
            <MarginNote
              outcome="attend"
              title={specimen.hazards
                .map(
                  (hazard) => `${hazard.substance}${hazard.percent === null ? "" : ` ${hazard.percent} %`}`,
                )
                .join(", ")}
            >
              {words.hazardCaution}
            </MarginNote>
          )}
        </>
      }
    >
      <div className="side-by-side">
        <SpecimenPlate specimen={specimen} />
        <Facts
          facts={[
            [words.kind, specimen.kind],
            [words.preparation, specimen.preparation],
            specimen.fluidName !== null && [
              words.fluid,
              joined([specimen.fluidName, specimen.fluidPercent !== null && `${specimen.fluidPercent} %`]),
            ],
            [
              words.species,
              <>
                <i key="species">{specimen.scientificName}</i>
                {specimen.sex && specimen.sex !== "not applicable" && `, ${specimen.sex}`}
                {specimen.ageBand && `, ${specimen.ageBand}`}
              </>,
            ],
            [words.side, specimen.side],
            specimen.pose !== "" && [words.pose, specimen.pose],
            [
              words.size,
              <SizeText key="size" size={sizeWithThickness(specimen.size, series?.thicknessMm ?? null)} />,
            ],
            [words.mountedSize, <SizeText key="mounted" size={specimen.mountedSize} />],
            [
              words.mass,
              <>
                <Quantity key="mass" value={specimen.massKg} unit="kg" />, {words.mountedMass.toLowerCase()}{" "}
                <Quantity value={specimen.mountedMassKg} unit="kg" />
              </>,
            ],
            [words.use, words.useWords[specimen.use]],
            [words.partsAtRisk, specimen.partsAtRisk || <Unknown key="risk" />],
            specimen.replacementCost !== undefined && [
              words.replacementCost,
              specimen.replacementCost ? (
                <>
                  <Money key="cost" money={specimen.replacementCost} />, {specimen.replacementCost.basis},{" "}
                  <DateText date={specimen.replacementCost.statedOn} />, {specimen.replacementCost.statedBy}
                  <CostReview statedOn={specimen.replacementCost.statedOn} />
                </>
              ) : (
                <Unknown key="cost" />
              ),
            ],
            [words.preparedOn, <DateText key="prepared" date={specimen.preparedOn} />],
            [words.acquiredOn, <DateText key="acquired" date={specimen.acquiredOn} />],
            series && [
              words.sheetOf,
              <Link key="series" href={`/series/${series.id}?sheet=${series.number}`}>
                {series.code}, {series.number}
              </Link>,
            ],
            whole && [
              words.wholeOf,
              <Link key="whole" href={`/specimens/${whole.id}`}>
                {whole.accessionNumber} {whole.title}
              </Link>,
            ],
            specimen.parts.length > 0 && [
              words.partsOf,
              specimen.parts.map((part) => (
                <Link key={part.id} href={`/specimens/${part.id}`} style={{ display: "block" }}>
                  {part.accessionNumber} {part.title}
                </Link>
              )),
            ],
            specimen.formerNumbers.length > 0 && [
              words.formerNumbers,
              specimen.formerNumbers.map((former) => (
                <span key={`${former.kind} ${former.number}`} style={{ display: "block" }}>
                  <span className="mono">{former.number}</span> ({former.kind}
                  {former.markedOn && `, ${former.markedOn}`})
                </span>
              )),
            ],
            specimen.note !== "" && [words.note, specimen.note],
          ]}
        />
      </div>
      {specimen.components.length > 0 && (
        <DataTable
          caption={words.components}
          rows={specimen.components}
          rowKey={(row) => row.name}
          columns={[
            { key: "name", label: words.component, cell: (row) => row.name },
            { key: "count", label: words.count, right: true, cell: (row) => row.count },
            { key: "detachable", label: words.detachable, cell: (row) => (row.detachable ? "yes" : "no") },
          ]}
        />
      )}
      {specimen.preparationSteps.length > 0 && (
        <DataTable
          caption={words.steps}
          rows={specimen.preparationSteps}
          rowKey={(row) => row.id}
          columns={[
            { key: "step", label: words.step, cell: (row) => row.step },
            { key: "from", label: words.from, cell: (row) => <DateText date={row.startedOn} /> },
            { key: "to", label: words.to, cell: (row) => <DateText date={row.endedOn} /> },
            { key: "note", label: words.note, cell: (row) => row.note },
          ]}
        />
      )}
      <LegalFactsList specimen={specimen} />
      <div className="no-print">
        {mayDo(viewer, "addPicture") && <PictureForm specimenId={specimen.id} />}
        {mayDo(viewer, "recordPreparationStep") && <StepForm specimenId={specimen.id} />}
      </div>
    </Section>
  );
}
