/** Hip, thigh, knee, leg and foot. */
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

export const lowerLimbSpecimens: ScenarioSpecimen[] = [
  specimen(
    "AN 2018.0071",
    "Left lower limb, nerves and vessels from groin to sole",
    "Membrum inferius sinistrum",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "left",
      use: "handling",
      sex: "male",
      ageBand: "70–79",
      pose: "straight, foot at a right angle",
      size: size(960, 230, 260),
      massKg: 9.8,
      mountedSize: size(1_020, 360, 420),
      mountedMassKg: 14.5,
      partsAtRisk: "Saphenous nerve at the knee; toes",
      preparedOn: "2018-09-14",
      acquiredOn: "2018-10-01",
      publishable: true,
      components: parts("stand", "knee cradle"),
    },
    {
      cost: { euros: 24_500, basis: "preparation cost", day: -330 },
      place: "H-DRY.3",
      donors: ["cedar"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `femoral-triangle femoral-nerve femoral-artery femoral-vein profunda-femoris-artery
          medial-circumflex-femoral-artery lateral-circumflex-femoral-artery saphenous-nerve great-saphenous-vein
          adductor-canal sartorius rectus-femoris vastus-medialis adductor-longus gracilis obturator-nerve
          sciatic-nerve tibial-nerve common-fibular-nerve popliteal-artery posterior-tibial-artery deep-fibular-nerve
          superficial-fibular-nerve dorsalis-pedis-artery`,
        ),
        ...see(
          "partly exposed",
          "left",
          "anterior-tibial-artery fibular-artery soleus gastrocnemius plantar-aponeurosis medial-plantar-nerve semimembranosus",
        ),
        variant(
          "fully exposed",
          "left",
          "lateral-cutaneous-nerve-of-thigh",
          "Passes through the inguinal ligament",
        ),
        ...gone("removed", "left", "tensor-fasciae-latae", "To open the lateral circumflex artery"),
      ],
      steps: [
        step("fixation", "2016-11-14", "2017-05-08"),
        step("dissection", "2017-05-15", "2018-01-19"),
        step("dehydration", "2018-01-22", "2018-03-16"),
        step("impregnation", "2018-03-19", "2018-05-18"),
        step("positioning", "2018-05-21", "2018-06-01"),
        step("curing", "2018-06-04", "2018-09-14"),
      ],
    },
  ),
  specimen(
    "AN 2020.0015",
    "Right knee joint, opened, with menisci and cruciate ligaments",
    "Articulatio genus dextra",
    {
      kind: "organ",
      preparation: "silicone-impregnated",
      side: "right",
      use: "handling",
      sex: "female",
      ageBand: "60–69",
      pose: "bent to 70 degrees",
      size: size(260, 160, 170),
      massKg: 1.6,
      mountedSize: size(280, 200, 260),
      mountedMassKg: 2.5,
      partsAtRisk: "Lateral meniscus, anterior horn",
      preparedOn: "2020-03-06",
      acquiredOn: "2020-03-23",
      publishable: true,
      components: parts("patella with tendon", "base plate"),
    },
    {
      cost: { euros: 5_900, basis: "preparation cost", day: -190 },
      place: "H-DRY.3",
      donors: ["alder"],
      shows: [
        ...see(
          "fully exposed",
          "right",
          `knee-joint anterior-cruciate-ligament posterior-cruciate-ligament medial-meniscus lateral-meniscus
          transverse-ligament-of-knee tibial-collateral-ligament fibular-collateral-ligament patella
          patellar-ligament medial-condyle-of-femur lateral-condyle-of-femur infrapatellar-fat-pad
          posterior-meniscofemoral-ligament popliteus`,
        ),
        ...see(
          "partly exposed",
          "right",
          "suprapatellar-bursa tendon-of-quadriceps-femoris head-of-fibula pes-anserinus",
        ),
        ...gone("absent", "right", "fabella", "Looked for, not there"),
      ],
      steps: [
        step("fixation", "2018-10-15", "2019-03-04"),
        step("dissection", "2019-03-11", "2019-07-12"),
        step("impregnation", "2019-10-07", "2019-11-15"),
        step("curing", "2019-11-18", "2020-03-06"),
      ],
    },
  ),
  specimen(
    "AN 2017.0044",
    "Left foot, sole in four layers",
    "Pes sinister, planta",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "left",
      use: "handling",
      sex: "male",
      ageBand: "60–69",
      size: size(260, 110, 120),
      massKg: 1.15,
      mountedSize: size(290, 160, 170),
      mountedMassKg: 1.9,
      partsAtRisk: "Hinged flaps of the first and second layer",
      preparedOn: "2017-11-24",
      acquiredOn: "2017-12-11",
      components: parts("acrylic stand"),
    },
    {
      cost: { euros: 5_100, basis: "preparation cost", day: -450 },
      place: "H-DRY.3",
      donors: ["spruce"],
      shows: [
        ...see(
          "fully exposed",
          "left",
          `plantar-aponeurosis abductor-hallucis flexor-digitorum-brevis abductor-digiti-minimi-of-foot
          quadratus-plantae lumbricals-of-foot flexor-hallucis-longus flexor-digitorum-longus medial-plantar-nerve
          lateral-plantar-nerve lateral-plantar-artery deep-plantar-arch adductor-hallucis long-plantar-ligament`,
        ),
        ...see(
          "partly exposed",
          "left",
          "plantar-interossei plantar-calcaneonavicular-ligament fibularis-longus tibialis-posterior tarsal-tunnel",
        ),
        variant(
          "fully exposed",
          "left",
          "medial-plantar-artery",
          "Larger than the lateral; feeds the arch alone",
        ),
      ],
      steps: [
        step("fixation", "2016-02-08", "2016-08-01"),
        step("dissection", "2016-08-22", "2017-02-24"),
        step("impregnation", "2017-05-02", "2017-06-16"),
        step("curing", "2017-06-19", "2017-11-24"),
      ],
    },
  ),
  specimen(
    "AN 2015.0027",
    "Right gluteal region and hip joint from behind",
    "Regio glutealis dextra",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "right",
      use: "viewing only",
      sex: "female",
      ageBand: "80–89",
      size: size(380, 300, 210),
      massKg: 5.6,
      mountedSize: size(420, 340, 420),
      mountedMassKg: 8.8,
      partsAtRisk: "Pudendal nerve at the sacrospinous ligament",
      preparedOn: "2015-08-28",
      acquiredOn: "2015-09-21",
      components: parts("stand", "fixed: reflected gluteus maximus"),
    },
    {
      cost: { euros: 11_800, basis: "preparation cost", day: -700 },
      place: "H-DRY.4",
      donors: ["bramble"],
      shows: [
        ...see(
          "fully exposed",
          "right",
          `gluteus-medius piriformis gemellus-superior obturator-internus gemellus-inferior quadratus-femoris
          sciatic-nerve posterior-cutaneous-nerve-of-thigh superior-gluteal-artery inferior-gluteal-artery
          superior-gluteal-nerve inferior-gluteal-nerve pudendal-nerve internal-pudendal-artery sacrotuberous-ligament
          sacrospinous-ligament suprapiriform-foramen infrapiriform-foramen`,
        ),
        remarked("partly exposed", "right", "gluteus-maximus", "Reflected to the side"),
        ...see(
          "partly exposed",
          "right",
          "gluteus-minimus ischiofemoral-ligament greater-trochanter ischial-tuberosity",
        ),
        variant("fully exposed", "right", "common-fibular-nerve", "Leaves the pelvis through the piriformis"),
      ],
      steps: [
        step("fixation", "2014-01-13", "2014-07-07"),
        step("dissection", "2014-08-25", "2015-02-13"),
        step("impregnation", "2015-03-09", "2015-05-01"),
        step("curing", "2015-05-04", "2015-08-28"),
      ],
    },
  ),
  specimen(
    "AN 2021.0038",
    "Right popliteal fossa and calf",
    "Fossa poplitea dextra",
    {
      kind: "body region",
      preparation: "silicone-impregnated",
      side: "right",
      use: "handling",
      sex: "female",
      ageBand: "70–79",
      size: size(430, 150, 150),
      massKg: 2.9,
      mountedSize: size(460, 220, 230),
      mountedMassKg: 4.1,
      partsAtRisk: "Sural nerve along the calf",
      preparedOn: "2021-05-21",
      acquiredOn: "2021-06-07",
      publishable: true,
      components: parts("stand"),
    },
    {
      cost: { euros: 7_400, basis: "preparation cost", day: -240 },
      place: "H-DRY.4",
      donors: ["maple"],
      shows: [
        ...see(
          "fully exposed",
          "right",
          `popliteal-fossa tibial-nerve common-fibular-nerve popliteal-artery popliteal-vein small-saphenous-vein
          medial-sural-cutaneous-nerve sural-nerve medial-head-of-gastrocnemius lateral-head-of-gastrocnemius plantaris
          biceps-femoris semitendinosus semimembranosus sural-arteries`,
        ),
        ...see(
          "partly exposed",
          "right",
          "popliteus soleus superior-medial-genicular-artery oblique-popliteal-ligament",
        ),
        ...see("landmark only", "right", "calcaneal-tendon head-of-fibula"),
        ...gone("removed", "right", "popliteal-fascia", "Taken off with the fat of the fossa"),
      ],
      steps: [
        step("fixation", "2020-10-05", "2021-01-11", "Short fixation, to keep the colour of the veins"),
        step("dissection", "2021-01-18", "2021-02-26"),
        step("impregnation", "2021-03-08", "2021-04-09"),
        step("curing", "2021-04-12", "2021-05-21"),
      ],
    },
  ),
  specimen(
    "AN 1966.0031",
    "Arteries of a right foot, corrosion cast",
    "Arteriae pedis dextri",
    {
      kind: "cast",
      preparation: "corrosion cast",
      side: "right",
      use: "viewing only",
      size: size(250, 100, 110),
      massKg: 0.16,
      mountedSize: size(300, 180, 220),
      mountedMassKg: 0.9,
      partsAtRisk: "Digital arteries of the lesser toes",
      acquiredOn: "1966-03-15",
      formerNumbers: [{ number: "K 31", kind: "department", markedOn: "label of the dome" }],
      components: parts("glass dome", "fixed: plinth"),
      note: "The resin of the time is not recorded; treat as brittle.",
    },
    {
      cost: { euros: 1_400, basis: "cost to replace", day: -800 },
      place: "H-CAST.1",
      donors: ["poplar"],
      shows: [
        ...see(
          "fully exposed",
          "right",
          `dorsalis-pedis-artery arcuate-artery-of-foot dorsal-metatarsal-arteries lateral-tarsal-artery
          medial-plantar-artery lateral-plantar-artery deep-plantar-arch plantar-metatarsal-arteries
          proper-plantar-digital-arteries perforating-branch-of-fibular-artery calcaneal-anastomosis`,
        ),
        ...see("partly exposed", "right", "posterior-tibial-artery anterior-tibial-artery"),
      ],
      steps: [step("casting", null, "1966-01-20"), step("maceration", "1966-01-24", "1966-02-28")],
    },
  ),
  specimen(
    "AN 2018.0140",
    "Sagittal sheet of a right ankle and foot",
    "Pes dexter, sectio sagittalis",
    {
      kind: "sheet",
      preparation: "epoxy sheet",
      side: "right",
      use: "viewing only",
      sex: "female",
      ageBand: "50–59",
      size: size(270, 190, 3),
      massKg: 0.17,
      partsAtRisk: "Lower edge, where the resin is thinnest",
      preparedOn: "2018-06-29",
      acquiredOn: "2018-11-12",
      publishable: true,
    },
    {
      cost: { euros: 1_250, basis: "preparation cost", day: -300 },
      place: "H-SHEET.6",
      donors: ["fern"],
      shows: [
        ...see(
          "in section",
          "right",
          `tibia talus trochlea-of-talus calcaneus navicular-bone medial-cuneiform-bone first-metatarsal-bone ankle-joint
          subtalar-joint talocalcaneonavicular-joint calcaneal-tendon plantar-aponeurosis flexor-digitorum-brevis
          quadratus-plantae long-plantar-ligament flexor-hallucis-longus tarsal-sinus
          interosseous-talocalcaneal-ligament`,
        ),
        ...see("landmark only", "right", "medial-malleolus"),
      ],
      steps: [
        step("freezing", "2018-01-08", "2018-01-22", "At -80 °C"),
        step("sawing", "2018-01-23", "2018-01-23"),
        step("dehydration", "2018-01-24", "2018-03-02"),
        step("impregnation", "2018-03-05", "2018-03-09"),
        step("casting", "2018-03-12", "2018-03-12"),
        step("curing", "2018-03-12", "2018-06-29"),
      ],
    },
  ),
];
