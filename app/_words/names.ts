/**
 * Reads a name of the program as words: `massKg` and `mass_kg` are both "Mass"
 * in kg. For columns and inputs that have no words of their own in a catalogue.
 */

/** The last word of a name that is a unit, and how the unit is written. */
const units: Readonly<Record<string, string>> = {
  mm: "mm",
  mm2: "mm²",
  cm3: "cm³",
  m3: "m³",
  kg: "kg",
  g: "G",
  c: "°C",
  k: "K",
  lx: "lx",
  ml: "ml",
  pa: "Pa",
  kpa: "kPa",
  mpa: "MPa",
  percent: "%",
  deg: "°",
  hours: "h",
  minor: "minor units",
};

export type NameInWords = { words: string; unit: string };

export function wordsOfName(name: string): NameInWords {
  const parts = name
    .replace(/([a-z\d])([A-Z])/g, "$1_$2")
    .split(/[_.\s]+/)
    .filter((part) => part !== "")
    .map((part) => part.toLowerCase());
  const last = parts.at(-1) ?? "";
  const unit = parts.length > 1 ? units[last] : undefined;
  const said = (unit === undefined ? parts : parts.slice(0, -1)).filter((part) => part !== "id").join(" ");
  const words = said === "" ? name : said;
  return { words: words.charAt(0).toUpperCase() + words.slice(1), unit: unit ?? "" };
}

/** A closed set's value as it is read: hyphens between words are spaces. */
export function wordsOfValue(value: string): string {
  return /^[a-z]+(-[a-z\d]+)+$/.test(value) ? value.replaceAll("-", " ") : value;
}
