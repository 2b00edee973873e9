/**
 * What each specimen of the demo is drawn as, beside what it is: read by eye, line by
 * line. A drawing names nothing that the record does not show.
 */
import { describe, expect, test } from "vitest";
import { chooseMotif, type Motif, neutralMotifs } from "#lib/specimens/drawing/choose.ts";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import { shortName } from "#lib/specimens/drawing/plate.ts";
import { collection } from "#seed/scenario/collection.ts";
import { seriesOfSheets, sheetNumbers } from "#seed/scenario/series.ts";
import { requestOfSheet, requestOfSpecimen } from "#tests/support/demo-drawings.ts";

const rows: readonly (readonly [accessionNumber: string, title: string, motif: Motif])[] = [
  ["AN 1871.0002", "Lymph vessels of a left lower limb, filled with mercury", "lower-limb-lymph"],
  ["AN 1902.0015", "Lower jaws with developing teeth, five stages", "lower-jaws"],
  ["AN 1911.0012", "Peregrine falcon, mounted skeleton", "animal-skeleton"],
  ["AN 1927.0003", "Skeleton of an adult, mounted", "skeleton"],
  ["AN 1934.0007", "Skull, bones mounted apart", "skull-apart"],
  ["AN 1938.0004", "Eurasian otter, mounted skeleton", "animal-skeleton"],
  ["AN 1949.0010", "Stomach in fluid, opened along the greater curvature", "stomach-opened"],
  ["AN 1958.0019", "Heart in fluid, window in the left ventricle", "heart-window"],
  ["AN 1962.0004", "Skull of a newborn, fontanelles", "skull-newborn"],
  ["AN 1966.0031", "Arteries of a right foot, corrosion cast", "cast-foot"],
  ["AN 1978.0012", "Ligaments of the right wrist and hand", "wrist-ligaments"],
  ["AN 1989.0025", "Coronal sheet of a brain through the mammillary bodies", "coronal-brain-sheet"],
  ["AN 1995.0088", "Kidney, cortex and medulla, three slides", "slide"],
  ["AN 2005.0011", "Vertebral column with pelvis and thigh bones", "spine-with-pelvis"],
  ["AN 2007.0150", "Eyeball with optic nerve, slide", "slide"],
  ["AN 2008.0022", "Caecum and vermiform appendix in fluid", "caecum"],
  ["AN 2009.0040", "Spinal cord with roots, dura opened", "spinal-cord"],
  ["AN 2009.0215", "Domestic fowl, lungs and air sacs, corrosion cast", "cast-air-sacs"],
  ["AN 2010.0014", "Right kidney, coronal section, arteries injected", "kidney-halved"],
  ["AN 2011.0002", "Brain, spinal cord and limb plexuses, composite mount", "nervous-system"],
  ["AN 2011.0016", "Right temporal bone, middle and inner ear opened", "temporal-bone"],
  ["AN 2012.0008", "Thoracic wall from within, intercostal spaces", "thoracic-wall"],
  ["AN 2012.0201", "Cervical spinal cord, six slides", "slide"],
  ["AN 2013.0021", "Larynx opened from behind", "larynx-opened"],
  ["AN 2013.0047", "Vessels and bile ducts of a liver, corrosion cast", "cast-liver"],
  ["AN 2013.0225", "Horse, sagittal sheet of the digit", "equine-digit-sheet"],
  ["AN 2014.0009", "Bones of a left hand, articulated on wire", "hand-bones"],
  ["AN 2014.0036", "Bronchial tree with pulmonary arteries, corrosion cast", "cast-lungs"],
  ["AN 2015.0027", "Right gluteal region and hip joint from behind", "gluteal-region"],
  ["AN 2015.0063", "Left cerebral hemisphere, fibre dissection", "hemisphere-fibres"],
  ["AN 2015.0081", "Kidneys, ureters and bladder with their vessels", "urinary-system"],
  ["AN 2015.0210", "Cattle, stomach with its four chambers", "ruminant-stomach"],
  ["AN 2016.0018", "Right hand, palm in layers", "palm"],
  ["AN 2016.0055", "Neck, triangles and carotid sheaths", "neck"],
  ["AN 2016.0072", "Uterus with tubes and ovaries, from behind", "uterus"],
  ["AN 2016.0090", "Left lung, hilum and lingula", "lung"],
  ["AN 2016.0230", "Carp, gills and viscera in fluid", "fish-organs"],
  ["AN 2017.0001", "Whole body, standing, muscles and great vessels", "body"],
  ["AN 2017.0012", "Heart and lungs in their natural connection", "heart-with-lungs"],
  ["AN 2017.0044", "Left foot, sole in four layers", "sole"],
  ["AN 2017.0080", "Tongue, soft palate and pharynx from behind", "pharynx"],
  ["AN 2018.0029", "Liver with gallbladder, porta dissected", "liver-below"],
  ["AN 2018.0033", "Right shoulder joint, capsule opened from in front", "shoulder-joint"],
  ["AN 2018.0071", "Left lower limb, nerves and vessels from groin to sole", "lower-limb"],
  ["AN 2018.0110", "Right cerebral hemisphere, medial surface", "hemisphere-inside"],
  ["AN 2018.0140", "Sagittal sheet of a right ankle and foot", "foot-sheet"],
  ["AN 2018.0200", "Horse, left forelimb below the carpus", "equine-foot"],
  ["AN 2019.0055", "Heart with all four chambers opened", "heart-opened"],
  ["AN 2019.0098", "Right half of head and neck, median section", "half-head"],
  ["AN 2019.0117", "Female pelvis, left half, median section", "half-pelvis"],
  ["AN 2019.0142", "Right upper limb, neurovascular dissection", "upper-limb"],
  ["AN 2019.0160", "Transverse sheet of a head at the level of the eyes", "head-sheet"],
  ["AN 2020.0015", "Right knee joint, opened, with menisci and cruciate ligaments", "knee"],
  ["AN 2020.0033", "Diaphragm from below with its openings", "diaphragm"],
  ["AN 2020.0062", "Left side of the face, facial nerve and parotid region", "face"],
  ["AN 2020.0078", "Male pelvis, right half, median section", "half-pelvis"],
  ["AN 2020.0101", "Brain, arteries of the base", "brain-below"],
  ["AN 2020.0205", "Dog, thoracic and abdominal organs in place", "dog-organs"],
  ["AN 2021.0007", "Left forearm and hand, superficial dissection", "forearm-from-behind"],
  ["AN 2021.0019", "Upper abdominal organs with the coeliac trunk", "upper-abdomen"],
  ["AN 2021.0038", "Right popliteal fossa and calf", "popliteal-fossa"],
  ["AN 2021.0064", "Heart, coronary arteries and veins injected", "heart"],
  ["AN 2021.0090", "Brainstem with the cranial nerves", "brainstem"],
  ["AN 2021.0220", "Cat, whole body, arteries and muscles", "animal"],
  ["AN 2022.0002", "Whole body, seated, nervous system", "seated-body"],
  ["AN 2022.0013", "Left orbit, opened from above", "orbit"],
  ["AN 2022.0030", "Left inguinal region in layers", "groin"],
  ["AN 2022.0051", "Left upper limb with shoulder girdle and brachial plexus", "upper-limb-with-girdle"],
];

const requests = collection.map(requestOfSpecimen);
const sheets = Object.values(seriesOfSheets).flatMap((series) =>
  sheetNumbers(series).map((number) => requestOfSheet(series, number)),
);

describe("a drawing of the demo", () => {
  test.each(rows)("%s %s is drawn as %s", (accessionNumber, title, motif) => {
    const specimen = collection.find(({ record }) => record.accessionNumber === accessionNumber);
    if (specimen === undefined) throw new Error(`no ${accessionNumber}`);
    expect(specimen.record.title).toBe(title);
    expect(chooseMotif(requestOfSpecimen(specimen))).toBe(motif);
  });

  test("is there for every specimen, and says what it is", () => {
    expect(rows.map(([accessionNumber]) => accessionNumber).sort()).toEqual(
      collection.map(({ record }) => record.accessionNumber).sort(),
    );
    const neutral: ReadonlySet<Motif> = new Set(neutralMotifs);
    expect(rows.filter(([, , motif]) => neutral.has(motif))).toEqual([]);
  });

  test("names only what its specimen is recorded as showing", () => {
    const named = [...requests, ...sheets].map((request) => {
      const recorded = new Set(request.shown.map(({ latin }) => shortName(latin)));
      const names = drawSpecimen(request, true).labels.map(({ text }) => text);
      expect(names.filter((name) => !recorded.has(name))).toEqual([]);
      return names.length;
    });
    expect(named.filter((count) => count >= 3).length).toBeGreaterThan(named.length * 0.8);
  });

  test("of a sheet is that of its region, at a level of its own", () => {
    expect(new Set(sheets.map(chooseMotif))).toEqual(new Set(["trunk-sheet", "sagittal-head-sheet"]));
    const drawn = sheets.map((request) => JSON.stringify(drawSpecimen(request)));
    expect(new Set(drawn).size).toBe(sheets.length);
    for (const request of sheets) {
      const outlines = drawSpecimen(request).shapes.filter(({ stroke }) => stroke === "hidden");
      expect(outlines).toEqual([]);
    }
  });

  test("of a sheet follows from series and number alone", () => {
    for (const request of sheets.filter((_, index) => index % 9 === 0)) {
      const elsewhere = { ...request, title: "Sheet", latinTitle: "", side: "left", shown: [] };
      expect(drawSpecimen(elsewhere)).toEqual(drawSpecimen(request));
    }
  });
});
