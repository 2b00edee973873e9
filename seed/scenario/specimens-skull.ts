/** Skulls, jaws, the ear and a sheet of a head. */
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

export const skullSpecimens: ScenarioSpecimen[] = [
  specimen(
    "AN 1934.0007",
    "Skull, bones mounted apart",
    "Cranium, ossa disiuncta",
    {
      kind: "skeleton or bone",
      preparation: "mounted skeleton",
      side: "both",
      use: "viewing only",
      size: size(300, 260, 280),
      massKg: 1.1,
      mountedSize: size(340, 340, 460),
      mountedMassKg: 3.4,
      partsAtRisk: "Lacrimal bones; ethmoid bone on its own wire",
      acquiredOn: "1934-06-12",
      note: "Entered from a closed private school with nothing on its origin.",
      formerNumbers: [
        { number: "X 2", kind: "former accession", markedOn: "inside of the frontal bone, ink" },
        { number: "34/118", kind: "field", markedOn: "paper label, plinth" },
      ],
      components: parts("glass case", "22 fixed bones", "plinth"),
    },
    {
      cost: { euros: 3_000, basis: "cost to replace", day: -950 },
      title: { status: "unknown", ownerName: "", leaveToLend: false, leaveReference: "" },
      place: "H-CAST.4",
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          "frontal-bone occipital-bone sphenoid-bone ethmoid-bone vomer mandible sella-turcica cribriform-plate crista-galli",
        ),
        ...see(
          "fully exposed",
          "both",
          `parietal-bone temporal-bone maxilla zygomatic-bone nasal-bone lacrimal-bone palatine-bone inferior-nasal-concha
          petrous-part-of-temporal-bone pterygoid-process greater-wing-of-sphenoid lesser-wing-of-sphenoid
          mastoid-process`,
        ),
        ...gone("absent", "unpaired", "hyoid-bone", "Not part of the mount"),
      ],
      steps: [step("maceration", null, null, "No record"), step("mounting", null, "1934-05-30")],
    },
  ),
  specimen(
    "AN 1962.0004",
    "Skull of a newborn, fontanelles",
    "Cranium neonati",
    {
      kind: "skeleton or bone",
      preparation: "dry",
      side: "both",
      use: "viewing only",
      ageBand: "0–9",
      size: size(115, 90, 95),
      massKg: 0.07,
      mountedSize: size(160, 160, 180),
      mountedMassKg: 0.6,
      partsAtRisk: "Dried membranes of the fontanelles",
      acquiredOn: "1962-11-05",
      note: "Kept out of public view. Oversight body to be heard before any use outside.",
      components: parts("glass case"),
    },
    {
      place: "H-CAST.4",
      title: { status: "unknown", ownerName: "", leaveToLend: false, leaveReference: "" },
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          "anterior-fontanelle posterior-fontanelle frontal-suture sagittal-suture coronal-suture lambdoid-suture mandible",
        ),
        ...see(
          "fully exposed",
          "both",
          "sphenoidal-fontanelle mastoid-fontanelle parietal-bone parietal-tuber temporal-bone bony-orbit squamous-suture",
        ),
        ...see("partly exposed", "unpaired", "occipital-bone frontal-bone"),
      ],
      steps: [step("maceration", null, null, "No record")],
    },
  ),
  specimen(
    "AN 2011.0016",
    "Right temporal bone, middle and inner ear opened",
    "Os temporale dextrum",
    {
      kind: "skeleton or bone",
      preparation: "dry",
      side: "right",
      use: "viewing only",
      sex: "male",
      ageBand: "60–69",
      size: size(95, 80, 60),
      massKg: 0.08,
      mountedSize: size(130, 130, 120),
      mountedMassKg: 0.4,
      partsAtRisk: "Stapes, held by a drop of resin",
      preparedOn: "2011-04-15",
      acquiredOn: "2011-05-02",
      publishable: true,
      components: parts("box with lens"),
    },
    {
      cost: { euros: 2_600, basis: "preparation cost", day: -660 },
      place: "H-CAST.4",
      donors: ["juniper"],
      shows: [
        ...see(
          "fully exposed",
          "right",
          `tympanic-cavity malleus incus stapes facial-canal mastoid-antrum mastoid-air-cells cochlea
          anterior-semicircular-canal posterior-semicircular-canal lateral-semicircular-canal round-window
          internal-acoustic-meatus carotid-canal tegmen-tympani`,
        ),
        ...see(
          "partly exposed",
          "right",
          "oval-window modiolus-of-cochlea auditory-tube styloid-process-of-temporal-bone",
        ),
        ...gone("removed", "right", "tympanic-membrane", "Taken out to see the ossicles"),
      ],
      steps: [
        step("maceration", "2010-09-13", "2010-10-29"),
        step("dissection", "2010-11-15", "2011-03-11", "Drilled under the microscope"),
        step("mounting", "2011-04-11", "2011-04-15"),
      ],
    },
  ),
  specimen(
    "AN 2019.0160",
    "Transverse sheet of a head at the level of the eyes",
    "Caput, sectio transversalis per bulbos oculorum",
    {
      kind: "sheet",
      preparation: "epoxy sheet",
      side: "both",
      use: "viewing only",
      sex: "male",
      ageBand: "60–69",
      size: size(230, 175, 4),
      massKg: 0.19,
      partsAtRisk: "Left corner, thin over the auricle",
      preparedOn: "2019-09-27",
      acquiredOn: "2019-12-02",
      publishable: true,
    },
    {
      cost: { euros: 1_600, basis: "preparation cost", day: -260 },
      place: "H-SHEET.6",
      donors: ["hawthorn"],
      shows: [
        ...see(
          "in section",
          "both",
          `eyeball lens-of-eye optic-nerve medial-rectus lateral-rectus ethmoidal-cells temporalis temporal-lobe
          cerebellar-hemisphere petrous-part-of-temporal-bone mastoid-air-cells sigmoid-sinus cochlea
          internal-acoustic-meatus nasal-cavity`,
        ),
        ...see(
          "in section",
          "unpaired",
          "pons fourth-ventricle basilar-artery sphenoid-bone nasal-septum vermis-of-cerebellum",
        ),
        variant("in section", "right", "sphenoidal-sinus", "Runs into the lesser wing"),
      ],
      steps: [
        step("freezing", "2019-03-04", "2019-03-25"),
        step("sawing", "2019-03-26", "2019-03-26"),
        step("dehydration", "2019-03-27", "2019-05-03"),
        step("impregnation", "2019-05-06", "2019-05-10"),
        step("curing", "2019-05-13", "2019-09-27"),
      ],
    },
  ),
  specimen(
    "AN 1902.0015",
    "Lower jaws with developing teeth, five stages",
    "Mandibulae, dentes crescentes",
    {
      kind: "skeleton or bone",
      preparation: "dry",
      side: "both",
      use: "viewing only",
      ageBand: "0–9",
      size: size(360, 220, 60),
      massKg: 0.24,
      mountedSize: size(420, 280, 120),
      mountedMassKg: 2.3,
      massWeighed: false,
      partsAtRisk: "Loose tooth germs",
      acquiredOn: "1902-03-20",
      note: "From several children; origin not recorded. Kept from public view.",
      formerNumbers: [{ number: "Dent. 15", kind: "former accession", markedOn: "case lid" }],
      components: parts("case with glass lid", "5 jaws", "7 loose teeth in a tube"),
    },
    {
      title: {
        status: "deposit",
        ownerName: "Dental College of Halmren",
        leaveToLend: false,
        leaveReference: "",
      },
      place: "H-CAST.4",
      shows: [
        ...see(
          "fully exposed",
          "unpaired",
          "mandible deciduous-teeth permanent-teeth lower-dental-arch alveolar-part-of-mandible mental-protuberance",
        ),
        ...see(
          "fully exposed",
          "both",
          "first-molar-tooth incisor-teeth canine-teeth molar-teeth mandibular-canal ramus-of-mandible mental-foramen",
        ),
        ...gone("absent", "both", "third-molar-tooth", "Not yet formed"),
      ],
      steps: [step("maceration", null, null, "No record")],
    },
  ),
];
