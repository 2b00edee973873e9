/** How a consent and its answers look: each a word with a shape of its own. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { type MarkTone, StateMark } from "#app/_parts/state-mark.tsx";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import type { ConsentState, ConsentStatus } from "#lib/provenance/consent-status.ts";
import type { Answer, Scope } from "#lib/provenance/schema.ts";

const stateTones: Record<ConsentState, MarkTone> = {
  "in force": "clear",
  "withdrawal received": "attend",
  withdrawn: "bar",
  expired: "bar",
};

export function ConsentStateMark({ status }: { status: ConsentStatus | null }) {
  if (status === null) return <StateMark outcome="attend">{words.noConsent}</StateMark>;
  return (
    <>
      <StateMark outcome={stateTones[status.state]}>{words.states[status.state]}</StateMark>
      {status.reviewDue && (
        <>
          {", "}
          <StateMark outcome="attend">{words.reviewDue}</StateMark>
        </>
      )}
    </>
  );
}

const answerTones: Record<Answer, MarkTone> = {
  granted: "clear",
  refused: "bar",
  "not asked": "attend",
  unknown: "neutral",
};

export function AnswerMark({ answer }: { answer: Answer }) {
  return <StateMark outcome={answerTones[answer]}>{words.answers[answer]}</StateMark>;
}

/** Every scope with its answer, in the groups of the form. */
export function ScopesTable({ answers, caption }: { answers: Record<Scope, Answer>; caption: string }) {
  const rows = words.scopeGroups.flatMap(([group, scopes]) => scopes.map((scope) => ({ group, scope })));
  return (
    <DataTable
      caption={caption}
      dense
      rows={rows}
      rowKey={({ scope }) => scope}
      columns={[
        { key: "scope", label: words.scope, cell: ({ scope }) => scope },
        { key: "answer", label: words.answer, cell: ({ scope }) => <AnswerMark answer={answers[scope]} /> },
        { key: "group", label: words.group, cell: ({ group }) => <span className="quiet">{group}</span> },
      ]}
    />
  );
}
