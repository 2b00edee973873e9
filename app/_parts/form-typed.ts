/**
 * What somebody typed into a page before its script ran. The framework leaves it
 * in the fields and does not know of it: the first drawing afterwards would put
 * back what the server sent. It is therefore noted while the page wakes up, and
 * typed again when the page listens.
 */

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;
export type Typed = { field: Field; value: string } | { field: HTMLInputElement; checked: boolean };

const isTick = (field: Field): field is HTMLInputElement =>
  field instanceof HTMLInputElement && (field.type === "checkbox" || field.type === "radio");
const isUntyped = (field: Field) =>
  field instanceof HTMLInputElement && ["hidden", "file"].includes(field.type);
const asLines = (text: string) => text.replaceAll("\r\n", "\n");

/** What the server sent for a field. */
function sentValue(field: Field): string {
  if (!(field instanceof HTMLSelectElement)) return asLines(field.defaultValue);
  const options = [...field.options];
  return (options.find((option) => option.defaultSelected) ?? options[0])?.value ?? "";
}

/**
 * Every field of the page that no longer holds what the server sent.
 * @param page undefined where a page is only being written, on the server
 * @param earlier what was noted before; it counts where a field has been put back since
 */
export function noteTyped(page: Document | undefined, earlier: readonly Typed[] = []): Typed[] {
  const now = page ? typedInto(page) : [];
  return [...earlier.filter(({ field }) => !now.some((one) => one.field === field)), ...now];
}

function typedInto(page: Document): Typed[] {
  return [...page.querySelectorAll<Field>("input, textarea, select")].flatMap((field): Typed[] => {
    if (isUntyped(field)) return [];
    if (!isTick(field))
      return asLines(field.value) === sentValue(field) ? [] : [{ field, value: field.value }];
    const isChosen = field.checked !== field.defaultChecked && (field.checked || field.type === "checkbox");
    return isChosen ? [{ field, checked: field.checked }] : [];
  });
}

/** A row that was drawn anew has its field under the same name. */
function fieldNow<Kind extends Field>(field: Kind): Kind | null {
  if (field.isConnected) return field;
  const same = [...document.getElementsByName(field.name)].find(
    (each) => each instanceof HTMLElement && each.tagName === field.tagName,
  );
  return (same as Kind | undefined) ?? null;
}

/** Sets a value past the framework's own note of it, so that the event after it counts as a change. */
function setValue(field: Field, value: string): void {
  const kind =
    field instanceof HTMLSelectElement
      ? HTMLSelectElement
      : field instanceof HTMLTextAreaElement
        ? HTMLTextAreaElement
        : HTMLInputElement;
  Object.getOwnPropertyDescriptor(kind.prototype, "value")?.set?.call(field, value);
}

function typeText(field: Field, value: string): void {
  const caret = field instanceof HTMLSelectElement ? null : field.selectionStart;
  field.value = sentValue(field);
  setValue(field, value);
  if (!(field instanceof HTMLSelectElement) && caret !== null && document.activeElement === field)
    field.setSelectionRange(caret, caret);
  field.dispatchEvent(new Event(field instanceof HTMLSelectElement ? "change" : "input", { bubbles: true }));
}

/** Types everything again, in the order of the page. */
export function typeAgain(typed: readonly Typed[]): void {
  for (const one of typed) {
    if ("checked" in one) {
      const box = fieldNow(one.field);
      if (!box) continue;
      box.checked = !one.checked;
      box.click();
    } else {
      const field = fieldNow(one.field);
      if (field) typeText(field, one.value);
    }
  }
}
