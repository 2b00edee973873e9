/** Sources of the figures in `lib/transport/`. */
import type { Source } from "#lib/workings/standing.ts";

export const transportSources = {
  "ista-1a-2a": {
    title: "ISTA procedures 1A and 2A, free-fall drop height by packaged mass",
    standing: "read",
    note: "Read in two independent copies of the table that agree, not in the procedures themselves.",
  },
  "mil-hdbk-304": {
    title: "MIL-HDBK-304, Package cushioning design",
    standing: "from memory",
    note: "Table of handling types, the buckling rule of Kersten, creep and useful static stress.",
  },
  "cci-six-steps": {
    title: "Canadian Conservation Institute, Six steps to safe shipment",
    standing: "read",
    note: "Ranking of carriers, package masses, vulnerable assemblies, thickness of crate panels.",
  },
  "panel-transport-1998": {
    title:
      "Richard, Mecklenburg and Tumosa, Technical considerations for the transport of panel paintings, in The Structural Conservation of Panel Paintings, 1998, pp. 525–556",
    standing: "read",
  },
  "stress-energy": {
    title: "Burgess, Consolidation of cushion curves, Packaging Technology and Science 3 (1990)",
    standing: "from memory",
    note: "Peak stress as an exponential of dynamic energy density; all curves of one foam fall on one line.",
  },
  "polyethylene-curves": {
    title: "Cushion curves of polyethylene foam of about 35 kg/m³, drops 2 to 5",
    standing: "from memory",
    note: "Fitted to one remembered minimum (50 mm, 610 mm drop, about 50 G at 4.8 kPa); ± 20 %.",
  },
  "conserve-o-gram-17-3": {
    title: "National Park Service, Conserve O Gram 17/3",
    standing: "read",
    note: "Box in box: 50 to 75 mm all round between the boxes.",
  },
  "tm-43-0156": {
    title: "US Army TM 43-0156, appendix D-1, cleated plywood boxes (PPP-B-601 overseas style A)",
    standing: "read",
  },
  "astm-crate-scopes": {
    title: "ASTM D6251 and D6256, scopes: panelboard boxes to 454 kg, skidded boxes to 1134 kg",
    standing: "read",
  },
  "gdv-packaging": {
    title: "German Insurance Association, Packaging handbook, sections 1.2 and 1.4.2",
    standing: "read",
    note: "Lid load of 10 kN/m²; tipping of packages.",
  },
  "pallet-truck-lift": {
    title: "Hand pallet trucks: highest and lowered height of the forks",
    standing: "from memory",
    note: "Lowered about 85 mm, raised about 200 mm at most.",
  },
  densities: { title: "Densities of plywood, softwood, foam, resin sheet", standing: "from memory" },
  "ispm-15": {
    title: "ISPM 15 (2018), Regulation of wood packaging material in international trade",
    standing: "read",
  },
  "en-12195-1": {
    title: "EN 12195-1, acceleration coefficients for road transport",
    standing: "read",
    note: "Read in a training page on the CTU Code.",
  },
  "air-volumetric-divisor": {
    title: "Air cargo: volumetric mass as volume in cm³ divided by 6000",
    standing: "read",
    note: "The step of half a kilogram in rounding is from memory.",
  },
  "hse-l23": {
    title: "Health and Safety Executive, L23 and INDG143, filters for manual handling",
    standing: "read",
    note: "25 and 16 kg, the team rule and the pushing forces were read in guides that quote it. Filters, not limits.",
  },
  "rectangle-in-rectangle": {
    title:
      "Carver, Solution to problem E 1225 (a rectangle in a rectangle), American Mathematical Monthly 64 (1957)",
    standing: "from memory",
  },
  "en-81-20": {
    title: "EN 81-20, lifts: 75 kg for each person",
    standing: "from memory",
  },
  "iso-21542": {
    title: "ISO 21542, accessibility of buildings: ramps no steeper than 1 in 12",
    standing: "from memory",
  },
} satisfies Record<string, Source>;
