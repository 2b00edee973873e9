/**
 * Series SR 07: a head cut from left to right into 24 sheets, the median plane
 * between sheets 12 and 13. A structure is stated by how many sheets it lies from
 * the median; what is paired stands on both sides, each with its own sheets.
 */
import type { Span } from "#seed/scenario/series-span.ts";

const medianOf = { before: 12, after: 13 };

/** Paired structures, from the sheet next to the median to the outermost that cuts them, counted from 1. */
function paired(nearest: number, farthest: number, ids: string): Span[] {
  return ids.split(" ").flatMap((structureId): Span[] => [
    {
      structureId,
      from: medianOf.before + 1 - farthest,
      to: medianOf.before + 1 - nearest,
      sides: ["left"],
    },
    { structureId, from: medianOf.after - 1 + nearest, to: medianOf.after - 1 + farthest, sides: ["right"] },
  ]);
}

/** Structures in the middle, reaching so many sheets to either side. */
function median(reach: number, ids: string): Span[] {
  return ids.split(" ").map((structureId) => ({
    structureId,
    from: medianOf.before + 1 - reach,
    to: medianOf.after - 1 + reach,
    sides: ["median"],
  }));
}

export const headSpans: Span[] = [
  ...median(
    1,
    "falx-cerebri third-ventricle pituitary-gland nasal-septum superior-sagittal-sinus cerebral-aqueduct",
  ),
  ...median(
    2,
    "corpus-callosum medulla-oblongata spinal-cord vermis-of-cerebellum epiglottis fourth-ventricle",
  ),
  ...median(3, "pons soft-palate cervical-vertebrae nasopharynx oropharynx"),
  ...median(4, "tongue hard-palate axis"),
  ...median(6, "atlas"),
  ...median(9, "mandible"),
  ...paired(1, 2, "genioglossus geniohyoid"),
  ...paired(1, 3, "sphenoidal-sinus nasal-cavity caudate-nucleus thalamus"),
  ...paired(1, 4, "frontal-sinus lateral-ventricle cingulate-gyrus"),
  ...paired(1, 8, "parietal-lobe"),
  ...paired(1, 9, "frontal-lobe"),
  ...paired(1, 7, "occipital-lobe"),
  ...paired(2, 9, "cerebellar-hemisphere"),
  ...paired(2, 8, "transverse-dural-sinus"),
  ...paired(2, 5, "internal-carotid-artery"),
  ...paired(3, 5, "vertebral-artery optic-nerve lentiform-nucleus"),
  ...paired(3, 6, "maxillary-sinus hippocampus"),
  ...paired(4, 7, "eyeball submandibular-gland"),
  ...paired(4, 6, "superior-rectus inferior-rectus"),
  ...paired(4, 11, "temporal-lobe"),
  ...paired(4, 5, "cochlea"),
  ...paired(5, 7, "insula tympanic-cavity internal-jugular-vein"),
  ...paired(5, 8, "medial-pterygoid lateral-pterygoid"),
  ...paired(5, 9, "sternocleidomastoid"),
  ...paired(6, 9, "mastoid-air-cells sigmoid-sinus"),
  ...paired(6, 8, "buccinator"),
  ...paired(7, 10, "masseter"),
  ...paired(7, 12, "temporalis"),
  ...paired(8, 9, "temporomandibular-joint"),
  ...paired(8, 12, "parotid-gland"),
  ...paired(9, 10, "external-acoustic-meatus zygomatic-arch"),
  ...paired(11, 12, "auricle-of-ear external-ear"),
];
