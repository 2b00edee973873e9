/** What was seen on the specimens of the limbs, look by look. */
import { type History, history, look, mark, seen } from "#seed/scenario/shape.ts";

export const limbChecks: Record<string, History> = {
  "AN 2019.0142": history(
    {
      nerves: mark("tissue.hardening", "Free nerve ends at the axilla", 0.115, 0.2),
      dust: mark("surface.dust", "Hollow of the elbow", 0.455, 0.45),
      window: mark("structure.crack", "Edge of the window in the flexor retinaculum", 0.74, 0.64),
    },
    look(-1_020, "conservator", "sht", "Firm and dry to the touch; the cords lie as they were set.", {
      dust: seen(1, "s", "30 mm"),
    }),
    look(
      -455,
      "conservator",
      "sht",
      "Nerve ends a little stiffer than when new. No reason to keep it back.",
      {
        nerves: seen(1, "s", "4 mm"),
        dust: seen(1, "s", "25 mm"),
      },
    ),
    look(-230, "curator", "sht", "Handled by about ninety students since the last look and bears it well.", {
      nerves: seen(1, "s", "5 mm"),
      dust: seen(0, "s", "", "Wiped off"),
      window: seen(1, "s", "3 mm"),
    }),
  ),
  "AN 2021.0007": history(
    {
      veins: mark("tissue.fading", "Blue of the dorsal veins", 0.33, 0.6),
      nail: mark("tissue.hair-nail-loss", "Nail of the little finger", 0.155, 0.77),
    },
    look(-980, "conservator", "st", "Veins clear and even. The donor did not wish it to be handled.", {
      nail: seen(2, "s", "9 mm", "Lifted at its free edge"),
    }),
    look(
      -530,
      "curator",
      "st",
      "Colour of the veins a shade lighter beside the photograph of the first look.",
      {
        veins: seen(1, "u", "20 %"),
        nail: seen(2, "s", "9 mm"),
      },
    ),
    look(-88, "conservator", "st", "Fading has not gone on since the shelf got its curtain.", {
      veins: seen(1, "s", "20 %"),
      nail: seen(2, "s", "9 mm", "Held by a drop of adhesive"),
    }),
  ),
  "AN 2022.0051": history(
    {
      trunk: mark("structure.broken-projection", "Thread at the superior trunk of the plexus", 0.852, 0.274),
      joint: mark("structure.loose-joint", "Pin of the clavicle", 0.93, 0.42),
      weep: mark("surface.silicone-weep", "Under side of the forearm", 0.33, 0.655),
    },
    look(-870, "conservator", "sht", "New from curing; a film of silicone can be wiped from the forearm.", {
      weep: seen(1, "a", "60 mm"),
    }),
    look(-505, "conservator", "sht", "Film has dried. Pin of the clavicle turns a little in its hole.", {
      weep: seen(0, "s"),
      joint: seen(1, "s", "1 mm"),
    }),
    look(-205, "curator", "sht", "Ready for a course: all threads of the plexus are tight.", {
      joint: seen(1, "s", "1 mm"),
      trunk: seen(0, "s"),
    }),
  ),
  "AN 2018.0033": history(
    {
      tendon: mark("structure.crack", "Long tendon of biceps in its groove", 0.283, 0.5),
      cartilage: mark("surface.scratch", "Cartilage of the humeral head", 0.31, 0.36),
    },
    look(-1_090, "curator", "sht", "Flap of the capsule moves freely; tendon whole.", {
      cartilage: seen(1, "s", "7 mm"),
    }),
    look(
      -600,
      "conservator",
      "sht",
      "A hairline has come at the bend of the tendon; keep the flap from pulling on it.",
      {
        cartilage: seen(1, "s", "7 mm"),
        tendon: seen(1, "u", "3 mm"),
      },
    ),
    look(
      -170,
      "conservator",
      "sht",
      "Hairline measured again and found the same. Tendon padded from below.",
      {
        cartilage: seen(1, "s", "8 mm"),
        tendon: seen(1, "s", "3 mm"),
      },
    ),
  ),
  "AN 2016.0018": history(
    {
      flap: mark("structure.crack", "Hinge of the palmar aponeurosis", 0.46, 0.7),
      digital: mark("structure.loss", "Proper digital nerve of the ring finger", 0.39, 0.2),
    },
    look(-1_075, "conservator", "sht", "Hinges supple. Old gap in a digital nerve is from the dissection.", {
      digital: seen(1, "s", "4 mm"),
    }),
    look(-560, "curator", "sht", "First small tear at the hinge; students shown how to lift the flap.", {
      digital: seen(1, "s", "4 mm"),
      flap: seen(1, "u", "2 mm"),
    }),
    look(-140, "conservator", "sht", "Tear closed with a strip from below and does not open any more.", {
      digital: seen(1, "s", "4 mm"),
      flap: seen(1, "s", "2 mm"),
    }),
  ),
  "AN 1978.0012": history(
    {
      fibres: mark("bone.flake", "Dried ligaments at the fifth metacarpal", 0.36, 0.63),
      board: mark("structure.mount-failure", "Screw of the wooden board"),
      fat: mark("bone.fat-bleed", "Radius, cut end", 0.49, 0.93),
    },
    look(-1_110, "collection manager", "s", "Old and brittle; ligaments come off as threads when touched.", {
      fibres: seen(2, "a", "12 mm"),
      fat: seen(1, "s", "18 mm"),
    }),
    look(-690, "conservator", "st", "Threads laid down with starch paste. Screw of the board replaced.", {
      fibres: seen(2, "s", "12 mm"),
      fat: seen(1, "s", "18 mm"),
      board: seen(0, "s"),
    }),
    look(-395, "collection manager", "st", "Holds since the treatment. Not to be lifted by the bones.", {
      fibres: seen(2, "s", "11 mm"),
      fat: seen(1, "s", "19 mm"),
    }),
  ),
  "AN 2014.0009": history(
    {
      wire: mark("bone.wire-corrosion", "Wire between pisiform and triquetral bone", 0.6, 0.905),
      stain: mark("bone.stain", "Head of the third metacarpal bone", 0.553, 0.51),
    },
    look(-930, "curator", "sht", "Complete, 27 bones counted; a brown spot from the maceration.", {
      stain: seen(1, "s", "5 mm"),
    }),
    look(-480, "curator", "sht", "Counted again, complete. Green bloom on one wire.", {
      stain: seen(1, "s", "5 mm"),
      wire: seen(1, "a", "6 mm"),
    }),
    look(-66, "conservator", "sht", "Wire cleaned and waxed; nothing loose when shaken gently.", {
      stain: seen(1, "s", "5 mm"),
      wire: seen(1, "s", "2 mm"),
    }),
  ),
  "AN 2018.0071": history(
    {
      knee: mark("structure.detached-part", "Saphenous nerve beside the knee", 0.53, 0.53),
      toe: mark("surface.abrasion", "Tip of the great toe", 0.95, 0.44),
      fat: mark("surface.fat-seepage", "Heel pad", 0.915, 0.7),
    },
    look(
      -1_060,
      "conservator",
      "sht",
      "Heel shows drops of fat in the warm month; wiped, no harm to the tissue.",
      {
        fat: seen(1, "a", "15 mm"),
      },
    ),
    look(-700, "conservator", "sht", "Fat has stopped with the cooler store. Toe rubbed on its cradle.", {
      fat: seen(1, "s", "8 mm"),
      toe: seen(1, "s", "6 mm"),
    }),
    look(
      -310,
      "curator",
      "sht",
      "Saphenous nerve came off one of its threads and was tied back the same day.",
      {
        fat: seen(1, "s", "8 mm"),
        toe: seen(1, "s", "6 mm"),
        knee: seen(1, "s", "10 mm"),
      },
    ),
    look(-47, "conservator", "sht", "Seen before the winter requests: tie holds, heel dry.", {
      fat: seen(0, "s"),
      toe: seen(1, "s", "6 mm"),
      knee: seen(1, "s", "10 mm"),
    }),
  ),
  "AN 2020.0015": history(
    {
      meniscus: mark("surface.abrasion", "Anterior horn of the lateral meniscus", 0.375, 0.515),
      plate: mark("structure.mount-failure", "Rubber foot of the base plate"),
    },
    look(-840, "curator", "sht", "Bends and straightens without pull on the cruciate ligaments.", {}),
    look(-420, "conservator", "sht", "Meniscus dull where the femur glides over it.", {
      meniscus: seen(1, "s", "9 mm"),
    }),
    look(-170, "curator", "sht", "One rubber foot of the plate is worn; it stands safely all the same.", {
      meniscus: seen(1, "s", "9 mm"),
      plate: seen(1, "s"),
    }),
  ),
  "AN 2017.0044": history(
    {
      hinge: mark("tissue.layer-separation", "Hinge of the second layer", 0.69, 0.47),
      heel: mark("surface.soiling", "Heel", 0.9, 0.46),
    },
    look(-1_000, "conservator", "sht", "Four layers open like a book; heel grey from gloves.", {
      heel: seen(1, "s", "35 mm"),
    }),
    look(-575, "conservator", "sht", "Heel washed. Second layer begins to part at its hinge.", {
      heel: seen(0, "s"),
      hinge: seen(1, "u", "5 mm"),
    }),
    look(
      -112,
      "conservator",
      "sht",
      "Hinge sewn; the seam lies under the flexor and is not seen from outside.",
      {
        hinge: seen(1, "s", "5 mm"),
      },
    ),
  ),
  "AN 2015.0027": history(
    {
      pudendal: mark("structure.detached-part", "Pudendal nerve at the sacrospinous ligament", 0.264, 0.535),
      muscle: mark("structure.sagging", "Reflected gluteus maximus", 0.745, 0.62),
    },
    look(-1_115, "conservator", "st", "Reflected muscle hangs lower than in the drawing of 2015.", {
      muscle: seen(2, "a", "14 mm"),
    }),
    look(
      -760,
      "conservator",
      "st",
      "A wire now carries the muscle. Nerve lies free of its ligament over a short way.",
      {
        muscle: seen(2, "s", "14 mm"),
        pudendal: seen(1, "s", "6 mm"),
      },
    ),
    look(-405, "curator", "st", "No further sinking in a year; next look is due.", {
      muscle: seen(2, "s", "14 mm"),
      pudendal: seen(1, "s", "6 mm"),
    }),
  ),
  "AN 2021.0038": history(
    {
      sural: mark("tissue.hardening", "Sural nerve in the lower third", 0.82, 0.43),
      stand: mark("structure.loose-joint", "Knee of the stand"),
    },
    look(-900, "conservator", "sht", "Good colour of the veins; the short fixation has paid.", {}),
    look(-490, "curator", "sht", "Stand wobbles; screw tightened on the spot.", {
      stand: seen(1, "s", "2 mm"),
    }),
    look(-165, "conservator", "sht", "Sural nerve stiff but whole; fit for another winter of courses.", {
      stand: seen(1, "s", "2 mm"),
      sural: seen(1, "s", "40 mm"),
    }),
  ),
  "AN 1966.0031": history(
    {
      toes: mark("cast.filament-broken", "Digital arteries of the third and fourth toe"),
      colour: mark("cast.discolouration", "Whole cast"),
      dome: mark("structure.hairline", "Glass dome, rear"),
    },
    look(
      -1_040,
      "collection manager",
      "s",
      "Breaks by its own weight when the plinth is knocked. Stays in the case.",
      {
        toes: seen(3, "u", "14 mm"),
        colour: seen(2, "s", "100 %"),
      },
    ),
    look(-655, "conservator", "s", "Loose ends gathered in a tube and numbered; nothing new.", {
      toes: seen(3, "s", "14 mm"),
      colour: seen(2, "s", "100 %"),
    }),
    look(-280, "conservator", "s", "Line in the glass of the dome found when dusting.", {
      toes: seen(3, "s", "14 mm"),
      colour: seen(2, "s", "100 %"),
      dome: seen(1, "u", "45 mm"),
    }),
  ),
  "AN 2018.0140": history(
    {
      edge: mark("sheet.edge-chip", "Lower edge below the calcaneus", 0.8, 0.94),
      bubble: mark("sheet.bubble", "Beside the tendon of the heel", 0.87, 0.4),
    },
    look(-860, "conservator", "st", "Clear on the light table, two bubbles from the casting.", {
      bubble: seen(1, "s", "2 mm"),
    }),
    look(-515, "conservator", "st", "Chip at the lower edge from the rack; rack lined with felt.", {
      bubble: seen(1, "s", "2 mm"),
      edge: seen(1, "s", "3 mm"),
    }),
    look(-190, "curator", "st", "Chip smoothed and sealed, edge even to the finger.", {
      bubble: seen(1, "s", "2 mm"),
      edge: seen(1, "s", "3 mm"),
    }),
  ),
};
