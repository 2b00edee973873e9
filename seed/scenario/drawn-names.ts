/**
 * Names as they are drawn on a screen: strokes in the box of a signature, each a
 * few dozen short lines. They are worked out from waves, so that no person's hand
 * is in them.
 */

type Wave = {
  from: number;
  to: number;
  middle: number;
  /** Half the height of the loops, and how many there are. */
  height: number;
  loops: number;
  /** How far the loops lean back. */
  lean: number;
};

const steps = 48;

function stroke({ from, to, middle, height, loops, lean }: Wave): string {
  return Array.from({ length: steps + 1 }, (_, step) => {
    const share = step / steps;
    const turn = share * loops * 2 * Math.PI;
    // Loops grow smaller to the end, as a name that is written in haste.
    const swing = height * (1 - 0.6 * share);
    const x = Math.round(from + (to - from) * share - lean * Math.sin(turn));
    const y = Math.round(middle - swing * Math.cos(turn));
    return `${step === 0 ? "M" : "L"}${x} ${y}`;
  }).join("");
}

/** Two words and a line beneath them. */
export const drawnDunmarra = [
  stroke({ from: 60, to: 230, middle: 74, height: 46, loops: 3, lean: 16 }),
  stroke({ from: 262, to: 520, middle: 84, height: 38, loops: 6, lean: 14 }),
  stroke({ from: 150, to: 480, middle: 132, height: 4, loops: 1, lean: 0 }),
].join("");
