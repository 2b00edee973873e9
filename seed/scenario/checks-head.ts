/** What was seen on the specimens of head, neck and brain, look by look. */
import { type History, history, look, mark, seen } from "#seed/scenario/shape.ts";

export const headChecks: Record<string, History> = {
  "AN 2019.0098": history(
    {
      concha: mark("structure.deformation", "Inferior nasal concha", 0.383, 0.474),
      cut: mark("surface.scratch", "Cut surface of the pons", 0.533, 0.47),
      veil: mark("surface.soiling", "Veil over the lips", 0.275, 0.6),
    },
    look(-950, "conservator", "st", "Cut surface even and clear. Face stays under its veil.", {
      cut: seen(1, "s", "11 mm"),
    }),
    look(-545, "curator", "st", "Concha bent inward by a few degrees, as if touched in cleaning.", {
      cut: seen(1, "s", "11 mm"),
      concha: seen(1, "s", "3 mm"),
    }),
    look(-75, "conservator", "st", "Veil renewed, the old one was grey. Concha has kept its place.", {
      cut: seen(1, "s", "11 mm"),
      concha: seen(1, "s", "3 mm"),
      veil: seen(0, "s"),
    }),
  ),
  "AN 2020.0062": history(
    {
      branch: mark(
        "structure.broken-projection",
        "Uppermost temporal branch of the facial nerve",
        0.42,
        0.333,
      ),
      skin: mark("tissue.shrinkage", "Rim of skin at the ear", 0.605, 0.44),
    },
    look(-815, "conservator", "st", "All five groups of branches whole and lying on the muscle.", {}),
    look(-440, "conservator", "st", "Rim of skin drawn back by a hair's breadth.", {
      skin: seen(1, "u", "1.5 mm"),
    }),
    look(
      -105,
      "curator",
      "st",
      "Tip of one temporal branch broken off and kept in the bag of parts; measured, drawn in.",
      {
        skin: seen(1, "s", "1.5 mm"),
        branch: seen(2, "s", "4 mm"),
      },
    ),
  ),
  "AN 2016.0055": history(
    {
      ansa: mark("tissue.hardening", "Ansa cervicalis, left side", 0.615, 0.5),
      muscle: mark("structure.loose-joint", "Hook of the loose sternocleidomastoid", 0.44, 0.88),
      print: mark("surface.fingerprint", "Thyroid gland", 0.423, 0.63),
    },
    look(-1_085, "curator", "sht", "Loose muscle hooks on and off without force.", {}),
    look(-720, "conservator", "sht", "Print of a bare finger on the thyroid gland cannot be wiped away.", {
      print: seen(1, "s", "10 mm"),
    }),
    look(-355, "conservator", "sht", "Hook bent open a little by use; bent back.", {
      print: seen(1, "s", "10 mm"),
      muscle: seen(1, "s"),
    }),
    look(-31, "curator", "sht", "Left ansa stiffer than the right and still springs back.", {
      print: seen(1, "s", "10 mm"),
      muscle: seen(1, "s"),
      ansa: seen(1, "s", "22 mm"),
    }),
  ),
  "AN 2013.0021": history(
    {
      horn: mark("structure.hairline", "Left superior horn of the thyroid cartilage", 0.357, 0.18),
      fold: mark("surface.abrasion", "Right vestibular fold", 0.54, 0.418),
    },
    look(-1_005, "conservator", "sht", "Ten years in use and nearly as new.", { fold: seen(1, "s", "4 mm") }),
    look(-590, "curator", "sht", "Line in the left horn seen against the light.", {
      fold: seen(1, "s", "4 mm"),
      horn: seen(1, "u", "2 mm"),
    }),
    look(-198, "conservator", "sht", "The line is in the surface only and has not grown.", {
      fold: seen(1, "s", "4 mm"),
      horn: seen(1, "s", "2 mm"),
    }),
  ),
  "AN 2022.0013": history(
    {
      trochlear: mark("tissue.stiffening", "Trochlear nerve, free part", 0.68, 0.54),
      cover: mark("surface.scratch", "Acrylic cover, top"),
    },
    look(-740, "conservator", "st", "Every nerve in its place. Cover to stay on outside the workshop.", {}),
    look(-385, "curator", "st", "Cover scratched by its box; box lined.", { cover: seen(1, "s", "30 mm") }),
    look(-58, "conservator", "st", "Trochlear nerve no longer bends; to be moved by its base only.", {
      cover: seen(1, "s", "30 mm"),
      trochlear: seen(1, "s", "20 mm"),
    }),
  ),
  "AN 1934.0007": history(
    {
      ethmoid: mark("bone.crack", "Perpendicular plate of the ethmoid bone", 0.43, 0.508),
      wires: mark("bone.wire-corrosion", "Wires of the left facial bones", 0.36, 0.54),
      flake: mark("bone.flake", "Right lacrimal bone", 0.315, 0.394),
    },
    look(-1_100, "collection manager", "s", "Dusty case, bones sound but for the thin ones.", {
      ethmoid: seen(2, "s", "8 mm"),
      wires: seen(2, "a", "40 mm"),
    }),
    look(-730, "conservator", "s", "Wires cleaned one by one. Lacrimal bone sheds small flakes.", {
      ethmoid: seen(2, "s", "8 mm"),
      wires: seen(2, "s", "40 mm"),
      flake: seen(2, "a", "3 mm"),
    }),
    look(-260, "conservator", "s", "Flakes fixed. Not fit to be carried while the case has no lock.", {
      ethmoid: seen(2, "s", "8 mm"),
      wires: seen(2, "s", "40 mm"),
      flake: seen(2, "s", "3 mm"),
    }),
  ),
  "AN 1962.0004": history(
    {
      membrane: mark("bone.crack", "Membrane of the anterior fontanelle", 0.41, 0.11),
      suture: mark("bone.loose-suture", "Left half of the coronal suture", 0.4, 0.3),
    },
    look(-1_095, "curator", "", "Kept in the closed case. Looked at through the glass only.", {
      membrane: seen(2, "u", "12 mm"),
    }),
    look(
      -610,
      "conservator",
      "",
      "Case opened by two people. Tear in the membrane measured; suture moves under a breath.",
      {
        membrane: seen(2, "s", "13 mm"),
        suture: seen(2, "u", "20 mm"),
      },
    ),
    look(-240, "conservator", "", "Bed of soft paper made. Nothing has moved since.", {
      membrane: seen(2, "s", "13 mm"),
      suture: seen(2, "s", "20 mm"),
    }),
  ),
  "AN 2011.0016": history(
    {
      stapes: mark("structure.loose-joint", "Stapes in the oval window", 0.44, 0.545),
      dust: mark("surface.dust", "Mastoid air cells", 0.25, 0.62),
    },
    look(-965, "curator", "st", "Ossicles in line; a few grains of dust in the cells.", {
      dust: seen(1, "s", "8 mm"),
    }),
    look(-570, "conservator", "st", "Drop of resin at the stapes has let go on one side.", {
      dust: seen(1, "s", "8 mm"),
      stapes: seen(2, "u", "0.5 mm"),
    }),
    look(-155, "conservator", "st", "Stapes set again under the microscope and tested with a hair.", {
      dust: seen(0, "s"),
      stapes: seen(1, "s", "0.2 mm"),
    }),
  ),
  "AN 2017.0080": history(
    {
      uvula: mark("structure.deformation", "Uvula"),
      tonsil: mark("tissue.browning", "Right palatine tonsil"),
    },
    look(-890, "curator", "sht", "Soft palate springs back when pressed.", {}),
    look(-465, "conservator", "sht", "Uvula leans to the left, it lay against the stand.", {
      uvula: seen(1, "s", "2 mm"),
    }),
    look(
      -98,
      "conservator",
      "sht",
      "Right tonsil darker than the left; compared with the photograph of 2017.",
      {
        uvula: seen(1, "s", "2 mm"),
        tonsil: seen(1, "u", "30 %"),
      },
    ),
  ),
  "AN 2019.0160": history(
    {
      haze: mark("sheet.haze", "Over the left cerebellar hemisphere", 0.58, 0.74),
      corner: mark("sheet.edge-chip", "Left corner beside the auricle", 0.84, 0.6),
    },
    look(-805, "conservator", "st", "Lens and optic nerves clear on both sides.", {}),
    look(-430, "conservator", "st", "A breath of haze behind the pons, seen only at a slant.", {
      haze: seen(1, "u", "6 %"),
    }),
    look(
      -185,
      "curator",
      "st",
      "Haze the same by eye and by photograph; old chip at the corner noted for the first time.",
      {
        haze: seen(1, "s", "6 %"),
        corner: seen(1, "s", "2 mm"),
      },
    ),
  ),
  "AN 2020.0101": history(
    {
      dye: mark("tissue.fading", "Red latex of the basilar artery", 0.5, 0.58),
      bulb: mark("structure.deformation", "Left olfactory bulb", 0.53, 0.15),
    },
    look(-770, "conservator", "sht", "Red even from end to end. Store dark.", {}),
    look(-410, "conservator", "sht", "Left bulb pressed flat by its wrapping.", {
      bulb: seen(1, "s", "3 mm"),
    }),
    look(
      -52,
      "curator",
      "sht",
      "Basilar artery a touch paler than the carotids; measured for the first time.",
      {
        bulb: seen(1, "s", "3 mm"),
        dye: seen(1, "s", "10 %"),
      },
    ),
  ),
  "AN 2018.0110": history(
    {
      septum: mark("structure.hairline", "Septum pellucidum", 0.41, 0.52),
      print: mark("surface.fingerprint", "Precuneus", 0.7, 0.27),
    },
    look(-1_030, "curator", "sht", "Good relief of the gyri. Septum thin as tissue paper and whole.", {}),
    look(-620, "curator", "sht", "Glove mark on the precuneus, wiped to a trace.", {
      print: seen(1, "s", "12 mm"),
    }),
    look(
      -64,
      "conservator",
      "sht",
      "Short line in the septum near the fornix; supported from the other side.",
      {
        print: seen(1, "s", "12 mm"),
        septum: seen(1, "s", "4 mm"),
      },
    ),
  ),
  "AN 2015.0063": history(
    {
      corona: mark("tissue.layer-separation", "Upper edge of the corona radiata", 0.47, 0.17),
      loss: mark("structure.loss", "Tip of the uncinate fasciculus", 0.28, 0.8),
    },
    look(-1_065, "conservator", "st", "Fibres stand well apart. Small loss is from the dissection.", {
      loss: seen(1, "s", "3 mm"),
    }),
    look(-680, "conservator", "st", "Corona radiata opens like a brush at its edge.", {
      loss: seen(1, "s", "3 mm"),
      corona: seen(2, "a", "15 mm"),
    }),
    look(-320, "conservator", "s", "Edge goes on opening. Not to travel until it is bound.", {
      loss: seen(1, "s", "3 mm"),
      corona: seen(3, "a", "22 mm"),
    }),
  ),
  "AN 2021.0090": history(
    {
      rootlets: mark("structure.broken-projection", "Rootlets of the right hypoglossal nerve", 0.415, 0.635),
      cover: mark("surface.dust", "Inside of the cover"),
    },
    look(
      -790,
      "conservator",
      "st",
      "Twelve pairs but the first two, all followed by name with the curator.",
      {},
    ),
    look(-375, "curator", "st", "Dust inside the cover; it was not shut tight.", {
      cover: seen(1, "s", "20 %"),
    }),
    look(-86, "conservator", "st", "Two rootlets broken when the cover was put back. Cover now has guides.", {
      cover: seen(0, "s"),
      rootlets: seen(1, "s", "2 mm"),
    }),
  ),
  "AN 1989.0025": history(
    {
      yellow: mark("sheet.yellowing", "Whole sheet, strongest at the upper edge", 0.5, 0.1),
      chip: mark("sheet.edge-chip", "Upper edge, right", 0.78, 0.04),
      stain: mark("sheet.haze", "Cortex of the left temporal lobe", 0.72, 0.75),
    },
    look(-1_045, "collection manager", "st", "Yellowed with age, blue of the grey matter still plain.", {
      yellow: seen(2, "u", "100 %"),
      chip: seen(1, "s", "6 mm"),
    }),
    look(-665, "conservator", "st", "Colour measured with the instrument to have a figure for later.", {
      yellow: seen(2, "u", "100 %"),
      chip: seen(1, "s", "6 mm"),
    }),
    look(
      -290,
      "conservator",
      "st",
      "Yellowing within what the instrument can tell; a first haze on the left.",
      {
        yellow: seen(2, "s", "100 %"),
        chip: seen(1, "s", "6 mm"),
        stain: seen(1, "u", "4 %"),
      },
    ),
  ),
  "AN 2009.0040": history(
    {
      level: mark("fluid.level-low", "Below the mark of the jar", 0.5, 0.19),
      seal: mark("fluid.seal-leak", "Ground lid, front", 0.46, 0.1),
      film: mark("fluid.lipid-film", "Surface of the fluid", 0.57, 0.19),
    },
    look(-1_050, "conservator", "st", "Fluid clear; a film of fat floats on it.", {
      film: seen(1, "s", "10 %"),
    }),
    look(-640, "conservator", "st", "Level sunk by a finger; topped up and marked.", {
      film: seen(1, "s", "10 %"),
      level: seen(1, "a", "9 mm"),
    }),
    look(
      -215,
      "conservator",
      "s",
      "Sunk again, lid is the cause. To be sealed anew before it goes anywhere.",
      {
        film: seen(1, "s", "10 %"),
        level: seen(2, "a", "14 mm"),
        seal: seen(2, "a"),
      },
    ),
  ),
};
