/**
 * Every scope with its four answers, in groups; one row is one question. The
 * answers are one value of the form: names of scopes hold commas, which the form
 * would read as paths.
 */
"use client";

import { type Control, useController } from "react-hook-form";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import styles from "#app/(signed-in)/donors/[code]/consent/new/scope-rows.module.css";
import { answers, type ConsentInput, scopes } from "#lib/provenance/schema.ts";

export function ScopeRows({ control }: { control: Control<ConsentInput> }) {
  const { field } = useController({ control, name: "answers" });
  const given = field.value;
  const setRest = () =>
    field.onChange(
      Object.fromEntries(
        scopes.map((scope) => [scope, given[scope] === "unknown" ? "not asked" : given[scope]]),
      ),
    );
  return (
    <>
      {words.scopeGroups.map(([group, inGroup]) => (
        <fieldset key={group} className={styles.group}>
          <legend>{group}</legend>
          {inGroup.map((scope) => (
            <fieldset key={scope} className={styles.row}>
              <legend>{scope}</legend>
              <div className={styles.answers}>
                {answers.map((answer) => (
                  <label key={answer}>
                    <input
                      type="radio"
                      name={scope}
                      value={answer}
                      checked={given[scope] === answer}
                      onBlur={field.onBlur}
                      onChange={() => field.onChange({ ...given, [scope]: answer })}
                    />{" "}
                    {words.answers[answer]}
                  </label>
                ))}
              </div>
            </fieldset>
          ))}
        </fieldset>
      ))}
      <button type="button" className="outline" onClick={setRest}>
        {words.restNotAsked}
      </button>
    </>
  );
}
