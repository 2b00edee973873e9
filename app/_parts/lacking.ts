/**
 * What a form still lacks, found before it is sent and said in the program's own
 * words, with the name of the field, instead of in a bubble of the browser. Only
 * what is empty or cannot be read is found here; everything else the server says.
 */
import type { FormIssue, FormState } from "#app/_parts/form-state.ts";
import { fieldWords } from "#app/_words/en/fields.ts";

type Control = Pick<HTMLInputElement, "name" | "validity" | "labels">;

/** The words of its label, without those of hints. */
function nameOf(control: Control): string {
  const label = control.labels?.[0]?.textContent?.trim();
  return label ? `${label}: ` : "";
}

/** @returns an issue for each control that lacks something, in their order */
export function lackingIn(controls: readonly Control[]): FormIssue[] {
  return controls.flatMap((control) => {
    const { valueMissing, badInput } = control.validity;
    if (!valueMissing && !badInput) return [];
    const message = `${nameOf(control)}${badInput ? fieldWords.notWhole : fieldWords.fillIn}`;
    return [{ path: control.name, message }];
  });
}

const isControl = (element: Element): element is HTMLInputElement =>
  element instanceof HTMLInputElement ||
  element instanceof HTMLSelectElement ||
  element instanceof HTMLTextAreaElement;

/** The first of the fields that an answer refuses, in their order. */
export function firstRefused<Field extends { name: string }>(
  fields: readonly Field[],
  answer: FormState,
): Field | null {
  if (answer.state !== "refused") return null;
  const paths = new Set(answer.issues.map(({ path }) => path));
  return fields.find(({ name }) => name !== "" && paths.has(name)) ?? null;
}

/** The fields of a form into which something is typed or chosen. */
export const controlsOf = (form: HTMLFormElement) => [...form.elements].filter(isControl);

/** Puts the focus into a field, also where it is folded away. */
export function reachField(field: HTMLElement): void {
  for (let fold = field.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  field.focus();
}

/** What is to be answered instead of sending the form, with the first field in hand; null where nothing lacks. */
export function answerToLacking(form: HTMLFormElement): FormState | null {
  const controls = controlsOf(form);
  const issues = lackingIn(controls);
  if (issues.length === 0) return null;
  const first = controls.find(({ name }) => name === issues[0]?.path);
  if (first) reachField(first);
  return { state: "refused", kind: "invalid", message: fieldWords.lookAgain, issues };
}
