/** What was seen on the specimens of thorax, abdomen and pelvis, look by look. */
import { type History, history, look, mark, seen } from "#seed/scenario/shape.ts";

export const trunkChecks: Record<string, History> = {
  "AN 2019.0055": history(
    {
      cords: mark("structure.broken-projection", "A tendinous cord of the mitral valve", 0.62, 0.6),
      rim: mark("tissue.wrinkling", "Rim of the window in the left ventricle", 0.678, 0.745),
    },
    look(-1_015, "conservator", "sht", "Valves open and close under a jet of air.", {}),
    look(-635, "curator", "sht", "Rim of the window puckers slightly.", { rim: seen(1, "s", "8 mm") }),
    look(
      -150,
      "conservator",
      "sht",
      "One cord out of many has parted, at its muscle end; the valve shows it from one side only.",
      {
        rim: seen(1, "s", "8 mm"),
        cords: seen(1, "s", "5 mm"),
      },
    ),
  ),
  "AN 2021.0064": history(
    {
      blue: mark("tissue.fading", "Blue of the great cardiac vein", 0.629, 0.739),
      vein: mark("structure.crack", "Small cardiac vein at the right border", 0.33, 0.68),
    },
    look(-760, "conservator", "sht", "Both colours strong; right auricle a little soft.", {}),
    look(-425, "curator", "sht", "Fine crack across the small cardiac vein, not open.", {
      vein: seen(1, "s", "2 mm"),
    }),
    look(-196, "conservator", "sht", "As before; colours compared with the card and found the same.", {
      vein: seen(1, "s", "2 mm"),
      blue: seen(0, "s"),
    }),
  ),
  "AN 2017.0012": history(
    {
      edge: mark("structure.hairline", "Lower edge of the right lung", 0.25, 0.885),
      hanger: mark("structure.loose-joint", "Ring at the trachea", 0.485, 0.07),
    },
    look(-985, "conservator", "st", "Hangs straight; lungs light and full.", {}),
    look(-555, "conservator", "st", "Ring at the trachea has play, a washer was put in.", {
      hanger: seen(1, "s", "1 mm"),
    }),
    look(-122, "curator", "st", "Hairline at the right lower edge, where the loose lung is put back.", {
      hanger: seen(1, "s", "1 mm"),
      edge: seen(1, "u", "7 mm"),
    }),
  ),
  "AN 2014.0036": history(
    {
      fine: mark("cast.filament-broken", "Fine branches of the right base", 0.24, 0.82),
      fade: mark("cast.discolouration", "Yellow of the lingula", 0.64, 0.68),
    },
    look(-1_035, "conservator", "st", "A handful of filaments lie in the tray, as after every move.", {
      fine: seen(1, "s", "6 mm"),
    }),
    look(-540, "conservator", "st", "Tray emptied and the filaments weighed, 0.02 g.", {
      fine: seen(1, "s", "6 mm"),
    }),
    look(-210, "curator", "st", "Yellow of the lingula beside its colour card: one step paler.", {
      fine: seen(1, "s", "7 mm"),
      fade: seen(1, "s", "5 %"),
    }),
  ),
  "AN 2016.0090": history(
    {
      lower: mark("structure.hairline", "Lower edge near the lingula", 0.615, 0.79),
      soil: mark("surface.soiling", "Costal surface", 0.37, 0.6),
    },
    look(-975, "curator", "sht", "Much handled, grey at the costal surface.", {
      soil: seen(1, "s", "40 mm"),
    }),
    look(-585, "conservator", "sht", "Washed with a damp swab. Lower edge firm.", { soil: seen(0, "s") }),
    look(-205, "conservator", "sht", "New hairline at the lower edge, closed.", {
      lower: seen(1, "s", "5 mm"),
    }),
  ),
  "AN 2012.0008": history(
    {
      nerve: mark("structure.detached-part", "Fourth intercostal nerve"),
      cartilage: mark("tissue.browning", "Costal cartilages"),
    },
    look(-1_105, "conservator", "st", "Cartilages have gone brown as cartilage does.", {
      cartilage: seen(1, "s", "60 %"),
    }),
    look(-735, "curator", "st", "Nerve of the fourth space stands off by a finger's breadth.", {
      cartilage: seen(1, "s", "60 %"),
      nerve: seen(1, "s", "18 mm"),
    }),
    look(-345, "conservator", "st", "Nerve laid back with a stitch.", {
      cartilage: seen(1, "s", "60 %"),
      nerve: seen(1, "s", "3 mm"),
    }),
  ),
  "AN 1958.0019": history(
    {
      colour: mark("fluid.colour", "Whole jar", 0.5, 0.5),
      lid: mark("fluid.seal-leak", "Pitch of the lid, rear", 0.5, 0.04),
      precipitate: mark("fluid.precipitate", "Bottom of the jar", 0.5, 0.94),
    },
    look(-1_080, "collection manager", "s", "Fluid the colour of tea. White grains on the bottom.", {
      colour: seen(2, "s", "100 %"),
      precipitate: seen(1, "s", "20 %"),
    }),
    look(-650, "conservator", "s", "Strength of the fluid taken through the old valve: 71 %.", {
      colour: seen(2, "s", "100 %"),
      precipitate: seen(1, "s", "20 %"),
      lid: seen(1, "u"),
    }),
    look(
      -270,
      "conservator",
      "s",
      "Smell of spirit at the rear of the lid. Cabinet aired, jar set in a tray.",
      {
        colour: seen(2, "s", "100 %"),
        precipitate: seen(1, "s", "25 %"),
        lid: seen(2, "a"),
      },
    ),
  ),
  "AN 2020.0033": history(
    {
      dome: mark("structure.sagging", "Left dome"),
      hole: mark("structure.loss", "Thin muscle beside the left crus"),
    },
    look(-830, "conservator", "st", "Former taken out and put back: the domes keep their height.", {
      hole: seen(1, "s", "4 mm"),
    }),
    look(-395, "conservator", "st", "Left dome lower by a few millimetres on the gauge.", {
      hole: seen(1, "s", "4 mm"),
      dome: seen(1, "u", "5 mm"),
    }),
    look(-44, "curator", "st", "Gauge says the same as a year ago, to the millimetre.", {
      hole: seen(1, "s", "4 mm"),
      dome: seen(1, "s", "5 mm"),
    }),
  ),
  "AN 2018.0029": history(
    {
      bladder: mark("tissue.wrinkling", "Fundus of the gallbladder", 0.595, 0.89),
      artery: mark("structure.hairline", "Cystic artery", 0.573, 0.543),
    },
    look(-1_025, "curator", "sht", "Gallbladder full and green.", {}),
    look(-610, "conservator", "sht", "First folds at the fundus.", { bladder: seen(1, "s", "10 mm") }),
    look(-225, "conservator", "sht", "Line in the wall of the cystic artery, closed; folds unchanged.", {
      bladder: seen(1, "s", "10 mm"),
      artery: seen(1, "s", "1.5 mm"),
    }),
    look(-70, "curator", "sht", "Looked over for the autumn term in Kestrel Bay, nothing to add.", {
      bladder: seen(1, "s", "10 mm"),
      artery: seen(1, "s", "1.5 mm"),
    }),
  ),
  "AN 2013.0047": history(
    {
      tips: mark("cast.tip-loss", "Edge of the left lobe", 0.82, 0.22),
      tack: mark("cast.tack", "Blue of the hepatic veins", 0.56, 0.3),
    },
    look(-940, "conservator", "st", "Blue resin takes dust, it never cured hard.", {
      tack: seen(1, "s", "15 %"),
    }),
    look(-525, "conservator", "st", "Edge of the left lobe has lost some tips at its last cleaning.", {
      tack: seen(1, "s", "15 %"),
      tips: seen(1, "s", "8 mm"),
    }),
    look(-178, "curator", "st", "No cleaning since. Cover keeps the dust off.", {
      tack: seen(1, "s", "15 %"),
      tips: seen(1, "s", "8 mm"),
    }),
  ),
  "AN 2021.0019": history(
    {
      hinge: mark("structure.loose-joint", "Hinge of the stomach", 0.31, 0.33),
      arteries: mark("structure.broken-projection", "Second short gastric artery", 0.765, 0.318),
    },
    look(-850, "conservator", "sht", "Stomach turns up on its hinge and stays.", {}),
    look(-470, "curator", "sht", "Hinge slack; stomach falls back by itself.", {
      hinge: seen(1, "a", "4 mm"),
    }),
    look(
      -110,
      "conservator",
      "sht",
      "Spring put into the hinge. One short artery broken at its middle before that.",
      {
        hinge: seen(0, "s"),
        arteries: seen(1, "s", "3 mm"),
      },
    ),
  ),
  "AN 2015.0081": history(
    {
      ureter: mark("structure.sagging", "Right ureter between its holders", 0.414, 0.485),
      board: mark("structure.warp", "Backboard, lower corner"),
    },
    look(-995, "curator", "st", "Right ureter hangs in a bow.", { ureter: seen(1, "s", "7 mm") }),
    look(-605, "conservator", "st", "Backboard lifts at a corner; weight laid on it for a month.", {
      ureter: seen(1, "s", "7 mm"),
      board: seen(1, "u", "4 mm"),
    }),
    look(-228, "conservator", "st", "Board flat again. Fourth holder made for the ureter.", {
      ureter: seen(0, "s"),
      board: seen(1, "s", "1 mm"),
    }),
  ),
  "AN 2010.0014": history(
    {
      calyx: mark("structure.loss", "Minor calyx of the lower pole", 0.46, 0.61),
      hinge: mark("structure.loose-joint", "Hinge of the two halves", 0.3, 0.42),
    },
    look(-910, "curator", "sht", "Halves close with a gap as thin as paper.", {
      calyx: seen(1, "s", "2 mm"),
    }),
    look(-500, "curator", "sht", "Hinge pin replaced; the old one had worn.", {
      calyx: seen(1, "s", "2 mm"),
      hinge: seen(0, "s"),
    }),
    look(-118, "conservator", "sht", "Arteries red to the last branch, loss at the calyx as ever.", {
      calyx: seen(1, "s", "2 mm"),
    }),
  ),
  "AN 2019.0117": history(
    {
      fimbriae: mark("structure.deformation", "Fimbriae of the left tube"),
      cut: mark("surface.silicone-weep", "Cut surface of the pubic symphysis", 0.722, 0.593),
    },
    look(-925, "conservator", "sht", "Silicone comes out of the bone at the cut; wiped weekly.", {
      cut: seen(1, "a", "12 mm"),
    }),
    look(-535, "conservator", "sht", "Bone dry for months. Fimbriae pressed to one side.", {
      cut: seen(0, "s"),
      fimbriae: seen(1, "s", "4 mm"),
    }),
    look(-82, "curator", "sht", "Fimbriae spread with a brush, they stay. Good for the spring course.", {
      fimbriae: seen(1, "s", "2 mm"),
    }),
  ),
  "AN 2020.0078": history(
    {
      nerve: mark("tissue.hardening", "Perineal branches of the pudendal nerve", 0.506, 0.8),
      stand: mark("surface.scratch", "Foot of the stand"),
    },
    look(-835, "conservator", "sht", "Prostate and bladder neck read well from the lecture bench.", {}),
    look(-450, "curator", "sht", "Perineal branches stiff at their ends.", { nerve: seen(1, "s", "6 mm") }),
    look(
      -101,
      "conservator",
      "sht",
      "Stand scratched, specimen unchanged. Family asks for it back in the coming year.",
      {
        nerve: seen(1, "s", "6 mm"),
        stand: seen(1, "s", "50 mm"),
      },
    ),
  ),
  "AN 2022.0030": history(
    {
      flap: mark("structure.crack", "Base of the aponeurosis flap", 0.54, 0.38),
      pin: mark("surface.soiling", "Around the pin at the conjoint fibres", 0.45, 0.545),
    },
    look(-710, "conservator", "sht", "Layers lift one after another down to the deep ring.", {}),
    look(-365, "curator", "sht", "Rust mark at the pin; pin changed for a plastic one.", {
      pin: seen(1, "s", "3 mm"),
    }),
    look(-36, "conservator", "sht", "Flap begins to crack at its base; held with a strip, to be watched.", {
      pin: seen(1, "s", "3 mm"),
      flap: seen(1, "u", "4 mm"),
    }),
  ),
  "AN 2008.0022": history(
    {
      cloud: mark("fluid.clouding", "Lower third of the jar", 0.4, 0.82),
      ring: mark("fluid.seal-leak", "Sealing ring", 0.5, 0.1),
    },
    look(-1_000, "conservator", "st", "Clear and full.", {}),
    look(-595, "conservator", "st", "Slight cloud below; sample shows no growth.", {
      cloud: seen(1, "u", "15 %"),
    }),
    look(-142, "conservator", "st", "Fluid filtered and put back at 50 %. Ring renewed as a precaution.", {
      cloud: seen(0, "s"),
      ring: seen(0, "s"),
    }),
  ),
  "AN 1949.0010": history(
    {
      putty: mark("fluid.seal-leak", "Putty of the lid, left corner", 0.27, 0.1),
      salt: mark("fluid.precipitate", "Crust outside the glass, left", 0.275, 0.35),
      exposed: mark("fluid.tissue-exposed", "Cardia", 0.524, 0.47),
    },
    look(-1_070, "conservator", "s", "Crust of salt outside tells of an old leak; dry now.", {
      salt: seen(1, "s", "60 mm"),
    }),
    look(
      -695,
      "conservator",
      "s",
      "Cardia touches the surface of the fluid. Topped up by two litres at the exhaust.",
      {
        salt: seen(1, "s", "60 mm"),
        exposed: seen(1, "s", "4 mm"),
      },
    ),
    look(-300, "conservator", "", "Putty wet at the corner. Tank set in a basin, nobody is to move it.", {
      salt: seen(2, "a", "90 mm"),
      exposed: seen(1, "s", "4 mm"),
      putty: seen(3, "a", "30 mm"),
    }),
  ),
  "AN 2016.0072": history(
    {
      float: mark("fluid.specimen-moved", "Right ovary", 0.72, 0.48),
      colour: mark("fluid.colour", "Whole jar", 0.5, 0.5),
    },
    look(-880, "conservator", "st", "Colourless, specimen hangs level.", {}),
    look(-485, "curator", "st", "Right side stands higher than the left.", { float: seen(1, "u", "6 mm") }),
    look(-94, "conservator", "st", "Thread shortened, both sides level. Fluid has a tinge of straw.", {
      float: seen(0, "s"),
      colour: seen(1, "u", "100 %"),
    }),
  ),
};
