/** Histological slides. */
import { gone, parts, type ScenarioSpecimen, see, size, specimen, step } from "#seed/scenario/shape.ts";

export const slideSpecimens: ScenarioSpecimen[] = [
  specimen(
    "AN 2012.0201",
    "Cervical spinal cord, six slides",
    "Medulla spinalis cervicalis, sectiones",
    {
      kind: "histological slide",
      preparation: "slide",
      side: "both",
      use: "handling",
      sex: "female",
      ageBand: "60–69",
      size: size(76, 26, 2),
      massKg: 0.03,
      partsAtRisk: "Cover slips",
      light: "sensitive",
      preparedOn: "2012-10-19",
      acquiredOn: "2012-11-05",
      publishable: true,
      note: "Stained for myelin; levels C3 to C8.",
      components: parts("6 slides", "slide box"),
    },
    {
      cost: { euros: 240, basis: "preparation cost", day: -400 },
      place: "H-SLIDE",
      donors: ["beech"],
      shows: [
        ...see(
          "in section",
          "unpaired",
          "cervical-part-of-spinal-cord grey-matter-of-spinal-cord white-matter-of-spinal-cord central-canal-of-spinal-cord anterior-median-fissure-of-spinal-cord",
        ),
        ...see(
          "in section",
          "both",
          "anterior-horn-of-spinal-cord posterior-horn-of-spinal-cord gracile-fasciculus cuneate-fasciculus lateral-funiculus-of-spinal-cord spinothalamic-tract",
        ),
      ],
      steps: [
        step("fixation", "2012-05-07", "2012-06-18"),
        step("sectioning", "2012-09-03", "2012-09-05", "Sections of 20 µm"),
        step("mounting", "2012-10-15", "2012-10-19"),
      ],
    },
  ),
  specimen(
    "AN 2007.0150",
    "Eyeball with optic nerve, slide",
    "Bulbus oculi, sectio horizontalis",
    {
      kind: "histological slide",
      preparation: "slide",
      side: "left",
      use: "handling",
      sex: "male",
      ageBand: "40–49",
      size: size(76, 38, 2),
      massKg: 0.008,
      light: "sensitive",
      preparedOn: "2007-06-01",
      acquiredOn: "2007-07-02",
      components: parts("1 slide"),
    },
    {
      cost: { euros: 120, basis: "preparation cost", day: -620 },
      place: "H-SLIDE",
      donors: ["rush"],
      shows: [
        ...see(
          "in section",
          "left",
          "cornea sclera choroid retina lens-of-eye iris ciliary-body optic-disc optic-nerve anterior-chamber-of-eyeball",
        ),
        ...gone("removed", "left", "vitreous-body", "Shrunk away in embedding"),
      ],
      steps: [
        step("fixation", "2006-11-20", "2007-01-15"),
        step("sectioning", "2007-03-12", "2007-03-12", "Sections of 8 µm"),
        step("mounting", "2007-05-29", "2007-06-01"),
      ],
    },
  ),
  specimen(
    "AN 1995.0088",
    "Kidney, cortex and medulla, three slides",
    "Ren, cortex et medulla",
    {
      kind: "histological slide",
      preparation: "slide",
      side: "right",
      use: "handling",
      size: size(76, 26, 2),
      massKg: 0.016,
      light: "sensitive",
      acquiredOn: "1995-02-13",
      formerNumbers: [{ number: "N 12-14", kind: "department", markedOn: "diamond mark on the glass" }],
      components: parts("3 slides"),
    },
    {
      cost: { euros: 90, basis: "preparation cost", day: -840 },
      place: "H-SLIDE",
      donors: ["furze"],
      shows: see(
        "in section",
        "right",
        "renal-cortex renal-medulla renal-papillae renal-columns fibrous-capsule-of-kidney minor-renal-calices",
      ),
      steps: [step("mounting", null, "1995-02-03")],
    },
  ),
];
