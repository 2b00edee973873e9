/** Sources of the figures in `lib/environment/` and `lib/condition/`. */
import type { Source } from "#lib/workings/standing.ts";

export const environmentSources = {
  "bizot-2023": {
    title: "Bizot group, green protocol for loans, refreshed September 2023",
    standing: "read",
    note: "read in a document that cites it; the ranges are starting points, not universal",
  },
  "ashrae-museums": {
    title: "ASHRAE Handbook, HVAC Applications 2019, chapter 24, museum climate classes",
    standing: "from memory",
  },
  "ashrae-psychrometrics": {
    title: "ASHRAE Handbook, Fundamentals 2017, chapter 1, psychrometrics (Hyland and Wexler)",
    standing: "read",
    note: "equations and table values read in the source and the tests of an open psychrometric library that quotes them",
  },
  "cie-157": {
    title: "CIE 157:2004, Control of damage to museum objects by optical radiation",
    standing: "from memory",
    note: "a public book page gives 150 000 lx·h for the most sensitive class; that is the medium class",
  },
  "uv-ceiling": {
    title: "Study of museum lighting quoting CIE 157: 75 µW/lm with 50 lx for sensitive material",
    standing: "read",
  },
  "blue-wool-fades": {
    title:
      "Canadian conservation institute, chapter on light and ultraviolet: dose to a just noticeable fade",
    standing: "from memory",
    note: "agrees with the ranges of years published beside it",
  },
  "light-reciprocity": {
    title: "Public guide to the lighting of light-sensitive exhibits: dose is illuminance times time",
    standing: "read",
  },
  "plastics-manual": {
    title: "Conservation manual of a state museum (Western Australia), modern organic materials",
    standing: "read",
  },
  "epoxy-discolouration": {
    title: "J. Int. Soc. Plast. 23:5–9 (2008), doi 10.56507/UDSZ2853",
    standing: "read",
  },
  "epoxy-glass-transition": {
    title: "Glass transition of epoxy cured at room temperature, about 45–60 °C",
    standing: "from memory",
  },
  "polyester-cure": {
    title: "J. Int. Soc. Plast. 23:25–29 (2008), doi 10.56507/VGPG1291",
    standing: "read",
  },
  "ester-hydrolysis": { title: "Hydrolysis of ester links in damp", standing: "from memory" },
  "resin-blocks-2021": {
    title: "ConNext 2021, abstracts, page 60: natural specimens in polyester and acrylic blocks",
    standing: "read",
  },
  "fluid-temperature": {
    title: "NHCOLL-L, 14 March 2013, temperature of fluid collections",
    standing: "read",
  },
  "fluid-storage": {
    title: "Simmons, Storage in fluid preservatives, in Storage of natural history collections, chapter 24",
    standing: "read",
  },
  "bone-humidity": { title: "NHCOLL-L, 6 September 2022, humidity for bone and teeth", standing: "read" },
  "natural-history-storage": {
    title: "Supplier's guide to natural-history storage: 18–21 °C, 45–55 % RH",
    standing: "read",
  },
  "wax-models": {
    title: "Recommendations for wax moulages, 2009: climate, light, storage, lending",
    standing: "from memory",
    note: "the text is public; its figures could not be read",
  },
  "mould-pests": {
    title:
      "Proposal for a museum climate standard, conservationphysics.org: relative humidity, insects and moulds",
    standing: "read",
  },
  "usp-1160": {
    title: "United States Pharmacopeia 29, chapter 1160, mean kinetic temperature",
    standing: "read",
  },
  "opening-rest": {
    title: "Closed rest of a crate in the room before opening",
    standing: "common practice, no source",
    note: "24 hours is universal habit; the longer cases are derived",
  },
  "opening-dew-point": {
    title:
      "Dew-point rule for opening a crate: first-order warming, surface 1 K above the dew point of the room",
    standing: "derived here",
  },
  "sharma-2005": {
    title: "Sharma, Wu and Dalal, Color Research and Application 30:21–30 (2005)",
    standing: "read",
    note: "the 34 pairs of table 1 read in two independent public test files",
  },
  "cie-15": { title: "CIE 15, Colorimetry: CIELAB and its colour difference", standing: "from memory" },
  "astm-e313": {
    title: "ASTM E313-15e1, yellowness index",
    standing: "read",
    note: "coefficients and worked values read in the documentation of an open colour library",
  },
  "iso-105-a02": {
    title: "ISO 105-A02 (EN 20105-A02:1994), grey scale for change in colour",
    standing: "read",
  },
  "colour-acceptability": {
    title:
      "Multi-centre dental study of colour thresholds, quoted in BMC Oral Health 2021: 0.8 perceptible, 1.8 acceptable",
    standing: "read",
  },
  "en-16095": {
    title: "EN 16095:2012, condition recording for movable cultural heritage",
    standing: "from memory",
    note: "scope read; the list of contents is from memory",
  },
  "resin-terms": {
    title: "ConNext 2021, abstracts, page 60: yellowing, cracking, loss of transparency of resin blocks",
    standing: "read",
  },
} satisfies Record<string, Source>;
