/**
 * The fields of a working, drawn from its schema. The form is sent by address and
 * needs no script: a list grows by a button that sends the form, and the shapes of
 * a variant show themselves by the word chosen.
 */
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import type { FormIssue } from "#app/_parts/form-state.ts";
import {
  type Field,
  fieldText,
  type GroupField,
  type ListField,
  type NamedField,
  type VariantField,
} from "#app/_parts/working-fields.ts";
import { workingsWords as words } from "#app/_words/en/workings.ts";
import { wordsOfValue } from "#app/_words/names.ts";
import { hintOf, labelOf, optionsOf, refusalOf } from "#app/(signed-in)/workings/[id]/field-words.ts";
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
const isLeaf = (field: Field) => !["group", "list", "variant"].includes(field.kind);

function Leaf({ field, name, path, value, asked }: FieldProps) {
  const common = { label: labelOf(field), name, error: refusalOf(field, path, value, asked.issues) };
  if (field.kind === "choice" || field.kind === "boolean")
    return (
      <SelectField
        {...common}
        options={optionsOf(field)}
        defaultValue={fieldText(field, value)}
        {...(field.start === null ? { empty: words.notStated } : {})}
      />
    );
  return (
    <TextField
      {...common}
      hint={hintOf(field)}
      defaultValue={fieldText(field, value)}
      autoComplete="off"
      {...(field.kind === "number" ? { inputMode: field.whole ? "numeric" : "decimal" } : {})}
    />
  );
}

/** One figure inside a table: its label is the column's together with the row's number. */
function Cell({ row, field, name, path, value, asked }: FieldProps & { row: string }) {
  const error = refusalOf(field, path, value, asked.issues);
  const common = {
    name,
    "aria-label": `${labelOf(field)}, ${row}`,
    defaultValue: fieldText(field, value),
    ...(error ? { "aria-invalid": true, "aria-describedby": `${name}-error` } : {}),
  };
  return (
    <>
      {field.kind === "choice" || field.kind === "boolean" ? (
        <select {...common}>
          {field.start === null && <option value="">{words.notStated}</option>}
          {optionsOf(field).map(([option, word]) => (
            <option key={option} value={option}>
              {word}
            </option>
          ))}
        </select>
      ) : (
        <input type="text" autoComplete="off" {...common} />
      )}
      {error && (
        <span className="outcome-bar small" id={`${name}-error`}>
          {error}
        </span>
      )}
    </>
  );
}

type RowsProps = {
  title: string;
  name: string;
  path: string;
  rows: readonly unknown[];
  asked: Asked;
};

/** Rows of single figures, one line each under the words of their columns. */
function TableOfRows({ item, title, name, path, rows, asked }: RowsProps & { item: GroupField }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the page is scrolled with the keyboard
    <section className="scroll-x" tabIndex={0} aria-label={title}>
      <table className={styles.rows}>
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">{title}</span>
            </th>
            {item.fields.map((column) => (
              <th key={column.name} scope="col">
                {labelOf(column.field)}
                {hintOf(column.field) && <span className={styles.bounds}>{hintOf(column.field)}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the address
            <tr key={index}>
              <th scope="row">{index + 1}</th>
              {item.fields.map((column) => (
                <td key={column.name}>
                  <Cell
                    row={words.row(title, index + 1)}
                    field={column.field}
                    name={join(join(name, index), column.name)}
                    path={join(join(path, index), column.name)}
                    value={isRecord(row) ? row[column.name] : undefined}
                    asked={asked}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function List({ field, name, path, value, asked }: FieldProps & { field: ListField }) {
  const stated: unknown[] = Array.isArray(value) ? value : [];
  const count = Math.min(
    Math.max(stated.length + (asked.more === name ? rowsAdded : 0), field.least),
    field.most,
  );
  const rows = Array.from({ length: count }, (_, index) => stated[index]);
  const { item, title } = field;
  const issue = asked.issues.find((each) => each.path === path)?.message;
  return (
    <fieldset className={styles.inner}>
      <legend>{title}</legend>
      {count === 0 && <p className="quiet small">{words.noRows}</p>}
      {count > 0 && item.kind === "group" && item.fields.every((column) => isLeaf(column.field)) ? (
        <TableOfRows item={item} title={title} name={name} path={path} rows={rows} asked={asked} />
      ) : (
        rows.map((row, index) => (
          <AnyField
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the address
            key={index}
            field={{ ...item, title: words.row(title, index + 1) }}
            name={join(name, index)}
            path={join(path, index)}
            value={row}
            asked={asked}
          />
        ))
      )}
      {issue && <p className="outcome-bar">{issue}</p>}
      {count < field.most && (
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

/** A group that may be missing is folded while nothing in it was filled. */
function Group({ field, name, path, value, asked }: FieldProps & { field: GroupField }) {
  const fields = <Fields fields={field.fields} name={name} path={path} value={value} asked={asked} />;
  if (field.required)
    return (
      <fieldset className={styles.inner}>
        <legend>{field.title}</legend>
        {fields}
      </fieldset>
    );
  const grows = asked.more === name || asked.more?.startsWith(`${name}.`);
  return (
    <details className={styles.folded} open={value !== undefined || grows}>
      <summary>
        {field.title} <span className="quiet small">({words.optional})</span>
      </summary>
      <fieldset className={styles.inner}>
        <legend className="visually-hidden">{field.title}</legend>
        {fields}
      </fieldset>
    </details>
  );
}

function AnyField(props: FieldProps) {
  const { field } = props;
  if (field.kind === "list") return <List {...props} field={field} />;
  if (field.kind === "variant") return <Variant {...props} field={field} />;
  if (field.kind === "group") return <Group {...props} field={field} />;
  return <Leaf {...props} />;
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
      <FieldGrid>{fields.filter(({ field }) => isLeaf(field)).map(draw)}</FieldGrid>
      {fields.filter(({ field }) => !isLeaf(field)).map(draw)}
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
    <form className="prints" action={`${page}#result`} aria-label={title}>
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
