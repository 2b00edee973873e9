/** Organs and walls of the pelvis and the groin. */
import {
  gone,
  parts,
  remarked,
  type ScenarioSpecimen,
  see,
  size,
  specimen,
  step,
  variant,
} from "#seed/scenario/shape.ts";

export const pelvisSpecimens: ScenarioSpecimen[] = [
  specimen(
    "AN 2019.0117",
    "Female pelvis, left half, median section",
    "Pelvis feminina, sectio mediana",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "left",
      use: "handling",
      sex: "female",
      ageBand: "50–59",
      size: size(300, 280, 170),
      massKg: 5.1,
      mountedSize: size(330, 320, 400),
      mountedMassKg: 7.6,
      partsAtRisk: "Fimbriae of the uterine tube",
      preparedOn: "2019-11-15",
      acquiredOn: "2019-12-09",
      publishable: true,
      components: parts("stand"),
    },
    {
      cost: { euros: 13_900, basis: "preparation cost", day: -270 },
      place: "H-DRY.6",
      donors: ["fern"],
      shows: [
        ...see(
          "in section",
          "unpaired",
          `uterus fundus-of-uterus cervix-of-uterus vagina urinary-bladder female-urethra rectum anal-canal pubic-symphysis
          recto-uterine-pouch vesico-uterine-pouch sacrum external-anal-sphincter perineal-body`,
        ),
        ...see(
          "fully exposed",
          "left",
          `ovary uterine-tube fimbriae-of-uterine-tube round-ligament-of-uterus ureter internal-iliac-artery
          uterine-artery obturator-nerve obturator-artery sacral-plexus levator-ani`,
        ),
        ...see(
          "partly exposed",
          "left",
          "suspensory-ligament-of-ovary broad-ligament-of-uterus external-iliac-vein hypogastric-nerve",
        ),
        ...gone("removed", "unpaired", "mesorectum", "To open the pelvic plexus"),
      ],
      steps: [
        step("fixation", "2018-01-29", "2018-07-23"),
        step("sawing", "2018-07-30", "2018-07-30"),
        step("dissection", "2018-08-20", "2019-03-01"),
        step("impregnation", "2019-03-25", "2019-05-24"),
        step("curing", "2019-05-27", "2019-11-15"),
      ],
    },
  ),
  specimen(
    "AN 2020.0078",
    "Male pelvis, right half, median section",
    "Pelvis masculina, sectio mediana",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "right",
      use: "handling",
      sex: "male",
      ageBand: "70–79",
      size: size(310, 290, 180),
      massKg: 5.9,
      mountedSize: size(340, 330, 410),
      mountedMassKg: 8.5,
      partsAtRisk: "Branches of the pudendal nerve in the perineum",
      preparedOn: "2020-09-18",
      acquiredOn: "2020-10-12",
      publishable: true,
      components: parts("stand"),
    },
    {
      cost: { euros: 14_100, basis: "preparation cost", day: -265 },
      place: "H-DRY.6",
      donors: ["larch"],
      shows: [
        ...see(
          "in section",
          "unpaired",
          `urinary-bladder prostate prostatic-urethra spongy-urethra rectum rectal-ampulla anal-canal rectovesical-pouch
          pubic-symphysis bulb-of-penis perineal-body sacrum external-anal-sphincter`,
        ),
        ...see(
          "fully exposed",
          "right",
          `ductus-deferens seminal-gland ureter internal-iliac-artery superior-vesical-arteries pudendal-nerve
          internal-pudendal-artery ischio-anal-fossa levator-ani inferior-hypogastric-plexus testis epididymis
          spermatic-cord`,
        ),
        variant(
          "in section",
          "unpaired",
          "middle-lobe-of-prostate",
          "Enlarged, lifts the neck of the bladder",
        ),
        ...see("partly exposed", "right", "sacral-plexus obturator-internus pudendal-canal"),
      ],
      steps: [
        step("fixation", "2019-02-11", "2019-08-05"),
        step("sawing", "2019-08-12", "2019-08-12"),
        step("dissection", "2019-08-26", "2020-01-31"),
        step("impregnation", "2020-02-17", "2020-04-17"),
        step("curing", "2020-04-20", "2020-09-18"),
      ],
    },
  ),
  specimen(
    "AN 2022.0030",
    "Left inguinal region in layers",
    "Regio inguinalis sinistra",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "left",
      use: "handling",
      sex: "male",
      ageBand: "60–69",
      size: size(230, 200, 70),
      massKg: 1.1,
      mountedSize: size(260, 230, 150),
      mountedMassKg: 1.8,
      partsAtRisk: "Flap of the external oblique aponeurosis",
      preparedOn: "2022-04-08",
      acquiredOn: "2022-05-02",
      publishable: true,
      components: parts("backboard"),
    },
    {
      cost: { euros: 5_500, basis: "preparation cost", day: -140 },
      place: "H-DRY.6",
      donors: ["osier"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `external-oblique-aponeurosis superficial-inguinal-ring internal-oblique transversus-abdominis inguinal-canal
          deep-inguinal-ring inguinal-ligament spermatic-cord ilio-inguinal-nerve iliohypogastric-nerve
          inferior-epigastric-artery inguinal-triangle cremaster`,
        ),
        ...see(
          "partly exposed",
          "left",
          "rectus-abdominis femoral-vein femoral-artery lacunar-ligament genital-branch-of-genitofemoral-nerve",
        ),
        remarked("partly exposed", "left", "inguinal-falx", "Held forward by a pin"),
      ],
      steps: [
        step("fixation", "2020-06-08", "2021-05-31"),
        step("dissection", "2021-06-07", "2021-09-24"),
        step("impregnation", "2021-10-11", "2021-11-26"),
        step("curing", "2021-11-29", "2022-04-08"),
      ],
    },
  ),
  specimen(
    "AN 2016.0072",
    "Uterus with tubes and ovaries, from behind",
    "Uterus et adnexa",
    {
      kind: "fluid-preserved specimen",
      preparation: "fluid-preserved",
      fluidName: "glycerol",
      fluidPercent: 40,
      side: "both",
      use: "viewing only",
      sex: "female",
      ageBand: "40–49",
      size: size(150, 90, 50),
      massKg: 0.16,
      mountedSize: size(200, 120, 240),
      mountedMassKg: 4.4,
      partsAtRisk: "Fimbriae on both sides",
      preparedOn: "2016-08-19",
      acquiredOn: "2016-09-12",
      components: parts("acrylic jar"),
    },
    {
      cost: { euros: 1_500, basis: "preparation cost", day: -580 },
      place: "H-WET.2",
      donors: ["fir"],
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          "uterus fundus-of-uterus body-of-uterus cervix-of-uterus recto-uterine-pouch",
        ),
        ...see(
          "fully exposed",
          "both",
          "ovary ligament-of-ovary ampulla-of-uterine-tube isthmus-of-uterine-tube fimbriae-of-uterine-tube mesosalpinx uterosacral-ligament broad-ligament-of-uterus",
        ),
        ...see("partly exposed", "both", "uterine-artery suspensory-ligament-of-ovary"),
      ],
      steps: [
        step("fixation", "2015-11-30", "2016-03-21"),
        step("dissection", "2016-04-04", "2016-05-13"),
        step("filling", "2016-08-15", "2016-08-19"),
      ],
    },
  ),
];
