/** Head, neck, larynx, orbit, skull and ear. */
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

export const headSpecimens: ScenarioSpecimen[] = [
  specimen(
    "AN 2019.0098",
    "Right half of head and neck, median section",
    "Caput et collum, sectio mediana",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "right",
      use: "viewing only",
      sex: "female",
      ageBand: "60–69",
      size: size(330, 230, 120),
      massKg: 3.7,
      mountedSize: size(360, 280, 420),
      mountedMassKg: 6.1,
      partsAtRisk: "Nasal conchae; lip margin",
      preparedOn: "2019-08-09",
      acquiredOn: "2019-09-02",
      note: "The face can be recognised in profile. Shown from the cut side only.",
      components: parts("stand with felt bed", "linen veil"),
    },
    {
      cost: { euros: 16_200, basis: "preparation cost", day: -280 },
      place: "H-DRY.5",
      donors: ["hazel"],
      shows: [
        ...see(
          "in section",
          "unpaired",
          `falx-cerebri corpus-callosum septum-pellucidum third-ventricle pituitary-gland sella-turcica pons
          medulla-oblongata cerebellum fourth-ventricle nasal-septum hard-palate soft-palate tongue epiglottis
          thyroid-cartilage cricoid-cartilage hyoid-bone nasopharynx oropharynx laryngopharynx cervical-vertebrae
          spinal-cord`,
        ),
        ...see(
          "fully exposed",
          "right",
          "inferior-nasal-concha middle-nasal-concha frontal-sinus sphenoidal-sinus",
        ),
        ...see(
          "partly exposed",
          "right",
          "pharyngeal-opening-of-auditory-tube vocal-fold vestibular-fold palatine-tonsil",
        ),
        ...see("landmark only", "right", "auricle-of-ear"),
        remarked("in section", "unpaired", "uvula-of-palate", "Cut a little to the left of the middle"),
      ],
      steps: [
        step("fixation", "2017-11-20", "2018-05-14"),
        step("sawing", "2018-05-22", "2018-05-22", "Frozen, by band saw"),
        step("dissection", "2018-06-04", "2018-10-26"),
        step("impregnation", "2019-01-14", "2019-03-15"),
        step("curing", "2019-03-18", "2019-08-09"),
      ],
    },
  ),
  specimen(
    "AN 2020.0062",
    "Left side of the face, facial nerve and parotid region",
    "Regio parotideomasseterica sinistra",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "left",
      use: "viewing only",
      sex: "male",
      ageBand: "70–79",
      size: size(210, 190, 90),
      massKg: 1.9,
      mountedSize: size(240, 230, 280),
      mountedMassKg: 3,
      partsAtRisk: "Temporal branches of the facial nerve",
      preparedOn: "2020-07-17",
      acquiredOn: "2020-08-10",
      components: parts("stand"),
    },
    {
      cost: { euros: 12_700, basis: "preparation cost", day: -310 },
      place: "H-DRY.5",
      donors: ["sage"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `facial-nerve temporal-branches-of-facial-nerve zygomatic-branches-of-facial-nerve
          buccal-branches-of-facial-nerve marginal-mandibular-branch-of-facial-nerve cervical-branch-of-facial-nerve
          parotid-duct masseter buccinator facial-artery facial-vein superficial-temporal-artery
          auriculotemporal-nerve transverse-facial-artery zygomaticus-major orbicularis-oculi great-auricular-nerve`,
        ),
        remarked("partly exposed", "left", "parotid-gland", "Superficial part taken away down to the nerve"),
        ...see(
          "partly exposed",
          "left",
          "platysma sternocleidomastoid retromandibular-vein depressor-anguli-oris",
        ),
        variant("fully exposed", "left", "accessory-parotid-gland", "Two small lobules above the duct"),
      ],
      steps: [
        step("fixation", "2018-09-10", "2019-02-25"),
        step("dissection", "2019-03-04", "2019-11-29", "Under the loupe"),
        step("impregnation", "2020-01-13", "2020-02-21"),
        step("curing", "2020-02-24", "2020-07-17"),
      ],
    },
  ),
  specimen(
    "AN 2016.0055",
    "Neck, triangles and carotid sheaths",
    "Collum, trigona colli",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "both",
      use: "handling",
      sex: "male",
      ageBand: "60–69",
      pose: "head end tilted back",
      size: size(240, 220, 150),
      massKg: 3.2,
      mountedSize: size(280, 260, 300),
      mountedMassKg: 4.8,
      partsAtRisk: "Ansa cervicalis on both sides",
      preparedOn: "2016-10-07",
      acquiredOn: "2016-11-14",
      publishable: true,
      components: parts("stand", "right sternocleidomastoid"),
    },
    {
      cost: { euros: 13_400, basis: "preparation cost", day: -540 },
      place: "H-DRY.5",
      donors: ["holly"],
      shows: [
        ...see(
          "fully exposed",
          "both",
          `common-carotid-artery internal-jugular-vein vagus-nerve external-carotid-artery internal-carotid-artery
          superior-thyroid-artery hypoglossal-nerve ansa-cervicalis sternohyoid omohyoid thyrohyoid phrenic-nerve
          anterior-scalene accessory-nerve digastric submandibular-gland`,
        ),
        ...see(
          "fully exposed",
          "unpaired",
          "thyroid-gland isthmus-of-thyroid-gland trachea median-cricothyroid-ligament",
        ),
        ...see("partly exposed", "left", "sternocleidomastoid external-jugular-vein"),
        variant("fully exposed", "unpaired", "pyramidal-lobe-of-thyroid-gland", "Reaches the hyoid bone"),
        variant("fully exposed", "right", "carotid-bifurcation", "High, at the hyoid bone"),
        ...see(
          "partly exposed",
          "both",
          "recurrent-laryngeal-nerve inferior-thyroid-artery cervical-sympathetic-trunk",
        ),
      ],
      steps: [
        step("fixation", "2015-03-09", "2015-09-07"),
        step("dissection", "2015-09-21", "2016-03-18"),
        step("impregnation", "2016-04-11", "2016-05-27"),
        step("curing", "2016-05-30", "2016-10-07"),
      ],
    },
  ),
  specimen(
    "AN 2013.0021",
    "Larynx opened from behind",
    "Larynx a dorso apertus",
    {
      kind: "organ",
      preparation: "silicone-impregnated",
      side: "median",
      use: "handling",
      sex: "male",
      ageBand: "50–59",
      size: size(120, 70, 60),
      massKg: 0.13,
      mountedSize: size(120, 110, 160),
      mountedMassKg: 0.32,
      partsAtRisk: "Superior horns of the thyroid cartilage",
      preparedOn: "2013-02-15",
      acquiredOn: "2013-03-04",
      publishable: true,
      components: parts("rod on a plate"),
    },
    {
      cost: { euros: 2_100, basis: "preparation cost", day: -390 },
      place: "H-DRY.6",
      donors: ["yew"],
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          `larynx epiglottis laryngeal-inlet laryngeal-vestibule rima-glottidis infraglottic-cavity transverse-arytenoid
          lamina-of-cricoid-cartilage thyroid-cartilage`,
        ),
        ...see(
          "fully exposed",
          "both",
          `vestibular-fold vocal-fold laryngeal-ventricle posterior-cricoarytenoid arytenoid-cartilage corniculate-cartilage
          aryepiglottic-fold piriform-fossa internal-branch-of-superior-laryngeal-nerve inferior-laryngeal-nerve`,
        ),
        ...see("partly exposed", "both", "cricothyroid oblique-arytenoid superior-horn-of-thyroid-cartilage"),
      ],
      steps: [
        step("fixation", "2012-06-11", "2012-09-03"),
        step("dissection", "2012-09-10", "2012-10-19"),
        step("impregnation", "2012-11-05", "2012-11-30"),
        step("curing", "2012-12-03", "2013-02-15"),
      ],
    },
  ),
  specimen(
    "AN 2022.0013",
    "Left orbit, opened from above",
    "Orbita sinistra",
    {
      kind: "organ",
      preparation: "silicone-impregnated",
      side: "left",
      use: "viewing only",
      sex: "female",
      ageBand: "70–79",
      size: size(90, 80, 60),
      massKg: 0.24,
      mountedSize: size(120, 120, 110),
      mountedMassKg: 0.5,
      partsAtRisk: "Trochlear nerve, free over 20 mm",
      preparedOn: "2022-01-14",
      acquiredOn: "2022-02-07",
      publishable: true,
      components: parts("acrylic cover"),
    },
    {
      cost: { euros: 6_800, basis: "preparation cost", day: -150 },
      place: "H-DRY.6",
      donors: ["aspen"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `levator-palpebrae-superioris superior-rectus superior-oblique lateral-rectus frontal-nerve lacrimal-nerve
          trochlear-nerve nasociliary-nerve optic-nerve ophthalmic-artery lacrimal-gland ciliary-ganglion abducent-nerve
          trochlea-of-superior-oblique superior-ophthalmic-vein`,
        ),
        ...see(
          "partly exposed",
          "left",
          "eyeball medial-rectus common-tendinous-ring short-ciliary-nerves anterior-ethmoidal-artery",
        ),
        ...gone("removed", "left", "orbital-fat-body", "Taken away lobule by lobule"),
      ],
      steps: [
        step("fixation", "2020-11-02", "2021-03-15"),
        step("dissection", "2021-03-22", "2021-08-13"),
        step("impregnation", "2021-09-06", "2021-10-01"),
        step("curing", "2021-10-04", "2022-01-14"),
      ],
    },
  ),
  specimen(
    "AN 2017.0080",
    "Tongue, soft palate and pharynx from behind",
    "Lingua et pharynx",
    {
      kind: "organ",
      preparation: "silicone-impregnated",
      side: "median",
      use: "handling",
      sex: "female",
      ageBand: "80–89",
      size: size(170, 110, 80),
      massKg: 0.38,
      mountedSize: size(170, 150, 220),
      mountedMassKg: 0.8,
      partsAtRisk: "Uvula; edge of the epiglottis",
      preparedOn: "2017-07-21",
      acquiredOn: "2017-08-28",
      components: parts("stand"),
    },
    {
      cost: { euros: 3_700, basis: "preparation cost", day: -480 },
      place: "H-DRY.6",
      donors: ["reed"],
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          `tongue dorsum-of-tongue vallate-papillae lingual-tonsil soft-palate uvula-of-palate epiglottis laryngeal-inlet
          terminal-sulcus-of-tongue`,
        ),
        ...see(
          "fully exposed",
          "both",
          "palatine-tonsil palatoglossal-arch palatopharyngeal-arch superior-pharyngeal-constrictor middle-pharyngeal-constrictor inferior-pharyngeal-constrictor stylopharyngeus epiglottic-vallecula",
        ),
        ...see(
          "partly exposed",
          "both",
          "glossopharyngeal-nerve hyoglossus torus-tubarius salpingopharyngeus",
        ),
        ...gone("removed", "unpaired", "pharyngeal-raphe", "The pharynx is opened along it"),
      ],
      steps: [
        step("fixation", "2016-05-02", "2016-09-26"),
        step("dissection", "2016-10-10", "2017-01-27"),
        step("impregnation", "2017-02-20", "2017-03-24"),
        step("curing", "2017-03-27", "2017-07-21"),
      ],
    },
  ),
];
