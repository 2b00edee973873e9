/**
 * The program's own words about the sources of the limits, by those words, so that every
 * language has them. Titles of what was published have no entry: they stay as they are.
 */
export const englishSources = {
  "Common practice of the trade": "Common practice of the trade",
  "default of this program; a centre may set its own": "default of this program; a centre may set its own",
  "16–25 °C, 40–60 % RH, at most 10 % RH in 24 h": "16–25 °C, 40–60 % RH, at most 10 % RH in 24 h",
  "class B, outer limits 30–70 % RH, up to 30 °C": "class B, outer limits 30–70 % RH, up to 30 °C",
  "yellowing of epoxy sheets": "yellowing of epoxy sheets",
  "cure goes on in ultraviolet and sunlight": "cure goes on in ultraviolet and sunlight",
  "RH below 50 %; 30 lx with 1 500 µW/m², that is 50 µW/lm":
    "RH below 50 %; 30 lx with 1 500 µW/m², that is 50 µW/lm",
  "about 18 °C, never below 15 °C": "about 18 °C, never below 15 °C",
  "protect from visible light and ultraviolet": "protect from visible light and ultraviolet",
  "low and changing humidity cracks bone, teeth more": "low and changing humidity cracks bone, teeth more",
  "18–21 °C, 45–55 % RH": "18–21 °C, 45–55 % RH",
  "about 18 ± 2 °C, 50 ± 5 % RH, at most 50 lx": "about 18 ± 2 °C, 50 ± 5 % RH, at most 50 lx",
  "little biological activity below 50 % RH": "little biological activity below 50 % RH",
  "low responsivity, 200 lx, 600 000 lx·h a year; bone, horn, ivory":
    "low responsivity, 200 lx, 600 000 lx·h a year; bone, horn, ivory",
  "medium responsivity, 50 lx, 150 000 lx·h a year; natural history":
    "medium responsivity, 50 lx, 150 000 lx·h a year; natural history",
  "high responsivity, 50 lx, 15 000 lx·h a year": "high responsivity, 50 lx, 15 000 lx·h a year",
  "Hydrolysis of ester links in damp": "Hydrolysis of ester links in damp",
  "Glass transition of epoxy cured at room temperature, about 45–60 °C":
    "Glass transition of epoxy cured at room temperature, about 45–60 °C",
  "blocks of the same resin: yellowing, cracking, loss of transparency":
    "blocks of the same resin: yellowing, cracking, loss of transparency",
} as const;

/** What another language says in their place. */
export type SourceWords = Readonly<Record<keyof typeof englishSources, string>>;
