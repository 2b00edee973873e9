/** Hearts. */

import { borderPapers } from "#seed/scenario/permits.ts";
import {
  gone,
  parts,
  type ScenarioSpecimen,
  see,
  size,
  specimen,
  step,
  variant,
} from "#seed/scenario/shape.ts";

export const heartSpecimens: ScenarioSpecimen[] = [
  specimen(
    "AN 2019.0055",
    "Heart with all four chambers opened",
    "Cor apertum",
    {
      kind: "organ",
      preparation: "silicone-impregnated",
      side: "not applicable",
      use: "handling",
      sex: "female",
      ageBand: "50–59",
      size: size(140, 110, 90),
      massKg: 0.34,
      mountedSize: size(150, 150, 230),
      mountedMassKg: 0.72,
      partsAtRisk: "Tendinous cords of the mitral valve",
      preparedOn: "2019-04-12",
      acquiredOn: "2019-04-29",
      publishable: true,
      components: parts("rod on a plate"),
    },
    {
      cost: { euros: 3_900, basis: "preparation cost", day: -230 },
      place: "H-DRY.8",
      donors: ["fern"],
      permits: borderPapers("19/0055", "SE", 500),
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          `right-atrium fossa-ovalis-of-heart crista-terminalis pectinate-muscles tricuspid-valve right-ventricle
          septomarginal-trabecula pulmonary-valve left-atrium mitral-valve left-ventricle
          anterior-papillary-muscle-of-left-ventricle posterior-papillary-muscle-of-left-ventricle
          tendinous-cords-of-heart aortic-valve interventricular-septum membranous-part-of-interventricular-septum
          opening-of-coronary-sinus aortic-sinuses`,
        ),
        ...see(
          "partly exposed",
          "unpaired",
          "right-coronary-artery left-coronary-artery pulmonary-trunk ascending-aorta",
        ),
        variant("fully exposed", "unpaired", "foramen-ovale-of-heart", "Open to a probe of 2 mm"),
        ...gone("removed", "unpaired", "fibrous-pericardium", "Cut at the great vessels"),
      ],
      steps: [
        step("fixation", "2018-01-15", "2018-07-09", "Filled and hung, to keep the shape of the chambers"),
        step("dissection", "2018-08-13", "2018-10-05"),
        step("impregnation", "2018-11-12", "2018-12-14"),
        step("curing", "2019-01-07", "2019-04-12"),
      ],
    },
  ),
  specimen(
    "AN 2021.0064",
    "Heart, coronary arteries and veins injected",
    "Cor, vasa coronaria",
    {
      kind: "organ",
      preparation: "silicone-impregnated",
      side: "not applicable",
      use: "handling",
      sex: "male",
      ageBand: "60–69",
      size: size(150, 120, 95),
      massKg: 0.41,
      mountedSize: size(160, 160, 240),
      mountedMassKg: 0.8,
      partsAtRisk: "Small cardiac vein; auricles",
      light: "sensitive",
      preparedOn: "2021-07-30",
      acquiredOn: "2021-08-16",
      publishable: true,
      components: parts("rod on a plate"),
    },
    {
      cost: { euros: 4_600, basis: "preparation cost", day: -220 },
      place: "H-DRY.8",
      donors: ["osier"],
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          `right-coronary-artery conus-branch-of-right-coronary-artery right-marginal-branch posterior-interventricular-branch
          left-coronary-artery anterior-interventricular-branch lateral-branch-of-anterior-interventricular-artery
          circumflex-branch-of-left-coronary-artery left-marginal-branch coronary-sinus great-cardiac-vein
          middle-cardiac-vein small-cardiac-vein posterior-vein-of-left-ventricle coronary-sulcus
          anterior-interventricular-sulcus`,
        ),
        variant("fully exposed", "unpaired", "sinu-atrial-nodal-branch", "From the circumflex branch"),
        ...see(
          "partly exposed",
          "unpaired",
          "right-auricle-of-heart left-auricle-of-heart arch-of-aorta superior-vena-cava",
        ),
      ],
      steps: [
        step("fixation", "2020-06-15", "2020-10-19"),
        step("injection", "2020-10-20", "2020-10-21", "Latex, red and blue"),
        step("dissection", "2020-11-02", "2021-01-29"),
        step("impregnation", "2021-02-15", "2021-03-19"),
        step("curing", "2021-03-22", "2021-07-30"),
      ],
    },
  ),
  specimen(
    "AN 1958.0019",
    "Heart in fluid, window in the left ventricle",
    "Cor, ventriculus sinister",
    {
      kind: "fluid-preserved specimen",
      preparation: "fluid-preserved",
      fluidName: "ethanol",
      fluidPercent: 75,
      side: "not applicable",
      use: "viewing only",
      size: size(130, 110, 90),
      massKg: 0.36,
      mountedSize: size(180, 140, 260),
      mountedMassKg: 5.6,
      massWeighed: false,
      partsAtRisk: "Lid, sealed with pitch",
      acquiredOn: "1958-02-03",
      formerNumbers: [
        { number: "C 19", kind: "jar", markedOn: "enamel on the lid" },
        { number: "58-19", kind: "former accession", markedOn: "linen tag inside the jar" },
      ],
      components: parts("jar with glass lid", "fixed: linen thread"),
      hazards: [{ substance: "alcohol", percent: 75, note: "About 2.4 litres" }],
    },
    {
      cost: { euros: 1_100, basis: "cost to replace", day: -860 },
      place: "H-WET.1",
      donors: ["ivy"],
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          "left-ventricle mitral-valve myocardium left-auricle-of-heart apex-of-heart trabeculae-carneae",
        ),
        ...see(
          "partly exposed",
          "unpaired",
          "ascending-aorta aortic-valve tendinous-cords-of-heart right-auricle-of-heart",
        ),
      ],
      steps: [
        step("filling", null, "1958-01-27"),
        step("filling", "2004-05-10", "2004-05-10", "Fluid changed, lid sealed again"),
      ],
    },
  ),
];
