/** Loans that have not left yet, from a slip to a sealed crate. */
import { drawnDunmarra } from "#seed/scenario/drawn-names.ts";
import {
  accepted,
  byVan,
  donorOfficerAgrees,
  recuses,
  type ScenarioLoan,
  showing,
  teaching,
} from "#seed/scenario/loan-words.ts";

export const loansAtHome: ScenarioLoan[] = [
  {
    key: "slip",
    venue: "tarnmoor skills",
    lecturer: "tarnmoor lecturer",
    signer: null,
    asked: teaching({ title: "Skills days for the second year", starts: 150, ends: 235 }),
    specimens: ["AN 2010.0014", "AN 2022.0013"],
    story: { opened: -3 },
  },
  {
    key: "barred request",
    venue: "frame hall",
    lecturer: "frame lecturer",
    signer: null,
    asked: showing({
      title: "The Living Frame, winter season",
      starts: 125,
      ends: 300,
      paidAdmission: true,
      displayStyle: "artistic",
      pictures: ["online", "press"],
      coverEuros: 60_000,
      note: "We would like the standing body as the centre of the hall.",
    }),
    specimens: ["AN 2017.0001", "AN 2020.0062", "AN 1911.0012"],
    story: { opened: -9, submitted: -6 },
  },
  {
    key: "plain request",
    venue: "kestrel teaching",
    lecturer: "kestrel lecturer",
    signer: "kestrel registrar",
    asked: teaching({ title: "Lower limb, spring course", starts: 100, ends: 190, coverEuros: 32_000 }),
    specimens: ["AN 2018.0071", "AN 2017.0044"],
    story: { opened: -7, submitted: -4 },
  },
  {
    key: "half barred request",
    venue: "selwyn hall",
    lecturer: "selwyn lecturer",
    signer: "selwyn registrar",
    asked: teaching({
      title: "Trunk and limbs, summer term",
      starts: 132,
      ends: 224,
      pictures: ["internal", "online"],
      coverEuros: 60_000,
      note: "Five specimens for one course; a substitute would do for any of them.",
    }),
    specimens: ["AN 2019.0117", "AN 2020.0078", "AN 2021.0007", "AN 2012.0008", "AN 2021.0090"],
    story: {
      opened: -12,
      submitted: -2,
      setAside: [
        {
          day: -1,
          by: "donor officer",
          specimens: ["AN 2020.0078"],
          rule: "G12",
          fact: "consent.disposition-due",
          office: "donor officer",
          grounds:
            "The family would rather have the return in the autumn, after this course, than in the summer; the day was moved with them.",
          evidence: "Letter of the family, register of consents, file 66, sheet 9",
        },
      ],
    },
  },
  {
    key: "accepted",
    venue: "selwyn hall",
    lecturer: "selwyn lecturer",
    signer: "selwyn registrar",
    asked: teaching({
      title: "Head and neck practicals",
      teachingUse: "viewing",
      starts: 75,
      ends: 168,
      pictures: ["internal"],
      coverEuros: 20_000,
    }),
    specimens: ["AN 2013.0021", "AN 2018.0110", "AN 2022.0013"],
    story: {
      opened: -46,
      submitted: -40,
      // The larynx was still out, and the neck shows it too.
      substituted: {
        day: -37,
        by: "registrar",
        specimen: "AN 2013.0021",
        standIn: "AN 2016.0055",
        submittedAgain: -36,
      },
      decided: [
        recuses(
          -30,
          "collection manager",
          "Gives a guest lecture in this course each year and leaves the decision to the curator.",
        ),
        donorOfficerAgrees(
          -28,
          "Nothing in either consent speaks against teaching by viewing in Great Britain.",
        ),
        {
          ...accepted(
            -24,
            "Neck and hemisphere fit the course and are in good order after the last look; the orbit stays for a course in the house.",
            "The loose sternocleidomastoid is put on by the lecturer only.",
          ),
          specimens: ["AN 2016.0055", "AN 2018.0110"],
        },
      ],
    },
  },
  {
    key: "agreed",
    venue: "kestrel teaching",
    lecturer: "kestrel lecturer",
    signer: "kestrel registrar",
    asked: teaching({ title: "Abdomen, spring course", starts: 45, ends: 132, coverEuros: 20_000 }),
    specimens: ["AN 2018.0029", "AN 2021.0019"],
    story: {
      opened: -82,
      submitted: -75,
      decided: [
        donorOfficerAgrees(-62, "Both consents cover handling in teaching; the pictures were not asked for."),
        accepted(
          -58,
          "The school has returned every loan on time; the hinge of the stomach was mended in time.",
        ),
      ],
      drawnUp: -40,
      terms: { languages: ["en", "fr"], parameters: { recallDays: 45 } },
      signedByLender: -38,
      signedByBorrower: -35,
      drawnByBorrower: drawnDunmarra,
      amended: {
        day: -34,
        terms: { parameters: { recallDays: 45, groupMost: 16, checkHours: 48 } },
        signedByLender: -33,
        signedByBorrower: -32,
      },
      covered: { day: -30, insurer: "Tarrowgate Mutual", policy: "TG 77-40418", from: 10, until: 170 },
    },
  },
  {
    key: "packed",
    venue: "norrvassa quiet",
    lecturer: "norrvassa lecturer",
    signer: "norrvassa registrar",
    asked: showing({
      title: "Air and water: an exhibition on organs",
      starts: 6,
      ends: 112,
      coverEuros: 25_000,
    }),
    specimens: ["AN 2017.0012", "AN 2015.0081"],
    story: {
      opened: -70,
      submitted: -62,
      decided: [
        donorOfficerAgrees(-50, "Free public display is granted by both donors, and admission is free."),
        accepted(
          -46,
          "The quiet room keeps its climate; the board for children is a good idea.",
          "No flash.",
        ),
      ],
      drawnUp: -34,
      signedByLender: -33,
      signedByBorrower: -28,
      covered: { day: -21, insurer: "Skumring Insurance", policy: "SK-2093-881", from: -15, until: 150 },
      out: byVan(-14, 3, 5),
      cratesPlanned: -12,
      checkedOut: {
        day: -5,
        by: "conservator",
        looks: {
          "AN 2017.0012":
            "Hairline of the right lung measured before packing: seven millimetres as in the summer.",
          "AN 2015.0081": "Fourth holder carries the ureter well; board flat; packed lying.",
        },
      },
      sealed: -1,
    },
  },
];
