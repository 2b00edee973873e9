/**
 * How well the program knows what a figure rests on: read in the source named,
 * remembered, the habit of the trade, or worked out here.
 */
export const standings = ["read", "from memory", "common practice, no source", "derived here"] as const;
export type Standing = (typeof standings)[number];

/** A published work, a standard, or a habit of the trade. */
export type Source = { title: string; standing: Standing; note?: string };
