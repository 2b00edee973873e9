/** What a form answers: the sentence of a refusal and those of its fields, each once, or that it is done. */
import type { FormState } from "#app/_parts/form-state.ts";

export function FormAnswer({ state }: { state: FormState }) {
  if (state.state === "refused") {
    const ofFields = new Set(state.issues.map((issue) => issue.message));
    ofFields.delete(state.message);
    return (
      <div role="alert" className="form-refused">
        <p>{state.message}</p>
        {ofFields.size > 0 && (
          <ul>
            {[...ofFields].map((message) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        )}
      </div>
    );
  }
  if (state.state === "done")
    return (
      <p role="status" className="form-done">
        {state.message}
      </p>
    );
  return null;
}
