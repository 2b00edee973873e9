/** One stage of the way, and the link that its carrier is given once. */
"use client";

import { startTransition, useActionState, useState } from "react";
import { ActionForm } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { idle, issueOf } from "#app/_parts/form-state.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { giveLink, type LinkState, saveStage } from "#app/(signed-in)/loans/[id]/road-actions.ts";
import type { StageSheet } from "#lib/shipments/queries.ts";
import type { Direction } from "#lib/shipments/schema.ts";

export function StageForm({
  loanId,
  direction,
  stage,
  usual,
}: {
  loanId: string;
  direction: Direction;
  stage: StageSheet | null;
  /** The days to begin with where nothing is planned. */
  usual: { departsOn: string; arrivesOn: string };
}) {
  const label = `${words[direction]}: ${stage ? words.changeStage : words.planStage}`;
  const of = (name: string) => ({ id: `${direction}-${name}`, name });
  return (
    <details open={stage === null && direction === "out"}>
      <summary>{label}</summary>
      <ActionForm action={saveStage.bind(null, loanId, direction)} label={label}>
        {(state, pending) => (
          <>
            <FieldGrid>
              <TextField
                label={words.carrier}
                {...of("carrier")}
                defaultValue={stage?.carrier}
                error={issueOf(state, "carrier")}
              />
              <TextField
                label={words.carrierEmail}
                type="email"
                {...of("carrierEmail")}
                defaultValue={stage?.carrierEmail}
                error={issueOf(state, "carrierEmail")}
              />
              <TextField
                label={words.vehicle}
                {...of("vehicle")}
                defaultValue={stage?.vehicle}
                error={issueOf(state, "vehicle")}
              />
              <TextField
                label={words.departsOn}
                type="date"
                {...of("departsOn")}
                defaultValue={stage?.departsOn ?? usual.departsOn}
                error={issueOf(state, "departsOn")}
              />
              <TextField
                label={words.arrivesOn}
                type="date"
                {...of("arrivesOn")}
                defaultValue={stage?.arrivesOn ?? usual.arrivesOn}
                error={issueOf(state, "arrivesOn")}
              />
            </FieldGrid>
            <FormActions>
              <button type="submit" className={stage ? "outline" : undefined} disabled={pending}>
                {stage ? words.changeStage : words.planStage}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}

const noLink: LinkState = { form: idle, link: null };

export function CarrierLinkForm({
  loanId,
  stage,
}: {
  loanId: string;
  stage: Pick<StageSheet, "id" | "direction" | "linkExpiresAt">;
}) {
  const [state, send, pending] = useActionState(giveLink.bind(null, loanId, stage.id), noLink);
  const [copied, setCopied] = useState(false);
  const button = stage.linkExpiresAt === null ? words.giveLink : words.newLink;
  const label = `${words[stage.direction]}: ${button}`;
  return (
    <form
      aria-label={label}
      action={send}
      onSubmit={(event) => {
        event.preventDefault();
        setCopied(false);
        startTransition(() => send());
      }}
    >
      {state.link && (
        <div role="status" className="form-done">
          <p>{words.linkOnce}</p>
          <p className="mono" style={{ overflowWrap: "anywhere", whiteSpace: "normal" }}>
            {state.link}
          </p>
          <button
            type="button"
            className="outline"
            onClick={() => void navigator.clipboard.writeText(state.link ?? "").then(() => setCopied(true))}
          >
            {copied ? words.copied : words.copy}
          </button>
        </div>
      )}
      <FormAnswer state={state.form} />
      <FormActions>
        <button type="submit" className="outline" disabled={pending} aria-label={label}>
          {button}
        </button>
      </FormActions>
    </form>
  );
}
