/**
 * The fields of a working, drawn from its schema. The form is sent by address and
 * needs no script: a list grows by a button that sends the form, and the shapes of
 * a variant show themselves by the word chosen.
 */
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import type { FormIssue } from "#app/_parts/form-state.ts";
import { fractionToPercent } from "#app/_parts/typed-number.ts";
import {
  type Field,
  fieldText,
  type ListField,
  type NamedField,
  type NumberField,
  type VariantField,
} from "#app/_parts/working-fields.ts";
import { workingsWords as words } from "#app/_words/en/workings.ts";
import { formatNumber } from "#app/_words/format.ts";
import { wordsOfValue } from "#app/_words/names.ts";
import styles from "#app/(signed-in)/workings/[id]/working-form.module.css";

/** What every field of the form needs to know: what was refused, and which list is to grow. */
type Asked = { issues: readonly FormIssue[]; more: string | undefined };
type FieldProps = {
  field: Field;
  /** The name in the address, and the path in the input; they part inside a variant. */
  name: string;
  path: string;
  value: unknown;
  asked: Asked;
};

const rowsAdded = 3;
const join = (prefix: string, name: string | number) => (prefix === "" ? String(name) : `${prefix}.${name}`);
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const widest = 1e6;

/** The bounds of a number in words, in the unit it is typed in; none where they say nothing to a person. */
function rangeOf(field: NumberField): string | undefined {
  const shown = (bound: number) => formatNumber(field.percent ? fractionToPercent(bound) : bound);
  const { minimum, maximum, aboveMinimum, unit } = field;
  const low = minimum === null ? null : shown(minimum);
  const high = maximum === null || maximum >= widest ? null : shown(maximum);
  if (low !== null && high !== null)
    return aboveMinimum ? words.above(low, high, unit) : words.between(low, high, unit);
  if (low !== null) return aboveMinimum ? words.aboveOnly(low, unit) : words.atLeast(low, unit);
  return high === null ? undefined : words.atMost(high, unit);
}

function refusalOf({ field, path, value, asked }: FieldProps): string | undefined {
  const issue = asked.issues.find((each) => each.path === path);
  if (!issue) return undefined;
  if (value === undefined) return words.needed;
  if (field.kind !== "number") return issue.message;
  if (typeof value !== "number") return words.notANumber;
  const range = rangeOf(field);
  return range === undefined ? issue.message : words.outside(range);
}

function labelOf(field: Field): string {
  const unit = field.kind === "number" || field.kind === "choice" ? field.unit : "";
  return unit === "" ? field.title : `${field.title}, ${unit}`;
}

function Leaf(props: FieldProps) {
  const { field, name, value } = props;
  const common = { label: labelOf(field), name, error: refusalOf(props) };
  if (field.kind === "choice" || field.kind === "boolean") {
    const options =
      field.kind === "choice"
        ? field.options.map((option) => [String(option), wordsOfValue(String(option))] as const)
        : ([
            ["yes", words.yes],
            ["no", words.no],
          ] as const);
    const sure = field.start !== null;
    return (
      <SelectField
        {...common}
        options={options}
        defaultValue={fieldText(field, value)}
        {...(sure ? {} : { empty: words.notStated })}
      />
    );
  }
  const hint = [
    field.kind === "number" ? rangeOf(field) : undefined,
    field.required || (field.kind === "number" && field.start !== null) ? undefined : words.optional,
  ].filter((part) => part !== undefined);
  return (
    <TextField
      {...common}
      hint={hint.join("; ") || undefined}
      defaultValue={fieldText(field, value)}
      autoComplete="off"
      {...(field.kind === "number" ? { inputMode: field.whole ? "numeric" : "decimal" } : {})}
    />
  );
}

function Rows({ field, name, path, value, asked }: FieldProps & { field: ListField }) {
  const stated = Array.isArray(value) ? value : [];
  const blank = asked.more === name ? rowsAdded : 0;
  const shown = Math.min(Math.max(stated.length + blank, field.least), field.most);
  const issue = asked.issues.find((each) => each.path === path)?.message;
  return (
    <fieldset className={styles.inner}>
      <legend>{field.title}</legend>
      {shown === 0 && <p className="quiet small">{words.noRows}</p>}
      {Array.from({ length: shown }, (_, index) => (
        <AnyField
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the address
          key={index}
          field={{ ...field.item, title: words.row(field.title, index + 1) }}
          name={join(name, index)}
          path={join(path, index)}
          value={stated[index]}
          asked={asked}
        />
      ))}
      {issue && <p className="outcome-bar">{issue}</p>}
      {shown < field.most && (
        <button type="submit" name="more" value={name} className="outline">
          {words.moreRows}
        </button>
      )}
    </fieldset>
  );
}

function Variant({ field, name, path, value, asked }: FieldProps & { field: VariantField }) {
  const stated = isRecord(value) ? value : {};
  const chosen = typeof stated[field.key] === "string" ? String(stated[field.key]) : "";
  const issue = asked.issues.find((each) => each.path === path || each.path === join(path, field.key));
  return (
    <fieldset className={`${styles.inner} ${styles.variant}`}>
      <legend>{field.title}</legend>
      <SelectField
        label={words.kindOf}
        name={join(name, field.key)}
        options={field.cases.map((each) => [each.value, wordsOfValue(each.value)] as const)}
        defaultValue={chosen}
        empty={words.notStated}
        error={issue && (chosen === "" ? words.needed : issue.message)}
      />
      {field.cases.map((each) => (
        <div key={each.value} className={styles.shape}>
          <Fields
            fields={each.fields}
            name={join(name, each.value)}
            path={path}
            value={each.value === chosen ? stated : {}}
            asked={asked}
          />
        </div>
      ))}
    </fieldset>
  );
}

function AnyField(props: FieldProps) {
  const { field, name, path, value, asked } = props;
  if (field.kind === "list") return <Rows {...props} field={field} />;
  if (field.kind === "variant") return <Variant {...props} field={field} />;
  if (field.kind !== "group") return <Leaf {...props} />;
  return (
    <fieldset className={styles.inner}>
      <legend>
        {field.title}
        {!field.required && <span className="quiet small"> ({words.optional})</span>}
      </legend>
      <Fields fields={field.fields} name={name} path={path} value={value} asked={asked} />
    </fieldset>
  );
}

/** Single figures side by side, groups and lists below each other, all in the order of the schema. */
function Fields({
  fields,
  name,
  path,
  value,
  asked,
}: {
  fields: readonly NamedField[];
  name: string;
  path: string;
  value: unknown;
  asked: Asked;
}) {
  const isLeaf = ({ field }: NamedField) => !["group", "list", "variant"].includes(field.kind);
  const stated = isRecord(value) ? value : {};
  const draw = (named: NamedField) => (
    <AnyField
      key={named.name}
      field={named.field}
      name={join(name, named.name)}
      path={join(path, named.name)}
      value={stated[named.name]}
      asked={asked}
    />
  );
  return (
    <>
      <FieldGrid>{fields.filter(isLeaf).map(draw)}</FieldGrid>
      {fields.filter((named) => !isLeaf(named)).map(draw)}
    </>
  );
}

export function WorkingForm({
  id,
  title,
  fields,
  input,
  issues,
  more,
}: {
  id: string;
  title: string;
  fields: readonly NamedField[];
  input: Readonly<Record<string, unknown>>;
  issues: readonly FormIssue[];
  more: string | undefined;
}) {
  const page = `/workings/${id}`;
  return (
    <form action={`${page}#result`} aria-label={title}>
      {/* The first button is the one that the Enter key presses. */}
      <button type="submit" className="visually-hidden" tabIndex={-1} aria-hidden="true">
        {words.compute}
      </button>
      <Fields fields={fields} name="" path="" value={input} asked={{ issues, more }} />
      <FormActions>
        <button type="submit">{words.compute}</button>
        <a href={page}>{words.reset}</a>
      </FormActions>
    </form>
  );
}
