/** One stage of the way, and the link that its carrier is given once. */
"use client";

import { type ReactNode, startTransition, useActionState, useState } from "react";
import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { idle, issueOf } from "#app/_parts/form-state.ts";
import { writeCodes } from "#app/_parts/typed-codes.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import type { LinkState } from "#app/(signed-in)/loans/[id]/journey/road-actions.ts";
import type { StageSheet } from "#lib/shipments/queries.ts";
import type { Direction } from "#lib/shipments/schema.ts";

export function StageForm({
  action,
  direction,
  stage,
  usual,
}: {
  action: FormAction;
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
      <ActionForm action={action} label={label}>
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
                label={words.through}
                hint={`${words.throughHint} ${fieldWords.codesHint}`}
                {...of("through")}
                defaultValue={writeCodes(stage?.through ?? [])}
                autoComplete="off"
                error={issueOf(state, "through") ?? issueOf(state, "through.0")}
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

/** @param children what is told of the link before the button */
export function CarrierLinkForm({
  action,
  stage,
  children,
}: {
  action: (before: LinkState) => Promise<LinkState>;
  stage: Pick<StageSheet, "direction" | "linkExpiresAt">;
  children: ReactNode;
}) {
  const [state, send, pending] = useActionState(action, noLink);
  const [copied, setCopied] = useState(false);
  const button = stage.linkExpiresAt === null ? words.giveLink : words.newLink;
  const label = `${words[stage.direction]}: ${button}`;
  return (
    <details open={state.link !== null || state.form.state === "refused"}>
      <summary>
        {words[stage.direction]}: {words.link}
      </summary>
      {children}
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
    </details>
  );
}
