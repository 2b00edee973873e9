/**
 * What a carrier sees by its link: crates, sizes, masses, days, addresses. No
 * titles, no donors, no costs. A link that is unknown or has run out is no page.
 */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { OuterSides } from "#app/_parts/outer-sides.tsx";
import { Masthead } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { carryWords as words } from "#app/_words/en/carry.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { formatNumber } from "#app/_words/format.ts";
import styles from "#app/carry/[token]/carry.module.css";
import { CarryForm } from "#app/carry/[token]/carry-form.tsx";
import { centreSettings } from "#lib/people/queries.ts";
import { type CarrierSheet, carrierView } from "#lib/shipments/queries.ts";

export const metadata: Metadata = { title: words.title, referrer: "no-referrer" };
export const dynamic = "force-dynamic";

type Crate = CarrierSheet["crates"][number];

/** Whether the crate was handed to the carrier on this stage and has not arrived. */
function isUnderWay(crate: Crate, stageId: string): boolean {
  return (
    crate.state === "with the carrier" &&
    crate.events.some((event) => event.kind === "handed over" && event.stageId === stageId)
  );
}

function Addresses({
  view,
  centre,
}: {
  view: CarrierSheet;
  centre: { name: string; address: string; phone: string };
}) {
  const house = (
    <>
      {centre.name}
      <br />
      {centre.address}
      <br />
      {words.telephone} {centre.phone}
    </>
  );
  const venue = (
    <>
      {view.venue.institution}, {view.venue.name}
      <br />
      {view.venue.address}
      <br />
      {words.telephone} {view.venue.phone}
    </>
  );
  const [from, to] = view.direction === "out" ? [house, venue] : [venue, house];
  return (
    <Facts
      facts={[
        [words.from, from],
        [words.leaves, <DateText key="leaves" date={view.departsOn} />],
        [words.to, to],
        [words.arrives, <DateText key="arrives" date={view.arrivesOn} />],
        [words.carrier, view.carrier],
        view.vehicle !== "" && [words.vehicle, view.vehicle],
        [words.help, view.lenderPhone],
        [words.validUntil, <Moment key="until" at={view.validUntil} long />],
      ]}
    />
  );
}

function SaidSoFar({ view }: { view: CarrierSheet }) {
  const said = view.crates.flatMap((crate) =>
    crate.events
      .filter((event) => event.stageId === view.stageId && event.kind in words.words)
      .map((event) => ({ ...event, code: crate.code })),
  );
  if (said.length === 0) return null;
  return (
    <DataTable
      caption={words.wordsSoFar}
      rows={said}
      rowKey={(row) => row.id}
      columns={[
        { key: "crate", label: words.crate, cell: (row) => <span className="mono">{row.code}</span> },
        { key: "what", label: words.what, cell: (row) => words.words[row.kind] },
        { key: "when", label: words.when, cell: (row) => <Moment at={row.at} /> },
        { key: "who", label: words.who, cell: (row) => row.by },
        { key: "damage", label: words.outsideDamage, cell: (row) => row.outsideDamage },
      ]}
    />
  );
}

export default async function CarryPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const view = await carrierView(token);
  if (!view) notFound();
  const centre = await centreSettings();
  const underWay = view.crates.filter((crate) => isUnderWay(crate, view.stageId));
  const arrived = view.crates.some((crate) =>
    crate.events.some((event) => event.kind === "arrived" && event.stageId === view.stageId),
  );
  return (
    <main className={styles.page}>
      <Masthead number={view.loanNumber} title={words.title} />
      <Addresses view={view} centre={centre} />
      <p>{words.care}</p>
      <DataTable
        caption={words.crates}
        rows={view.crates}
        rowKey={(crate) => crate.id}
        columns={[
          { key: "code", label: words.crate, cell: (crate) => <span className="mono">{crate.code}</span> },
          {
            key: "outer",
            label: words.outer,
            right: true,
            cell: (crate) => <OuterSides crate={crate} />,
          },
          {
            key: "gross",
            label: words.gross,
            cell: () => null,
            figure: (crate) => formatNumber(crate.grossMassKg, 1),
          },
          { key: "seal", label: words.seal, cell: (crate) => crate.sealNumber ?? "" },
          {
            key: "state",
            label: words.state,
            cell: (crate) => <StateMark outcome="neutral">{loanWords.crateStates[crate.state]}</StateMark>,
          },
        ]}
      />
      <h2>{words.yourWord}</h2>
      {underWay.length > 0 ? (
        <CarryForm token={token} crates={underWay.map(({ id, code }) => ({ id, code }))} />
      ) : (
        <p>{arrived ? words.allSaid : words.notYet}</p>
      )}
      <SaidSoFar view={view} />
    </main>
  );
}
