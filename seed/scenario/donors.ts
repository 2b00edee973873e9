/**
 * All donors of the scenario under keys that stand only in the seed: the program
 * gives each a random pseudonym. Their consents differ so that every rule meets a
 * case: full, teaching only, handling refused, paid display refused, bound to
 * territories, near its end, withdrawn, not known, none at all.
 */
import type { ScenarioDonor } from "#seed/scenario/consent-forms.ts";
import { earlierDonors } from "#seed/scenario/donors-earlier.ts";
import { recentDonors } from "#seed/scenario/donors-recent.ts";
import type { Day } from "#seed/scenario/shape.ts";

export const donors: Record<string, ScenarioDonor> = { ...recentDonors, ...earlierDonors };

/** Why sealed records were opened, and by whom. */
export const sealedLooks: {
  day: Day;
  by: "donor officer" | "curator" | "inspector";
  donor: string;
  reason: string;
}[] = [
  {
    day: -310,
    by: "curator",
    donor: "larch",
    reason: "The family asked for the date of return; to compare with the form.",
  },
  {
    day: -76,
    by: "donor officer",
    donor: "fir",
    reason: "A letter withdrawing the consent came in; to make sure that it is from the next of kin.",
  },
  {
    day: -33,
    by: "inspector",
    donor: "thorn",
    reason: "Yearly inspection: sample of three donors, form against record.",
  },
  {
    day: -33,
    by: "inspector",
    donor: "alder",
    reason: "Yearly inspection: sample of three donors, form against record.",
  },
];
