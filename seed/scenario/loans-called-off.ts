/** A loan that was called off after its quotation was accepted: what it costs follows from the days that were left. */
import { accepted, donorOfficerAgrees, type ScenarioLoan, teaching } from "#seed/scenario/loan-words.ts";

export const loansCalledOff: ScenarioLoan[] = [
  {
    key: "called off",
    venue: "kestrel teaching",
    lecturer: "kestrel lecturer",
    signer: "kestrel registrar",
    asked: teaching({ title: "Lower limb, summer course", starts: -120, ends: -60, coverEuros: 32_000 }),
    specimens: ["AN 2018.0071", "AN 2017.0044"],
    story: {
      opened: -215,
      submitted: -212,
      decided: [
        donorOfficerAgrees(-205, "Both consents cover handling in teaching."),
        accepted(-200, "Both are fit for the course; the dates are free."),
      ],
      withdrawn: -170,
    },
  },
];
