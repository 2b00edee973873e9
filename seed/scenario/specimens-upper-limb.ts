/** Shoulder, arm, forearm and hand. */

import { borderPapers } from "#seed/scenario/permits.ts";
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

export const upperLimbSpecimens: ScenarioSpecimen[] = [
  specimen(
    "AN 2019.0142",
    "Right upper limb, neurovascular dissection",
    "Membrum superius dextrum",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "right",
      use: "handling",
      sex: "female",
      ageBand: "60–69",
      pose: "palm forward, elbow slightly bent",
      size: size(720, 210, 160),
      massKg: 3.1,
      mountedSize: size(760, 300, 260),
      mountedMassKg: 5.4,
      partsAtRisk: "Free nerve ends at the axilla; fingertips",
      preparedOn: "2019-03-22",
      acquiredOn: "2019-05-06",
      publishable: true,
      note: "The most asked-for limb of the collection; alternates with AN 2022.0051.",
      components: parts("stand with two pins", "fixed: nylon loops at the axilla"),
      formerNumbers: [{ number: "D 88", kind: "department", markedOn: "tag at the wrist" }],
      hazards: [],
    },
    {
      cost: { euros: 18_400, basis: "preparation cost", day: -260 },
      place: "H-DRY.1",
      donors: ["alder"],
      permits: borderPapers("19/0142", "IE", 400),
      shows: [
        ...see(
          "fully exposed",
          "right",
          `brachial-plexus lateral-cord-of-brachial-plexus medial-cord-of-brachial-plexus
          posterior-cord-of-brachial-plexus musculocutaneous-nerve ulnar-nerve radial-nerve axillary-nerve
          medial-cutaneous-nerve-of-forearm axillary-artery brachial-artery profunda-brachii-artery radial-artery
          ulnar-artery biceps-brachii brachialis coracobrachialis pronator-teres flexor-carpi-radialis
          superficial-palmar-arch common-palmar-digital-arteries`,
        ),
        variant("fully exposed", "right", "median-nerve", "The two roots join low, at the middle of the arm"),
        ...see(
          "partly exposed",
          "right",
          `triceps-brachii deltoid axillary-vein basilic-vein deep-branch-of-radial-nerve anterior-interosseous-nerve
          flexor-digitorum-superficialis`,
        ),
        remarked(
          "partly exposed",
          "right",
          "flexor-retinaculum-of-hand",
          "A window is cut over the median nerve",
        ),
        ...see("landmark only", "right", "medial-epicondyle-of-humerus coracoid-process pisiform-bone"),
        ...gone("removed", "right", "cephalic-vein", "Taken away with the skin"),
      ],
      steps: [
        step("fixation", "2018-02-05", "2018-06-11", "By the femoral artery"),
        step("dissection", "2018-06-18", "2018-11-02", "Axilla first, hand last"),
        step("dehydration", "2018-11-05", "2018-12-17", "Acetone at -25 °C, four changes"),
        step("impregnation", "2018-12-18", "2019-01-25"),
        step("positioning", "2019-01-28", "2019-02-08", "Cords spread on threads"),
        step("curing", "2019-02-11", "2019-03-22"),
      ],
    },
  ),
  specimen(
    "AN 2021.0007",
    "Left forearm and hand, superficial dissection",
    "Antebrachium et manus sinistra",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "left",
      use: "viewing only",
      sex: "male",
      ageBand: "80–89",
      pose: "back of the hand up, fingers straight",
      size: size(470, 130, 90),
      massKg: 1.35,
      mountedSize: size(500, 200, 170),
      mountedMassKg: 2.2,
      partsAtRisk: "Cutaneous nerves over the wrist; nail of the little finger",
      preparedOn: "2020-12-11",
      acquiredOn: "2021-01-18",
      components: parts("acrylic cradle"),
    },
    {
      cost: { euros: 9_600, basis: "preparation cost", day: -300 },
      place: "H-DRY.1",
      donors: ["ash"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `dorsal-venous-network-of-hand superficial-branch-of-radial-nerve dorsal-branch-of-ulnar-nerve
          extensor-retinaculum-of-hand extensor-digitorum intertendinous-connections-of-extensor-digitorum
          extensor-pollicis-longus extensor-pollicis-brevis abductor-pollicis-longus extensor-carpi-ulnaris
          extensor-carpi-radialis-longus first-dorsal-interosseous-of-hand radial-foveola brachioradialis`,
        ),
        ...see(
          "partly exposed",
          "left",
          "cephalic-vein basilic-vein posterior-cutaneous-nerve-of-forearm extensor-carpi-radialis-brevis radial-artery",
        ),
        ...gone("absent", "left", "palmaris-longus", "No tendon at the wrist"),
        ...see("landmark only", "left", "styloid-process-of-ulna dorsal-tubercle-of-radius"),
      ],
      steps: [
        step("fixation", "2019-09-09", "2020-01-13"),
        step("injection", "2020-01-14", "2020-01-15", "Blue gelatine in the veins"),
        step("dissection", "2020-01-20", "2020-05-29"),
        step("dehydration", "2020-08-03", "2020-09-04"),
        step("impregnation", "2020-09-07", "2020-10-09"),
        step("curing", "2020-10-19", "2020-12-11"),
      ],
    },
  ),
  specimen(
    "AN 2022.0051",
    "Left upper limb with shoulder girdle and brachial plexus",
    "Membrum superius sinistrum cum cingulo pectorali",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "left",
      use: "handling",
      sex: "female",
      ageBand: "70–79",
      pose: "arm away from the trunk by a hand's breadth",
      size: size(780, 260, 190),
      massKg: 4.2,
      mountedSize: size(830, 340, 300),
      mountedMassKg: 6.9,
      partsAtRisk: "Trunks of the plexus above the clavicle",
      preparedOn: "2022-02-25",
      acquiredOn: "2022-03-14",
      publishable: true,
      components: parts("stand", "clavicle"),
    },
    {
      cost: { euros: 21_000, basis: "preparation cost", day: -200 },
      place: "H-DRY.1",
      donors: ["aspen"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `roots-of-brachial-plexus superior-trunk-of-brachial-plexus middle-trunk-of-brachial-plexus
          inferior-trunk-of-brachial-plexus suprascapular-nerve long-thoracic-nerve thoracodorsal-nerve
          musculocutaneous-nerve median-nerve ulnar-nerve radial-nerve axillary-nerve axillary-artery subscapular-artery
          circumflex-scapular-artery brachial-artery pectoralis-minor serratus-anterior subscapularis teres-major
          latissimus-dorsi biceps-brachii quadrangular-space triangular-space-of-axilla`,
        ),
        ...see(
          "partly exposed",
          "left",
          `clavicle scapula deltoid pectoralis-major triceps-brachii radial-artery ulnar-artery palmar-aponeurosis
          posterior-circumflex-humeral-artery`,
        ),
        variant(
          "fully exposed",
          "left",
          "c5-root-of-brachial-plexus",
          "Receives a branch from the fourth cervical nerve",
        ),
      ],
      steps: [
        step("fixation", "2020-03-02", "2020-09-14"),
        step("dissection", "2021-01-11", "2021-06-25"),
        step("dehydration", "2021-08-02", "2021-09-17"),
        step("impregnation", "2021-09-20", "2021-11-05"),
        step("positioning", "2021-11-08", "2021-11-19"),
        step("curing", "2021-11-22", "2022-02-25"),
      ],
    },
  ),
  specimen(
    "AN 2018.0033",
    "Right shoulder joint, capsule opened from in front",
    "Articulatio humeri dextra",
    {
      kind: "organ",
      preparation: "silicone-impregnated",
      side: "right",
      use: "handling",
      sex: "male",
      ageBand: "70–79",
      size: size(240, 180, 140),
      massKg: 0.92,
      mountedSize: size(260, 220, 260),
      mountedMassKg: 1.7,
      partsAtRisk: "Tendon of the long head of biceps",
      preparedOn: "2018-05-04",
      acquiredOn: "2018-05-28",
      publishable: true,
      components: parts("base plate"),
    },
    {
      cost: { euros: 5_200, basis: "preparation cost", day: -420 },
      place: "H-DRY.2",
      donors: ["oak"],
      shows: [
        ...see(
          "fully exposed",
          "right",
          `shoulder-joint glenoid-labrum glenoid-cavity tendon-of-long-head-of-biceps-brachii head-of-humerus
          coraco-acromial-ligament coracohumeral-ligament subscapularis supraspinatus subacromial-bursa
          transverse-humeral-ligament`,
        ),
        ...see(
          "partly exposed",
          "right",
          "infraspinatus teres-minor acromion coracoid-process coracoclavicular-ligament acromioclavicular-joint",
        ),
        remarked("fully exposed", "right", "capsule-of-shoulder-joint", "Opened by a flap that folds back"),
      ],
      steps: [
        step("fixation", "2016-04-18", "2017-06-26"),
        step("dissection", "2017-09-04", "2017-12-15"),
        step("impregnation", "2018-01-15", "2018-02-23"),
        step("curing", "2018-02-26", "2018-05-04"),
      ],
    },
  ),
  specimen(
    "AN 2016.0018",
    "Right hand, palm in layers",
    "Manus dextra, palma",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "right",
      use: "handling",
      sex: "female",
      ageBand: "80–89",
      pose: "flat, thumb away from the palm",
      size: size(210, 120, 60),
      massKg: 0.44,
      mountedSize: size(240, 150, 110),
      mountedMassKg: 0.85,
      partsAtRisk: "Flap of the palmar aponeurosis; proper digital nerves",
      preparedOn: "2016-06-17",
      acquiredOn: "2016-07-04",
      publishable: true,
      components: parts("acrylic base", "4 coloured pins"),
    },
    {
      cost: { euros: 4_300, basis: "preparation cost", day: -500 },
      place: "H-DRY.2",
      donors: ["rowan"],
      permits: borderPapers("16/0018", "IE", 400),
      shows: [
        ...see(
          "fully exposed",
          "right",
          `palmar-aponeurosis superficial-palmar-arch common-palmar-digital-nerves-of-median-nerve
          proper-palmar-digital-nerves-of-median-nerve recurrent-branch-of-median-nerve superficial-branch-of-ulnar-nerve
          abductor-pollicis-brevis flexor-pollicis-brevis abductor-digiti-minimi-of-hand lumbricals-of-hand
          flexor-digitorum-superficialis anular-pulleys-of-digits-of-hand ulnar-canal`,
        ),
        ...see(
          "partly exposed",
          "right",
          `deep-palmar-arch deep-branch-of-ulnar-nerve adductor-pollicis flexor-retinaculum-of-hand
          flexor-digitorum-profundus opponens-pollicis`,
        ),
        ...gone("removed", "right", "palmaris-brevis", "Cut to reach the ulnar canal"),
      ],
      steps: [
        step("fixation", "2015-01-19", "2015-06-01"),
        step("dissection", "2015-08-10", "2016-01-22", "Each layer on its own hinge of skin"),
        step("impregnation", "2016-02-15", "2016-03-18"),
        step("curing", "2016-03-21", "2016-06-17"),
      ],
    },
  ),
  specimen(
    "AN 1978.0012",
    "Ligaments of the right wrist and hand",
    "Ligamenta carpi et manus dextrae",
    {
      kind: "skeleton or bone",
      preparation: "dry",
      side: "right",
      use: "viewing only",
      sex: "unknown",
      size: size(230, 110, 60),
      massKg: 0.21,
      mountedSize: size(260, 160, 90),
      mountedMassKg: 0.62,
      massWeighed: false,
      partsAtRisk: "Dried ligaments at the fifth finger",
      acquiredOn: "1978-10-02",
      formerNumbers: [
        { number: "II 4 c", kind: "former accession", markedOn: "ink on the third metacarpal" },
        { number: "612", kind: "department", markedOn: "brass tag of the board" },
      ],
      components: parts("fixed: wooden board"),
    },
    {
      cost: { euros: 900, basis: "cost to replace", day: -900 },
      place: "H-CAST.3",
      donors: ["elder"],
      shows: [
        ...see(
          "fully exposed",
          "right",
          `scaphoid-bone lunate-bone triquetral-bone pisiform-bone trapezium-bone trapezoid-bone capitate-bone
          hamate-bone metacarpal-bones palmar-radiocarpal-ligament radiate-carpal-ligament pisohamate-ligament
          pisometacarpal-ligament deep-transverse-metacarpal-ligament wrist-joint midcarpal-joint`,
        ),
        ...see("partly exposed", "right", "radius ulna articular-disc-of-distal-radio-ulnar-joint"),
        ...gone("absent", "right", "distal-phalanx-of-hand", "Of the fifth finger; lost before 1978"),
      ],
      steps: [step("dissection", null, null, "Before 1978; no record"), step("mounting", null, "1978-10-02")],
    },
  ),
  specimen(
    "AN 2014.0009",
    "Bones of a left hand, articulated on wire",
    "Ossa manus sinistrae",
    {
      kind: "skeleton or bone",
      preparation: "mounted skeleton",
      side: "left",
      use: "handling",
      sex: "male",
      ageBand: "40–49",
      size: size(220, 110, 45),
      massKg: 0.18,
      mountedSize: size(240, 140, 80),
      mountedMassKg: 0.4,
      partsAtRisk: "Wire at the pisiform bone",
      preparedOn: "2014-01-31",
      acquiredOn: "2014-02-10",
      publishable: true,
      components: parts("27 fixed bones", "box with foam bed"),
    },
    {
      cost: { euros: 480, basis: "cost to replace", day: -610 },
      place: "H-CAST.3",
      donors: ["laurel"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `bones-of-hand scaphoid-bone tubercle-of-scaphoid lunate-bone triquetral-bone pisiform-bone trapezium-bone
          tubercle-of-trapezium trapezoid-bone capitate-bone hamate-bone hook-of-hamate first-metacarpal-bone
          third-metacarpal-bone fifth-metacarpal-bone proximal-phalanx-of-hand middle-phalanx-of-hand
          distal-phalanx-of-hand carpal-groove`,
        ),
        ...gone("absent", "left", "sesamoid-bones-of-hand", "Not kept in maceration"),
      ],
      steps: [
        step("maceration", "2013-08-19", "2013-10-11", "Warm water with enzyme"),
        step("defatting", "2013-10-14", "2013-12-06"),
        step("mounting", "2014-01-13", "2014-01-31"),
      ],
    },
  ),
];
