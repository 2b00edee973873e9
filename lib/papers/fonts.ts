/**
 * The letters of the papers: the DejaVu family, which holds Latin, Greek and
 * Cyrillic with all their marks. Words are divided into runs that one font can
 * print; what a face lacks is printed in the plain sans, and a letter that the
 * family lacks altogether is spelled as its code point, so that no name on a paper
 * turns into an empty box. Widths are sums of advances, as the painter prints them.
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import fontkit, { type Font } from "@pdf-lib/fontkit";
import type { Face } from "#lib/papers/sheet.ts";

/** Files of the package; the reserve comes last. */
export const fontFiles = {
  sans: "DejaVuSansCondensed.ttf",
  "sans bold": "DejaVuSansCondensed-Bold.ttf",
  "sans italic": "DejaVuSansCondensed-Oblique.ttf",
  serif: "DejaVuSerifCondensed.ttf",
  "serif bold": "DejaVuSerifCondensed-Bold.ttf",
  "serif italic": "DejaVuSerifCondensed-Italic.ttf",
  mono: "DejaVuSansMono.ttf",
  reserve: "DejaVuSans.ttf",
} as const satisfies Record<Face | "reserve", string>;
export type FontName = keyof typeof fontFiles;

/** One letter, one glyph: no ligatures, so that a paper's text reads back as it was written. */
export const fontFeatures = { liga: false, clig: false, dlig: false, calt: false } as const;

export type Run = { font: FontName; text: string };

type LoadedFont = { bytes: Uint8Array; font: Font; widths: Map<string, number> };

const loaded = new Map<FontName, LoadedFont>();

function load(name: FontName): LoadedFont {
  const known = loaded.get(name);
  if (known !== undefined) return known;
  const folder = path.join(/* turbopackIgnore: true */ process.cwd(), "node_modules/dejavu-fonts-ttf/ttf");
  const bytes = readFileSync(path.join(/* turbopackIgnore: true */ folder, fontFiles[name]));
  const font = { bytes, font: fontkit.create(bytes), widths: new Map<string, number>() };
  loaded.set(name, font);
  return font;
}

export function fontBytes(name: FontName): Uint8Array {
  return load(name).bytes;
}

/** "U+738B" for a letter that no font of the family has. */
function spelled(codePoint: number): string {
  return `[U+${codePoint.toString(16).toUpperCase().padStart(4, "0")}]`;
}

/** The text in pieces that one font each can print. */
export function runsOf(text: string, face: Face): Run[] {
  const runs: Run[] = [];
  for (const letter of text) {
    const codePoint = letter.codePointAt(0) ?? 0;
    const font = ([face, "reserve"] as const).find((name) => load(name).font.hasGlyphForCodePoint(codePoint));
    const run = { font: font ?? face, text: font === undefined ? spelled(codePoint) : letter };
    const last = runs.at(-1);
    if (last !== undefined && last.font === run.font) last.text += run.text;
    else runs.push(run);
  }
  return runs;
}

/** Widths of short texts are asked for again and again. */
const KEPT_WIDTHS = 20_000;

function unitsOf(name: FontName, text: string): number {
  const { font, widths } = load(name);
  const known = widths.get(text);
  if (known !== undefined) return known;
  const units = font
    .layout(text, fontFeatures)
    .glyphs.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0);
  const em = units / font.unitsPerEm;
  if (widths.size >= KEPT_WIDTHS) widths.clear();
  widths.set(text, em);
  return em;
}

/** @returns pt */
export function measureText(text: string, face: Face, sizePt: number): number {
  return runsOf(text, face).reduce((sum, run) => sum + unitsOf(run.font, run.text) * sizePt, 0);
}
