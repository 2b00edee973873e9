/** What the centre says of itself, for everybody of the house. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Unknown } from "#app/_parts/figures.tsx";
import { Happened } from "#app/_parts/happened.tsx";
import { Masthead, PlainPage, RecordPage, Section } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { centreWords as words } from "#app/_words/en/centre.ts";
import { reminderWords } from "#app/_words/en/letters.ts";
import { planWords } from "#app/_words/en/loan-time.ts";
import { feeWords } from "#app/_words/en/money.ts";
import { practiceWords } from "#app/_words/en/practice.ts";
import { countryName } from "#app/_words/readable.ts";
import { happenedTo } from "#lib/desk/queries/happened.ts";
import { planDaysKey } from "#lib/loans/queries/plan-days.ts";
import { reportMonths } from "#lib/people/facility-report.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { practiceDefaults, practiceNames, practiceOf, unitOfPractice } from "#lib/people/practice.ts";
import { centreKeys, getCentre } from "#lib/people/queries.ts";

export const metadata: Metadata = { title: words.title };

const languageNames = new Intl.DisplayNames(["en"], { type: "language", fallback: "code" });

export default async function CentrePage() {
  const viewer = await requireViewer("/centre");
  const centre = await orNotFound(() => getCentre(viewer));
  const mayEdit = mayDo(viewer, "configureCentre");
  if (!centre)
    return (
      <PlainPage>
        <Masthead title={words.title} />
        <EmptyState
          action={
            mayEdit && (
              <Link className="act" href="/centre/edit">
                {words.state}
              </Link>
            )
          }
        >
          {words.none}
        </EmptyState>
      </PlainPage>
    );
  const { settings, formerNames } = centre;
  const practice = practiceOf(settings.practice);
  const happened = maySee(viewer, "audit")
    ? await happenedTo(
        viewer,
        [...Object.values(centreKeys), planDaysKey].map((key) => ({ table: "setting", key })),
      )
    : null;
  return (
    <RecordPage
      masthead={
        <Masthead
          title={settings.name}
          standing={
            <>
              <p>
                {settings.city}, {countryName(settings.countryCode)}
              </p>
              {mayEdit && (
                <p className="no-print">
                  <Link href="/centre/edit">{words.edit}</Link>
                </p>
              )}
            </>
          }
        />
      }
      index={[
        { id: "who", label: words.who },
        { id: "numbers", label: words.numbers },
        { id: "practice", label: practiceWords.title },
        { id: "plan", label: planWords.settings },
        ...(happened ? [{ id: "happened", label: words.happened }] : []),
      ]}
    >
      <Section id="who" title={words.who}>
        <p>{words.about}</p>
        <Facts
          facts={[
            [words.name, settings.name],
            formerNames.length > 0 && [words.formerNames, formerNames.join("; ")],
            [words.address, settings.address],
            [words.city, settings.city],
            [words.country, countryName(settings.countryCode)],
            [
              words.languages,
              settings.languages?.map((tag) => languageNames.of(tag) ?? tag).join(", ") ?? (
                <Unknown key="languages" />
              ),
            ],
            [
              words.email,
              <a key="email" href={`mailto:${settings.email}`}>
                {settings.email}
              </a>,
            ],
            [words.phone, settings.phone],
            [words.emergencyPhone, settings.emergencyPhone ?? words.emergencyPhoneNone],
          ]}
        />
      </Section>
      <Section id="numbers" title={words.numbers}>
        <Facts
          facts={[
            [
              words.pattern,
              <code key="pattern" className="mono" style={{ whiteSpace: "normal", overflowWrap: "anywhere" }}>
                {settings.accessionPattern}
              </code>,
            ],
            [
              words.example,
              <span key="example" className="mono">
                {settings.accessionExample}
              </span>,
            ],
            [words.currency, settings.currency],
            maySee(viewer, "feeScale") && [
              feeWords.title,
              <Link key="fees" href="/centre/fees">
                {feeWords.see}
              </Link>,
            ],
            [words.reportMonths, words.monthsOf(settings.facilityReportMonths ?? reportMonths)],
            [
              words.openness,
              settings.publicCatalogue === true ? (
                <span key="open">
                  {words.publicOpen} <Link href="/catalogue">/catalogue</Link>
                </span>
              ) : (
                words.publicClosed
              ),
            ],
          ]}
        />
      </Section>
      <Section id="practice" title={practiceWords.title}>
        <p>{practiceWords.about}</p>
        <DataTable
          caption={practiceWords.caption}
          captionHidden
          rows={practiceNames}
          rowKey={(name) => name}
          columns={[
            { key: "figure", label: practiceWords.figure, cell: (name) => practiceWords.names[name] },
            {
              key: "value",
              label: practiceWords.value,
              right: true,
              cell: (name) => practiceWords.valueOf(practice[name], unitOfPractice(name), settings.currency),
            },
            {
              key: "basis",
              label: practiceWords.basis,
              cell: (name) =>
                settings.practice?.[name] === undefined
                  ? `${practiceDefaults[name].source} (${practiceDefaults[name].standing})`
                  : practiceWords.own,
            },
          ]}
        />
      </Section>
      <Section id="plan" title={planWords.settings}>
        <p>{planWords.settingsAbout}</p>
        <p>
          <Link href="/centre/plan">{planWords.settings}</Link>
        </p>
        <p>{reminderWords.about}</p>
        <p>
          <Link href="/centre/reminders">{reminderWords.title}</Link>
        </p>
      </Section>
      {happened && (
        <Section id="happened" title={words.happened}>
          <Happened entries={happened} />
        </Section>
      )}
    </RecordPage>
  );
}
