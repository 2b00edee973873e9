/** What was seen on whole bodies, skeletons, historical preparations, slides and animals, look by look. */
import { type History, history, look, mark, seen } from "#seed/scenario/shape.ts";

export const wholeChecks: Record<string, History> = {
  "AN 2017.0001": history(
    {
      hand: mark("structure.hairline", "Base of the right thumb", 0.365, 0.55),
      plinth: mark("structure.mount-failure", "Rear bolt of the plinth"),
      weep: mark("surface.silicone-weep", "Both soles", 0.46, 0.96),
      dust: mark("surface.dust", "Shoulders", 0.43, 0.23),
    },
    look(-1_118, "conservator", "st", "Soles wet with silicone, blotted under both feet.", {
      weep: seen(2, "a", "120 mm"),
    }),
    look(-770, "conservator", "st", "Soles nearly dry. Rear bolt of the plinth replaced by a stronger one.", {
      weep: seen(1, "s", "40 mm"),
      plinth: seen(0, "s"),
    }),
    look(-415, "conservator", "st", "Hairline at the thumb, it catches on the dust sheet.", {
      weep: seen(1, "s", "40 mm"),
      hand: seen(1, "u", "9 mm"),
      dust: seen(1, "s", "200 mm"),
    }),
    look(-68, "curator", "st", "Dust sheet now on a frame. Thumb measured: no change in a year.", {
      weep: seen(1, "s", "40 mm"),
      hand: seen(1, "s", "9 mm"),
      dust: seen(0, "s"),
    }),
  ),
  "AN 2022.0002": history(
    {
      calf: mark("structure.broken-projection", "Cutaneous nerve of the left calf", 0.415, 0.78),
      cap: mark("structure.loose-joint", "Magnets of the skull cap", 0.51, 0.06),
    },
    look(-690, "conservator", "st", "Two hundred ties checked from a list, none missing.", {}),
    look(-335, "conservator", "st", "Skull cap slides; stronger magnets ordered.", {
      cap: seen(1, "s", "2 mm"),
    }),
    look(-40, "conservator", "st", "Magnets changed. One nerve of the left calf off its tie, tied again.", {
      cap: seen(0, "s"),
      calf: seen(1, "s", "12 mm"),
    }),
  ),
  "AN 2011.0002": history(
    {
      cover: mark("surface.scratch", "Acrylic cover over the left plexus"),
      glue: mark("structure.detached-part", "Sixth thoracic nerve, right", 0.3, 0.565),
    },
    look(-1_055, "curator", "st", "Cover scratched in the middle years of its travels.", {
      cover: seen(1, "s", "80 mm"),
    }),
    look(-660, "conservator", "st", "One nerve came off the board, glued with the old paste.", {
      cover: seen(1, "s", "80 mm"),
      glue: seen(1, "s", "15 mm"),
    }),
    look(-285, "conservator", "st", "All nerves fast when the board is tilted to forty degrees.", {
      cover: seen(1, "s", "80 mm"),
      glue: seen(1, "s", "15 mm"),
    }),
  ),
  "AN 1927.0003": history(
    {
      foot: mark("bone.wire-corrosion", "Wires of the left foot"),
      rib: mark("bone.crack", "Seventh rib, right"),
      powder: mark("bone.powdering", "Vertebral bodies"),
    },
    look(-1_120, "collection manager", "s", "Stands by itself; castors stiff.", {
      foot: seen(2, "s", "30 mm"),
    }),
    look(-745, "conservator", "s", "White powder can be brushed from the vertebral bodies.", {
      foot: seen(2, "s", "30 mm"),
      powder: seen(2, "u", "10 %"),
    }),
    look(
      -330,
      "conservator",
      "s",
      "Powder is old whitening, not bone. New crack in a rib from the castors' jolt.",
      {
        foot: seen(2, "s", "30 mm"),
        powder: seen(1, "s", "10 %"),
        rib: seen(2, "s", "11 mm"),
      },
    ),
  ),
  "AN 2005.0011": history(
    {
      felt: mark("structure.loss", "Felt disc between the third and fourth lumbar vertebra", 0.5, 0.44),
      hip: mark("structure.loose-joint", "Hook of the left thigh bone"),
    },
    look(-955, "curator", "sht", "Swings freely, all vertebrae counted.", { hip: seen(1, "s", "2 mm") }),
    look(-510, "curator", "sht", "A felt disc is moth-eaten.", {
      hip: seen(1, "s", "2 mm"),
      felt: seen(1, "a", "8 mm"),
    }),
    look(-134, "conservator", "sht", "New felt, treated against moths. Left hook closed with pliers.", {
      hip: seen(0, "s"),
      felt: seen(0, "s"),
    }),
  ),
  "AN 1871.0002": history(
    {
      beads: mark("structure.loss", "Mercury in the tray below the knee"),
      varnish: mark("surface.bloom", "Varnish of the thigh", 0.3, 0.43),
      pest: mark("tissue.pest", "Rear of the calf", 0.63, 0.63),
    },
    look(
      -1_112,
      "conservator",
      "",
      "Seen through the shut case. Beads in the tray as in the old photograph.",
      {
        beads: seen(2, "u", "15 mm"),
        varnish: seen(1, "s", "30 %"),
      },
    ),
    look(
      -725,
      "conservator",
      "",
      "Air at the seam of the case measured: below the limit of the safety officer.",
      {
        beads: seen(2, "s", "15 mm"),
        varnish: seen(1, "s", "30 %"),
      },
    ),
    look(-250, "conservator", "", "Old holes of beetles behind the calf, nothing alive in the trap.", {
      beads: seen(2, "s", "15 mm"),
      varnish: seen(1, "s", "30 %"),
      pest: seen(2, "s", "20 mm"),
    }),
  ),
  "AN 1902.0015": history(
    {
      germs: mark("structure.detached-part", "Tooth germs of the second jaw", 0.51, 0.345),
      enamel: mark("bone.split-enamel", "First molar of the fourth jaw", 0.27, 0.7),
    },
    look(-1_010, "collection manager", "", "Seven loose germs in their tube, counted by two.", {
      germs: seen(2, "s", "6 mm"),
    }),
    look(-630, "conservator", "", "Split in the enamel of a molar, old by its colour.", {
      germs: seen(2, "s", "6 mm"),
      enamel: seen(1, "s", "3 mm"),
    }),
    look(-310, "conservator", "", "Humidity beads put into the case, readings steady at half.", {
      germs: seen(2, "s", "6 mm"),
      enamel: seen(1, "s", "3 mm"),
    }),
  ),
  "AN 2012.0201": history(
    {
      slip: mark("slide.cover-slip-loose", "Slide of C5", 0.35, 0.5),
      retraction: mark("slide.mountant-retraction", "Slide of C8, corner", 0.5, 0.61),
    },
    look(-970, "curator", "sht", "Blue of the myelin fresh on all six.", {}),
    look(-565, "curator", "sht", "Mounting medium draws back from a corner of the last slide.", {
      retraction: seen(1, "s", "2 mm"),
    }),
    look(-160, "conservator", "sht", "Cover slip of C5 lifted and set again; box given dividers.", {
      retraction: seen(1, "s", "2 mm"),
      slip: seen(0, "s"),
    }),
  ),
  "AN 2007.0150": history(
    {
      fade: mark("slide.stain-fade", "Pink of the sclera", 0.764, 0.626),
      crystals: mark("slide.mountant-crystals", "Beside the lens", 0.7, 0.42),
    },
    look(-915, "curator", "sht", "Retina lies on the choroid all round.", {}),
    look(-520, "conservator", "sht", "Sclera paler than in the print of 2007.", {
      fade: seen(1, "u", "20 %"),
    }),
    look(
      -108,
      "conservator",
      "sht",
      "Two needles of crystal near the lens, under the slip; stain not paler.",
      {
        fade: seen(1, "s", "20 %"),
        crystals: seen(1, "u", "1 mm"),
      },
    ),
  ),
  "AN 1995.0088": history(
    {
      yellow: mark("slide.mountant-yellowing", "All three slides", 0.4, 0.5),
      corner: mark("slide.broken", "Corner of the second slide", 0.55, 0.35),
    },
    look(-990, "collection manager", "sht", "Balsam the colour of honey.", { yellow: seen(2, "s", "100 %") }),
    look(-580, "curator", "sht", "Corner of one glass gone, section untouched.", {
      yellow: seen(2, "s", "100 %"),
      corner: seen(1, "s", "3 mm"),
    }),
    look(-360, "curator", "sht", "Edge of the glass taped. Glomeruli still plain at forty times.", {
      yellow: seen(2, "s", "100 %"),
      corner: seen(1, "s", "3 mm"),
    }),
  ),
};

export const animalChecks: Record<string, History> = {
  "AN 2018.0200": history(
    {
      wall: mark("structure.hairline", "Hoof wall, inner side", 0.43, 0.878),
      nerve: mark("tissue.stiffening", "Palmar digital nerve", 0.625, 0.6),
    },
    look(-960, "curator", "sht", "Joints move in their natural range.", {}),
    look(-470, "conservator", "sht", "Hairline in the hoof wall, as horn does in dry air.", {
      wall: seen(1, "s", "12 mm"),
    }),
    look(-180, "conservator", "sht", "Hoof waxed; nerve stiff and well padded.", {
      wall: seen(1, "s", "12 mm"),
      nerve: seen(1, "s", "25 mm"),
    }),
  ),
  "AN 2020.0205": history(
    {
      omentum: mark("structure.loss", "Greater omentum, lower edge", 0.637, 0.67),
      lung: mark("tissue.browning", "Left lung, caudal lobe"),
    },
    look(-820, "conservator", "sht", "Organs in their order; a hole in the omentum was there when it came.", {
      omentum: seen(1, "s", "10 mm"),
    }),
    look(-435, "curator", "sht", "Used in two courses without a mark.", { omentum: seen(1, "s", "10 mm") }),
    look(-92, "conservator", "sht", "Caudal lobe a shade browner; light in the bay turned down.", {
      omentum: seen(1, "s", "11 mm"),
      lung: seen(1, "u", "15 %"),
    }),
  ),
  "AN 2015.0210": history(
    {
      window: mark("structure.deformation", "Large window of the rumen", 0.37, 0.24),
      castor: mark("structure.mount-failure", "Front castor of the frame"),
      mould: mark("tissue.mould", "Inside of the reticulum", 0.837, 0.44),
    },
    look(-1_045, "conservator", "st", "Window bulges outward, the frame holds it.", {
      window: seen(1, "s", "9 mm"),
    }),
    look(-615, "conservator", "st", "Grey spots inside the reticulum; swab sent, found to be dust.", {
      window: seen(1, "s", "9 mm"),
      mould: seen(0, "s"),
    }),
    look(-235, "curator", "st", "Front castor blocks. To be changed before the next journey.", {
      window: seen(1, "s", "9 mm"),
      castor: seen(1, "s"),
    }),
  ),
  "AN 2009.0215": history(
    {
      sac: mark("cast.filament-broken", "Left abdominal air sac", 0.62, 0.8),
      sag: mark("cast.sag", "Clavicular air sac", 0.42, 0.4),
    },
    look(-905, "curator", "st", "Light falls through all sacs.", {}),
    look(-495, "conservator", "st", "Clavicular sac bends down since the warm July.", {
      sag: seen(1, "u", "3 mm"),
    }),
    look(
      -127,
      "conservator",
      "st",
      "Bend the same after a second summer. Sliver off the left abdominal sac.",
      {
        sag: seen(1, "s", "3 mm"),
        sac: seen(1, "s", "5 mm"),
      },
    ),
  ),
  "AN 1911.0012": history(
    {
      wing: mark("bone.wire-corrosion", "Right wing"),
      skin: mark("surface.efflorescence", "Feet, remaining skin"),
    },
    look(-1_020, "collection manager", "st", "White bloom on the feet is the old soap: gloves and mask.", {
      skin: seen(2, "s", "15 mm"),
    }),
    look(-585, "conservator", "st", "Wire of the right wing green at two joints.", {
      skin: seen(2, "s", "15 mm"),
      wing: seen(1, "s", "10 mm"),
    }),
    look(-200, "conservator", "st", "Dome sealed with tape so that nobody reaches in.", {
      skin: seen(2, "s", "15 mm"),
      wing: seen(1, "s", "10 mm"),
    }),
  ),
  "AN 1938.0004": history(
    {
      tail: mark("structure.loose-joint", "Tail, last third"),
      fat: mark("bone.fat-bleed", "Skull base"),
    },
    look(-1_030, "collection manager", "st", "Fat at the base of the skull shines.", {
      fat: seen(1, "s", "20 mm"),
    }),
    look(-645, "curator", "st", "Tail swings when the floor shakes.", {
      fat: seen(1, "s", "20 mm"),
      tail: seen(1, "s", "5 mm"),
    }),
    look(-220, "conservator", "st", "A thread from the plinth now steadies the tail.", {
      fat: seen(1, "s", "22 mm"),
      tail: seen(0, "s"),
    }),
  ),
  "AN 2021.0220": history(
    {
      ear: mark("structure.deformation", "Right ear", 0.1, 0.16),
      latex: mark("tissue.pigment-migration", "Femoral artery, groin", 0.745, 0.57),
    },
    look(-800, "conservator", "sht", "Arteries red and round.", {}),
    look(-428, "curator", "sht", "Right ear folded by its wrapping.", { ear: seen(1, "s", "8 mm") }),
    look(
      -72,
      "conservator",
      "sht",
      "Red has crept into the muscle at the groin, a rim as wide as a pencil line.",
      {
        ear: seen(1, "s", "8 mm"),
        latex: seen(1, "u", "1 mm"),
      },
    ),
  ),
  "AN 2013.0225": history(
    {
      yellow: mark("sheet.yellowing", "Border of the sheet", 0.7, 0.1),
      scratch: mark("sheet.scratch", "Front face over the coffin bone", 0.53, 0.77),
    },
    look(-895, "curator", "st", "Lamellae of the hoof to be counted by eye.", {
      scratch: seen(1, "s", "14 mm"),
    }),
    look(-460, "conservator", "st", "Border begins to yellow.", {
      scratch: seen(1, "s", "14 mm"),
      yellow: seen(1, "u", "10 %"),
    }),
    look(-148, "conservator", "st", "Yellow rim as wide as last time; scratch polished and gone.", {
      scratch: seen(0, "s"),
      yellow: seen(1, "s", "10 %"),
    }),
  ),
  "AN 2016.0230": history(
    {
      level: mark("fluid.level-low", "Tank", 0.5, 0.2),
      scales: mark("fluid.precipitate", "Scales on the bottom", 0.42, 0.9),
    },
    look(-875, "curator", "st", "Gills spread well, red has gone to grey as was to be expected.", {}),
    look(-475, "conservator", "st", "Some scales have fallen.", { scales: seen(1, "s", "5 %") }),
    look(-138, "conservator", "st", "Level low by a thumb; topped up with 50 % isopropanol.", {
      scales: seen(1, "s", "5 %"),
      level: seen(1, "s", "12 mm"),
    }),
  ),
};
