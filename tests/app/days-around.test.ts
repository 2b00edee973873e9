/** The catalogue keeps the same days free as a request takes. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { loanDaysAround } from "#app/(signed-in)/specimens/days-around.ts";
import { defaultPractice } from "#lib/people/practice.ts";
import { daysAroundOf } from "#lib/specimens/days-around.ts";
import { specimenKinds } from "#lib/specimens/schema.ts";
import { bufferDaysOf, buffersFor } from "#lib/suitability/period.ts";

const own = bufferDaysOf(defaultPractice);

const massKg = fc.option(fc.constantFrom(0.1, 3, 24.9, 25, 25.1, 80), { nil: null });
const travels = fc.record({ kind: fc.constantFrom(...specimenKinds), massKg, mountedMassKg: massKg });

test("for each specimen alone, the days around are those of a request for it", () => {
  fc.assert(
    fc.property(travels, (specimen) => {
      const { daysBefore, daysAfter } = buffersFor([specimen], own);
      expect(daysAroundOf(specimen, loanDaysAround(own))).toEqual({ before: daysBefore, after: daysAfter });
    }),
  );
});

test("beside others on the slip, they are those of a request for all of them", () => {
  fc.assert(
    fc.property(travels, fc.array(travels, { minLength: 1, maxLength: 3 }), (specimen, others) => {
      const { daysBefore, daysAfter } = buffersFor([specimen, ...others], own);
      expect(daysAroundOf(specimen, loanDaysAround(own, buffersFor(others, own)))).toEqual({
        before: daysBefore,
        after: daysAfter,
      });
    }),
  );
});
