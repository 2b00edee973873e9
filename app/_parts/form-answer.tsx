/** What a form answers: the sentence of a refusal with its fields, or that it is done. */
import type { FormState } from "#app/_parts/form-state.ts";

export function FormAnswer({ state }: { state: FormState }) {
  if (state.state === "refused")
    return (
      <div role="alert" className="form-refused">
        <p>{state.message}</p>
        {state.issues.length > 0 && (
          <ul>
            {[...new Set(state.issues.map((issue) => issue.message))].map((message) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        )}
      </div>
    );
  if (state.state === "done")
    return (
      <p role="status" className="form-done">
        {state.message}
      </p>
    );
  return null;
}
