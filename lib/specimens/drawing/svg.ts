/**
 * A drawing as an SVG text of its own, for a picture that is stored, printed into
 * a document or painted to pixels. Colours are written into it; with `scheme`
 * "auto" it also carries the dark scheme, for use as the source of an image.
 */
import type { DrawnMark } from "#lib/specimens/drawing/marks.ts";
import type { Drawing, Stroke, Wash } from "#lib/specimens/drawing/plate.ts";

export type Palette = {
  ground: string;
  ink: string;
  quiet: string;
  faint: string;
  mark: string;
  washes: Record<Wash, string>;
  strokes: { artery: string; vein: string; nerve: string; duct: string };
};

export const lightPalette: Palette = {
  ground: "#FFFFFF",
  ink: "#1D2326",
  quiet: "#5B6469",
  faint: "#8F9698",
  mark: "#9C2436",
  washes: {
    paper: "#FFFFFF",
    tissue: "#F6EFE6",
    muscle: "#EBD8CD",
    bone: "#F5EEDA",
    organ: "#EADCD4",
    deep: "#DBC6BC",
    fat: "#F8F2DD",
    fluid: "#E4EFEF",
    glass: "#F1F6F5",
    hollow: "#E6E9E8",
    ink: "#1D2326",
    artery: "#D3969A",
    vein: "#9DB6CB",
    nerve: "#E4CE99",
    duct: "#AEC2A2",
  },
  strokes: { artery: "#9C2436", vein: "#2F5F86", nerve: "#8A5A0B", duct: "#3B6635" },
};

export const darkPalette: Palette = {
  ground: "#1E2123",
  ink: "#E8E6E0",
  quiet: "#A3A9AB",
  faint: "#72797C",
  mark: "#E58896",
  washes: {
    paper: "#1E2123",
    tissue: "#2B2A28",
    muscle: "#3A2E2B",
    bone: "#36332A",
    organ: "#3A302D",
    deep: "#483A36",
    fat: "#34312A",
    fluid: "#23302F",
    glass: "#262C2D",
    hollow: "#15181A",
    ink: "#E8E6E0",
    artery: "#8C4E57",
    vein: "#476A89",
    nerve: "#85693A",
    duct: "#506E48",
  },
  strokes: { artery: "#E58896", vein: "#8FB6DA", nerve: "#E0B566", duct: "#93C48B" },
};

/** Widths in units of the view box. */
export const strokeWidths: Record<Stroke, number> = {
  outline: 1.25,
  line: 0.8,
  fine: 0.55,
  hatch: 0.42,
  stipple: 0.75,
  hidden: 0.6,
  artery: 1.35,
  vein: 1.35,
  nerve: 1.15,
  duct: 1.1,
  twig: 0.6,
  "artery-twig": 0.6,
  "vein-twig": 0.6,
  "nerve-twig": 0.6,
  "duct-twig": 0.6,
};

function strokeColour(stroke: Stroke, palette: Palette): string {
  const vessel = stroke.replace("-twig", "");
  if (vessel === "artery" || vessel === "vein" || vessel === "nerve" || vessel === "duct") {
    return palette.strokes[vessel];
  }
  if (stroke === "outline" || stroke === "line") return palette.ink;
  return stroke === "hatch" || stroke === "stipple" ? palette.faint : palette.quiet;
}

function rules(palette: Palette): string {
  const fills = Object.entries(palette.washes).map(([wash, colour]) => `.w-${wash}{fill:${colour}}`);
  const lines = (Object.keys(strokeWidths) as Stroke[]).map(
    (stroke) => `.s-${stroke}{stroke:${strokeColour(stroke, palette)}}`,
  );
  return `${fills.join("")}${lines.join("")}.ground{fill:${palette.ground}}.name{fill:${palette.quiet}}.lead{stroke:${palette.faint}}.spot{fill:${palette.ground};stroke:${palette.ink}}.area{stroke:${palette.mark}}.number{fill:${palette.ink}}`;
}

const widthRules = `path{fill:none;stroke:none;stroke-linecap:round;stroke-linejoin:round}${Object.entries(
  strokeWidths,
)
  .map(([stroke, width]) => `.s-${stroke}{stroke-width:${width}}`)
  .join(
    "",
  )}.s-hidden{stroke-dasharray:2.5 2}.lead,.spot,.area{stroke-width:.6}.area{fill:none;stroke-dasharray:4 3}`;

function escapeText(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

export type SvgOptions = {
  /** What the picture is, for someone who does not see it. */
  title: string;
  scheme?: "light" | "auto";
  marks?: readonly DrawnMark[];
  /** Paint the ground too (needed for JPEG, which has no transparency). */
  ground?: boolean;
};

/** @returns a complete SVG document */
export function drawingToSvg(drawing: Drawing, options: SvgOptions): string {
  const style =
    options.scheme === "auto"
      ? `${widthRules}${rules(lightPalette)}@media (prefers-color-scheme:dark){${rules(darkPalette)}}`
      : `${widthRules}${rules(lightPalette)}`;
  const shapes = drawing.shapes.map((shape) => {
    const names = [
      shape.fill === null ? "" : `w-${shape.fill}`,
      shape.stroke === null ? "" : `s-${shape.stroke}`,
    ];
    return `<path class="${names.filter((name) => name !== "").join(" ")}" d="${shape.d}"/>`;
  });
  const labels = drawing.labels.map(
    (label) =>
      `<path class="lead" d="${label.leader}"/><text class="name" x="${label.x}" y="${label.y}" text-anchor="${label.anchor}" font-family="Source Serif 4,Georgia,serif" font-style="italic" font-size="9">${escapeText(label.text)}</text>`,
  );
  const marks = (options.marks ?? []).map((mark) => {
    const area = mark.area === null ? "" : `<path class="area" d="${mark.area}"/>`;
    return `${area}<circle class="spot" cx="${mark.x}" cy="${mark.y}" r="${mark.radius}"/><text class="number" x="${mark.x}" y="${mark.y + 3.1}" text-anchor="middle" font-family="Inter,Arial,sans-serif" font-size="8.5">${mark.number}</text>`;
  });
  const ground =
    options.ground === true
      ? `<rect class="ground" width="${drawing.width}" height="${drawing.height}"/>`
      : "";
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${drawing.width} ${drawing.height}" width="${drawing.width}" height="${drawing.height}" role="img"><title>${escapeText(options.title)}</title><style>${style}</style>${ground}${shapes.join("")}${labels.join("")}${marks.join("")}</svg>`;
}
