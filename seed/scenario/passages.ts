/** Narrow points on the way into a venue, in short. */
import type { Passage } from "#lib/people/schema.ts";

export const door = (name: string, widthMm: number, heightMm: number): Passage => ({
  kind: "door",
  name,
  widthMm,
  heightMm,
  depthMm: null,
  secondWidthMm: null,
  loadKg: null,
  slopePercent: null,
});
export const turn = (name: string, widthMm: number, secondWidthMm: number, heightMm: number): Passage => ({
  ...door(name, widthMm, heightMm),
  kind: "corridor turn",
  secondWidthMm,
});
export const lift = (
  name: string,
  widthMm: number,
  heightMm: number,
  depthMm: number,
  loadKg: number,
): Passage => ({
  ...door(name, widthMm, heightMm),
  kind: "lift",
  depthMm,
  loadKg,
});
export const ramp = (
  name: string,
  widthMm: number,
  loadKg: number | null,
  slopePercent: number | null,
): Passage => ({
  ...door(name, widthMm, 20_000),
  kind: "ramp",
  loadKg,
  slopePercent,
});
