/**
 * One computation as a form of its own. The figures stand in the address, so a
 * result can be kept, sent and printed; it is worked out on the server.
 */
import type { Metadata } from "next";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import type { FormIssue } from "#app/_parts/form-state.ts";
import { parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { MarginNote, Masthead, RecordPage, roundForReading, Section } from "#app/_parts/record-page.tsx";
import { fieldsOf, type JsonSchema, readInput, sentIn } from "#app/_parts/working-fields.ts";
import { formStateOf, orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { type AnyWorking, describeWorking, getWorking } from "#app/_server/workings.ts";
import { workingsWords as words } from "#app/_words/en/workings.ts";
import { wordsOfValue } from "#app/_words/names.ts";
import { WorkingForm } from "#app/(signed-in)/workings/[id]/working-form.tsx";
import { WorkingResult } from "#app/(signed-in)/workings/[id]/working-result.tsx";
import { Refusal } from "#lib/platform/refusal.ts";
import type { Explanation } from "#lib/workings/working.ts";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Search> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { id } = await params;
  return { title: (await orNotFound(async () => getWorking(id))).title };
}

type Answer = { explanation: Explanation<unknown> | null; issues: FormIssue[]; refused: string | null };

function workOut(working: AnyWorking, input: unknown): Answer {
  try {
    return { explanation: working.explain(input), issues: [], refused: null };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const state = formStateOf(error);
    if (state.state !== "refused") throw error;
    const refused = error.reason === "input.invalid" ? words.refused : state.message;
    return { explanation: null, issues: state.issues, refused };
  }
}

function Result({ working, answer }: { working: AnyWorking; answer: Answer }) {
  const { explanation, refused } = answer;
  return (
    <Section
      id="result"
      title={words.result}
      margin={explanation?.cautions.map((caution) => (
        <MarginNote key={caution} title={words.caution}>
          {caution}
        </MarginNote>
      ))}
    >
      {refused && (
        <p className="form-refused" role="alert">
          {refused}
        </p>
      )}
      {!explanation && !refused && <EmptyState>{words.noResult}</EmptyState>}
      {explanation && (
        <WorkingResult
          value={explanation.output as Record<string, unknown>}
          schema={describeWorking(working).output as JsonSchema}
        />
      )}
    </Section>
  );
}

function stepText(value: number | string | boolean): string {
  if (typeof value === "number") return roundForReading(value);
  return typeof value === "boolean" ? (value ? words.yes : words.no) : wordsOfValue(value);
}

function Steps({ explanation }: { explanation: Explanation<unknown> }) {
  return (
    <Section id="steps" title={words.steps}>
      <DataTable
        caption={words.stepsCaption}
        captionHidden
        rows={explanation.steps.map((step, place) => ({ ...step, place }))}
        rowKey={({ place }) => String(place)}
        columns={[
          { key: "label", label: words.step, cell: ({ label }) => label },
          { key: "formula", label: words.formula, cell: ({ formula }) => <i>{formula}</i> },
          {
            key: "value",
            label: words.value,
            right: true,
            cell: ({ value, unit }) => `${stepText(value)} ${unit}`,
          },
        ]}
      />
    </Section>
  );
}

export default async function WorkingPage({ params, searchParams }: Props) {
  const { id } = await params;
  const search = await searchParams;
  await requireViewer(sameAddress(`/workings/${id}`, search));
  const working = await orNotFound(async () => getWorking(id));
  const fields = fieldsOf(describeWorking(working).input as JsonSchema);
  const input = readInput(fields, sentIn(search));
  const more = parameterOf(search, "more");
  const sent = Object.keys(search).some((name) => name !== "more");
  const answer: Answer =
    sent && more === undefined ? workOut(working, input) : { explanation: null, issues: [], refused: null };
  return (
    <RecordPage
      masthead={<Masthead title={working.title} />}
      index={[
        { id: "figures", label: words.figures },
        { id: "result", label: words.result },
        ...(answer.explanation ? [{ id: "steps", label: words.steps }] : []),
        { id: "sources", label: words.sources },
        { id: "elsewhere", label: words.elsewhere },
      ]}
    >
      <Section
        id="figures"
        title={words.figures}
        margin={<MarginNote title={working.title}>{working.about}</MarginNote>}
      >
        <WorkingForm
          id={id}
          title={working.title}
          fields={fields}
          input={input}
          issues={answer.issues}
          more={more}
        />
      </Section>
      <Result working={working} answer={answer} />
      {answer.explanation && <Steps explanation={answer.explanation} />}
      <Section id="sources" title={words.sources}>
        <ul>
          {working.sources.map((source) => (
            <li key={`${source.id} ${source.where}`}>
              {source.title}
              {source.where && `, ${source.where}`}{" "}
              <i className="quiet">{words.standings[source.standing]}</i>
            </li>
          ))}
        </ul>
        {!answer.explanation && working.cautions.length > 0 && (
          <>
            <h3>{words.cautions}</h3>
            <ul>
              {working.cautions.map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
          </>
        )}
      </Section>
      <Section id="elsewhere" title={words.elsewhere}>
        <p>
          {words.api} <code className="mono">POST /api/v1/workings/{id}</code>
        </p>
        <p>
          {words.commandLine}{" "}
          <code style={{ overflowWrap: "anywhere", fontFamily: "var(--mono)" }}>
            npm run -s working -- {id} &lt; input.json
          </code>
        </p>
      </Section>
    </RecordPage>
  );
}
