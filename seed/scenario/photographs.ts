/**
 * Pictures in the place of photographs: still lifes that are drawn by code, of a
 * mounted cast and of slides, on a grey ground with a bar of five centimetres.
 * Nothing in them was ever in front of a lens. Lengths are in picture points.
 */
import type { AccountKey } from "#seed/scenario/accounts.ts";
import type { Day } from "#seed/scenario/shape.ts";

export type ScenarioPhotograph = {
  accessionNumber: string;
  day: Day;
  by: AccountKey;
  /** The drawing that is made into a picture. */
  svg: () => string;
};

const width = 1_500;
const height = 1_125;

/** Between 0 and 1, the same at every load. */
function fraction(seed: number): number {
  const value = Math.sin(seed * 12.9898) * 43_758.5453;
  return value - Math.floor(value);
}

/** The ground, lighter where the light falls, what stands on it, and the bar: five fields of a centimetre. */
function onGround(content: string, centimetre: number): string {
  const [left, top] = [width - 90 - 5 * centimetre, height - 90];
  const fields = [0, 1, 2, 3, 4].map(
    (field) =>
      `<rect x="${left + field * centimetre}" y="${top}" width="${centimetre}" height="18" fill="${field % 2 === 0 ? "#1f2224" : "#f4f4f2"}"/>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">
<defs>
<radialGradient id="ground" cx="42%" cy="34%" r="85%"><stop offset="0" stop-color="#b4b8ba"/><stop offset="1" stop-color="#74797c"/></radialGradient>
<filter id="soft" x="-30%" y="-30%" width="160%" height="160%"><feGaussianBlur stdDeviation="16"/></filter>
</defs>
<rect width="${width}" height="${height}" fill="url(#ground)"/>
${content}
${fields.join("")}
<rect x="${left}" y="${top}" width="${5 * centimetre}" height="18" fill="none" stroke="#1f2224" stroke-width="2"/>
</svg>`;
}

type Branch = { x: number; y: number; angle: number; length: number; thickness: number; depth: number };

/** Dark, and light where the light falls. */
type Tones = readonly [string, string];

const blue: Tones = ["#2f4d6e", "#6f93b8"];
const red: Tones = ["#8c3b34", "#c98378"];
const yellow: Tones = ["#a88f3c", "#ddc982"];

/** A tube that forks until it is thin: dark first, a lighter line on it where the light falls. */
function tree({ x, y, angle, length, thickness, depth }: Branch, colours: Tones, seed: number): string {
  const endX = x + Math.cos(angle) * length;
  const endY = y + Math.sin(angle) * length;
  const bend = (fraction(seed) - 0.5) * length * 0.5;
  const path = `M${x.toFixed(1)} ${y.toFixed(1)}Q${((x + endX) / 2 - Math.sin(angle) * bend).toFixed(1)} ${((y + endY) / 2 + Math.cos(angle) * bend).toFixed(1)} ${endX.toFixed(1)} ${endY.toFixed(1)}`;
  const [dark, light] = colours;
  const line = (colour: string, share: number) =>
    `<path d="${path}" fill="none" stroke="${colour}" stroke-width="${(thickness * share).toFixed(1)}" stroke-linecap="round"/>`;
  const own = line(dark, 1) + line(light, 0.35);
  if (depth === 0) return own;
  const forks = [-1, 1].map((way, index) =>
    tree(
      {
        x: endX,
        y: endY,
        angle: angle + way * (0.28 + 0.34 * fraction(seed * 3 + index)),
        length: length * (0.68 + 0.16 * fraction(seed * 5 + index)),
        thickness: thickness * 0.68,
        depth: depth - 1,
      },
      colours,
      seed * 2 + index + 1,
    ),
  );
  return forks.join("") + own;
}

/** Three trees of resin from one root, on a rod over a dark foot. */
function castOnStand(): string {
  const root = { x: 735, y: 770, length: 165, depth: 6 };
  const trees = [
    tree({ ...root, angle: -2.25, thickness: 30 }, blue, 3),
    tree({ ...root, angle: -0.9, thickness: 28 }, blue, 8),
    tree({ ...root, angle: -1.58, thickness: 17 }, red, 5),
    tree({ ...root, angle: -1.1, thickness: 11 }, yellow, 11),
    tree({ ...root, angle: -2.0, thickness: 12 }, yellow, 17),
  ];
  const stand = `<ellipse cx="760" cy="985" rx="300" ry="38" fill="#3b3f42" opacity="0.55" filter="url(#soft)"/>
<rect x="728" y="765" width="13" height="190" fill="#c9ccce"/><rect x="728" y="765" width="4" height="190" fill="#eef0f1"/>
<rect x="560" y="945" width="350" height="40" rx="5" fill="#24272a"/><rect x="560" y="945" width="350" height="7" rx="3" fill="#4a4f53"/>`;
  return onGround(stand + trees.join(""), 46);
}

/** One slide: glass, its label, and a section in two tones beneath a cover glass. */
function slide(index: number): string {
  const [x, y] = [170 + (index % 3) * 400, 190 + Math.floor(index / 3) * 400];
  const [wide, high] = [130 + 8 * index, 104 - 5 * index];
  const [middleX, middleY] = [x + 235, y + 62];
  const horns = [-1, 1]
    .map(
      (side) =>
        `<path d="M${middleX} ${middleY}q${side * wide * 0.16} ${-high * 0.06} ${side * wide * 0.2} ${-high * 0.32}q${side * wide * 0.06} ${high * 0.24} ${side * wide * 0.02} ${high * 0.34}q${side * wide * 0.12} ${high * 0.2} ${-side * wide * 0.02} ${high * 0.34}q${-side * wide * 0.14} ${-high * 0.06} ${-side * wide * 0.2} ${-high * 0.28}z" fill="#8f7fb0"/>`,
    )
    .join("");
  return `<rect x="${x + 8}" y="${y + 10}" width="350" height="124" rx="3" fill="#33373a" opacity="0.4" filter="url(#soft)"/>
<rect x="${x}" y="${y}" width="350" height="124" rx="3" fill="#e6eef0" opacity="0.85"/>
<rect x="${x}" y="${y}" width="88" height="124" rx="3" fill="#f3f0e6"/>
<path d="M${x + 14} ${y + 34}h${50 - 3 * index}M${x + 14} ${y + 54}h58M${x + 14} ${y + 74}h${36 + 4 * index}" stroke="#6b675c" stroke-width="3"/>
<rect x="${x + 140}" y="${y + 6}" width="190" height="112" fill="#f4f9fa" opacity="0.7"/>
<ellipse cx="${middleX}" cy="${middleY}" rx="${wide / 2}" ry="${high / 2}" fill="#d9cfe4"/>${horns}
<circle cx="${middleX}" cy="${middleY}" r="2.5" fill="#f4f9fa"/>
<path d="M${x + 2} ${y + 2}h346" stroke="#ffffff" stroke-width="3" opacity="0.8"/>`;
}

const sixSlides = (): string => onGround([0, 1, 2, 3, 4, 5].map(slide).join(""), 46);

export const photographs: readonly ScenarioPhotograph[] = [
  /** The donor granted pictures openly online. */
  { accessionNumber: "AN 2013.0047", day: -310, by: "conservator", svg: castOnStand },
  /** The donor refused them: the house sees the picture, nobody else does. */
  { accessionNumber: "AN 2012.0201", day: -308, by: "conservator", svg: sixSlides },
];
